"""The story of a frozen book: every kind of entry, and whatever can happen to one, in some hundred lines.

It is told by the tests' own means, so it grows with them: stories.py knows every kind, the tests of the checks every
question. The book that a version has frozen stays as that version made it.
"""

from __future__ import annotations

import random
from datetime import UTC, datetime, timedelta
from typing import Any

from tests.book.checks.ledger import INSTRUMENTS
from tests.book.conftest import C1, C2, F1, F2, NOW, T1, T2, VESSELS, answer, entry, fruit, gauge, new_id, reading, send
from tests.book.stories import MAKERS
from tests.book.test_convergence import SKEWS, make_story
from tests.closing import close_as_read
from tests.frozen.told_checks import History, received_at
from webapp.book.fold import unjudged
from webapp.book.house import devices, people, registry
from webapp.book.house.check_limits import set_check_limit
from webapp.book.intake import hand_in
from webapp.book.record.store import Book
from webapp.trade.marks import make_mark

LATER = datetime(2026, 9, 1, tzinfo=UTC)  # after every history of the checks
DAY = NOW - timedelta(days=21)
AREAS = [{"id": "CELL", "name": "Cellar", "humidity_pct": 88}, {"id": "LOFT", "name": "Loft", "humidity_pct": 45}]


def furnish(book: Book, units: str) -> None:
    """Put the house in: vessels, instruments, people; the accounts of the US or a single warehouse, by the units."""
    zone, accounts = ("America/Chicago", "us") if units == "us" else ("Europe/Paris", "warehouse")
    house = {"name": "Hollow Hill", "units": units, "time_zone": zone, "accounts": accounts, "height_m": 310}
    registry.set_site(book, {**house, "areas": AREAS}, "JK")
    for row in VESSELS:
        registry.put_vessel(book, row, "JK")
    registry.put_instrument(book, {"id": "TH-2", "sort": "thermometer", "low": 0, "high": 40, "unit": "degC"}, "JK")
    for name, row in INSTRUMENTS.items():
        registry.put_instrument(book, {"id": name, **row}, "JK")
    for code, access in (("NS", "floor"), ("JK", "distiller"), ("TB", "floor"), ("OL", "office")):
        person = {"code": code, "name": f"Person {code}", "roles": ["cellar hand"], "access": access}
        people.put_person(book, person, "OL")
    people.set_password(book, "OL", "plum and pear and quince")
    people.set_pin(book, "NS", "2468")
    tokens = {name: devices.new_token(book, "OL", name, DAY) for name in ("PH-1", "PH-2")}
    phones = [devices.enrol_device(book, token, name, DAY)[0] for name, token in tokens.items()]
    send(book, shift_note(phones[0]["id"]), skew_s=4.0, device=phones[0]["id"])
    devices.revoke_device(book, phones[1]["id"], "OL", DAY)


def shift_note(device: str) -> dict[str, Any]:
    """A note from a phone that was let in."""
    return entry("shift_note", read_at=DAY, device=device, text="begun")


def tell_season(book: Book, seed: int, size: int) -> None:
    """Tell a season at random on four phones, with amendments, answers and strikes; the registry changes in between."""
    chance = random.Random(seed)
    story = make_story(chance, size)
    told = {one["kind"] for one in story}
    seq = {device: max(one["seq"] for one in story if one["device"] == device) for device in SKEWS}
    for name, make in MAKERS.items():
        if name.split()[0] not in told and name != "stranger":
            seq["d-one"] += 1
            story.append(make(chance, {"read_at": DAY, "device": "d-one", "seq": seq["d-one"]}))
    changes = [
        lambda: registry.put_vessel(book, {"mark": C2, "sort": "cask", "tare_kg": 44.0, "capacity_l": 228}, "JK"),
        lambda: registry.set_limit(book, "sort", "fermenter", "ferment_reading", "temp", [10, 16], None, "JK"),
        lambda: registry.set_limit(book, "vessel", T1, "gauge", "volume", None, [0, 350], "JK"),
        lambda: set_check_limit(book, "site", "", "clock_note_s", 90.0, "JK"),
        lambda: set_check_limit(book, "vessel", C1, "cask_brim", 0.5, "JK"),
        lambda: registry.put_instrument(book, {"id": "TH-2", "corrections": "0: 0.2; 20: -0.3"}, "JK"),
    ]
    chance.shuffle(story)
    for n in range(0, len(story), 12):
        if changes and n % 24 == 0:
            changes.pop(0)()
        for device, skew_s in SKEWS.items():
            if batch := [one for one in story[n : n + 12] if one["device"] == device]:
                send(book, *batch, now=NOW + timedelta(minutes=n), skew_s=skew_s, device=device)
    for change in changes:
        change()


