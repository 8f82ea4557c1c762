"""Other tools read by a key: what it allows, until its day, and nothing else; the calendar read back by a library."""

from __future__ import annotations

import csv
import io
import re
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from icalendar import Calendar

from tests.desk.conftest import C1, F1, House, filled, house, rising, token
from webapp.access.tries import Tries
from webapp.book.fold import unjudged
from webapp.book.house import journal, reading_keys
from webapp.book.record.errors import BookError
from webapp.readers import guard

__all__ = ["filled", "house", "rising"]
NOW = datetime.now(UTC)


@pytest.fixture(autouse=True)
def nobody_has_tried(monkeypatch: pytest.MonkeyPatch) -> None:
    """Each test begins without the wrong keys of the one before."""
    monkeypatch.setattr(guard, "_wrong", Tries(most=30, window_s=60))


def key_for(house: House, *scopes: str, days: int = 30, now: datetime = NOW) -> dict[str, str]:
    """Return the header of a new key."""
    folder = house.app.config["DATA_DIR"]
    return {"Authorization": f"Bearer {reading_keys.make_key(folder, 'sheet', scopes, days, 'OL', now)}"}


def read(house: House, path: str, headers: dict[str, str]) -> Any:
    return house.app.test_client().get(f"/api/read/{path}", headers=headers)


def test_entries_come_once_each_in_the_order_of_the_book_whatever_the_size_of_a_bite(house: House, rising: Any) -> None:
    headers, found, after = key_for(house, "entries"), [], 0
    while True:
        answer = read(house, f"entries?after={after}&limit=2", headers).json
        found += answer["entries"]
        after = answer["cursor"]
        if not answer["more"]:
            break
    assert [one["book"]["book_no"] for one in found] == [1, 2, 3]
    assert [one["kind"] for one in found] == ["fruit_intake", "ferment_reading", "ferment_reading"]
    assert found[2]["values"]["gravity"]["raw"] == "1.054"
    assert read(house, f"entries?after={after}", headers).json["entries"] == []
    house.log("ferment_reading", F1, 2880, temp=("15", "degC"), gravity=("1.040", "SG"))
    assert [one["book"]["book_no"] for one in read(house, f"entries?after={after}", headers).json["entries"]] == [4]
    of_one_kind = read(house, "entries?kind=fruit_intake", headers).json["entries"]
    assert [one["kind"] for one in of_one_kind] == ["fruit_intake"]


def test_csv_of_a_kind_is_what_the_desk_sends(house: House, rising: Any) -> None:
    ours = read(house, "entries.csv?kind=ferment_reading", key_for(house, "entries")).text
    assert ours == house.client("OL").get("/desk/entries.csv?kind=ferment_reading").text
    assert len(list(csv.reader(io.StringIO(ours)))) == 3


def test_stock_says_what_stands_where_with_its_pure_alcohol(house: House, filled: Any) -> None:
    # 53 % by mass weighs 0.90711 g/mL at 20 degC (US Bureau of Standards, printed: S3 of tests/trade/reference),
    # ethanol 0.78924 (OIML R 22): that is 60.92 % vol. Weighed in air it is 1.06 g/kg more (air of 1.2 kg/m3 against
    # steel of 8000, OIML R 111).
    house.log("gauge", C1, 0, what="plum", net_weight=("121.7", "kg"), strength=("60.92", "pct_vol"),
              temp=("20", "degC"), purpose="opening")
    unjudged.judge_all(house.book)
    headers = key_for(house, "stock")
    rows = {one["mark"]: one for one in read(house, "stock", headers).json["stock"]}
    assert set(rows) == {F1, C1}
    assert rows[C1]["pure_alcohol_l"] == pytest.approx(121.7 * 1.00106 * 0.53 / 0.78924, rel=3e-4)
    assert rows[F1]["mash"] is True
    table = list(csv.DictReader(io.StringIO(read(house, "stock.csv", headers).text.removeprefix("\ufeff"))))
    assert [row["mark"] for row in table] == sorted(rows)
    assert float(next(row for row in table if row["mark"] == C1)["pure_alcohol_l"]) == rows[C1]["pure_alcohol_l"]


