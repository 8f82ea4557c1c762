"""What the book asks about the invented year: each planted fault by its number (demo_data/faults.json), no more."""

from collections import Counter
from typing import Any

import pytest

from webapp import demo
from webapp.book.fold import fold, queries
from webapp.book.house import instruments
from webapp.book.record import log
from webapp.demo.phones import Phone, hand_ins
from webapp.demo.story import load

# The only questions of the year that want an answer, by code; every one belongs to a planted fault.
WANT_ANSWERS = {
    "ferment_stuck": 3,  # 1
    "unusual": 4,  # 1: the cold mash
    "ferment_temp_sense": 1,  # 2
    "cask_grew": 1,  # 3
    "raw_equals_corrected": 1,  # 4
    "cask_loss": 1,  # 5
    "clock": 3,  # 6
    "two_people": 1,  # 8
    "place_differs": 1,  # 9: the first of the pair that was found
    "places_swapped": 1,  # 9
    "contraction_forgotten": 1,  # 10: when the water went in
    "reduce_target": 1,  # 10: when it was measured after the rest
    "instrument_failed": 1,  # 12
}
NOTES = {"ferment_ended": 6, "late": 1}  # 11


def test_1_stuck_ferment(year: Any) -> None:
    stuck = year.entry("F3", "ferment_reading", "2025-09-26")
    assert year.asked(stuck) == [("ferment_stuck", "ask", "gravity"), ("unusual", "ask", "temp")]
    assert year.words(stuck, "ferment_stuck") == (
        "Gravity 1.027 has not moved in 48 h and stands 0.018 above the 1.009 where pear usually ends: "
        "not moving and not finished. Mash 9.3 °C. Look at temperature, acid and yeast food."
    )
    assert ("ferment_stuck", "ask", "gravity") in year.asked(year.entry("F3", "ferment_reading", "2025-09-25"))
    # It moves again: nothing is asked from the fifth day after on.
    assert year.asked(year.entry("F3", "ferment_reading", "2025-09-30")) == []


def test_1_was_answered_and_stands(year: Any) -> None:
    stuck = year.entry("F3", "ferment_reading", "2025-09-26")
    row = year.book.one("SELECT answer FROM queries WHERE entry = ? AND code = 'ferment_stuck'", (stuck,))
    assert row["answer"]
    assert stuck not in {query["entry"] for query in queries.open_queries(year.book)}


def test_2_fahrenheit_typed_as_celsius(year: Any) -> None:
    hot = year.entry("F5", "ferment_reading", "2025-10-11")
    assert year.asked(hot) == [("ferment_temp_sense", "stop", "temp")]
    assert year.words(hot, "ferment_temp_sense").endswith(
        "Read as Fahrenheit it is 19.2 °C (66.6 °F), which fits 18.9 °C of 08:20 the day before. Did you mean that?"
    )
    suggested = [(s["field"], s["raw"], s["unit"]) for s in year.suggested(hot, "ferment_temp_sense")]
    assert suggested == [("temp", "66,6", "degF")]


def test_3_digits_swapped_at_regauge(year: Any) -> None:
    swapped = year.entry("C-001", "cask_regauge", "2026-05-11")
    assert year.asked(swapped)[0] == ("cask_grew", "stop", "strength")
    assert "(95.7 %) is above 108.5 L (60.2 %) of 12 May 2025; a cask cannot gain." in year.words(swapped, "cask_grew")
    assert [(s["raw"], s["words"]) for s in year.suggested(swapped, "cask_grew")] == [("59.7", "two digits swapped")]
    # A stop moves no stock. When the cask was emptied in August, all it had lost in fifteen months was booked then.
    assert year.book.query("SELECT * FROM flows WHERE entry = ?", (swapped,)) == []
    dumped = year.entry("C-001", "dump", "2026-08-10")
    lost = year.book.one("SELECT lpa_ul FROM flows WHERE entry = ? AND target = 'out:evaporation'", (dumped,))
    # 108.32 L in May 2025, 104.4 L in 159.4 kg of 59.6 %: both by the figures of demo_data, OIML R 22.
    assert lost["lpa_ul"] / 1e6 == pytest.approx(108.32 - 0.036 - 104.39, abs=0.15)


