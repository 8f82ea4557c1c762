"""Bottling: what left the tank in bottles, and what did not get into one."""

from __future__ import annotations

from webapp.kinds.amount import spirit_of
from webapp.kinds.effects import goods
from webapp.kinds.goods_state import BottlingFacts
from webapp.kinds.key import FILTER_LOSS, GAUGE_DIFFERENCE, SPILL, vessel_key
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.state import NO_FILL
from webapp.kinds.stock import Posting
from webapp.kinds.view import View


def bottling_close(read: Read, view: View) -> Effect:
    """Bottles at the strength of the tank: tank -> its bottles, broken ones -> spill, heel and line -> filter_loss.

    Reworked bottles went back into the tank. An empty tank leaves no rest: tank <-> gauge_difference. The bottling is
    an account of its own, `b:<root>`, with counts and case numbers; goods.py takes from it what leaves.
    """
    post = Posting(view)
    post.remember(read)
    key, held = vessel_key(read.mark), post.held(read.mark) or NO_FILL
    strength = held["strength_pct"] or held.get("label_strength_pct") or 0.0
    filled, broken, reworked, library = (_count(read, name) for name in ("filled", "broken", "reworked", "library"))
    good = max(filled - broken - reworked, 0)
    size = read.number("bottle_size") or 0.0
    about: BottlingFacts = {
        "entry": read.entry["id"], "tank": read.mark, "fill": held["fill"], "at": view.at,
        "what": held["what"], "batch": held["name"], "strength_pct": strength,
        "label_strength_pct": held.get("label_strength_pct"), "size_l": size, "good": good, "filled": filled,
        "broken": broken, "reworked": reworked, "library": library, "per_case": read.number("per_case"),
        "case_from": read.text("case_from"), "case_to": read.text("case_to"), "odd_case": read.text("odd_case"),
        "lot_mark": read.text("lot_mark"),
    }
    goods.begin_bottling(post, about, spirit_of(good * size, strength), key, f"{good} bottles")
    post.move(key, SPILL, spirit_of(broken * size, strength), "broken")
    post.move(key, FILTER_LOSS, spirit_of(read.number("loss") or 0.0, strength), "heel_and_line")
    if read.text("tank_empty") == "yes":
        post.clear(key, GAUGE_DIFFERENCE, "bottling_close")
    return post.effect()


def _count(read: Read, name: str) -> int:
    return max(round(read.number(name) or 0), 0)
