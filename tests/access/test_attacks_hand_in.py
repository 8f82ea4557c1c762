"""What a stolen phone, a cloned phone or a floor hand's login may not do through the hand-in."""

import uuid
from datetime import UTC, datetime, timedelta

import pytest

from webapp.book import intake
from webapp.book.fold import queries
from webapp.book.house import devices
from webapp.book.record import counters, log
from webapp.trade.marks import make_mark

F1 = make_mark("F1")
SEQ_MOST = 2**53 - 1
NOW = datetime.now(UTC).isoformat(timespec="seconds")


def entry(**changed):
    made = {
        "id": str(uuid.uuid4()), "kind": "shift_note", "kind_version": 1, "mark": F1, "mark_by": "typed",
        "read_at": NOW, "typed_at": NOW, "person": "WK", "role": "hand", "device": "d-honest", "seq": 1,
        "values": {"text": {"raw": "All quiet."}},
    }
    return made | changed


def answer_to(entry_id, **changed):
    values = {"entry": {"raw": entry_id}, "verdict": {"raw": "struck"}, "reason": {"raw": "I say so"}}
    return entry(kind="answer", mark="", mark_by="", values=values, **changed)


def send(client, *entries, device="d-honest"):
    answer = client.post("/api/hand-in", json={"now": NOW, "device": device, "entries": list(entries)})
    assert answer.status_code == 200, answer.text
    return answer.json


@pytest.fixture
def book(app):
    return app.extensions["book"]


def test_a_floor_hands_login_and_a_phone_cannot_strike_what_the_desk_would_not_let_them(sign_in, phone, book):
    """Defends: answers are the distiller's. The desk says 403 to a floor hand; the API must not be the way round."""
    client, _ = phone
    logged = entry()
    send(client, logged)
    for number, attacker in enumerate((client, sign_in("WK")), 2):
        for named in ("WK", "OL"):  # naming the office in the entry does not make it the office
            (result,) = send(attacker, answer_to(logged["id"], person=named, seq=number))["results"]
            assert result["settled"] == "refused"
            assert "desk" in result["problems"][0]["words"]
    assert log.load_entry(book, logged["id"])["standing"] == "entered"


def logged_and_struck(device, *, hours=0, **answer):
    """Return an entry of a device and the answer by which the same device takes it back, `hours` later."""
    now = datetime.now(UTC)
    before = (now - timedelta(hours=hours)).isoformat(timespec="seconds")
    made = entry(device=device, seq=1, read_at=before, typed_at=before)
    return made, answer_to(made["id"], **({"device": device, "seq": 2} | answer))


def standing(book, made):
    return log.load_entry(book, made["id"])["standing"]


def test_a_phone_takes_back_its_own_line_and_asking_again_changes_nothing(phone, book):
    client, device = phone[0], phone[1]["id"]
    made, struck = logged_and_struck(device, hours=71)
    send(client, made, device=device)
    assert [one["settled"] for one in send(client, struck, device=device)["results"]] == ["entered"]
    assert [one["settled"] for one in send(client, struck, device=device)["results"]] == ["known"]
    assert standing(book, made) == "struck"


def test_a_line_and_its_taking_back_may_come_together_from_a_file(phone, sign_in, book):
    """A slate that was saved and is carried by somebody else: both, or neither."""
    made, struck = logged_and_struck("d-dropped", hours=2)
    results = send(sign_in("WK"), made, struck, device="d-dropped")["results"]
    assert [one["settled"] for one in results] == ["entered", "entered"]
    assert standing(book, made) == "struck"


@pytest.mark.parametrize(
    "case", ["another phone's", "by name alone", "sent along again", "old", "one question", "stands"]
)
def test_a_phone_takes_back_nothing_else(case, phone, sign_in, book):
    """Defends: the record against a floor hand who would rather that something had not been logged."""
    client, device = phone[0], phone[1]["id"]
    owner = device if case in ("old", "one question", "stands") else "d-honest"
    made, struck = logged_and_struck(owner, hours=73 if case == "old" else 1)
    intake.hand_in(book, {"now": NOW, "device": owner, "entries": [made]}, via="phone", now=datetime.now(UTC))
    if case == "another phone's":
        struck["device"] = device
    if case == "one question":
        struck["values"]["query"] = {"raw": "temp_range"}
    if case == "stands":
        struck["values"]["verdict"] = {"raw": "stands"}
    by = sign_in("WK") if case == "by name alone" else client
    batch = [made, struck] if case == "sent along again" else [struck]
    assert send(by, *batch, device=struck["device"])["results"][-1]["settled"] == "refused"
    assert standing(book, made) == "entered"


