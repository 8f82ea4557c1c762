"""Blind tastings, kept under `t:<name>`. No stock moves: what is poured is logged as a sample of its vessel."""

from __future__ import annotations

from webapp.kinds.key import Key, tasting_key, vessel_key
from webapp.kinds.read import Read
from webapp.kinds.remember import vessel, with_entry
from webapp.kinds.spec import NOTHING, Effect
from webapp.kinds.state import NO_FILL, State, Vessel
from webapp.kinds.tasting_state import Opened, Tasting, TastingAnswer
from webapp.kinds.tasting_texts import read_glasses, read_key, read_samples, seal_of
from webapp.kinds.view import View
from webapp.trade.marks import BadMark, parse_mark

NEVER_TASTED = ("heads", "feints", "foreshots")


def session(read: Read, view: View) -> Effect:
    """A tasting is set out. Of two with one name the first stands."""
    name = read.text("name") or ""
    if view.get(tasting_key(name)):
        return NOTHING
    samples, _ = read_samples(read.text("samples") or "")
    servings, _ = read_glasses(read.text("glasses") or "")
    made: Tasting = {
        "entry": read.entry["id"], "at": view.at, "person": read.entry["person"], "name": name.strip(),
        "question": read.text("question") or "", "method": read.text("method") or "",
        "alpha_pct": read.text("alpha") or "", "samples": samples, "servings": servings,
        "seal": read.text("seal") or "", "answers": [],
    }
    return Effect({**_remembered(made, read, view), tasting_key(name): made})


def answer(read: Read, view: View) -> Effect:
    """An answer joins its tasting, unless something is wrong with it: see `fault_of_answer`."""
    key = tasting_key(read.text("session"))
    known = view.get(key)
    if known is None or fault_of_answer(known, read):
        return NOTHING
    one: TastingAnswer = {
        "entry": read.entry["id"], "at": view.at, "person": read.entry["person"], "set_no": set_of(read),
        "picked": read.text("picked") or "", "order": (read.text("order") or "").split(),
        "sure": read.text("sure") or "", "gave_away": read.text("gave_away") or "",
    }
    changed: Tasting = {**known, "answers": [*known["answers"], one]}
    return Effect({key: changed})


def opened(read: Read, view: View) -> Effect:
    """The key is told. It counts once, and only where it is the one that was sealed."""
    key = tasting_key(read.text("session"))
    known = view.get(key)
    said = read.text("key") or ""
    if known is None or "opened" in known or not key_fits(known, said):
        return NOTHING
    now: Opened = {
        "entry": read.entry["id"], "at": view.at, "person": read.entry["person"], "key": said,
        "decision": read.text("decision") or "",
    }
    changed: Tasting = {**known, "opened": now}
    return Effect({**_remembered(known, read, view), key: changed})


def key_fits(tasting: Tasting, key: str) -> bool:
    """Return whether a key is the one that was sealed, and has letters for every set."""
    letters = read_key(key, tasting["method"], tasting["samples"], tasting["servings"])
    return letters is not None and seal_of(key) == tasting["seal"]


def set_of(read: Read) -> int:
    """Return which of a person's sets an answer is about, counted from 1."""
    return int(read.number("set_no") or 0)


def fault_of_answer(tasting: Tasting, read: Read) -> str:
    """Return why an answer cannot count: after, taster, twice, code or order; an empty text where nothing is wrong."""
    person, number = read.entry["person"], set_of(read)
    sets = [one for one in tasting["servings"] if one["person"] == person]
    served = next((one for one in sets if one["set_no"] == number), None)
    if "opened" in tasting:
        return "after"
    if served is None:
        return "set" if sets else "taster"
    if any((one["person"], one["set_no"]) == (person, number) for one in tasting["answers"]):
        return "twice"
    if tasting["method"] == "ranking":
        return "" if sorted((read.text("order") or "").split()) == sorted(served["codes"]) else "order"
    return "" if (read.text("picked") or "") in served["codes"] else "code"


def is_never_tasted(held: Vessel) -> bool:
    """Return whether a vessel holds heads, or feints, which have heads in them."""
    return (held["holds"] or NO_FILL)["what"].lower().startswith(NEVER_TASTED)


def sample_mark(name: str) -> str:
    """Return the mark of a vessel that is named as a sample, in stored form; as it was typed where it is none."""
    try:
        return parse_mark(name)
    except BadMark:
        return name


def _remembered(tasting: Tasting, read: Read, view: View) -> dict[Key, State]:
    """Return the vessels of a tasting with this entry among their recent ones."""
    marks = {sample_mark(one["name"]) for one in tasting["samples"] if one["sort"] == "vessel"}
    known = sorted(mark for mark in marks if view.vessel(mark))
    return {vessel_key(mark): with_entry(vessel(view, mark), read, view) for mark in known}
