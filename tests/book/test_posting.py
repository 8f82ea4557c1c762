"""Postings under any use: stocks are the sums of flows, none falls below 0, volumes come from mass and alcohol."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

import pytest
from CoolProp.CoolProp import PropsSI
from hypothesis import given, settings
from hypothesis import strategies as st

from webapp.kinds.amount import Amount, scale_kg, spirit_of, spirit_volume_ml, weighed_amount
from webapp.kinds.stock import Posting, list_unbalanced

SORTS = {"A": "tank", "B": "cask", "F": "fermenter"}
ACCOUNTS = ("v:A", "v:B", "v:F", "r:run", "out:water", "out:sample")
amounts = st.builds(Amount, *(st.integers(0, 10**9) for _ in range(3)))
steps = st.one_of(
    st.tuples(st.just("move"), st.sampled_from(ACCOUNTS), st.sampled_from(ACCOUNTS), amounts),
    st.tuples(st.just("draw"), st.sampled_from(ACCOUNTS), st.sampled_from(ACCOUNTS), amounts),
    st.tuples(st.just("measure"), st.sampled_from("ABF"), st.just("out:gauge_difference"), amounts),
    st.tuples(st.just("clear"), st.sampled_from("ABF"), st.just("out:missing"), amounts),
)


def look(states: dict[str, Any]) -> Any:
    """A view over states, with three vessels."""
    return SimpleNamespace(
        at="2025-09-24T06:05:00Z", root="root", get=states.get, vessel=lambda mark: {"sort": SORTS[mark], "name": mark}
    )


@settings(max_examples=60, deadline=None)
@given(st.lists(steps, max_size=30))
def test_stocks_are_the_sums_of_their_flows_and_never_below_nothing(told: list[Any]) -> None:
    states: dict[str, Any] = {}
    sums: dict[str, list[int]] = {}
    for way, one, other, amount in told:
        view = look(states)
        post = Posting(view)
        if way in ("move", "draw"):
            getattr(post, way)(one, other, amount)
        elif way == "measure":
            post.measure(one, amount, other)
        else:
            post.clear(one, other)
        effect = post.effect()
        assert list_unbalanced(effect, view) == []
        states |= effect.states
        for flow in effect.flows:
            assert min(flow.lpa_ul, flow.volume_ml, flow.mass_g) >= 0
            for account, sign in ((flow.source, -1), (flow.target, 1)):
                held = sums.setdefault(account, [0, 0])
                held[0] += sign * flow.lpa_ul
                held[1] += sign * flow.mass_g
    assert [sum(parts) for parts in zip(*sums.values(), strict=True)] in ([], [0, 0])
    for key in ACCOUNTS[:4]:
        state = states.get(key) or {}
        holder = (state.get("holds") if key[0] == "v" else state) or {}
        assert [holder.get("lpa_ul", 0), holder.get("mass_g", 0)] == sums.get(key, [0, 0])
        assert min(holder.get("lpa_ul", 0), holder.get("mass_g", 0), holder.get("volume_ml", 0)) >= 0


@settings(max_examples=60, deadline=None)
@given(volume=st.floats(0.1, 20_000), pct=st.floats(0, 97.2))
def test_mass_and_alcohol_give_back_the_volume(volume: float, pct: float) -> None:
    """Both ways through OIML R 22; a gram and a microlitre of rounding are a few millilitres at most."""
    amount = spirit_of(volume, pct)
    assert spirit_volume_ml(amount.lpa_ul, amount.mass_g) == pytest.approx(amount.volume_ml, abs=4)
    stock = {"lpa_ul": amount.lpa_ul, "mass_g": amount.mass_g, "volume_ml": amount.volume_ml}
    again = weighed_amount(scale_kg(stock), pct)  # as the scale shows that mass
    assert again.lpa_ul == pytest.approx(amount.lpa_ul, rel=1e-3 / max(volume, 1), abs=2000)


def test_two_spirits_together_are_less_than_their_volumes() -> None:
    """50 L of alcohol and 53.65 L of water make 100 L (handbooks). The book adds mass and alcohol."""
    alcohol, water = spirit_of(50.0, 100.0), spirit_of(53.65, 0.0)
    mixed = spirit_volume_ml(alcohol.lpa_ul + water.lpa_ul, alcohol.mass_g + water.mass_g)
    assert mixed == pytest.approx(100_000, abs=30)
    water_kg = PropsSI("D", "T", 293.15, "P", 101325, "Water") * 0.05365
    assert water.mass_g / 1000 == pytest.approx(water_kg, rel=1e-4)


def test_an_effect_that_forgets_its_flow_is_found() -> None:
    states = {"v:A": {"holds": {"lpa_ul": 5, "mass_g": 7}}}
    effect = SimpleNamespace(flows=(), states={"v:A": {"holds": {"lpa_ul": 4, "mass_g": 7}}})
    assert list_unbalanced(effect, look(states)) == ["v:A"]  # type: ignore[arg-type]