def test_periods_traces_and_cards_are_the_desks_own_without_people(house: House, filled: Any) -> None:
    unjudged.judge_all(house.book)
    desk, headers = house.client("OL"), key_for(house, "periods", "trace", "cards")
    names = [one["name"] for one in read(house, "periods", headers).json["periods"]]
    assert "2025-09" in names
    ours = read(house, "periods/2025-09", headers).json["period"]
    assert ours == desk.get("/desk/periods/2025-09.json").json
    assert read(house, "periods/2025-09.csv", headers).text == desk.get("/desk/periods/2025-09.csv").text
    assert read(house, f"trace/{F1}", headers).json["trace"] == desk.get(f"/desk/trace/{F1}.json").json
    answer = read(house, "cards", headers)
    assert F1 in [one["mark"] for one in answer.json["cards"]]
    assert "people" not in answer.json and "OL" not in answer.text


def test_the_calendar_holds_what_is_due_and_says_it_as_the_desk_does(house: House, filled: Any) -> None:
    unjudged.judge_all(house.book)
    headers = key_for(house, "calendar")
    answer = read(house, "due.ics", headers)
    assert answer.mimetype == "text/calendar"
    events = {str(one["UID"]): one for one in Calendar.from_ical(answer.data).walk("VEVENT")}
    (fermenter,) = [one for uid, one in events.items() if uid.startswith(f"read-{F1}@")]
    assert abs(fermenter["DTSTART"].dt - NOW.date()) <= timedelta(days=1)  # today, by the house's clock
    assert str(fermenter["SUMMARY"]) in house.client("OL").get("/desk/").text
    by_address = {"key": headers["Authorization"].removeprefix("Bearer ")}
    client = house.app.test_client()
    assert client.get("/api/read/due.ics", query_string=by_address).status_code == 200


def test_a_key_in_an_address_opens_the_calendar_alone(house: House) -> None:
    key = key_for(house, *reading_keys.SCOPES)["Authorization"].removeprefix("Bearer ")
    client = house.app.test_client()
    assert client.get("/api/read/due.ics", query_string={"key": key}).status_code == 200
    assert client.get("/api/read/stock", query_string={"key": key}).status_code == 401


@pytest.mark.parametrize("scope", reading_keys.SCOPES)
def test_a_key_reads_what_it_was_made_for_and_nothing_else(house: House, scope: str) -> None:
    paths = {"entries": ["entries", "entries.csv?kind=gauge"], "stock": ["stock", "stock.csv"],
             "periods": ["periods", "periods/2025-09", "periods/2025-09.csv"], "trace": [f"trace/{F1}"],
             "cards": ["cards"], "calendar": ["due.ics"]}
    headers = key_for(house, scope)
    for other, each in paths.items():
        for path in each:
            status = read(house, path, headers).status_code
            assert (status in (200, 404)) if other == scope else (status == 403), (scope, path, status)


def test_a_key_that_is_over_ended_or_invented_opens_nothing_and_guessers_are_slowed(house: House) -> None:
    over = key_for(house, "stock", days=1, now=NOW - timedelta(days=2))
    assert read(house, "stock", over).status_code == 401
    good, folder = key_for(house, "stock"), house.app.config["DATA_DIR"]
    assert read(house, "stock", good).status_code == 200
    assert reading_keys.end_key(folder, reading_keys.keys(folder)[0].no) == "sheet"
    answer = read(house, "stock", good)
    assert answer.status_code == 401 and answer.headers["WWW-Authenticate"] == "Bearer"
    assert "The office makes keys" in answer.json["error"]
    statuses = [read(house, "stock", {"Authorization": f"Bearer reads-{n}"}).status_code for n in range(40)]
    assert statuses[0] == 401 and statuses[-1] == 429
    assert "no such key" in " ".join(line["about"] for line in journal.all_lines(folder))


