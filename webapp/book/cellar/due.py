"""How often each round of the cellar is due, where a house has said nothing else (its settings, `due`).

The phone has the same (static/jobs/cellar/due.js). Common practice, no source.
"""

from __future__ import annotations

from webapp.kinds.rows import SiteSettings

# Hours, months, days, minutes or bottles; 0 for never.
INTERVALS: dict[str, float] = {
    "ferment_h": 20, "regauge_months": 12, "sample_months": 0, "taste_months": 0, "instrument_days": 14,
    "check_min": 30, "check_bottles": 0,
}
MONTH_DAYS = 30.44


def interval(name: str, site: SiteSettings) -> float:
    """Return the interval of a round in this house. [the unit in its name], 0 for never; KeyError if unknown."""
    return float((site.get("due") or {}).get(name, INTERVALS[name]))
