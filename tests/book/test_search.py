"""The search: what is found by which words, that it is always up to date, and that it can be made anew.

The folding is held against the Unicode Character Database of the standard library (unicodedata, UAX 15 and UAX 44) and
against SQLite's own tokenizer; what is found, against a plain look through every row.
"""

from __future__ import annotations

import json
import random
import sqlite3
import unicodedata
from datetime import UTC, datetime, timedelta

import pytest
from uuid6 import uuid7

import webapp.kinds
from tests.bench.book_season import entries, fill_house
from webapp.book import intake
from webapp.book.fold import fold
from webapp.book.house import parties, people, registry
from webapp.book.opening import open_book
from webapp.book.record.log import canonical
from webapp.book.search import finding, folding, keeping, lines, near
from webapp.trade.marks import make_mark

START = datetime(2025, 9, 24, 6, tzinfo=UTC)
C006, C060, F1, S1, T1 = (make_mark(base) for base in ("C006", "C060", "F1", "S1", "T1"))


class House:
    """A small house that logs; `find` gives what is found as (sort, name) pairs, entries by their words."""

    def __init__(self, path):
        self.path, self.book, self.seq = path, open_book(path), 0
        people.put_person(self.book, {"code": "IM", "name": "Ilka M.", "access": "distiller"}, by="IM")
        sizes = {"capacity_l": 2000, "tare_kg": 46}
        for mark, sort, name in ((C006, "cask", "C-006"), (C060, "cask", "C-060"), (F1, "fermenter", "F1"),
                                 (S1, "still", "S1"), (T1, "tank", "T1")):
            registry.put_vessel(self.book, {"mark": mark, "sort": sort, "name": name, **sizes}, by="IM")

    def log(self, kind, mark="", /, remark="", amends=None, reason="", more=None, **values):
        self.seq += 1
        at = (START + timedelta(minutes=10 * self.seq)).isoformat()
        pairs = {name: value if isinstance(value, tuple) else (value,) for name, value in values.items()}
        entry = {
            "id": str(uuid7()), "kind": kind, "kind_version": 1, "mark": mark, "mark_by": "scanned", "read_at": at,
            "typed_at": at, "person": "IM", "device": "d-one", "seq": self.seq, "remark": remark, "amends": amends,
            "reason": reason,
            "values": {name: dict(zip(("raw", "unit"), pair, strict=False)) for name, pair in pairs.items()},
        }
        entry["values"] |= more or {}
        batch = {"now": at, "device": "d-one", "entries": [entry]}
        result = intake.hand_in(self.book, batch, via="phone", now=datetime.fromisoformat(at))["results"][0]
        assert result["settled"] in ("entered", "queried"), result
        return entry["id"]

    def strike(self, entry_id):
        self.log("answer", entry=entry_id, verdict="struck", more={"reason": {"raw": "mistaken"}})

    def found(self, text, **more):
        return finding.find(self.book, folding.read_wanted(text), **more)

    def find(self, text, **more):
        found = self.found(text, **more)
        named = [(sort, hit.name) for sort, hits in found.hits.items() for hit in hits]
        return named + [("entry", " / ".join(said.texts)) for said in found.said]


@pytest.fixture
def house(tmp_path):
    made = House(tmp_path / "book.sqlite")
    yield made
    made.book.close()


@pytest.mark.parametrize("typed", ["C-006", "c-006", "C 006", "c006", "C6", "c 6", "C.006", C006, C006.lower()])
def test_a_mark_is_found_however_it_is_typed(house, typed):
    assert ("vessel", "C-006") in house.find(typed)
    assert house.found(typed).exact_vessel.key == C006, "and it is the one that is meant"


def test_leading_zeros_say_that_no_longer_number_is_meant(house):
    assert ("vessel", "C-060") not in house.find("C-006")
    assert [name for sort, name in house.find("C6") if sort == "vessel"] == ["C-006", "C-060"], "the exact one first"
    assert {name for sort, name in house.find("c-0") if sort == "vessel"} == {"C-006", "C-060"}, "half typed"


