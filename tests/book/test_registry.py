"""Vessels, people, phones and cards: what is put in comes out, every change is on record, cards follow."""

from __future__ import annotations

import base64
import hashlib
from datetime import timedelta
from typing import Any

import pytest
from argon2 import Type, extract_parameters

from tests.book.conftest import (
    C1,
    F1,
    F2,
    NOW,
    R1,
    S1,
    VESSELS,
    answer,
    charge,
    entry,
    fruit,
    gauge,
    new_id,
    reading,
    send,
)
from webapp.book import cards
from webapp.book.fold import fold, queries
from webapp.book.house import devices, people, registry
from webapp.book.record.store import Book, BookError
from webapp.trade.marks import make_mark

HOUR = timedelta(hours=1)


def codes(book: Book) -> list[str]:
    return [query["code"] for query in queries.open_queries(book)]


def test_a_vessel_comes_back_as_it_was_put_in(book: Book) -> None:
    row = registry.put_vessel(
        book, {"mark": make_mark("C7"), "sort": "cask", "tare_kg": "44,".rstrip(","), "curved": True}, "JK"
    )
    assert row == registry.vessel(book, make_mark("C7"))
    assert (row["name"], row["tare_kg"], row["curved"], row["retired"]) == ("C7", 44.0, True, False)
    assert len(registry.vessels(book)) == len(VESSELS) + 1
    assert [v["name"] for v in registry.vessels(book, "still")] == ["S1"]


@pytest.mark.parametrize(
    "bad", [{"mark": "F1-9", "sort": "cask"}, {"mark": F1, "sort": "bath"}, {"mark": C1, "tare_kg": "nan"}]
)
def test_a_vessel_that_cannot_be_is_refused_with_a_sentence(book: Book, bad: dict[str, Any]) -> None:
    with pytest.raises(BookError, match=r"\.$"):
        registry.put_vessel(book, bad, "JK")


def test_every_change_says_who_what_from_and_to(book: Book) -> None:
    registry.put_vessel(book, {"mark": F1, "working_l": 1600}, "TB")
    registry.put_vessel(book, {"mark": F1, "working_l": 1600}, "TB")  # nothing changed, nothing noted
    newest = registry.changes(book, 5)[0]
    assert (newest["person"], newest["what"], newest["key"]) == ("TB", "vessel", F1)
    assert (newest["before"], newest["after"]) == ({"working_l": 1700.0}, {"working_l": 1600.0})
    people.set_password(book, "JK", "a long pass phrase")
    assert "pass phrase" not in str(registry.changes(book))


def test_a_new_tare_is_worked_into_what_was_weighed_before(book: Book) -> None:
    send(book, entry("cask_regauge", C1, gross="230 kg", strength="62 pct_vol", temp="12 degC", condition="tight"))
    before = fold.load_state(book, f"v:{C1}")["holds"]["lpa_l"]
    registry.put_vessel(book, {"mark": C1, "tare_kg": 50.0}, "JK")
    after = fold.load_state(book, f"v:{C1}")["holds"]["lpa_l"]
    assert after == pytest.approx(before * 180 / 185)
    kept = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept


def test_limits_narrow_from_site_to_vessel_and_questions_follow(book: Book) -> None:
    send(
        book,
        fruit(read_at=NOW - 9 * HOUR),
        reading(F1, temp="19"),
        fruit(F2, read_at=NOW - 9 * HOUR, seq=2),
        reading(F2, temp="19", seq=3),
    )
    assert "unusual" not in codes(book)
    registry.set_limit(book, "sort", "fermenter", "ferment_reading", "temp", [10, 18], None, "JK")
    assert codes(book).count("unusual") == 2
    registry.set_limit(book, "vessel", F1, "ferment_reading", "temp", [10, 22], [0, 40], "JK")
    assert [q["mark"] for q in queries.open_queries(book) if q["code"] == "unusual"] == [F2]
    card = cards.card(book, F1)
    assert card is not None
    assert card["limits"]["ferment_reading"]["temp"] == {"usual": [10.0, 22.0], "possible": [0.0, 40.0]}
    registry.set_limit(book, "sort", "fermenter", "ferment_reading", "temp", None, None, "JK")
    assert "unusual" not in codes(book)
    with pytest.raises(BookError, match="Swap"):
        registry.set_limit(book, "site", "", "ferment_reading", "temp", [20, 10], None, "JK")
    with pytest.raises(BookError, match="no such field"):
        registry.set_limit(book, "site", "", "ferment_reading", "mood", [1, 2], None, "JK")


