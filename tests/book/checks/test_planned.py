"""What is done against what was planned. A vat of known parts: masses and pure alcohol add (OIML R 22 at 20 °C by the
product's own sums, whose tests stand in tests/trade). Limits are common practice, no source.
"""

import pytest

from tests.book.checks.ledger import Ledger, codes, only
from tests.book.checks.test_beside import DAY, in_hearts
from webapp.trade.marks import make_mark

C4, C5, T1 = (make_mark(name) for name in ("C4", "C5", "T1"))


def test_a_cut_opens_the_receiver_of_its_charge():
    def cut(event: str, **more: str) -> list:
        return in_hearts().enter("cut", "S1", f"{DAY} 10:40", event=event, **more)

    assert codes(cut("hearts_cut", receiver="R3")) == []
    query = only(cut("hearts_cut", receiver="R1"), "receiver_other")
    assert query.words == "R1 is opened for the tails; the charge has R3 for them. Which is open now?"
    assert [one.raw for one in query.suggestions] == [make_mark("R3")]
    query = only(cut("heat_changed", receiver="R3"), "receiver_no_cut")
    assert (query.weight, query.field) == ("ask", "event")
    assert codes(cut("heat_changed")) == []
    assert codes(cut("other", receiver="R3")) == []  # a receiver may be full


def test_each_part_of_a_run_has_its_receiver():
    def charged(**receivers: str) -> list:
        book = Ledger()
        given = {"from_vessel": "T1", "wash": "400", "wash_strength": "30"}
        before = {"heads_to": "R1", "hearts_to": "R2", "tails_to": "R3"}
        book.enter("gauge", "T1", "2025-09-24 08:00", volume="900", strength="30", temp="20")
        book.enter("charge", "S1", f"{DAY} 08:05", run_name="R-1", **before, **given)
        book.enter("run_end", "S1", f"{DAY} 13:00", reason="time")
        return book.enter("charge", "S1", f"{DAY} 14:05", run_name="R-2", **given, **receivers)

    assert "receiver_twice" not in codes(charged(heads_to="R1", hearts_to="R2", tails_to="R3"))
    query = only(charged(heads_to="R1", hearts_to="R1", tails_to="R3"), "receiver_twice")
    assert query.words == "R1 for the heads and the hearts of one run. Which receiver is it?"
    query = only(charged(heads_to="R1", hearts_to="R3"), "receiver_role")
    assert query.words == "R3 for the hearts; it had the tails of the run before. Which receiver is it?"
    assert [one.raw for one in query.suggestions] == [make_mark("R2")]


def casks() -> Ledger:
    book = Ledger()
    for cask in ("C4", "C5"):
        book.enter("opening", cask, f"{DAY} 07:00", spirit="plum", gross="206.3", tare="46.3", strength="60",
                   filled_on="2024-11-21")
    return book


def planned(book: Ledger, draws: str, target: str, tank: str = "T1", **more: str) -> list:
    return book.enter("vat_plan", tank, f"{DAY} 10:00", name="V1", draws=draws, target=target, **more)


def test_a_vat_comes_to_what_its_parts_and_its_water_come_to():
    """160 kg at 60 % vol are 176.2 L and 105.7 L of pure alcohol; 42 % of it are 251.7 L, 236.7 kg: 76.7 kg of water;
    the buoyancy of air makes it 0.1 % more.
    """
    draws = f"{C4} 80; {C5} 80"
    assert planned(casks(), draws, "42.0", water="76.7") == []
    query = only(planned(casks(), draws, "47.0", water="76.7"), "vat_sum")
    assert query.words == "The draws and 76.7 kg of water come to 42.1 %, not to 47.0 % vol. Look at both."
    assert ("water", "76.7") not in [(one.field, one.raw) for one in query.suggestions]
    assert codes(planned(casks(), draws, "47.0")) == []  # nobody said how much water


def test_a_vat_is_planned_in_a_tank_that_is_empty_or_named_and_has_room():
    book = casks()
    book.enter("gauge", "T1", f"{DAY} 08:00", volume="300", strength="70", temp="20")
    query = only(planned(book, f"{C4} 80", "42.0"), "vat_joins")
    assert query.words == "T1 holds 210.0 L of pure alcohol that the plan does not name. Is it this tank?"
    assert codes(planned(book, f"{C4} 80; {T1} 200", "42.0")) == []
    full = planned(casks(), f"{C4} 150; {C5} 150", "60.0", tank="T3")
    assert only(full, "vat_full").words.startswith("The draws and the water come to 330 L, and T3 holds 300 L.")


def test_a_cask_that_is_dumped_stands_in_the_plan_with_its_weight():
    def dumped(cask: str, gross: str) -> list:
        book = casks()
        planned(book, f"{C4} 155", "42.0")
        return book.enter("dump", cask, f"{DAY} 12:00", gross=gross, empty="51.0", strength="60", temp="20",
                          to_vessel="T1")

    assert codes(dumped("C4", "206.3")) == []
    query = only(dumped("C5", "206.3"), "dump_planned")
    assert query.words == "C5 is not in the plan V1 of T1. Is it this cask, and this tank?"
    found = next(one for one in dumped("C4", "186.3") if one.code == "dump_planned")
    assert found.words == "135.3 kg dumped, and 155.0 kg planned for V1. Look at both weights."


def reduced(target: str) -> list:
    book = Ledger()
    book.enter("gauge", "T1", "2026-08-10 08:00", volume="400", strength="61.0", temp="20")
    book.enter("reduce", "T1", "2026-08-10 09:00", target="58", water="19.9")
    return book.enter("reduce", "T1", "2026-08-12 09:00", target=target, water="0", strength="58.0", temp="20")


def test_what_is_measured_after_the_rest_is_held_against_the_target_that_the_water_was_for():
    assert codes(reduced("58")) == []
    query = only(reduced("53"), "target_moved")
    assert query.words == "Target 53 % vol; the water of 10 August 09:00 was for 58.0 % vol. Which is it?"
    assert [one.raw for one in query.suggestions][:1] == ["58.0"]


@pytest.mark.parametrize(("kind", "more", "code"), [
    ("reduce", {"target": "38", "water": "80"}, "target_planned"),
    ("bottling_gauge", {"label_strength": "45", "volume": "170", "strength": "45.0", "temp": "20", "batch": "V1"},
     "label_planned"),
])
def test_a_vat_is_reduced_and_bottled_as_it_was_planned(kind: str, more: dict, code: str):
    def asked(target: str) -> list:
        book = casks()
        planned(book, f"{C4} 155", target)
        book.enter("dump", "C4", f"{DAY} 12:00", gross="206.3", empty="51.0", strength="60", temp="20", to_vessel="T1")
        return book.enter(kind, "T1", f"{DAY} 14:00", **more)

    assert code in codes(asked("42.0"))
    assert code not in codes(asked(more.get("label_strength") or "38.0"))


def test_hearts_are_cut_about_where_the_distiller_planned():
    def cut(pct: str) -> list:
        book = in_hearts()
        book.enter("cut_plan", "S1", f"{DAY} 07:30", what="plum", hearts_to="58")
        return book.enter("cut", "S1", f"{DAY} 11:40", event="hearts_cut", receiver="R3", strength=pct, temp="15",
                          vapour_temp="88.8", flow="12.0")

    assert "cut_planned" not in codes(cut("60.5"))
    query = next(one for one in cut("62.0") if one.code == "cut_planned")
    assert query.words.startswith("Hearts cut at 62.0 %, planned at 58.0 %.")