def test_4_raw_reading_typed_as_true(year: Any) -> None:
    raw = year.entry("C-014", "cask_regauge", "2026-05-11")  # its phone was a day behind
    assert year.asked(raw) == [("raw_equals_corrected", "ask", "strength")]
    assert year.words(raw, "raw_equals_corrected").endswith("true would be 60.8 % vol.")


def test_5_leaking_cask(year: Any) -> None:
    leak = year.entry("C-031", "cask_regauge", "2026-05-13")
    assert year.asked(leak) == [("cask_loss", "ask", "gross")]
    words = year.words(leak, "cask_loss")
    # 132.0 L of 23 November 2022 became 99.8 L: 1 - (99.8 / 132.0)^(1 / 3.47 years) is 7.8 % a year.
    assert words.startswith("19 % a year lost since May 2025 (8 % a year since its fill):")
    assert "Of the 12 casks most like it, most lost about 3 %. Its strength is usual" in words
    assert "a leak?" in words


def test_6_slow_clock_and_wrong_day(year: Any) -> None:
    rows = year.book.query("SELECT * FROM queries WHERE code = 'clock' ORDER BY at")
    words = [year.words(row["entry"], "clock") for row in rows]
    assert [(row["weight"], said.split(" when")[0]) for row, said in zip(rows, words, strict=True)] == [
        ("ask", "This phone's clock was 1 h 1 min slow"),
        ("ask", "This phone's clock was 25 h 1 min slow"),
        ("ask", "This phone's clock was 1 h 1 min slow"),
    ]
    wrong_day = log.load_entry(year.book, rows[1]["entry"])
    assert wrong_day["read_at"] == "2026-05-11T07:55:00+02:00"  # kept as it came
    assert rows[1]["at"].startswith("2026-05-12T06:56:00")  # taken in its right order
    assert wrong_day["skew_s"] == -90060.0
    assert "it was read on 2026-05-11 at 07:55; the book takes it in order as 2026-05-12 08:56" in words[1]


def test_7_sent_twice_is_kept_once_without_a_word(year: Any) -> None:
    once = year.entry("F2", "ferment_reading", "2025-09-17")
    phones = {row["name"]: Phone(row["name"], row["name"]) for row in load("phones")}
    sent = [entry["id"] for batch in hand_ins(demo.year(), phones) for entry in batch.body["entries"]]
    assert [entry_id for entry_id, times in Counter(sent).items() if times > 1] == [once]
    assert year.asked(once) == []
    assert year.book.query("SELECT * FROM aside") == []


def test_8_two_people_at_one_cask(year: Any) -> None:
    first = year.entry("C-022", "cask_regauge", "2026-05-11", "PR")  # its phone was a day behind
    second = year.entry("C-022", "cask_regauge", "2026-05-12", "SD")
    assert year.asked(first) == []
    assert year.asked(second) == [("two_people", "ask", "")]
    assert year.words(second, "two_people") == (
        "Pavel R. gauged this vessel too, 09:50: 239.3 kg, 59.6 %. Saoirse D. has 239.0 kg, 59.7 %. "
        "Both are kept; which one counts?"
    )


def test_9_two_casks_have_changed_places(year: Any) -> None:
    first = year.entry("C-036", "stock_count", "2026-06-30")
    second = year.entry("C-038", "stock_count", "2026-06-30")
    assert year.asked(first) == [("place_differs", "ask", "place")]
    assert year.asked(second) == [("places_swapped", "ask", "place")]
    assert year.words(second, "places_swapped") == (
        "C-038 was found at CELL-D3 and C-036 at CELL-D4: they have changed places, nothing is short. "
        "If that is so, say that it stands, and the book has them so."
    )
    assert year.book.query("SELECT * FROM flows WHERE entry IN (?, ?)", (first, second)) == []


