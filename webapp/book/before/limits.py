"""Which limit holds here, and where does it come from? Asked of the checks' limits and of the ranges of the kinds.

A limit of a check is declared once, beside the check that uses it, and found here by its name. A site may set its own
for any of them. A site's own values lie in its settings under `checks`, e.g. {"checks": {"clock_ask_s": 300}}; those
of one vessel, product or sort of vessel under `check_limits`, e.g. {"check_limits": {"vessel": {"S2-K":
{"run_loss_pct": 4}}}}. The narrowest holds: vessel, product, sort, site, declaration.

A range belongs to a field of a kind. Rows of the table `limits` replace it: vessel, sort, material, site, kind.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from webapp.kinds.entry import Limits
from webapp.kinds.read import Read
from webapp.kinds.rows import SiteSettings, VesselRow
from webapp.kinds.spirits import is_grain
from webapp.kinds.view import Scopes, View

# A range of a field [its canonical unit], and the scope and key that it comes from.
HeldRange = tuple[Sequence[float | None], str, str]
SITE_SCOPES: Scopes = (("site", ""),)
COMMON_PRACTICE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Limit:
    """A limit of a check: its name, the value that holds where nobody has set another, and words for whoever sets one.

    unit: as it is shown, "% vol"; empty for a count or a ratio. source: where the value comes from.
    """

    name: str
    default: float
    unit: str
    words: str
    source: str = COMMON_PRACTICE


# Every limit that is declared, by its name. webapp/book/limits.py gathers them from all their files.
LIMITS: dict[str, Limit] = {}


def declare(*limits: Limit) -> tuple[Limit, ...]:
    """Add limits to those that are found by name, and return them. ValueError where a name is declared twice."""
    for one in limits:
        if one.name in LIMITS:
            raise ValueError(f"The limit {one.name} is declared twice. Give one of them another name.")
        LIMITS[one.name] = one
    return limits


# Gravity at which a ferment of this fruit usually ends [SG]: stone and pip fruit hold sorbitol, which yeast leaves.
END_GRAVITY: dict[str, float] = {
    "plum": 1.011, "mirabelle": 1.011, "cherry": 1.010, "apricot": 1.006, "pear": 1.009, "quince": 1.008,
    "apple": 1.000, "grape": 0.996, "raspberry": 1.003, "rye": 1.003,
}
END_GRAVITY_ELSE = 1.008


def limit(name: str, view: View) -> float:
    """Return the limit of that name, of the narrowest scope that has it. [as declared]; KeyError if unknown."""
    return held_limit(name, view.site(), view.scopes)[0]


def site_limit(name: str, site: SiteSettings) -> float:
    """Return the limit of that name as it holds for the whole site. [as declared]; KeyError if unknown."""
    return held_limit(name, site)[0]


def held_limit(name: str, site: SiteSettings, scopes: Scopes = ()) -> tuple[float, str, str]:
    """Return the limit that holds for these scopes, and the scope and key it comes from; ("", "") as declared."""
    own = site.get("check_limits") if scopes else None
    for scope, key in scopes if own else ():
        found = ((own or {}).get(scope) or {}).get(key) or {}
        if name in found:
            return float(found[name]), scope, key
    told = site.get("checks")
    return (float(told[name]), "site", "") if told and name in told else (LIMITS[name].default, "", "")


def range_scopes(vessel_row: VesselRow | None, material: str) -> Scopes:
    """Return the scopes that a range may be set for, narrowest first: vessel, sort, material, site."""
    mark, sort = (vessel_row["mark"], vessel_row["sort"]) if vessel_row else ("", "")
    return (("vessel", mark), ("sort", sort), ("material", material), *SITE_SCOPES)


def held_ranges(kind: str, scopes: Scopes, ranges: Limits) -> dict[str, dict[str, HeldRange]]:
    """Return per field the usual and possible range that hold for these scopes, where they are not the kind's own."""
    found: dict[str, dict[str, HeldRange]] = {}
    for scope, key in scopes if ranges else ():
        for field, own in ranges.get((scope, key, kind), {}).items():
            for which, span in (("usual", own.get("usual")), ("possible", own.get("possible"))):
                if span is not None:
                    found.setdefault(field, {}).setdefault(which, (span, scope, key))
    return found


def scopes_of(read: Read, view: View) -> Scopes:
    """Return the scopes of this entry that a limit may be set for, narrowest first: vessel, products, sort."""
    if not read.mark or not view.site().get("check_limits"):
        return ()
    row, held, run = view.vessel(read.mark), view.state(read.mark)["holds"], view.run_on(read.mark)
    in_it = (held["what"], held["material"]) if held else ()
    said = (*in_it, run["what"] if run else None, read.text("what"))
    return vessel_scopes(read.mark, row["sort"] if row else "", said)


def vessel_scopes(mark: str, sort: str | None, products: Iterable[str | None]) -> Scopes:
    """Return the scopes of a vessel that a limit may be set for, narrowest first: itself, what is in it, its sort."""
    named = dict.fromkeys(str(name).strip().lower() for name in products if name)
    return (("vessel", mark), *(("product", name) for name in named), ("sort", sort or ""))


def end_gravity(material: str | None, what: str | None) -> float:
    """Return the gravity at which this material usually ends. [SG], 0.996 to 1.011."""
    text = f"{material or ''} {what or ''}".lower()
    return next((end for name, end in END_GRAVITY.items() if name in text), END_GRAVITY_ELSE)


__all__ = [
    "COMMON_PRACTICE", "END_GRAVITY", "LIMITS", "SITE_SCOPES", "HeldRange", "Limit", "Scopes", "declare",
    "end_gravity", "held_limit", "held_ranges", "is_grain", "limit", "range_scopes", "scopes_of", "site_limit",
    "vessel_scopes",
]