def tell_checks(book: Book, histories: list[History]) -> None:
    """Tell the histories of the checks, each on its own phone."""
    for history in histories:
        for row in history.vessels:
            registry.put_vessel(book, row, "JK")
        for code in sorted({one["person"] for one, _ in history.entries}):
            people.put_person(book, {"code": code, "name": code, "roles": ["cellar hand"]}, "OL")
        for one, skew_s in history.entries:
            send(book, one, now=received_at(history), skew_s=skew_s, device=history.name)


def choose(histories: list[History], known: set[str], scratch: Book) -> list[History]:
    """Return few histories that ask all questions beside those already asked, told into a book of their own."""
    furnish(scratch, "metric")
    tell_checks(scratch, histories)
    asked: dict[str, set[str]] = {history.name: set() for history in histories}
    for row in scratch.query("SELECT q.code, e.device FROM queries q JOIN entries e ON e.id = q.entry"):
        asked[row["device"]].add(row["code"])
    wanted, chosen = set().union(*asked.values()) - known, []
    while wanted:
        best = max(histories, key=lambda one: (len(asked[one.name] & wanted) / len(one.entries), one.name))
        chosen.append(best)
        wanted -= asked[best.name]
    return chosen


def tell_rest(book: Book) -> None:
    """Tell what neither tells: answers of each sort, a clash, refusals, odd families, closes, late entries."""
    teller = _Teller(book)
    say = teller.say
    for base, row in ODD_VESSELS.items():
        registry.put_vessel(book, {"mark": make_mark(base), "name": base, **row}, "JK")
    stranger = say(gauge, T2, "200", "71.0", person="QQ")
    say(answer, stranger["id"], query="unknown_person")
    say(reading, F2, "1.030")
    rose = say(reading, F2, "1.045")
    say(reading, F2, "1.029", read_at=rose["read_at"], amends=rose["id"], because="misread")
    struck = say(gauge, T2, "210", "71.0")
    say(answer, struck["id"], "struck")
    say(gauge, T2, "205", "71.0", read_at=struck["read_at"], amends=struck["id"], because="struck too soon")
    back = say(gauge, T2, "206", "70.9")
    say(answer, back["id"], "struck")
    say(answer, back["id"], "stands")
    say(reading, F2, "1.028", amends=new_id(), because="the first has not come")
    once = say(gauge, T2, "204", "70.8")
    teller.send({**once, "remark": "another body under the same id"})
    teller.refused()
    _tell_odd(say)
    _close(book, "2025-08")
    say(gauge, T1, "90", read_at=datetime(2025, 8, 20, 9, tzinfo=UTC), now=LATER)
    say(reading, F1, "1.041", read_at=datetime(2025, 8, 21, 9, tzinfo=UTC), now=LATER)
    _close(book, "2025-Q3")
    say(entry, "loss", T1, cause="spill", found="NS", done="pumped", volume="3 L", now=LATER)


ODD_VESSELS: dict[str, dict[str, Any]] = {
    "T7": {"sort": "tank", "capacity_l": 300}, "T8": {"sort": "tank", "capacity_l": 300},
    "C7": {"sort": "cask", "capacity_l": 225, "tare_kg": 50.0, "place": "CELL-A1", "use": "used"},
    "C8": {"sort": "cask", "capacity_l": 225, "tare_kg": 50.0, "place": "CELL-A2", "use": "used"},
}