def test_the_site_keeps_what_was_set(book: Book) -> None:
    assert registry.site(book)["units"] == "metric"
    registry.set_site(book, {"name": "Hillside", "height_m": 310}, "JK")
    assert registry.site(book)["height_m"] == 310
    assert registry.site(book)["units"] == "metric"


def test_an_instrument_is_put_in_and_changed(book: Book) -> None:
    registry.put_instrument(book, {"id": "TH-2", "sort": "thermometer", "low": 0, "high": "60"}, "JK")
    registry.put_instrument(book, {"id": "TH-2", "state": "broken"}, "JK")
    assert registry.instruments(book)[0]["high"] == 60.0
    assert registry.instruments(book)[0]["state"] == "broken"
    with pytest.raises(BookError, match="sort"):
        registry.put_instrument(book, {"id": "X"}, "JK")


def test_a_password_opens_for_its_person_alone(book: Book) -> None:
    people.set_password(book, "JK", "plums in the rain")
    assert people.check_password(book, "jk", "plums in the rain") is not None
    assert people.check_password(book, "JK", "plums in the sun!") is None
    assert people.check_password(book, "NS", "plums in the rain") is None
    assert people.check_password(book, "??", "plums in the rain") is None
    kept = book.one("SELECT password FROM people WHERE code = 'JK'")
    assert kept is not None
    assert kept["password"].startswith("$argon2id$")
    people.put_person(book, {"code": "JK", "retired": True}, "TB")
    assert people.check_password(book, "JK", "plums in the rain") is None
    with pytest.raises(BookError, match="10 to 200"):
        people.set_password(book, "NS", "short")
    with pytest.raises(BookError, match="nobody"):
        people.set_password(book, "ZZ", "long enough indeed")


