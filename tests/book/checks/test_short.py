"""More taken than the book has, whatever took it. Limits: common practice, no source."""

import pytest

from tests.book.checks.ledger import Ledger
from webapp.book.before.view import BookView, Query
from webapp.book.checks.short import LEAST_UL, LIMITS, shortfalls
from webapp.kinds import loss
from webapp.kinds.read import read_entry
from webapp.kinds.spec import Effect, Flow
from webapp.trade.marks import make_mark

T1 = f"v:{make_mark('T1')}"
AT = "2025-10-02T08:00:00Z"
# An entry that no instrument was read for: what it took is known exactly.
NOTHING_READ = read_entry(loss.KIND, {"kind": "loss", "mark": "", "values": {}, "read_at": AT})  # type: ignore[typeddict-item]


def asked(*flows: Flow, **site) -> list[Query]:
    view = BookView(at=AT, typed_at=AT, received_at=AT, skew_s=0, root="e1", registry=Ledger(**site),
                    look_up=lambda key: None)
    return list(shortfalls(Effect({}, flows), NOTHING_READ, view))


def short(missing_ul: int, *taken_ul: int, vessel: str = T1, reason: str = "more_than_booked") -> list[Flow]:
    """Return the flows of an entry that takes so much from a vessel that has so much less."""
    return [Flow("out:gauge_difference", vessel, missing_ul, reason=reason),
            *(Flow(vessel, "v:C1", ul) for ul in taken_ul)]


@pytest.mark.parametrize(("missing_ul", "is_asked"), [(500_000, False), (500_001, True)])
def test_half_a_per_cent_more_than_was_there_is_reading(missing_ul: int, is_asked: bool):
    """Of 100 L, whether they went in one flow or in two."""
    for taken in ((100_000_000,), (40_000_000, 60_000_000)):
        assert [query.code for query in asked(*short(missing_ul, *taken))] == ["stock_short"] * is_asked
    assert [(one.name, one.default, one.unit) for one in LIMITS] == [("source_short_pct", 0.5, "%")]


def test_what_is_short_is_said_with_what_went_out_and_what_there_was():
    (query,) = asked(*short(6_000_000, 66_000_000))
    assert (query.code, query.weight, query.field) == ("stock_short", "ask", "")
    assert query.words == (
        "66.00 L of pure alcohol taken out of T1, 60.00 L in it by the book. Look at both figures again."
    )


def test_a_house_may_let_more_go():
    assert asked(*short(6_000_000, 66_000_000), checks={"source_short_pct": 10}) == []


def test_what_rounding_pretends_is_not_asked_about():
    """20 mL of pure alcohol."""
    assert LEAST_UL == 20_000
    assert asked(*short(19_999, 1_000_000)) == []
    assert [query.code for query in asked(*short(20_000, 1_000_000))] == ["stock_short"]
    # One that is small does not hide the next.
    assert [query.code for query in asked(Flow("out:x", T1, 1), *short(20_000, 1_000_000))] == ["stock_short"]


def test_a_difference_that_a_gauge_found_is_none_that_something_took():
    assert asked(*short(6_000_000, 66_000_000, reason="gauge")) == []


def test_a_vessel_that_the_registry_does_not_know_is_called_by_its_mark():
    (query,) = asked(*short(6_000_000, 66_000_000, vessel="v:X9-A"))
    assert "taken out of X9-A," in query.words


def test_what_came_from_nowhere():
    (query,) = asked(Flow("out:not_accounted", T1, 66_000_000, reason="cask_fill"))
    assert (query.code, query.weight, query.field) == ("from_nothing", "ask", "")
    assert query.words.startswith("66.00 L of pure alcohol came from where the book has nothing.")
    assert asked(Flow("out:not_accounted", T1, 19_999, reason="cask_fill")) == []


@pytest.mark.parametrize("reason", ["more_than_booked", "run_balance"])
def test_what_is_asked_about_elsewhere_is_not_asked_twice(reason: str):
    assert asked(Flow("out:not_accounted", T1, 66_000_000, reason=reason)) == []