def test_a_distillers_login_may_answer_through_the_api(sign_in, phone, book):
    logged = entry()
    send(phone[0], logged)
    (result,) = send(sign_in("IM"), answer_to(logged["id"], person="IM", seq=2))["results"]
    assert result["settled"] == "entered"
    assert log.load_entry(book, logged["id"])["standing"] == "struck"


def test_nobody_hands_in_as_the_desk(phone, sign_in, book):
    """Defends: the desk's counter. One entry under its highest number would leave the desk none to count with."""
    for client in (phone[0], sign_in("OL")):
        for seq in (1, SEQ_MOST):
            (result,) = send(client, entry(device="desk", seq=seq), device="desk")["results"]
            assert result["settled"] == "refused"
    assert counters.report_seen(book, "desk") == {"seen": 0, "gaps": []}
    made = intake.enter_page_entry(
        book, kind="shift_note", mark=F1, values={"text": {"raw": "From the desk."}}, person="OL", role="",
        read_at=NOW, now=datetime.now(UTC),
    )
    assert made["settled"] in ("entered", "queried")


def test_a_foreign_counter_cannot_be_driven_to_its_end(phone, book):
    """Defends: another phone's counter. It goes on above what the book has seen, and must not run out of numbers."""
    send(phone[0], entry(device="d-victim", seq=3))
    for seq in (SEQ_MOST, SEQ_MOST - 1, 10**12):
        told = send(phone[0], entry(device="d-victim", seq=seq))
        assert told["devices"]["d-victim"]["seen"] == 3
    told = send(phone[0], entry(device="d-victim", seq=5000))
    assert told["devices"]["d-victim"]["seen"] == 5000, "a phone that was long away is still believed"


def test_a_phone_speaks_only_for_its_own_clock(app, phone, book):
    """Defends: another phone's clock and last-heard time, from which the order of its entries is worked out."""
    other, _ = devices.enrol_device(book, devices.new_token(book, by="OL", name="PH-2"), "PH-2", datetime.now(UTC))
    send(phone[0], device=other["id"])
    kept = devices.device_by_id(book, other["id"])
    assert kept["heard_at"] is None
    assert kept["skew_s"] is None
    own = devices.device_by_id(book, phone[1]["id"])
    assert own["heard_at"], "who really called is noted"


def test_a_floor_hands_login_speaks_for_no_phone(sign_in, phone, book):
    """Defends: the same, against a browser that is signed in and is no phone."""
    send(sign_in("WK"), device=phone[1]["id"])
    assert devices.device_by_id(book, phone[1]["id"])["heard_at"] is None


def test_a_cloned_phone_is_shut_out_with_its_twin_and_replays_change_nothing(app, phone, book):
    client, device = phone
    clone = app.test_client()
    clone.set_cookie("cellarslate_device", client.get_cookie("cellarslate_device").value)
    first = entry()
    assert send(client, first)["results"][0]["settled"] == "entered"
    assert send(clone, first)["results"][0]["settled"] == "known"
    (clash,) = send(clone, first | {"remark": "Something else."})["results"]
    assert clash["settled"] == "clash"
    assert intake.log.load_entry(book, first["id"])["entry"].get("remark", "") == ""
    assert any(query["code"] == "clash" for query in queries.for_entry(book, first["id"])), "a person is asked"
    devices.revoke_device(book, device["id"], by="OL")
    for one in (client, clone):
        assert one.post("/api/hand-in", json={"now": NOW, "device": device["id"], "entries": []}).status_code == 401
        assert one.get("/api/cards").status_code == 401


def test_a_phone_opens_no_desk_page(app, phone):
    """Defends: the desk. A phone's secret opens the API only; it is nobody's login."""
    client, _ = phone
    for rule in app.url_map.iter_rules():
        if rule.endpoint.startswith("desk.") and "GET" in rule.methods:
            with app.test_request_context():
                path = app.url_map.bind("localhost").build(rule.endpoint, dict.fromkeys(rule.arguments, "x"))
            assert client.get(path).status_code == 302, path