@pytest.mark.parametrize(
    ("text", "typed"),
    [("Mühlberg", "muhlberg"), ("Mühlberg", "Muehlberg"), ("Mu\u0308hlberg", "mühl"), ("Żywiecka", "zywiecka"),
     ("Løvås", "lovas"), ("Straße", "strasse"), ("STRASSE", "straße"), ("Łódź", "lodz"), ("Ærø", "aero")],
)
def test_accents_and_case_do_not_count(house, text, typed):
    house.log("shift_note", text=f"pears of {text} are coming")
    assert house.find(typed) == [("entry", f"pears of {text} are coming")]


def test_folding_leaves_no_mark_that_unicode_says_is_an_accent():
    """Over every letter of the Basic Multilingual Plane that decomposes to an ASCII letter and accents (UAX 15)."""
    for code in range(0x250):
        plain = [one for one in unicodedata.normalize("NFKD", chr(code)) if not unicodedata.combining(one)]
        if len(plain) == 1 and plain[0].isascii() and plain[0].isalpha():
            assert folding.fold(chr(code)) == plain[0].lower(), hex(code)


def test_each_word_of_ours_is_one_word_of_sqlites_tokenizer():
    """So that a quoted word is a word and no phrase, and nothing typed is read as a query (SQLite, FTS5, 3.2)."""
    chance = random.Random(7)
    letters = "aZéßøŁ0019-_/.,;:()\"'*^+&|~ NOT AND OR NEAR 漢字ёъ٣²½"
    with sqlite3.connect(":memory:") as conn:
        conn.execute("CREATE VIRTUAL TABLE t USING fts5(words, tokenize='unicode61 remove_diacritics 2')")
        conn.execute("CREATE VIRTUAL TABLE v USING fts5vocab(t, row)")
        for _ in range(600):
            text = "".join(chance.choices(letters, k=chance.randrange(1, 14)))
            words = folding.index_words(text)
            conn.execute("DELETE FROM t")
            conn.execute("INSERT INTO t VALUES (?)", (words,))
            assert {row[0] for row in conn.execute("SELECT term FROM v")} == set(words.split()), text
            wanted = folding.read_wanted(text)
            if wanted:
                found = conn.execute("SELECT count(*) FROM t WHERE t MATCH ?", (wanted.broad,)).fetchone()
                assert found[0] == 1, (text, words, wanted.broad)
    conn.close()


def test_what_a_house_calls_things_is_found_under_its_group(house):
    house.log("fruit_intake", F1, gross=("1700", "kg"), tare=("9", "kg"), material="plum", batch="B-25-01",
              grower_lot="Ostrey Farm, D-7", sugar=("14", "Bx"), rot=("1", "pct"), temp=("14", "degC"))
    house.log("ferment_closed", F1, final_gravity=("1.005", "SG"), volume=("1500", "L"),
              wash_strength=("6.0", "pct_vol"))
    house.log("charge", S1, run_name="R-25-11", from_vessel=F1, wash=("900", "L"), wash_strength=("6.0", "pct_vol"))
    house.log("gauge", T1, volume=("300", "L"), strength=("45", "pct_vol"), temp=("20", "degC"), purpose="opening",
              what="plum")
    house.log("bottling_gauge", T1, batch="K-26-03", volume=("300", "L"), strength=("45", "pct_vol"),
              label_strength=("45", "pct_vol"), temp=("20", "degC"))
    house.log("bottling_close", T1, filled=("440", "count"), broken=("0", "count"), reworked=("0", "count"),
              library=("0", "count"), per_case=("6", "count"), bottle_size=("0.5", "L"), case_from="1", case_to="73",
              lot_mark="L6237", loss=("1", "L"), tank_empty="no")
    house.log("dispatch", batch="K-26-03", why="tax_paid", document="D-26-07", to_whom="Harbour Bond, Shed 9",
              cases=("2", "count"))
    registry.put_instrument(house.book, {"id": "TH-2", "sort": "thermometer", "title": "Digital probe"}, by="IM")
    parties.put_party(house.book, {"name": "Lowfold Orchard", "role": "supplier", "number": "S-88"}, by="IM")
    assert ("load", "Ostrey Farm, D-7") in house.find("ostrey")
    assert ("fill", "B-25-01") in house.find("25-01")
    assert ("run", "R-25-11") in house.find("r25 11")
    assert ("bottling", "K-26-03") in house.find("l6237")
    assert ("paper", "D-26-07") in house.find("harbour shed")
    assert ("paper", "D-26-07") in house.find("D26-07")
    assert ("instrument", "TH-2") in house.find("th2")
    assert ("instrument", "TH-2") in house.find("prob")
    assert ("person", "Ilka M.") in house.find("ilk")
    assert ("party", "Lowfold Orchard") in house.find("S88")


