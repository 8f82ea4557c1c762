"""The slips and mishaps of the year that the book should notice, put into the story one by one (demo_data/faults.json).

Those that lie in the figures themselves (the stuck ferment, the leaking cask) and in the clocks (demo_data/phones.json)
need nothing here.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from webapp.demo.story import Draft


def plant(told: list[Draft]) -> list[Draft]:
    """Return the story with its slips. Each is named by its number in demo_data/faults.json."""
    by_key = {draft.key: draft for draft in told if draft.key}
    _fahrenheit(by_key["ferment:B-25-05:5"])
    _swapped(by_key["regauge:C001:2026"])
    _raw_as_true(by_key["regauge:C014:2026"])
    _sent_twice(by_key["ferment:B-25-02:8"])
    return [*told, _second_gauge(by_key["regauge:C022:2026"]), _late_cut(by_key["hearts_cut:R-25-08"])]


def _fahrenheit(draft: Draft) -> None:
    """2: 66.6 degrees Fahrenheit, typed as Celsius."""
    draft.values = {**draft.values, "temp": ("66.6", "degC", "TH-2")}


def _swapped(draft: Draft) -> None:
    """3: 59.7 % worked out by the table, typed as 95.7."""
    kept = {name: value for name, value in draft.values.items() if name != "glass"}
    draft.values = {**kept, "strength": ("95.7", "pct_vol")}
    draft.extra = {"looked_again": ["strength"]}


def _raw_as_true(draft: Draft) -> None:
    """4: the glass reading 57.5 at 10.5 degrees, typed as the corrected strength too (it is 60.8)."""
    draft.values = {
        **draft.values, "glass": ("57.5", "pct_glass", "AH-2"), "temp": ("10.5", "degC", "TH-1"),
        "strength": ("57.5", "pct_vol"),
    }


def _sent_twice(draft: Draft) -> None:
    """7: the answer was lost on the way, and the phone sends again."""
    draft.sent_twice = True


def _second_gauge(draft: Draft) -> Draft:
    """8: a second person gauges the same cask that afternoon: 0.3 kg and 0.1 points apart."""
    values = {**draft.values, "gross": ("239.0", "kg", "SC-2"), "glass": ("56.8", "pct_glass", "AH-2")}
    values["temp"] = ("11.6", "degC", "TH-1")
    return replace(draft, at=draft.at.replace(hour=14, minute=2), person="SD", phone="PH-1", values=values,
                   key="regauge:C022:second")


def _late_cut(draft: Draft) -> Draft:
    """11: the hearts cut was pressed nine minutes after the receiver was changed; it is amended that afternoon."""
    right = draft.at
    draft.at = right + timedelta(minutes=9)
    draft.typed = None
    reason = "Pressed late: the receiver was changed nine minutes before."
    return replace(draft, at=right, typed=right + timedelta(hours=2, minutes=5), key="hearts_cut:R-25-08:amended",
                   amends=draft.key, reason=reason)
