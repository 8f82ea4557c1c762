"""Every limit the history checks use, in one place, by name; a site may set its own for any of them.

All are common practice without a source unless a line says otherwise. A site's own values lie in its settings under
`checks`, e.g. {"checks": {"clock_ask_s": 300}}; those of one vessel, product or sort of vessel under `check_limits`,
e.g. {"check_limits": {"vessel": {"S2-K": {"run_loss_pct": 4}}}}. The narrowest holds: vessel, product, sort,
site, table.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from webapp.kinds.spirits import is_grain

LIMITS: dict[str, float] = {
    # time
    "clock_note_s": 60,  # a phone's clock off by more is shown
    "clock_ask_s": 600,  # off by more is asked about
    "late_note_min": 30,  # typed later after reading than this
    "future_min": 5,  # read at a time later than it was typed
    "twice_min": 10,  # the same figures again within this time
    "two_people_h": 24,  # two gauges of one vessel by two people
    # ferment
    "gravity_rise": 0.001,  # [SG] a gravity may seem to rise by
    "stuck_hours": 48,
    "stuck_fall": 0.001,  # [SG] a ferment that moves falls at least this much in stuck_hours
    "stuck_above_end": 0.006,  # [SG] above the expected end it is not finished
    "ended_span_h": 40,  # three equal gravities must span this
    "ended_equal": 0.0005,  # [SG]
    "hot_fruit_c": 24,
    "hot_grain_c": 35,
    "fast_per_day": 0.020,  # [SG a day], fruit
    "sense_low_c": 45,  # typed as degC from here up a mash may be degF
    "sense_low_f": 4,  # typed as degF between these two a mash may be degC
    "sense_high_f": 35,
    "yield_low_pct": 60,  # of what the sugar should give
    "yield_high_pct": 140,
    "yield_years": 3,  # ferments of its own that a house needs before they count
    "grain_l_100kg": 29,  # litres of pure alcohol from 100 kg of grain
    # still
    "ceiling_pct": 97.2,  # ethanol-water azeotrope
    "fruit_class_pct": 86.0,  # Regulation (EU) 2019/787, Annex I, fruit spirit: distilled at less than 86 % vol
    "brandy_us_pct": 95.0,  # 27 CFR 5.145: brandy under 190 degrees proof
    "grain_us_pct": 80.0,  # 27 CFR 5.143: rye whisky at not over 160 degrees proof
    "slope_pct": 1.0,  # a strength in hearts and tails may seem to rise by
    "warm_c": 25,  # distillate
    "vapour_off_c": 2.0,  # vapour temperature against strength
    "wash_ask_pct": 10,  # a ferment seldom gives more
    "wash_stop_pct": 18,  # a ferment cannot give more
    # casks and tanks
    "mash_kg_l": 1.05,  # kg of fruit mash in a litre
    "cask_brim": 1.02,  # a cask holds at most this much of its rated size
    "source_short_pct": 0.5,  # taken out of a vessel above what the book has in it
    "cask_grew_pct": 1.0,  # pure alcohol may seem to grow by, within the reading of scale and glass
    "gross_step_kg": 0.2,  # gross weight may seem to grow by
    "loss_look_small_pct": 9,  # from here up a loss a year is held against its neighbours
    "loss_look_large_pct": 4.5,
    "loss_spread": 2.5,  # a loss may lie this many spreads above the middle of its neighbours
    "loss_spread_least_pct": 0.8,  # the least spread that is taken: gauges alone differ by this
    "loss_neighbours": 4,  # fewer neighbours prove nothing
    "loss_days": 60,  # a loss rate needs this much time between two gauges
    "loss_noise_pct": 1.0,  # what scale and glass alone may pretend
    "loss_small_pct": 20,  # pure alcohol a year, casks under small_l
    "loss_large_pct": 12,
    "loss_new_pct": 5,  # more in the first year of new wood, which drinks
    "small_l": 100,
    "drift_pct": 1.5,  # strength of a cask may differ from its last by this
    "drift_pct_year": 1.2,  # and by this for each year between
    "damp_rh_pct": 75,  # above it spirit in wood grows weaker
    "dry_rh_pct": 60,  # below it stronger
    "drift_days": 180,  # a drift needs this much time between two gauges
    "drift_wrong_pct": 0.3,  # points a year that a strength may drift the wrong way
    "drift_noise_pct": 0.2,  # points that a glass alone may pretend
    "tare_off_pct": 5,  # an empty weight may lie this far from the cask's listed one
    "soak_low_kg": 3,  # what the wood of a 200 L cask keeps; other sizes by their surface
    "soak_high_kg": 8,
    "soak_spare_kg": 1.0,  # what two weighings may pretend
    # balances of pure alcohol
    "stillage_pct": 0.2,  # [% vol] of stillage that nobody has read
    "run_loss_low_pct": 0.5,  # of the charge, usual
    "run_loss_high_pct": 2.0,
    "run_loss_pct": 3.0,  # asked about above it
    "run_gain_pct": 0.5,  # and above this much gain
    "run_noise_l": 0.25,  # [L pure alcohol] what dips of a small charge may pretend
    "strip_low_pct": 97.0,  # low wines out of wash, pure alcohol
    "strip_high_pct": 100.5,
    "flow_pct": 7,  # flow times minutes against the receiver
    "flow_least_l": 5,  # less is too little for a jug and a watch
    "hearts_spread": 2,  # spreads about the middle of the last runs
    "hearts_spread_least_pct": 2.5,
    "hearts_runs": 4,  # fewer like runs prove nothing
    "move_pct": 0.5,  # left behind by a move that emptied the vessel
    "receiver_move_pct": 1.5,  # Spirits Act 1880: natural waste from receiver to store
    "move_gain_pct": 0.3,  # got more than was sent
    "transit_loss_pct": 1.0,  # 27 CFR 19.462: a loss of bulk spirit in transit above it is reported
    "transit_gain_pct": 0.3,  # received above what was declared
    "move_rest_pct": 5,  # more left than this is a part kept on purpose
    "blend_pct": 0.3,  # sum of what went in against the first gauge
    "dip_pct": 1.0,  # dipped volume against the book's sum
    "dip_least_l": 0.5,
    "strength_noise_pct": 0.1,  # [% vol] what a glass may pretend
    "reduce_pct": 0.1,  # [% vol] measured strength off its target
    "reduce_near_pct": 1.0,  # [% vol] farther off is a step on the way
    "filter_loss_pct": 1.5,  # kept by the filter, of what was there
    "filter_gain_pct": 0.3,
    "bottling_loss_pct": 1.5,  # tank less bottles, heel and line
    "bottling_gain_pct": 0.3,
    "fill_mean_pct": 0.2,  # five bottles average so near to their label by chance
    "vat_youngest_years": 2,  # fruit brandy stands at least two years in oak: a rule of the house, not of the law
    "label_pct": 0.3,  # [% vol] Regulation (EU) 1169/2011, Annex XII: spirits within 0.3 of the label
    "emptied_h": 48,  # a vessel emptied within this time and read again
    "round_gap_min": 60,  # readings farther apart are two rounds
    "season_close_pct": 1.0,  # a season's alcohol may miss its sum by this much of the wash
    "neat_count": 10,  # the same figure so many times running
}

# Gravity at which a ferment of this fruit usually ends [SG]: stone and pip fruit hold sorbitol, which yeast leaves.
END_GRAVITY: dict[str, float] = {
    "plum": 1.011, "mirabelle": 1.011, "cherry": 1.010, "apricot": 1.006, "pear": 1.009, "quince": 1.008,
    "apple": 1.000, "grape": 0.996, "raspberry": 1.003, "rye": 1.003,
}  # fmt: skip
END_GRAVITY_ELSE = 1.008


def limit(name: str, view: Any) -> float:
    """Return the limit of that name, of the narrowest scope that has it. [as the table says]; KeyError if unknown."""
    site: Mapping[str, Any] = view.site()
    own = site.get("check_limits") or {}
    for scope, key in view.scopes if own else ():
        found = (own.get(scope) or {}).get(key) or {}
        if name in found:
            return float(found[name])
    return float((site.get("checks") or {}).get(name, LIMITS[name]))


def scopes_of(read: Any, view: Any) -> tuple[tuple[str, str], ...]:
    """Return the scopes of this entry that a limit may be set for, narrowest first: vessel, products, sort."""
    if not read.mark or not view.site().get("check_limits"):
        return ()
    row, held = view.vessel(read.mark) or {}, view.state(read.mark)["holds"] or {}
    run = view.run_on(read.mark) or {}
    said = (held.get("what"), held.get("material"), run.get("what"), read.values.get("what"))
    products = dict.fromkeys(str(name).strip().lower() for name in said if name)
    return (("vessel", read.mark), *(("product", name) for name in products), ("sort", str(row.get("sort") or "")))


def end_gravity(material: str | None, what: str | None) -> float:
    """Return the gravity at which this material usually ends. [SG], 0.996 to 1.011."""
    text = f"{material or ''} {what or ''}".lower()
    return next((end for name, end in END_GRAVITY.items() if name in text), END_GRAVITY_ELSE)


__all__ = ["END_GRAVITY", "LIMITS", "end_gravity", "is_grain", "limit", "scopes_of"]
