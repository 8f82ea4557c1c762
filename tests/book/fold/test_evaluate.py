"""One entry against the fold before it, without a book: what is asked, under which name, and what is let through."""

from __future__ import annotations

import dataclasses
import logging
from collections.abc import Callable
from typing import Any

import pytest

import webapp.kinds
from tests.book.checks.ledger import Ledger
from tests.words.well_said import check_said
from webapp.book.before.view import BookView, Query
from webapp.book.fold import evaluate as evaluation
from webapp.book.fold.evaluate import FAULT, Outcome, evaluate
from webapp.book.fold.families import AFTER_STRIKE, Plan
from webapp.kinds.key import round_key
from webapp.kinds.message import message
from webapp.kinds.spec import NOTHING, Effect, Flow
from webapp.trade.marks import make_mark

AT = "2025-10-02T08:00:00Z"
F1, T1, T3, C1, NOBODYS = (make_mark(base) for base in ("F1", "T1", "T3", "C1", "Z9"))


class House(Ledger):
    """The registry of the ledger, with the limits that somebody has set for fields."""

    def limits(self) -> dict[Any, Any]:
        return {}


def entry_of(kind: str, mark: str = "", person: str = "NS", **values: Any) -> dict[str, Any]:
    given = {name: value if isinstance(value, dict) else {"raw": value} for name, value in values.items()}
    return {
        "id": "e1", "kind": kind, "kind_version": 1, "mark": mark, "mark_by": "scanned", "person": person, "role": "",
        "seen_by": "", "device": "d-1", "seq": 1, "read_at": "2025-10-02T10:00:00+02:00",
        "typed_at": "2025-10-02T10:00:00+02:00", "values": given, "as_read": [], "looked_again": [], "remark": "",
        "amends": None, "reason": "",
    }


def gauge(mark: str = T1, litres: str = "100", strength: str = "60", **more: Any) -> dict[str, Any]:
    return entry_of("gauge", mark, volume={"raw": litres, "unit": "L"}, temp={"raw": "20", "unit": "degC"},
                    strength={"raw": strength, "unit": "pct_vol"}, **more)


def judge(
    entry: dict[str, Any], states: dict[str, Any] | None = None, *, skew_s: float = 0.0, **plan: Any
) -> Outcome:
    house = House()
    view = BookView(at=AT, typed_at=AT, received_at=AT, skew_s=skew_s, root="e1", registry=house,
                    look_up=(states or {}).get)
    made = Plan("e1", entry, "place", AT, AT, AT, skew_s, **plan)
    outcome = evaluate(made, view, house)  # type: ignore[arg-type]
    for _, query, _ in outcome.questions:
        check_said(query.message)
    return outcome


def asked(outcome: Outcome) -> list[tuple[str, str, str, str]]:
    """Return name, weight, field and answer of each question."""
    return [(name, query.weight, query.field, answer) for name, query, answer in outcome.questions]


def test_a_sound_entry_is_entered_and_says_what_it_read_and_wrote() -> None:
    outcome = judge(gauge())
    assert (outcome.standing, asked(outcome)) == ("entered", [])
    written = set(outcome.effect.states)
    assert {f"v:{T1}", "f:e1"} < written <= outcome.keys
    assert written - {f"v:{T1}", "f:e1"} == {round_key("NS")}, "and the round of the person who reads"
    assert [(flow.target, flow.lpa_ul) for flow in outcome.effect.flows] == [(f"v:{T1}", 60_000_000)]


def test_an_entry_about_no_vessel_touches_none() -> None:
    """Else every change of anything without a mark would have it judged again."""
    outcome = judge(entry_of("shift_note", text="hm"))
    assert (outcome.standing, asked(outcome)) == ("entered", [])
    assert not {key for key in outcome.keys if key.startswith("v:")}


def test_a_struck_entry_is_not_even_read() -> None:
    outcome = judge(entry_of("no_such_kind"), struck=True)
    assert outcome == Outcome("struck", [], NOTHING, frozenset())
    outcome = judge(gauge(), struck=True, amended_after_strike=True, stands={AFTER_STRIKE: "a1"})
    assert (outcome.standing, asked(outcome)) == ("struck", [(AFTER_STRIKE, "ask", "", "a1")])
    assert judge(gauge(), amended_after_strike=False).questions == []


def test_a_clash_is_asked_about_first_and_holds_nothing_up() -> None:
    outcome = judge(gauge(litres="2000"), clashed=True)
    assert asked(outcome)[0] == ("clash", "ask", "", "")
    assert judge(gauge(), clashed=True).standing == "entered"


def faulty(effect: Callable[..., Effect], monkeypatch: pytest.MonkeyPatch) -> None:
    kind = webapp.kinds.get("gauge")
    assert kind is not None
    other = dataclasses.replace(kind, effect=effect)
    monkeypatch.setattr(webapp.kinds, "get", lambda name: other if name == "gauge" else None)


