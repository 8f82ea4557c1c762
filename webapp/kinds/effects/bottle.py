"""Bottling: what left the tank in bottles, and what did not get into one."""

from __future__ import annotations

from typing import Any

from webapp.kinds.effects import goods
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.stock import Posting, spirit_of

SERIES = ("per_case", "case_from", "case_to", "odd_case", "lot_mark")
COUNTS = ("filled", "broken", "reworked", "library")


def bottling_close(read: Read, view: Any) -> Effect:
    """Bottles at the strength of the tank: tank -> its bottles, broken ones -> spill, heel and line -> filter_loss.

    Reworked bottles went back into the tank. An empty tank leaves no rest: tank <-> gauge_difference. The bottling is
    an account of its own, `b:<root>`, with counts and case numbers; goods.py takes from it what leaves.
    """
    post, values = Posting(view), read.values
    post.remember(read)
    key, held = f"v:{read.mark}", post.held(read.mark) or {}
    strength = held.get("strength_pct") or held.get("label_strength_pct") or 0.0
    count = {name: max(round(values.get(name) or 0), 0) for name in COUNTS}
    good = max(count["filled"] - count["broken"] - count["reworked"], 0)
    size = values.get("bottle_size") or 0.0
    about = {
        "entry": read.entry["id"], "tank": read.mark, "fill": held.get("fill", ""), "at": view.at,
        "what": held.get("what", ""), "batch": held.get("name", ""), "strength_pct": strength,
        "label_strength_pct": held.get("label_strength_pct"), "size_l": size, "good": good, **count,
        **{name: values.get(name) for name in SERIES},
    }  # fmt: skip
    goods.begin(post, about, spirit_of(good * size, strength), key, f"{good} bottles")
    post.move(key, "out:spill", spirit_of(count["broken"] * size, strength), "broken")
    post.move(key, "out:filter_loss", spirit_of(values.get("loss") or 0.0, strength), "heel_and_line")
    if values.get("tank_empty") == "yes":
        post.clear(read.mark, "out:gauge_difference", "bottling_close")
    return post.effect()