def test_groups_come_in_their_order_and_the_exact_first(house):
    house.log("shift_note", C006, text="C-006 rocks")
    registry.put_vessel(house.book, {"mark": T1, "note": "beside C-006"}, by="IM")
    assert house.find("C-006") == [("vessel", "C-006"), ("vessel", "T1"), ("entry", "C-006 rocks")]


def test_a_remark_an_answer_and_a_reason_are_found(house):
    first = house.log("cleaning", T1, remark="gasket cracked", agent="caustic 2 %", rinse_ph=("7", "pH"), entered="no")
    house.log("cleaning", T1, amends=first, reason="wrong soda", agent="soda 2 %", rinse_ph=("7", "pH"), entered="no")
    house.strike(first)
    assert [text for _, text in house.find("gask crack")] == ["gasket cracked / caustic 2 %"]
    assert [text for _, text in house.find("wrong soda")] == ["wrong soda / soda 2 %"]
    assert [text for _, text in house.find("mistaken")] == ["mistaken"]


def test_an_entry_is_found_by_its_number_in_the_book(house):
    house.log("ferment_reading", F1, temp=("18", "degC"), gravity=("1.040", "SG"))
    house.log("shift_note", text="stir 1 more time")
    found = house.found("1")
    assert [said.row["book_no"] for said in found.said] == [1, 2]
    assert house.found("9999").said == []


def test_what_is_struck_or_put_right_says_so(house):
    values = {"from_vessel": F1, "wash": ("900", "L"), "wash_strength": ("6.0", "pct_vol")}
    first = house.log("charge", S1, run_name="R-ONE", **values)
    second = house.log("charge", S1, run_name="R-TWO", amends=first, reason="misheard", **values)
    assert [(hit.state, hit.root) for hit in house.found("r-one").hits["run"]] == [("amended", first)]
    (now,) = house.found("r-two").hits["run"]
    assert (now.key, now.root, now.state) == (second, first, house.book.one(
        "SELECT standing FROM folded WHERE root = ?", (first,))["standing"])
    house.strike(second)
    assert house.found("r-two").hits["run"][0].state == "struck"


def test_a_hidden_sort_is_found_by_nobody_who_may_not_see_it(house):
    parties.put_party(house.book, {"name": "Lowfold Orchard", "role": "customer", "address": "Mill Row 4"}, by="IM")
    assert house.find("mill row") == [("party", "Lowfold Orchard")]
    for text in ("mill row", "lowfold"):
        assert house.find(text, hidden={"party"}) == []
        assert house.find(text, hidden={"party"}, only="party") == []


def test_secrets_are_in_no_index(house):
    people.set_password(house.book, "IM", "plum and pear and quince")
    people.set_pin(house.book, "IM", "2468")
    index = json.dumps(house.book.query("SELECT * FROM search_names"))
    terms = house.book.query("SELECT term FROM search_names_words UNION SELECT term FROM search_remarks_words")
    row = house.book.one("SELECT password, pin FROM people WHERE code = 'IM'")
    for secret in ("2468", "quince", row["password"][-12:], row["pin"][:20]):
        assert secret.lower() not in index.lower()
        assert secret.lower() not in {term["term"] for term in terms}


def test_every_text_of_a_kind_is_found_or_said_to_be_left_out():
    """A new field of words is found unless it is named: whoever declares one that not everybody may read names it."""
    declared = {(kind.name, field.name) for kind in webapp.kinds.ALL for field in kind.fields if field.sort == "text"}
    assert declared >= lines.LEFT_OUT, "the list names nothing that went"
    found = {(kind.name, name) for kind in webapp.kinds.ALL for name in lines.text_fields(kind.name)}
    assert found == declared - lines.LEFT_OUT