def check_is_a_fault(outcome: Outcome, caplog: pytest.LogCaptureFixture, *words: str) -> None:
    assert (outcome.standing, asked(outcome)) == ("stopped", [(FAULT, "stop", "", "")])
    assert outcome.effect == NOTHING
    (record,) = caplog.records
    assert (record.name, record.levelno) == ("cellarslate.book", logging.ERROR)
    assert record.getMessage() == "entry e1 could not be worked out"
    assert record.exc_info is not None
    for word in words:
        assert word in str(record.exc_info[1]), record.exc_info[1]


def test_an_entry_of_a_kind_that_this_program_does_not_know_waits(caplog: pytest.LogCaptureFixture) -> None:
    """A newer program may have written it. It is worked out again by whatever touches its vessel, so it names that."""
    outcome = judge(entry_of("no_such_kind", T1))
    check_is_a_fault(outcome, caplog, "no_such_kind")
    assert outcome.keys == {f"v:{T1}"}


def test_stock_that_changes_by_anything_but_flows_is_a_fault(
    caplog: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The rule that makes every stock the sum of its flows. Both vessels are named in the log."""
    faulty(lambda read, view: Effect({}, (Flow(f"v:{T1}", f"v:{T3}", 5),)), monkeypatch)
    outcome = judge(gauge())
    check_is_a_fault(outcome, caplog, "stock changed by other than flows", f"v:{T1}, v:{T3}")
    assert f"v:{T1}" in outcome.keys


def test_a_fault_that_was_let_stand_moves_nothing_all_the_same(
    caplog: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    faulty(lambda read, view: 1 / 0, monkeypatch)  # type: ignore[arg-type,return-value]
    outcome = judge(gauge(), stands={"": "a1"})
    assert (outcome.standing, outcome.effect) == ("stopped", NOTHING)
    assert asked(outcome) == [(FAULT, "stop", "", "a1")]
    assert len(caplog.records) == 1


def test_what_intake_would_refuse_today_is_asked_about_at_its_field() -> None:
    """A book of before may hold it: a fruit intake without its weight."""
    entry = entry_of("fruit_intake", F1, tare={"raw": "60", "unit": "kg"}, material="plum", grower_lot="G",
                     temp={"raw": "14", "unit": "degC"}, rot={"raw": "1", "unit": "pct"})
    outcome = judge(entry)
    assert outcome.standing == "stopped" and outcome.effect.flows == ()
    name, weight, field, answer = asked(outcome)[0]
    assert (weight, field, answer) == ("stop", "gross", "")
    _, query, _ = outcome.questions[0]
    assert (query.code, name) == ("missing", "missing")


def test_strangers_are_asked_about() -> None:
    outcome = judge(gauge(NOBODYS, person="XY"))
    assert asked(outcome)[:2] == [("unknown_vessel", "stop", "", ""), ("unknown_person", "ask", "", "")]
    assert [query.words for _, query, _ in outcome.questions][:2] == [
        f"No vessel {NOBODYS} is in the book. Add it, or amend the entry.",
        "The book knows nobody with the code XY. Add them, or amend.",
    ]
    assert outcome.standing == "stopped"
    long = judge(gauge("Z" * 30, person="P" * 30))
    words = " ".join(query.words for _, query, _ in long.questions)
    assert f"No vessel {'Z' * 20} is" in words and f"the code {'P' * 20}." in words


def test_nobody_at_all_is_asked_about_too() -> None:
    assert ("unknown_person", "ask", "", "") in asked(judge(gauge(person="")))


def test_a_vessel_of_another_sort_is_asked_about() -> None:
    outcome = judge(entry_of("ferment_reading", T1, temp={"raw": "17", "unit": "degC"},
                             gravity={"raw": "1.050", "unit": "SG"}))
    name, query, _ = outcome.questions[0]
    assert (name, query.code, query.weight, query.field) == ("wrong_sort", "wrong_sort", "ask", "")
    assert query.words == "T1 is a tank; ferment reading is not logged there. Right vessel?"


def charge(source: str, heads: str) -> Outcome:
    litres = {"raw": "450", "unit": "L"}
    return judge(entry_of("charge", make_mark("S1"), from_vessel=source, wash=litres, heads_to=heads,
                          wash_strength={"raw": "6", "unit": "pct_vol"}, hearts_to=make_mark("R2"),
                          tails_to=make_mark("R3")))


def test_a_vessel_named_in_a_field_is_asked_about_at_the_field() -> None:
    found = {name: query for name, query, _ in charge(F1, NOBODYS).questions}
    assert (found["unknown_vessel_heads_to"].weight, found["unknown_vessel_heads_to"].field) == ("stop", "heads_to")
    assert "unknown_vessel" not in found
    found = {name: query for name, query, _ in charge(F1, C1).questions}
    query = found["wrong_sort_heads_to"]
    assert (query.code, query.weight, query.field) == ("wrong_sort_heads_to", "ask", "heads_to")
    assert query.words.endswith(": C1 is a cask. Right vessel?")
    found = {name: query for name, query, _ in charge(F1, make_mark("R1")).questions}
    assert not {name for name in found if name.startswith(("unknown", "wrong"))}


def test_a_stop_holds_the_stock_until_it_is_answered() -> None:
    """98.5 % vol is more than any still gives."""
    outcome = judge(gauge(strength="98.5"))
    stops = [name for name, query, _ in outcome.questions if query.weight == "stop"]
    assert outcome.standing == "stopped" and stops
    assert outcome.effect.flows == () and f"v:{T1}" not in outcome.effect.states
    answered = judge(gauge(strength="98.5"), stands=dict.fromkeys(stops, "a1"))
    assert answered.standing == "entered" and len(answered.effect.flows) == 1
    assert {answer for name, _, answer in answered.questions if name in stops} == {"a1"}
    if len(stops) > 1:
        half = judge(gauge(strength="98.5"), stands={stops[0]: "a1"})
        assert half.standing == "stopped"


def test_the_effect_is_told_which_questions_were_answered(monkeypatch: pytest.MonkeyPatch) -> None:
    """A count that found a cask elsewhere moves it when somebody says that it stands."""
    told = []
    kind = webapp.kinds.get("gauge")
    assert kind is not None and kind.effect is not None
    effect = kind.effect
    faulty(lambda read, view: told.append(read.answered) or effect(read, view), monkeypatch)  # type: ignore[func-returns-value]
    judge(gauge(litres="960"))
    judge(gauge(litres="960"), stands={"over_working_level": "a1"})
    judge(gauge(litres="960"), stands={"other": "a1"})
    assert told == [frozenset(), frozenset({"over_working_level"}), frozenset()]


def test_what_the_flows_took_too_much_is_asked_unless_a_check_has_said_that_nothing_is_there() -> None:
    held = judge(gauge()).effect.states
    fill = {"lot": "L", "what": "plum", "tare": {"raw": "50", "unit": "kg"}, "gross": {"raw": "150", "unit": "kg"},
            "temp": {"raw": "20", "unit": "degC"}, "strength": {"raw": "60", "unit": "pct_vol"}, "use": "used",
            "soaked": "yes", "place": "A1"}
    # 100 kg at 60 % vol, 909.1 kg/m3 by OIML R 22: 66.0 L of pure alcohol out of 60.
    outcome = judge(entry_of("cask_fill", C1, from_vessel=T1, **fill), dict(held))
    assert ("stock_short", "ask", "", "") in asked(outcome)
    # Out of an empty tank; and out of an empty fermenter, where a check of the charge says so.
    outcome = judge(entry_of("cask_fill", C1, from_vessel=T1, **fill))
    assert ("from_nothing", "ask", "", "") in asked(outcome)
    names = {name for name, _, _ in charge(F1, make_mark("R1")).questions}
    assert "source_empty" in names and not names & {"stock_short", "from_nothing"}


def test_a_stop_does_not_keep_an_entry_from_saying_how_its_phones_clock_stood() -> None:
    outcome = judge(gauge(strength="98.5"), skew_s=600.0)
    assert outcome.standing == "stopped"
    assert [state for key, state in outcome.effect.states.items() if key.endswith("d-1")] == [{"skew_s": 600.0}]


def test_questions_of_one_code_are_told_apart_by_their_fields() -> None:
    """A range question always has its field in its name: it may come for another field tomorrow."""
    plan = Plan("e1", gauge(), "place", AT, AT, AT, 0.0, stands={"odd": "a1", "unusual:temp": "a2"})
    given = [Query("odd", "ask", "one", message(FAULT)), Query("odd", "stop", "two", message(FAULT)),
             Query("odd", "ask", "two", message(FAULT)), Query("odd", "ask", "", message(FAULT)),
             Query("unusual", "ask", "temp", message(FAULT)), Query("impossible", "stop", "temp", message(FAULT)),
             Query("impossible", "stop", "", message(FAULT))]
    named = evaluation._name_questions(plan, given)
    assert [(name, answer) for name, _, answer in named] == [
        ("odd", "a1"), ("odd:two", "a1"), ("unusual:temp", "a2"), ("impossible:temp", ""), ("impossible", ""),
    ]
    weights = {name: (query.weight, query.field) for name, query, _ in named}
    assert weights["odd"] == ("ask", "one") and weights["odd:two"] == ("stop", "two"), "the first of a name is asked"


@pytest.mark.parametrize(
    ("stands", "answer"),
    [({}, ""), ({"odd:temp": "a1", "odd": "a2", "": "a3"}, "a1"), ({"odd": "a2", "": "a3"}, "a2"), ({"": "a3"}, "a3"),
     ({"other": "a4"}, "")],
)
def test_an_answer_is_to_a_question_to_its_code_or_to_all(stands: dict[str, str], answer: str) -> None:
    plan = Plan("e1", gauge(), "place", AT, AT, AT, 0.0, stands=stands)
    assert plan.answer_to("odd:temp", "odd") == answer