def test_a_password_kept_cheaply_is_kept_dearly_after_the_next_sign_in(
    book: Book, product_hasher: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    people.set_password(book, "JK", "plums in the rain")
    monkeypatch.setattr(people, "_hasher", product_hasher)
    assert people.check_password(book, "JK", "plums in the rain") is not None
    kept = book.one("SELECT password FROM people WHERE code = 'JK'")
    assert kept is not None
    strength = extract_parameters(kept["password"])
    # The least that OWASP's Password Storage Cheat Sheet asks of argon2id: 19 MiB, 2 rounds (from memory).
    assert strength.type is Type.ID
    assert strength.memory_cost >= 19 * 1024
    assert strength.time_cost >= 2
    assert people.check_password(book, "JK", "plums in the rain") is not None


def test_a_pin_is_data_that_a_phone_can_check(book: Book) -> None:
    people.set_pin(book, "NS", "4711")
    pin = next(one for one in people.for_phones(book, ["NS"]) if one["code"] == "NS")["pin"]
    made = hashlib.pbkdf2_hmac("sha256", b"4711", base64.b64decode(pin["salt"]), pin["rounds"])
    assert base64.b64encode(made).decode() == pin["hash"]
    with pytest.raises(BookError, match="digits"):
        people.set_pin(book, "NS", "abc")
    people.set_pin(book, "NS", "")
    assert people.person(book, "NS")["pin"] is None  # type: ignore[index]


def test_a_phone_is_let_in_once_by_a_token_and_put_out_again(book: Book) -> None:
    token = devices.new_token(book, "JK", "PH-2", NOW)
    device, secret = devices.enrol_device(book, token, "", NOW + HOUR)
    assert device["name"] == "PH-2"
    assert devices.by_secret(book, secret)["id"] == device["id"]  # type: ignore[index]
    assert devices.by_secret(book, secret + "x") is None
    with pytest.raises(BookError, match="used already"):
        devices.enrol_device(book, token, "", NOW + HOUR)
    with pytest.raises(BookError, match="lets nobody in"):
        devices.enrol_device(book, "a guess as long as what a QR carries", "", NOW)
    late = devices.new_token(book, "JK", "PH-3", NOW)
    with pytest.raises(BookError, match="older than a day"):
        devices.enrol_device(book, late, "", NOW + 25 * HOUR)
    assert secret not in str(book.query("SELECT * FROM devices"))
    assert late not in str(book.query("SELECT * FROM tokens"))
    devices.revoke_device(book, device["id"], "JK")
    assert devices.by_secret(book, secret) is None
    with pytest.raises(BookError, match="no such phone"):
        devices.revoke_device(book, "d-none", "JK")


def test_the_report_says_what_each_phone_has_not_handed_in(book: Book) -> None:
    send(book, fruit(seq=1), reading(seq=4), skew_s=12.5)
    row = devices.report_devices(book)[0]
    assert (row["id"], row["seen"], row["gaps"], row["entries"]) == ("d-one", 4, [[2, 3]], 2)
    assert (row["heard_at"], row["skew_s"]) == ("2025-09-24T12:00:00Z", 12.5)


def test_a_card_has_what_a_phone_needs_offline(book: Book) -> None:
    send(book, fruit(read_at=NOW - 50 * HOUR))
    send(book, *[reading(gravity=f"1.0{50 - n}", read_at=NOW - (40 - n) * HOUR, seq=2 + n) for n in range(15)])
    send(book, reading(gravity="1.9", seq=30))
    card = cards.card(book, F1)
    assert card is not None
    assert card["holds"]["material"] == "plum"
    assert card["context"]["og"] == 1.05
    assert card["last"]["ferment_reading"]["gravity"] == {
        "value": 1.036, "raw": "1.036", "unit": "SG", "at": "2025-09-23T10:00:00Z",
    }
    assert card["recent"][0]["summary"] == "1.036 SG at 15.0 °C"
    assert len(card["recent"]) == 12
    assert [value for _, value in card["curves"]["gravity"]] == [round(1.05 - n / 1000, 3) for n in range(15)]
    assert card["queries"][0]["weight"] == "stop"
    assert set(card["forms"]) >= {"ferment_reading", "fruit_intake", "shift_note"}
    assert card["run"] is None


def test_a_still_shows_its_run_and_past_runs_of_the_same_fruit(book: Book) -> None:
    send(book, fruit(read_at=NOW - 90 * HOUR))
    for n, hours in enumerate((60, 40, 20)):
        seq = 10 * n + 2
        send(book, charge(read_at=NOW - hours * HOUR, seq=seq))
        send(book, entry("run_reading", S1, strength="70 pct_vol", read_at=NOW - (hours - 1) * HOUR, seq=seq + 1))
        if hours > 20:
            send(book, entry("run_end", S1, reason="strength", read_at=NOW - (hours - 5) * HOUR, seq=seq + 2))
    card = cards.card(book, S1)
    assert card is not None
    assert card["run"]["receiver"] == R1
    assert [reading["true_strength"] for reading in card["run"]["readings"]] == [70.0]
    assert [past["started_at"] for past in card["past_runs"]] == ["2025-09-22T20:00:00Z", "2025-09-22T00:00:00Z"]


def test_cards_come_since_a_cursor_and_only_those_that_changed(book: Book) -> None:
    first = cards.cards_since(book, 0)
    assert {card["mark"] for card in first["cards"]} == {row["mark"] for row in VESSELS}
    assert first["site"]["time_zone"] == "UTC"
    assert cards.cards_since(book, first["cursor"])["cards"] == []
    send(book, fruit())
    second = cards.cards_since(book, first["cursor"])
    assert [card["mark"] for card in second["cards"]] == [F1]
    assert second["cursor"] == send(book)["cursor"]
    registry.put_vessel(book, {"mark": F1, "retired": True}, "JK")
    assert cards.cards_since(book, second["cursor"])["gone"] == [F1]


def test_an_answer_turns_the_card(book: Book) -> None:
    one = gauge(volume="30000")
    send(book, one)
    cursor = cards.cards_since(book, 0)["cursor"]
    send(book, answer(one["id"], read_at=NOW, seq=2))
    assert [card["queries"] for card in cards.cards_since(book, cursor)["cards"]] == [[]]


def test_many_cards_come_in_rounds_and_none_is_left_out(book: Book) -> None:
    with book.write():
        for n in range(40):
            registry.put_vessel(book, {"mark": make_mark(f"X{n}"), "sort": "can"}, "JK")
    seen, cursor, more = [], 0, True
    while more:
        some = cards.cards_since(book, cursor, limit=7)
        assert len(some["cards"]) <= 7
        seen += [card["mark"] for card in some["cards"]]
        cursor, more = some["cursor"], some["more"]
    assert len(seen) == len(set(seen)) == len(VESSELS) + 40


def test_a_note_to_the_next_shift_comes_with_the_cards(book: Book) -> None:
    send(book, entry("shift_note", values={"text": {"raw": "pump leaks"}}))
    struck = entry("shift_note", F1, seq=2, values={"text": {"raw": "nonsense"}})
    send(book, struck, answer(struck["id"], "struck", read_at=NOW, seq=3, id=new_id()))
    assert [(note["text"], note["mark"]) for note in cards.cards_since(book, 0)["notes"]] == [("pump leaks", "")]