def test_10_contraction_forgotten(year: Any) -> None:
    first = year.entry("T1", "reduce", "2026-08-10")
    assert year.asked(first) == [("contraction_forgotten", "ask", "water")]
    assert year.words(first, "contraction_forgotten") == (
        "121.0 kg of water is what volumes alone would ask for. Volumes do not add: 480.7 L will stand there, not "
        "484.6, at 45.4 %. For 45.0 % it takes 125.1 kg: 4.1 kg more. Pure alcohol stays what it was."
    )
    rows = year.book.query(
        "SELECT id FROM entries WHERE kind = 'reduce' AND substr(read_at, 1, 10) = '2026-08-12' ORDER BY read_at"
    )
    measured, second = (row["id"] for row in rows)
    assert year.asked(measured) == [("reduce_target", "ask", "glass")]
    assert year.words(measured, "reduce_target") == (
        "45.4 % measured, 45.0 % wanted: 0.4 points too strong. By mass 4.1 kg of water more. "
        "363.3 L and 121.2 L of water make 480.2 L, not 484.6: the mix shrinks. "
        "Pure alcohol 218.0 L, 218.1 L by the book: no loss."
    )
    assert year.asked(second) == []


def test_12_probe_out_lists_what_was_read_with_it(year: Any) -> None:
    """Every entry that names TH-2 between its good check and the failed one, counted from the log itself."""
    failed = year.book.one(
        "SELECT id FROM entries WHERE kind = 'instrument_check' AND substr(read_at, 1, 10) = '2026-03-02'"
    )["id"]
    assert year.asked(failed) == [("instrument_failed", "ask", "found")]
    assert "TH-2 shows 0.9 too high" in year.words(failed, "instrument_failed")
    assert "1 September 2025" in year.words(failed, "instrument_failed")
    record = instruments.record(year.book, "TH-2", "2026-03-02")
    assert record
    rows, count = instruments.in_doubt(year.book, record, failed)
    named = year.book.query(
        "SELECT DISTINCT e.id FROM entries e, json_each(e.body, '$.values') v "
        "WHERE json_extract(v.value, '$.instrument') = 'TH-2' "
        "AND e.read_at BETWEEN '2025-09-01T09:00' AND '2026-03-02T09:10'"
    )
    assert count == len(named) > 70
    assert {row["id"] for row in rows} <= {row["id"] for row in named}


def test_11_cut_pressed_late_and_amended(year: Any) -> None:
    rows = year.book.query("SELECT id FROM entries WHERE json_extract(body, '$.amends') IS NOT NULL")
    assert len(rows) == 1
    amended = rows[0]["id"]
    assert year.asked(amended) == [("late", "note", "read_at")]
    assert year.words(amended, "late") == "Typed 2 h 5 min after it was read."
    family = log.load_family(year.book, amended)
    assert [(one["standing"], one["read_at"]) for one in family["members"]] == [
        ("amended", "2025-10-11T11:25:00+02:00"),
        ("entered", "2025-10-11T11:16:00+02:00"),
    ]
    assert family["entry"]["entry"]["reason"] == "Pressed late: the receiver was changed nine minutes before."
    run = next(
        state
        for row in year.book.query("SELECT id FROM runs")
        if (state := fold.load_state(year.book, f"r:{row['id']}"))["name"] == "R-25-08"
    )
    hearts = [cut for cut in run["cuts"] if cut["event"] == "hearts_cut"]
    assert [cut["entry"] for cut in hearts] == [amended]


def test_the_rest_of_the_year_is_quiet(year: Any, capsys: pytest.CaptureFixture[str]) -> None:
    rows = year.book.query("SELECT code, weight FROM queries")
    asked = Counter(row["code"] for row in rows if row["weight"] != "note")
    noted = Counter(row["code"] for row in rows if row["weight"] == "note")
    with capsys.disabled():
        entries = year.book.one("SELECT count(*) AS n FROM entries")["n"]
        print(f"\n{entries} entries; want an answer: {dict(asked)}; notes: {dict(noted)}")
    assert asked == WANT_ANSWERS
    assert noted == NOTES


def test_small_casks_lose_more_and_are_healthy(year: Any) -> None:
    small = year.book.query(
        "SELECT e.id FROM entries e JOIN vessels v ON v.mark = e.mark "
        "WHERE v.capacity_l < 100 AND e.kind = 'cask_regauge' AND e.received_at > '2026'"
    )
    assert len(small) == 9  # 50 L and 30 L casks at 5.5 to 7.6 % a year
    assert all(year.asked(row["id"]) in ([], [("clock", "ask", "read_at")]) for row in small)


def _mark(year: Any, name: str) -> str:
    return str(year.book.one("SELECT mark FROM vessels WHERE name = ?", (name,))["mark"])
