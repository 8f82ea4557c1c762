"""A house with more than a hundred of everything that a page of the desk lists. Handed in by the batch."""

from __future__ import annotations

from contextlib import suppress
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path
from typing import Any

from uuid6 import uuid7

from tests.desk.conftest import PASSWORD, House, token
from webapp.book import intake
from webapp.book.house import devices, registry
from webapp.book.house.people import put_person
from webapp.book.periods import closes
from webapp.kinds.tasting_texts import seal_of
from webapp.trade.marks import BadMark, make_mark

MANY = 105
BATCH = 200
EARLY = datetime(2016, 3, 1, 8, tzinfo=UTC)
LATE = datetime(2025, 9, 1, 6, tzinfo=UTC)
NOW = datetime(2025, 12, 1, tzinfo=UTC)
S1, R1, T0, T1 = make_mark("S1"), make_mark("R1"), make_mark("T900"), make_mark("T901")
WARM: dict[str, Any] = {"temp": ("20", "degC")}


class LargeWorld:
    """The house, its log, and the ids that pages are asked for."""

    def __init__(self, folder: Path) -> None:
        self.house = House(folder)
        self.app, self.book = self.house.app, self.house.book
        self._waiting: list[dict[str, Any]] = []
        self._seq = 0
        self._at = EARLY
        with self.book.write():
            self._register()
        self._log_all()
        self._close_a_quarter()
        self._judge_otherwise()

    def client(self, code: str = "OL") -> Any:
        """Return a browser signed in as this person."""
        client = self.app.test_client()
        form = {"code": code, "password": PASSWORD, "csrf_token": token(client, "/sign-in")}
        assert client.post("/sign-in", data=form).status_code == 302
        return client

    def say(self, kind: str, mark: str = "", /, **values: Any) -> str:
        """Log one entry ten minutes after the one before; return its id."""
        self._seq += 1
        self._at += timedelta(minutes=10)
        # An amendment says why; of other entries `reason` is a value like any other.
        more = {name: values.pop(name) for name in ("amends", "reason")} if "amends" in values else {}
        more |= {"person": values.pop("person")} if "person" in values else {}
        pairs = {name: value if isinstance(value, tuple) else (value,) for name, value in values.items()}
        at = self._at.isoformat()
        self._waiting.append({
            "id": str(uuid7()), "kind": kind, "kind_version": 1, "mark": mark, "mark_by": "scanned", "read_at": at,
            "typed_at": at, "person": "IM", "device": self.house.device["id"], "seq": self._seq,
            "values": {name: dict(zip(("raw", "unit", "instrument"), pair, strict=False))
                       for name, pair in pairs.items()}, **more,
        })
        if len(self._waiting) >= BATCH:
            self.hand_in()
        return str(self._waiting[-1]["id"]) if self._waiting else self._last

    def hand_in(self) -> None:
        """Hand in what waits; all of it must come into the book."""
        body = {"now": self._at.isoformat(), "device": self.house.device["id"], "entries": self._waiting}
        for result in intake.hand_in(self.book, body, via="phone", now=self._at)["results"]:
            assert result["settled"] in ("entered", "queried"), result
        self._last, self._waiting = str(self._waiting[-1]["id"]), []

    def marks(self, letter: str) -> list[str]:
        """Return the marks of the many vessels of a sort: F, C or T."""
        found: list[str] = []
        for number in count(101):
            with suppress(BadMark):  # one that could be taken for its neighbour
                found.append(make_mark(f"{letter}{number}"))
            if len(found) == MANY:
                return found
        raise AssertionError

    def _register(self) -> None:
        for letter, sort in (("F", "fermenter"), ("C", "cask"), ("T", "tank")):
            for n, mark in enumerate(self.marks(letter)):
                place = {"place": f"CELL-A{n % 50 + 1}"} if sort == "cask" else {}
                row = {"mark": mark, "sort": sort, "capacity_l": 225 if place else 2000, "tare_kg": 46, **place}
                registry.put_vessel(self.book, row, by="OL")
        for mark in (T0, T1):
            registry.put_vessel(self.book, {"mark": mark, "sort": "tank", "capacity_l": 90_000}, by="OL")
        for n in range(MANY):
            row = {"id": f"TH-{n}", "sort": "thermometer", "unit": "degC"}
            registry.put_instrument(self.book, row, by="OL")
            put_person(self.book, {"code": f"Z{n}", "name": f"Hand {n}", "access": "floor"}, by="OL")
            devices.enrol_device(self.book, devices.new_token(self.book, by="OL", name=f"PH-{n}"), f"PH-{n}", EARLY)
            registry.set_limit(self.book, "material", f"fruit {n}", "gauge", "temp", (1, 30), None, by="OL")
            registry.set_check_limit(self.book, "product", f"fruit {n}", "loss_noise_pct", 1.0, by="OL")

    def _close_a_quarter(self) -> None:
        """Close the first quarter; then stock of that time comes to light, so that it differs from what was stated."""
        made = closes.draft_close(self.book, "2016-Q1", NOW)
        closes.close_period(self.book, "2016-Q1", "OL", made.digest, NOW, made.question_keys)
        self._at = EARLY
        for _ in range(MANY):
            self.say("gauge", T1, volume=("50", "L"), strength=("45", "pct_vol"), purpose="opening", what="plum",
                     **WARM)
        self.hand_in()

    def _judge_otherwise(self) -> None:
        """Put down another judging of the book, and entries that came out otherwise, as an update leaves them."""
        was, now = '[[],[]]', '[[["strength","strength_high","ask"]],[]]'
        with self.book.write() as database:
            (self.judging,) = database.conn.execute(
                "INSERT INTO rules (number, source, digest, parts, version, begun_at, done_at) "
                "SELECT number, source, digest, parts, version, begun_at, done_at FROM rules "
                "ORDER BY no DESC LIMIT 1 RETURNING no"
            ).fetchone()
            database.conn.execute(
                "INSERT INTO differences SELECT ?, id, ?, ? FROM entries ORDER BY book_no LIMIT ?",
                (self.judging, was, now, MANY),
            )

    def _log_all(self) -> None:
        fermenters, casks, tanks = self.marks("F"), self.marks("C"), self.marks("T")
        for mark in casks:  # nine years and a half of months lie between these and the rest
            self.say("gauge", mark, net_weight=("150", "kg"), strength=("62", "pct_vol"), purpose="opening",
                     what="plum", **WARM)
        self.say("gauge", T0, volume=("50000", "L"), strength=("45", "pct_vol"), purpose="opening", what="plum", **WARM)
        self._at = LATE
        self.ferments(fermenters)
        self.runs(fermenters)
        self.cask_work(casks)
        self.bottlings(tanks)
        self.instruments()
        note = self.say("shift_note", fermenters[0], text="stir at six")
        self.amended = note
        for n in range(MANY):
            note = self.say("shift_note", fermenters[0], text=f"stir at {n}", amends=note, reason="misheard")
            self.say("cut_plan", what=f"fruit {n}", hearts_to=("58", "pct_vol"))
            self.say("cleaning", tanks[n], agent="caustic 2 %", rinse_ph=("7", "pH"), entered="no")
        draws = "; ".join(f"{mark} 10" for mark in casks)
        for _ in range(MANY):
            self.plan = self.say("vat_plan", T0, name="K-26-04", draws=draws, water=("30", "kg"),
                                 target=("45", "pct_vol"), volume=("200", "L"))
        self.tastings(casks)
        self.hand_in()

    def tastings(self, casks: list[str]) -> None:
        """More blind tastings than a page shows, the first and the last of them opened; one has every set answered."""
        key = f"{'AAB ' * 60}00"
        glasses = "; ".join(f"Z{n} {100 + 3 * n} {101 + 3 * n} {102 + 3 * n}" for n in range(60))
        for n in range(MANY):
            self.say("tasting_session", name=f"T-{n}", question="told apart?", method="triangle", alpha="5",
                     samples=f"A {casks[0]}; B {casks[1]}; C run R-0", glasses=glasses, seal=seal_of(key),
                     reduced_to=("25", "pct_vol"))
            if n in (0, MANY - 1):
                for k in range(60):
                    self.say("tasting_answer", person=f"Z{k}", session=f"T-{n}", set_no=("1", "count"),
                             picked=str(102 + 3 * k))
                self.say("tasting_result", session=f"T-{n}", key=key)

    def ferments(self, fermenters: list[str]) -> None:
        """Fruit in every fermenter; a hundred readings of the first; the others rise, which is asked about."""
        for n, mark in enumerate(fermenters):
            self.fill = self.say("fruit_intake", mark, gross=("1700", "kg"), tare=("9", "kg"), material="plum",
                                 grower_lot=f"Ostrey Farm, lot {n}", batch="B-25-01", sugar=("14", "Bx"),
                                 rot=("1", "pct"), temp=("14", "degC"))
            if n == 0:
                self.first_fill = self.fill
            for gravity in ("1.040", "1.047"):
                self.say("ferment_reading", mark, temp=("18", "degC"), gravity=(gravity, "SG"))
        for n in range(MANY):
            gravity = f"{1.04 - n / 4000:.4f}"
            self.say("ferment_reading", fermenters[0], temp=("18", "degC", "TH-0"), gravity=(gravity, "SG"))
        for mark in fermenters:
            self.say("ferment_closed", mark, final_gravity=("1.005", "SG"), volume=("1500", "L"),
                     wash_strength=("6.0", "pct_vol"))

    def runs(self, fermenters: list[str]) -> None:
        """A run of every ferment, all of the first one's fruit too; a hundred readings of the last."""
        for n, mark in enumerate(fermenters):
            self.run = self.say("charge", S1, run_name=f"R-{n}", from_vessel=mark, wash=("900", "L"),
                                wash_strength=("6.0", "pct_vol"))
            for _ in range(MANY if mark == fermenters[-1] else 1):
                self.say("run_reading", S1, vapour=("90", "degC"), strength=("68", "pct_vol"), **WARM)
            self.say("fraction_gauge", R1, still=S1, fraction="hearts", remnant=("0", "L"),
                     remnant_strength=("0", "pct_vol"), volume=("5", "L"), strength=("68", "pct_vol"),
                     goes_to="stays", **WARM)
            self.say("run_end", S1, reason="strength")

    def cask_work(self, casks: list[str]) -> None:
        """A hundred gauges of one cask, a note on every cask."""
        for mark in casks:
            self.say("gauge", casks[0], net_weight=("148", "kg"), strength=("62", "pct_vol"), purpose="stock",
                     temp=("20", "degC", "TH-0"))
            scores = dict.fromkeys(("nose_score", "mouth_score", "wood_score", "fault_score"), ("7", "count"))
            self.say("tasting_note", mark, **scores, reduced_to=("40", "pct_vol"), decision="hold")

    def bottlings(self, tanks: list[str]) -> None:
        """A batch in every tank; one batch with a hundred checks, closes and removals."""
        for n, mark in enumerate(tanks):
            self.say("gauge", mark, volume=("300", "L"), strength=("45", "pct_vol"), purpose="opening", what="plum",
                     **WARM)
            self.say("bottling_gauge", mark, batch=f"K-25-{n}", volume=("300", "L"), strength=("45", "pct_vol"),
                     label_strength=("45", "pct_vol"), **WARM)
        self.say("bottling_gauge", T0, batch="K-26-03", volume=("50000", "L"), strength=("45", "pct_vol"),
                 label_strength=("45", "pct_vol"), **WARM)
        for n in range(MANY):
            self.say("bottle_check", T0, line="1", tested=("5", "count"), bottle_size=("0.5", "L"),
                     fill_found=("100.2", "pct"), fill_least=("99.1", "pct"), strength_found=("45.1", "pct_vol"),
                     labels_right="yes")
            self.bottled = self.say(
                "bottling_close", T0, filled=("440", "count"), broken=("0", "count"), reworked=("0", "count"),
                library=("0", "count"), per_case=("6", "count"), bottle_size=("0.5", "L"), case_from=f"{n * 100 + 1}",
                case_to=f"{n * 100 + 73}", lot_mark=f"L{n}", loss=("1", "L"), tank_empty="no",
            )
            self.say("dispatch", batch=f"L{n}", why="tax_paid", document="D-1", to_whom="Corner shop",
                     cases=("2", "count"))

    def instruments(self) -> None:
        """A failed check of every instrument, and a hundred of the first."""
        for n in range(MANY):
            for name in (f"TH-{n}", "TH-0"):
                self.say("instrument_check", instrument=name, against="ice", expected=("0", "plain"),
                         found=("0.6", "plain"), correction=("0", "plain"), result="failed", in_use="no")
