"""Moves and dips of tanks: what was left behind, what does not fit, and a dip against the sum of moves."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.instruments import apart
from webapp.book.checks.likely import is_copied, is_slip
from webapp.book.checks.words import figure, rounded, typed, when
from webapp.kinds.amount import Amount, spirit_volume_ml
from webapp.kinds.expected import Expected, Suggestion
from webapp.kinds.key import Key
from webapp.kinds.message import Declared, Param, message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.spec import Effect
from webapp.kinds.state import EMPTY_VESSEL, NO_FILL, Emptied, Fill, State, Vessel
from webapp.kinds.stock import spirit_read
from webapp.kinds.view import View

LIMITS = declare(
    Limit("move_pct", 0.5, "%", "Left behind by a move"),
    Limit(
        "receiver_move_pct", 1.5, "%", "Left behind by a move from a receiver to the store",
        "Spirits Act 1880: natural waste from receiver to store",
    ),
    Limit("move_gain_pct", 0.3, "%", "More than the vessel had, taken by a move"),
    Limit("move_rest_pct", 5, "%", "More left than this was kept on purpose"),
    Limit("blend_pct", 0.3, "%", "A blend off the sum of what went in"),
    Limit("dip_pct", 1.0, "%", "A dip off the sum"),
    Limit("dip_least_l", 0.5, "L", "A dip off by less is not asked about"),
    Limit("strength_noise_pct", 0.1, "% vol", "What a glass may pretend"),
    Limit("distilled_off_pct", 1.0, "% vol", "Distilled at, off what stands in the receiver by"),
    Limit("emptied_h", 48, "h", "A vessel emptied within"),
)

MOVES, MOVES_LEAST = 4, 2  # moves from one vessel that make a custom, at most and at least
GAIN_LEAST_L = 0.02  # what rounding of a dip may pretend
GAUGED = ("gauge", "distilled_gauge", "cask_regauge", "bottling_gauge")
GAUGES = ("gauge", "distilled_gauge", "opening", "stock_count", "account_move", "bottling_gauge")
# What begins a fill, or says nothing of what a vessel holds; every other kind reads what is in it.
NOT_OF_CONTENTS = frozenset((
    "fruit_intake", "addition", "charge", "run_reading", "cut", "run_end", "fraction_gauge", "receipt", "cask_fill",
    "cask_move", "top_up", "stock_count", "cleaning", "shift_note", "opening",
))


def vessel_name(mark: str, view: View) -> str:
    """Return a vessel's name, or its mark where the book does not know it."""
    row = view.vessel(mark)
    return str(row["name"]) if row else mark


def move_balance(read: Read, view: View) -> Iterable[Query]:
    """Sent against got: a move that emptied a vessel but for a little, of which nobody has spoken."""
    held, other = view.state(read.mark)["holds"], read.text("to_vessel") or ""
    moved = spirit_read(read).lpa_ul / 1e6
    if not held or moved <= 0 or (not other and read.text("to_account") != "removed") or other == read.mark:
        return
    had = held["lpa_ul"] / 1e6
    short = had - moved
    row = view.vessel(read.mark) or NO_ROW
    is_receiver = row.get("sort") == "receiver"
    if had > 0 and -short > max(had * limit("move_gain_pct", view) / 100, GAIN_LEAST_L):
        if -short <= apart(read, view, "lpa"):
            return
        said = message(
            "move_gain", vessel=vessel_name(read.mark, view), had=rounded(had, 2, "LPA"),
            moved=rounded(moved, 2, "LPA"), more=rounded(-short, 2, "LPA"), share=rounded(-short / had * 100, 1, "pct"),
            most=figure(limit("move_gain_pct", view), 1, "pct"),
        )
        gain = limit("move_gain_pct", view) / 100
        yield Query("move_gain", "ask", "volume" if "volume" in read.values else "net_weight", said,
                    (_whole(had, limit("move_rest_pct", view) / 100, gain),))
        return
    most = limit("receiver_move_pct" if is_receiver else "move_pct", view)
    if had > 0 and short >= had * limit("move_rest_pct", view) / 100:
        if is_receiver:  # a tank gives parts of what it holds
            yield from _part(read, view, had, moved)
        return
    if had <= 0 or not had * most / 100 < short:
        return
    if short <= apart(read, view, "lpa"):
        return
    said = message(
        "move_balance" if other else "move_balance-off", vessel=vessel_name(read.mark, view),
        had=rounded(had, 2, "LPA"), moved=rounded(moved, 2, "LPA"), left=rounded(short, 2, "LPA"),
        share=rounded(short / had * 100, 1, "pct"), most=figure(most, 1, "pct"),
        **({"to": vessel_name(other, view)} if other else {}),
    )
    yield Query("move_balance", "ask", "volume" if "volume" in read.values else "net_weight", said,
                (_whole(had, most / 100, limit("move_gain_pct", view) / 100),))