def _tell_odd(say: Any) -> None:
    """Tell entries about which something is asked that no other story brings up."""
    t7, c7, c8 = (make_mark(base) for base in ("T7", "C7", "C8"))
    say(entry, "gauge", t7, volume="260 L", temp="20 degC", strength="74 pct_vol", what="rye")
    full = {"from_vessel": t7, "lot": "L-07", "tare": "50 kg", "gross": "150 kg", "use": "used", "soaked": "yes",
            "glass": "72.0 pct_glass", "temp": "12 degC", "what": "rye"}
    say(entry, "cask_fill", c7, place="CELL-A1", **full)
    say(entry, "cask_fill", c8, place="CELL-A2", **full)
    say(entry, "stock_count", c7, found="here", place="CELL-A2", signed="NS")
    say(entry, "stock_count", c8, found="here", place="CELL-A1", signed="NS")
    say(entry, "stock_count", c8, found="nothing", signed="NS")
    say(entry, "vat_plan", t7, name="K-26-07", texts={"draws": f"{c7} 900"}, water="30 kg", target="45 pct_vol",
        volume="200 L")
    say(entry, "vat_plan", t7, name="K-26-08", texts={"draws": f"{make_mark('C99')} 20"}, water="3 kg",
        target="45 pct_vol", volume="200 L")
    say(entry, "vat_plan", t7, name="K-26-09", texts={"draws": "some of everything"}, water="3 kg",
        target="45 pct_vol", volume="200 L")
    say(entry, "ferment_reading", F1, gravity="1.020 SG", temp="16 degC", room_co2="6000 ppm")
    say(entry, "gauge", t7, volume="100 L", temp="45 degC", glass="3.0 pct_glass")
    say(entry, "goods_receipt", texts={"consignor": "Far Hill"}, document="T-9", batch="L-9", spirit="plum",
        strength="45 pct_vol", bottle_size="0.5 L", per_case="6 count", cases="20 count", case_from="1",
        case_to="20", seals="yes")
    say(entry, "dispatch", batch="L-9", why="tax_paid", document="D-9", texts={"to_whom": "Corner shop"},
        cases="5 count", case_from="1", case_to="3")
    for first, last in (("2", "3"), ("900", "901")):
        say(entry, "dispatch", batch="L-9", why="tax_paid", document="D-10", texts={"to_whom": "Corner shop"},
            cases="2 count", case_from=first, case_to=last)
    say(entry, "bottled_count", batch="L-9", cases="40 count", signed="NS")
    say(entry, "instrument_check", instrument="TH-99", against="ice", expected="0 plain", found="0.9 plain",
        correction="0 plain", result="good", in_use="yes")
    say(entry, "gauge", make_mark("T99"), volume="100 L", temp="20 degC", strength="60 pct_vol")
    say(entry, "cask_fill", c7, **{**full, "from_vessel": F1}, place="CELL-A1")


class _Teller:
    """One phone that logs every ten minutes."""

    def __init__(self, book: Book) -> None:
        self._book, self._seq, self._at = book, 0, DAY

    def say(self, make: Any, *args: Any, now: datetime | None = None, **more: Any) -> dict[str, Any]:
        """Log an entry and hand it in; return it."""
        self._at += timedelta(minutes=10)
        self._seq += 1
        about = {"read_at": self._at, "typed_at": self._at, "device": "d-five", "seq": self._seq}
        texts = more.pop("texts", {})
        made: dict[str, Any] = make(*args, **{**about, **more})
        made["values"] |= {name: {"raw": text} for name, text in texts.items()}
        self.send(made, now)
        return made

    def send(self, body: Any, now: datetime | None = None, **how: Any) -> None:
        """Hand a body in as it is."""
        now = now or self._at + timedelta(minutes=5)
        batch = {"now": now.isoformat(), "device": "d-five", "entries": [body]}
        hand_in(self._book, batch, via="phone", now=now, **how)

    def refused(self) -> None:
        """Hand in what the book refuses, once for every reason it has."""
        sound = reading(F1, read_at=self._at, device="d-five", seq=900)
        for n, more in enumerate([
            {"kind": "no_such_kind"}, {"mark": "F1-X"}, {"kind_version": 900}, {"mark": ""}, {"amends": "seven"},
            {"values": {"temp": sound["values"]["temp"]}},
            {"values": {**sound["values"], "gravity": {"raw": "seven", "unit": "SG"}}},
            {"values": {**sound["values"], "gravity": {"raw": "1.050", "unit": "kg"}}},
            {"values": {**sound["values"], "cap": {"raw": "green"}}}, {"device": "desk"}, {"remark": "x" * 70_000},
        ]):
            self.send({**sound, "id": new_id(), "seq": 910 + n, **more})
        loaded = fruit(F1, read_at=self._at, device="d-five", seq=901)
        self.send({**loaded, "values": {**loaded["values"], "picked_on": {"raw": "yesterday"}}})
        self.send("no entry at all")
        self.send({**answer(sound["id"], read_at=self._at), "seq": 930}, may_answer=False)


def _close(book: Book, period: str) -> None:
    unjudged.judge_all(book)
    close_as_read(book, period, "OL", LATER)
