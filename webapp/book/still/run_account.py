"""The balance of a run in pure alcohol for readers: what went in, what came out, what is not accounted for."""

from __future__ import annotations

from dataclasses import dataclass

from webapp.book.checks import site_limit
from webapp.kinds.rows import SiteSettings
from webapp.kinds.run_state import Run

ORDER = ("heads", "hearts", "tails", "low_wines", "stillage")


@dataclass(frozen=True, slots=True)
class Balance:
    """A run's pure alcohol: (part, litres) in and out. [L at 20 degC]"""

    into: tuple[tuple[str, float], ...]
    out: tuple[tuple[str, float], ...]
    is_stillage_read: bool
    stillage_pct: float  # taken where it was not read

    @property
    def charged(self) -> float:
        """All that went in. [L]"""
        return sum(litres for _, litres in self.into)

    @property
    def came(self) -> float:
        """All that came out. [L]"""
        return sum(litres for _, litres in self.out)

    @property
    def open(self) -> float:
        """What is not accounted for; negative where more came out than went in. [L]"""
        return self.charged - self.came

    @property
    def share_pct(self) -> float:
        """The same as a share of the charge. [%]"""
        return 100 * self.open / self.charged


def balance_of(run: Run, site: SiteSettings) -> Balance | None:
    """Return the balance of a run; None until its hearts or low wines are gauged. site: the house's settings."""
    charged = run["charge"].get("lpa_l")
    parts = {part["fraction"] for part in run["fractions"]}
    if not charged or not parts & {"hearts", "low_wines"}:
        return None
    feints = float(run["charge"].get("feints_lpa_l") or 0.0)
    into = [("wash", charged - feints)] + ([("feints", feints)] if feints else [])
    out = [
        (name, sum(part["lpa_l"] or 0.0 for part in run["fractions"] if part["fraction"] == name))
        for name in ORDER if name in parts
    ]
    pct = site_limit("stillage_pct", site)
    if "stillage" not in parts:
        over = sum(part["volume_l"] or 0.0 for part in run["fractions"])
        out.append(("stillage", max((run["charge"].get("volume_l") or 0.0) - over, 0.0) * pct / 100))
    return Balance(tuple(into), tuple(out), "stillage" in parts, pct)