def _part(read: Read, view: View, had: float, moved: float) -> Iterable[Query]:
    """Ask about a move of a part where a slip or the line before says that all of it was meant, or all went so far."""
    at = "volume" if "volume" in read.values else "net_weight"
    if read.text("to_account") == "removed" or not read.figures.get("lpa"):
        return
    gain = limit("move_gain_pct", view) / 100
    off = min(apart(read, view, "lpa") / moved, limit("move_rest_pct", view) / 100)
    expects = (_whole(had, max(off, gain), max(off, gain)),)
    if not (is_copied(read, view, at) or _all_went(read, view) or is_slip(read, at, expects)):
        return
    said = message("move_part", vessel=vessel_name(read.mark, view), had=rounded(had, 2, "LPA"),
                   moved=rounded(moved, 2, "LPA"), left=rounded(had - moved, 2, "LPA"))
    yield Query("move_part", "ask", at, said, expects)


def _all_went(read: Read, view: View) -> bool:
    """Return whether each of the last moves took all that was there: what was gauged after it had no remnant."""
    lines, gauged = view.recent(read.mark, "account_move")[-2:], view.recent(read.mark, "fraction_gauge")
    after = [next((one for one in gauged if one["at"] > line["at"]), None) for line in lines]
    return len(after) == 2 and all(one is not None and one["values"].get("remnant") == 0 for one in after)


def account_habit(read: Read, view: View) -> Iterable[Query]:
    """A move into another account or tank than those before it from this vessel; a deposit that changes none."""
    source, target, tank = read.text("from_account"), read.text("to_account"), read.text("to_vessel") or ""
    if read.text("purpose") == "deposit" and source and source == target:
        yield Query("account_same", "ask", "to_account", message("account_same", account=source))
        return
    lines = view.recent(read.mark, "account_move")[-MOVES:]
    lines = [line for line in lines if line["values"].get("purpose") == read.text("purpose")
             and line["values"].get("spirit") == read.text("spirit")]
    # One deposit of a spirit tells where the next of it goes; of other moves it takes two.
    if len(lines) < (1 if read.text("purpose") == "deposit" else MOVES_LEAST):
        return
    accounts = {line["values"].get("to_account") for line in lines}
    if len(accounts) == 1 and target and target not in accounts:
        was = str(accounts.pop())
        said = message("account_habit", account=read.param("to_account"),
                       usual=Declared(("choice", "account_move", "to_account", was)))
        yield Query("account_habit", "ask", "to_account", said, suggestions=(Suggestion("to_account", was, ""),))
        return
    tanks = {str(line["values"].get("to_vessel") or "") for line in lines}
    was = tanks.pop()
    if tanks or not was or not tank or tank == was or not _has_room(was, read, view):
        return
    said = message("moved_elsewhere", vessel=vessel_name(tank, view), usual=vessel_name(was, view))
    yield Query("moved_elsewhere", "ask", "to_vessel", said, suggestions=(Suggestion("to_vessel", was, ""),))


def _has_room(mark: str, read: Read, view: View) -> bool:
    held, capacity = view.state(mark)["holds"] or NO_FILL, (view.vessel(mark) or NO_ROW).get("capacity_l")
    return bool(capacity and (held["volume_l"] or 0.0) + spirit_read(read).volume_ml / 1000 <= capacity)


def _whole(had: float, less: float, more: float) -> Expected:
    """Return that all of a vessel was expected to go, but for such shares. had: pure alcohol in it [L]"""
    return Expected("lpa", had * (1 - less), had * (1 + more), had)


