"""Casks: filled, moved, topped up or put into another, emptied."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.stock import Amount, Posting, spirit_of, spirit_read, weighed

# What of a fill goes along when all of it goes into another vessel.
CARRIED = ("what", "material", "name", "lot", "aged_since", "fill_strength_pct", "distilled_pct", "label_strength_pct")


def cask_fill(read: Read, view: Any) -> Effect:
    """A fill begins: tank -> cask, by weight. What the book still had in the cask goes to not_accounted."""
    post, values = Posting(view), read.values
    post.remember(read)
    post.clear(read.mark, "out:not_accounted", "left_over")
    source = _other(values.get("from_vessel"), read)
    held = post.held(source) or {}
    row = view.vessel(read.mark) or {}
    amount = spirit_read(read)
    if any(amount):
        facts = carried(held) | {
            "lot": values.get("lot"), "use": values.get("use") or row.get("use"), "wood": row.get("wood"),
            "toast": row.get("toast"), "cooperage": values.get("cooperage"), "tare_kg": values.get("tare"),
            "fill_strength_pct": read.figures.get("true_strength"), "aged_since": view.at,
        }  # fmt: skip
        if values.get("what"):
            facts["what"] = values["what"]
        post.begin(read.mark, **facts)
        post.draw(f"v:{source}", f"v:{read.mark}", amount, "cask_fill")
    if values.get("place"):
        put_at(post, read.mark, values["place"])
    return post.effect()


def _other(source: str | None, read: Read) -> str:
    """Return the vessel it came from; from itself nothing comes, and the book is asked where it did come from."""
    return source if source and source != read.mark else ""


def cask_move(read: Read, view: Any) -> Effect:
    """Give a cask another place. Its stock stays."""
    post = Posting(view)
    post.remember(read)
    put_at(post, read.mark, read.values.get("to_place") or "")
    return post.effect()


def put_at(post: Posting, mark: str, place: str) -> None:
    """Note the place of a vessel."""
    post.put(f"v:{mark}", place=place.strip() or None)


def top_up(read: Read, view: Any) -> Effect:
    """Spirit from one vessel into a cask: vessel -> cask. The age of the mix is that of its youngest part.

    A recask takes all there is: the rest is the wood's, cask -> soakage.
    """
    post, values = Posting(view), read.values
    post.remember(read)
    source = _other(values.get("from_vessel"), read)
    held, key = post.held(source), f"v:{source}"
    amount = _amount(read, held)
    _pour(post, read.mark, held, amount, key, "recask" if values.get("work") == "recask" else "top_up")
    if values.get("work") == "recask" and post.held(source):
        post.clear(source, "out:soakage", "recask")
    return post.effect()


def _pour(post: Posting, mark: str, held: Mapping[str, Any] | None, amount: Amount, source: str, reason: str) -> None:
    if not any(amount):
        return
    here, row = post.held(mark), post.view.vessel(mark) or {}
    if here:
        post.describe(mark, aged_since=youngest(here, held))
    else:
        post.begin(mark, **carried(held or {}), use=row.get("use"), wood=row.get("wood"), toast=row.get("toast"))
    post.draw(source, f"v:{mark}", amount, reason)


def _amount(read: Read, held: Mapping[str, Any] | None) -> Amount:
    """Return the amount poured. Without a strength of its own it has the strength of the vessel it came from."""
    if "true_strength" in read.figures:
        return spirit_read(read)
    strength = (held or {}).get("strength_pct") or 0.0
    if "net_weight" in read.values:
        return weighed(read.values["net_weight"], strength)
    return spirit_of(read.values.get("volume"), strength)


def youngest(one: Mapping[str, Any], other: Mapping[str, Any] | None) -> str | None:
    """Return since when the youngest part of a mix is in wood; None where a part never was."""
    if other is None:
        return one.get("aged_since")
    if not one.get("lpa_ul"):
        return other.get("aged_since")
    times = one.get("aged_since"), other.get("aged_since")
    return max(times) if all(times) else None  # type: ignore[type-var]


def carried(held: Mapping[str, Any]) -> dict[str, Any]:
    """Return the facts of a fill that go along with its spirit."""
    return {name: held[name] for name in CARRIED if held.get(name) is not None}


def dump(read: Read, view: Any) -> Effect:
    """A cask is emptied: cask -> tank by weight.

    What went since the last gauge is booked before it, cask -> evaporation; what the wood keeps after it, cask ->
    soakage. Without a tare nobody can tell the two apart, and both are evaporation.
    """
    post, values = Posting(view), read.values
    post.remember(read)
    held, key = post.held(read.mark), f"v:{read.mark}"
    strength, dumped = read.figures.get("true_strength"), read.figures.get("net")
    tare = read.context.get("tare_kg")
    if held and tare is not None and strength is not None and values.get("gross", 0.0) > tare:
        total = values["gross"] - tare
        post.measure(read.mark, weighed(total, strength), "out:evaporation", "dump_gauge")
    amount = weighed(dumped, strength)
    tank = values.get("to_vessel") or ""
    there = post.held(tank)
    if any(amount):
        if there:
            post.describe(tank, aged_since=youngest(there, held))
        else:
            post.begin(tank, **carried(held or {}))
        post.move(key, f"v:{tank}", amount, "dump")
    kept = "out:soakage" if tare is not None else "out:evaporation"
    if post.held(read.mark):
        post.clear(read.mark, kept, "dump")
    return post.effect()