def test_entries_without_words_are_known_by_their_text_alone():
    chance = random.Random(3)
    for kind in ("ferment_reading", "run_reading", "shift_note"):
        for _ in range(50):
            body = {"kind": kind, "values": {}, "read_at": "2025-01-01T00:00:00Z"}
            body |= {"remark": chance.choice(["", 'says "remark":"" ', "wet"])} if chance.random() < 0.8 else {}
            body |= {"reason": chance.choice(["", "misread"])} if chance.random() < 0.8 else {}
            if lines.remarks_of(body, None):
                assert lines.may_have_words(kind, canonical(body)), body
    assert not lines.may_have_words("ferment_reading", '{"reason":"","remark":"","values":{}}')


def test_whatever_changes_is_found_as_it_is_now(house):
    registry.put_vessel(house.book, {"mark": T1, "title": "Blending tank"}, by="IM")
    assert ("vessel", "T1") in house.find("blending")
    registry.put_vessel(house.book, {"mark": T1, "title": "Vat of the yard"}, by="IM")
    assert house.find("blending") == []
    assert ("vessel", "T1") in house.find("yard")
    lot = house.log("cask_fill", C006, from_vessel=T1, gross=("246", "kg"), tare=("46", "kg"), lot="L-77", what="plum",
                    place="CELL-A1", soaked="no", use="new", strength=("62", "pct_vol"), temp=("20", "degC"))
    assert [row["ended_at"] for row in house.book.query("SELECT ended_at FROM fills WHERE lot = 'L-77'")] in ([], [""])
    house.strike(lot)
    assert ("fill", "L-77") not in house.find("L-77")


def test_a_write_that_is_undone_leaves_nothing_to_find(house):
    def change_and_fail():
        with house.book.write():
            registry.put_vessel(house.book, {"mark": T1, "title": "Blending tank"}, by="IM")
            house.log("shift_note", text="never said")
            raise RuntimeError

    with pytest.raises(RuntimeError):
        change_and_fail()
    assert house.find("blending") == house.find("never") == []
    house.log("shift_note", text="said after")
    assert house.find("after") == [("entry", "said after")]


def index_of(book):
    return [
        book.query("SELECT sort, key, name, facts, words FROM search_names ORDER BY sort, key"),
        book.query("SELECT * FROM search_names_words ORDER BY term"),
        book.query("SELECT * FROM search_remarks_words ORDER BY term"),
    ]


def test_the_index_made_anew_is_the_index_that_was_kept_up(house):
    test_what_a_house_calls_things_is_found_under_its_group(house)
    house.strike(house.log("shift_note", C006, text="wet ring under the head"))
    kept = index_of(house.book)
    keeping.rebuild(house.book)
    assert index_of(house.book) == kept
    fold.rebuild(house.book)
    keeping.index_all(house.book)
    assert index_of(house.book) == kept
    house.book.db.conn.execute("SELECT 1")
    with house.book.write() as database:  # raises where the index and its table differ (SQLite, FTS5, 6.5)
        database.conn.execute("INSERT INTO search_names_fts (search_names_fts) VALUES ('integrity-check')")


def test_the_index_is_not_part_of_the_fold(house):
    house.log("shift_note", text="wet")
    before = fold.dump(house.book)
    with house.book.write():
        keeping.begin_anew(house.book)
    assert fold.dump(house.book) == before


def test_a_book_of_before_is_indexed_in_slices_while_entries_come_in(house):
    old = [house.log("shift_note", text=f"old note {n}") for n in range(30)]
    # As the step of the tables leaves it: nothing indexed yet.
    with house.book.write() as database:
        database.conn.execute("UPDATE search_state SET value = 0")
        database.conn.execute("DELETE FROM search_names")
    house.book.close()
    house.book = open_book(house.path)
    assert keeping.is_behind(house.book)
    house.log("shift_note", text="new note")
    assert house.find("note") == [("entry", "new note")], "what comes in is found at once"
    keeping.SLICE_ENTRIES, kept = 7, keeping.SLICE_ENTRIES
    try:
        keeping.index_all(house.book)
    finally:
        keeping.SLICE_ENTRIES = kept
    assert not keeping.is_behind(house.book)
    assert len(house.found("note", most=100).said) == len(old) + 1
    assert ("vessel", "C-006") in house.find("c6")
    assert not keeping.index_slice(house.book)