def account_changes(read: Read, view: View) -> Iterable[Query]:
    """What would change its account beside the quantity that is declared: the rest of a vessel, or what it joins."""
    source, target = read.text("from_account"), read.text("to_account") or ""
    held = view.state(read.mark)["holds"] if source else None
    if held and source and held["account"] != source:
        said = message("account_other", other=source, **_told_account(read, read.mark, held, view))
        yield Query("account_other", "ask", "from_account", said)
    mark = read.text("to_vessel") or read.mark
    if source and mark == read.mark:  # it changes account where it stands: that is what the entry declares
        return
    there = view.state(mark)["holds"]
    if there and target not in ("removed", there["account"]):
        said = message("account_joined", other=target, **_told_account(read, mark, there, view))
        yield Query("account_joined", "ask", "to_account", said)


def _told_account(read: Read, mark: str, held: Fill, view: View) -> dict[str, Param]:
    return {
        "vessel": vessel_name(mark, view), "held": rounded(held["lpa_ul"] / 1e6, 1, "LPA"), "account": held["account"],
        "moved": rounded(spirit_read(read).lpa_ul / 1e6, 1, "LPA"),
    }


def target_capacity(read: Read, view: View) -> Iterable[Query]:
    """More than the vessel that it goes into can hold."""
    mark = read.mark if read.kind.name == "top_up" else read.text("to_vessel") or ""
    row = view.vessel(mark) if mark else None
    capacity = row.get("capacity_l") if row else None
    if not row or not capacity or (mark == read.mark and read.kind.name != "top_up"):
        return
    more, held = spirit_read(read), view.state(mark)["holds"] or NO_FILL
    there = Amount(held["lpa_ul"], 0, held["mass_g"])
    litres = spirit_volume_ml(there.lpa_ul + more.lpa_ul, there.mass_g + more.mass_g) / 1000
    brim = capacity * (limit("cask_brim", view) if row.get("sort") == "cask" else 1.0)
    level = row.get("working_l") or brim
    if litres <= min(brim, level) + 0.05:
        return
    code, weight = ("target_capacity", "stop") if litres > brim + 0.05 else ("target_working_level", "ask")
    said = message(
        code, then=rounded(litres, 1, "L"), vessel=row["name"], holds=figure(capacity, 0, "L"),
        level=figure(level, 0, "L"), has=rounded(held["volume_l"] or 0.0, 1, "L") if held["fill"] else "none",
    )
    room = max(min(brim, level) - (held["volume_l"] or 0.0), 0.0)
    yield Query(code, weight, "to_vessel", said, (Expected("volume_20", 0.0, room, room),) if room else ())


def dip_sum(read: Read, view: View) -> Iterable[Query]:
    """A measured vessel against the book's sum: volume, and pure alcohol where the sum is of moves alone (a blend)."""
    held = view.state(read.mark)["holds"]
    row = view.vessel(read.mark) or NO_ROW
    if not held or held["mash"] or row.get("sort") not in ("tank", "receiver", "can") or not _measures_all(read):
        return
    now = spirit_read(read)
    litres, had = now.volume_ml / 1000, held["volume_ml"] / 1000
    if not litres or not had:
        return
    at = "volume" if "volume" in read.values else "net_weight"
    if abs(litres - had) > max(had * limit("dip_pct", view) / 100, limit("dip_least_l", view)):
        if abs(litres - had) <= apart(read, view, "volume_20"):
            return
        said = message(
            "dip_sum", dipped=rounded(litres, 1, "L"), vessel=vessel_name(read.mark, view), booked=rounded(had, 1, "L"),
            off=rounded(abs(litres - had), 1, "L"), side="above" if litres > had else "below",
            share=rounded(abs(litres - had) / had * 100, 1, "pct"),
        )
        least = max(had * limit("dip_pct", view) / 100, limit("dip_least_l", view))
        yield Query("dip_sum", "ask", at, said, (Expected("volume_20", had - least, had + least, had),))
        return
    if _is_gauged(read.mark, held["since"], view):
        return
    pure, booked = now.lpa_ul / 1e6, held["lpa_ul"] / 1e6
    noise = litres * limit("strength_noise_pct", view) / 100
    off = abs(pure - booked)
    if booked and off > booked * limit("blend_pct", view) / 100 + noise and off > apart(read, view, "lpa"):
        said = message(
            "blend_sum", went_in=rounded(booked, 2, "LPA"), measured=rounded(pure, 2, "LPA"),
            off=rounded(off, 2, "LPA"), side="more" if pure > booked else "less",
            share=rounded(off / booked * 100, 1, "pct"),
            usual=figure(limit("blend_pct", view), 1, "pct"),
        )
        most = booked * limit("blend_pct", view) / 100 + noise
        yield Query("blend_sum", "ask", "", said, (Expected("lpa", booked - most, booked + most, booked),))