def test_nothing_can_be_written_by_a_key_and_a_session_is_no_key(house: House) -> None:
    headers = key_for(house, *reading_keys.SCOPES)
    client = house.app.test_client()
    for method in ("POST", "PUT", "DELETE", "PATCH"):
        assert client.open("/api/read/entries", method=method, headers=headers, json={}).status_code == 405
    nothing = {"now": "", "device": "", "entries": []}
    assert client.post("/api/hand-in", headers=headers, json=nothing).status_code == 401
    assert client.get("/desk/entries.json", headers=headers).status_code == 302
    assert house.client("OL").get("/api/read/stock").status_code == 401


@pytest.mark.parametrize(("name", "scopes", "days", "says"), [
    ("", ("stock",), 30, "Name the tool"), ("x" * 41, ("stock",), 30, "Name the tool"), ("a\n", ("stock",), 30, "key"),
    ("a", (), 30, "Tick"), ("a", ("stock", "all"), 30, "Tick"), ("a", ("stock",), 0, "1 to 731"),
    ("a", ("stock",), 732, "1 to 731"),
])
def test_a_key_that_cannot_be_made_says_why(
    house: House, name: str, scopes: tuple[str, ...], days: int, says: str
) -> None:
    folder = house.app.config["DATA_DIR"]
    if name == "a\n":  # what stands around a name is taken off, what stands in it is refused
        assert reading_keys.make_key(folder, name, scopes, days, "OL", NOW).startswith("reads-")
        name, says = "a\nb", "Name the tool"
    with pytest.raises(BookError, match=says):
        reading_keys.make_key(folder, name, scopes, days, "OL", NOW)


@pytest.mark.parametrize("path", [
    "entries?after=x", "entries?limit=0", "entries?limit=1001", "entries?after=-1", "entries.csv", "cards?since=no",
    "entries.csv?kind=gauge&since=soon",
])
def test_what_cannot_be_read_is_refused_with_what_to_do(house: House, path: str) -> None:
    answer = read(house, path, key_for(house, "entries", "cards"))
    assert answer.status_code == 400 and len(answer.json["error"]) > 20


def test_the_office_makes_a_key_sees_it_once_and_ends_it(house: House) -> None:
    office = house.client("OL")
    data = {"name": "cellar sheet", "days": "90", "scopes": ["stock", "calendar"],
            "csrf_token": token(office, "/desk/readers")}
    made = office.post("/desk/readers", data=data)
    assert made.status_code == 200 and made.headers["Cache-Control"] == "no-store"
    key = re.search(r"<code class=\"code-line\">(reads-[\w-]+)</code>", made.text)
    assert key
    assert f"/api/read/due.ics?key={key[1]}" in made.text
    assert read(house, "stock", {"Authorization": f"Bearer {key[1]}"}).status_code == 200
    page = office.get("/desk/readers").text
    assert key[1] not in page and "cellar sheet" in page and "what stands where, the calendar of what is due" in page
    (known,) = reading_keys.keys(house.app.config["DATA_DIR"])
    assert known.used_at and known.made_by == "OL"
    assert (datetime.fromisoformat(known.until) - datetime.fromisoformat(known.made_at)).days == 90
    ended = office.post(f"/desk/readers/{known.no}/end", data={"csrf_token": data["csrf_token"]}, follow_redirects=True)
    assert "opens nothing any more" in ended.text
    assert read(house, "stock", {"Authorization": f"Bearer {key[1]}"}).status_code == 401
    assert house.client("IM").get("/desk/readers").status_code == 403
    boxes = re.findall(r'<input[^>]*type="checkbox"[^>]*>', page)
    assert len(boxes) == len(reading_keys.SCOPES) and not any("required" in one for one in boxes)
    nothing = office.post("/desk/readers", data=data | {"scopes": []})
    assert nothing.status_code == 422 and "Tick what it may read." in nothing.text