def test_more_on_the_list_than_one_write_takes_is_left_to_slices(house, monkeypatch):
    monkeypatch.setattr(keeping, "DUE_MOST", 5)
    marks = fill_house(house.book, fermenters=12, casks=20)
    assert keeping.is_behind(house.book)
    house.log("shift_note", text="in between")
    keeping.index_all(house.book)
    for mark in (marks["cask"][0], marks["tank"][-1]):
        assert house.found(mark).exact_vessel.key == mark


def test_a_damaged_index_holds_up_no_entry_and_is_made_anew(house):
    house.log("shift_note", text="before the damage")
    with house.book.write() as database:
        database.conn.execute("DELETE FROM search_remarks_data WHERE id = 10")  # the structure record of FTS5
        database.conn.execute("UPDATE search_remarks_data SET block = x'00' WHERE id > 10")
    house.book.close()
    house.book = open_book(house.path)
    house.log("shift_note", text="after the damage")
    assert house.book.one("SELECT count(*) AS n FROM entries")["n"] == 2
    keeping.index_all(house.book)
    assert len(house.found("damage").said) == 2


def test_all_that_is_found_is_what_a_look_through_all_rows_finds(tmp_path):
    """Words of a few hundred remarks against Python's own reading of every row."""
    chance = random.Random(11)
    words = ["plum", "pear", "plumb", "foam", "foaming", "smell", "C-014", "c140", "head", "hoop", "crème", "wasps"]
    house = House(tmp_path / "book.sqlite")
    texts = [" ".join(chance.choices(words, k=chance.randrange(1, 5))) for _ in range(300)]
    for text in texts:
        house.log("shift_note", text=text)
    for typed in ("plum", "foam", "cre", "hoop wasps", "head foam"):
        begun = typed.split()
        plain = [[folding.fold(word) for word in text.split()] for text in texts]
        expected = sum(all(any(word.startswith(one) for word in text) for one in begun) for text in plain)
        assert len(house.found(typed, most=1000).said) == expected > 0, typed
    house.book.close()


def test_a_word_one_slip_away_is_offered(house):
    house.log("shift_note", text="hydrometer cracked at Ostrey")
    for typed, meant in (("hydromter", "hydrometer"), ("ostrye", "ostrey"), ("craked now", "cracked now")):
        assert meant in near.suggest(house.book, folding.read_wanted(typed))
    assert near.suggest(house.book, folding.read_wanted("zzzzzz")) == []


@pytest.mark.parametrize("text", ["", " ", "-", "''", '"', "***", "( ) AND", "é" * 500, "x " * 500, "\x00", "NEAR(a)"])
def test_no_text_is_too_odd_to_look_for(house, text):
    house.found(text)
    near.suggest(house.book, folding.read_wanted(text))


def test_hits_are_marked_where_they_stand():
    wanted = folding.read_wanted("c6 muhl")
    parts = folding.mark_hits("Cask C-006 by the Mühle, not C-60x", wanted.beginnings)
    assert [part.text for part in parts if part.is_hit] == ["C-006", "Mühle", "C-60x"]
    assert "".join(part.text for part in parts) == "Cask C-006 by the Mühle, not C-60x"
    long = "word " * 100 + "wasps " + "word " * 100
    cut = folding.cut_out(long, ("wasp",), 160)
    assert "wasps" in cut
    assert len(cut) <= 164


def test_a_hundred_entries_of_a_season_leave_the_index_in_step(tmp_path):
    with open_book(tmp_path / "book.sqlite") as book:
        stream = entries(fill_house(book), START, 60)
        batch = [next(stream) for _ in range(100)]
        now = datetime.fromisoformat(batch[-1]["read_at"]) + timedelta(minutes=1)
        intake.hand_in(book, {"now": now.isoformat(), "device": "d-aaaa", "entries": batch}, via="phone", now=now)
        state = keeping.load_state(book)
        assert (state["above"], state["due"], state["below"]) == (100, 0, 0)
        kept = index_of(book)
        keeping.rebuild(book)
        assert index_of(book) == kept