def gauged_empty(read: Read, view: View) -> Iterable[Query]:
    """Stock gauged where the book has nothing: another vessel, or a fill that nobody logged."""
    lpa = read.figures.get("lpa")
    if not lpa or read.text("purpose") not in ("stock", "move") or view.state(read.mark)["holds"] is not None:
        return
    if emptied_by(read, view):
        return
    said = message("gauged_empty", vessel=vessel_name(read.mark, view), pure=rounded(lpa, 1, "LPA"))
    yield Query("gauged_empty", "ask", "", said)


def distilled_off(read: Read, view: View) -> Iterable[Query]:
    """Spirit in a receiver is as strong as it came off the still."""
    said_pct, now = read.number("distilling_strength"), read.figures.get("true_strength")
    if said_pct is None or now is None or (view.vessel(read.mark) or NO_ROW).get("sort") != "receiver":
        return
    held, most = view.state(read.mark)["holds"] or NO_FILL, limit("distilled_off_pct", view)
    if abs(said_pct - now) <= most or held.get("reduced"):
        return
    said = message("distilled_off", said=typed(read, "distilling_strength"), now=figure(now, 1, "pct_vol"))
    yield Query("distilled_off", "ask", "distilling_strength", said,
                (Expected("distilling_strength", now - most, now + most, now),))


def _measures_all(read: Read) -> bool:
    if read.kind.name == "account_move":  # of a move the quantity is what went
        return not read.text("to_vessel") and read.text("to_account") != "removed"
    return "true_strength" in read.figures and read.figures.get("volume_20") is not None


def _is_gauged(mark: str, since: str, view: View) -> bool:
    return any(line["at"] >= since for kind in GAUGES for line in view.recent(mark, kind)[-1:])


def emptied_vessel(read: Read, view: View) -> Iterable[Query]:
    """A figure on a vessel that another phone has emptied shortly before: held for a look, not lost."""
    if not read.mark or read.kind.name in NOT_OF_CONTENTS or view.state(read.mark)["holds"] is not None:
        return
    found = emptied_by(read, view)
    if not found or (read.kind.name in GAUGED and not read.figures.get("lpa")):
        return
    row = view.person(found["person"])
    who = row["name"] if row else found["person"]
    said = message(
        "emptied_vessel", vessel=vessel_name(read.mark, view), how=found["kind"], at=when(found["at"], read, view),
        by=who,
    )
    yield Query("emptied_vessel", "stop", "", said)


def emptied_by(read: Read, view: View) -> Emptied | None:
    """Return another phone's entry that emptied this vessel within the last days: kind, at, person; or None."""
    found = view.state(read.mark).get("emptied")
    if not found or found["device"] == read.entry["device"]:
        return None
    return found if seconds_between(found["at"], view.at) <= limit("emptied_h", view) * 3600 else None


def emptied(effect: Effect, read: Read, view: View) -> dict[Key, State]:
    """Return the states of the vessels that this entry empties or fills, with a note of which entry emptied them."""
    found: dict[Key, State] = {}
    line: Emptied = {"entry": read.entry["id"], "kind": read.kind.name, "at": view.at, "device": read.entry["device"],
            "person": read.entry["person"]}
    for key, state in effect.vessels():
        before = view.get(key) or EMPTY_VESSEL
        if before["holds"] is not None and state["holds"] is None:
            empty: Vessel = {**state, "emptied": line}
            found[key] = empty
        elif state["holds"] is not None and state.get("emptied"):
            filled: Vessel = {**state, "emptied": None}
            found[key] = filled
    return found
