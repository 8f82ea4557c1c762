"""Blind tastings: a tasting that cannot be held as it is set out, answers that cannot count, a key that is not the one.
"""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.view import Query
from webapp.book.checks.moves import vessel_name
from webapp.kinds.effects.tasting import fault_of_answer, is_never_tasted, key_fits, sample_mark, set_of
from webapp.kinds.key import tasting_key
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.tasting_texts import GLASSES, read_glasses, read_samples
from webapp.kinds.view import View


def tasting_set_out(read: Read, view: View) -> Iterable[Query]:
    """Heads among the samples, a name that is taken, parts nobody can read, glasses that are not those of the method.
    """
    name = read.text("name") or ""
    if view.get(tasting_key(name)):
        yield Query("tasting_named", "stop", "name", message("tasting_named", name=name[:40]))
    samples, odd = read_samples(read.text("samples") or "")
    servings, odd_too = read_glasses(read.text("glasses") or "")
    if odd:
        yield Query("tasting_part", "ask", "samples", message("tasting_part", part=odd[0]))
    for one in samples:
        if one["sort"] != "vessel":
            continue
        mark = sample_mark(one["name"])
        if view.vessel(mark) is None:
            yield Query("tasting_vessel", "ask", "samples", message("tasting_vessel", mark=mark[:40]))
        elif is_never_tasted(view.state(mark)):
            said = message("tasting_heads", vessel=vessel_name(mark, view))
            yield Query("tasting_heads", "stop", "samples", said)
    wanted = GLASSES.get(read.text("method") or "", len(samples))
    unlike = next((one for one in servings if len(one["codes"]) != wanted), None)
    if odd_too:
        yield Query("tasting_part", "ask", "glasses", message("tasting_part", part=odd_too[0]))
    elif unlike:
        said = message("tasting_glasses", person=unlike["person"], wanted=wanted)
        yield Query("tasting_glasses", "ask", "glasses", said)


def tasting_answered(read: Read, view: View) -> Iterable[Query]:
    """An answer to no tasting, after the opening, by nobody of it, a second time, or about a glass that was not there.
    """
    name = read.text("session") or ""
    known = view.get(tasting_key(name))
    if known is None:
        yield Query("tasting_unknown", "ask", "session", message("tasting_unknown", name=name[:40]))
        return
    match fault_of_answer(known, read):
        case "after":
            yield Query("tasting_after", "ask", "session", message("tasting_after", name=known["name"]))
        case "taster":
            said = message("tasting_taster", person=read.entry["person"], name=known["name"])
            yield Query("tasting_taster", "ask", "person", said)
        case "set":
            said = message("tasting_set", person=read.entry["person"], set=set_of(read))
            yield Query("tasting_set", "ask", "set_no", said)
        case "twice":
            said = message("tasting_twice", person=read.entry["person"], set=set_of(read))
            yield Query("tasting_twice", "ask", "set_no", said)
        case "code":
            said = message("tasting_code", code=(read.text("picked") or "–")[:20])
            yield Query("tasting_code", "ask", "picked", said)
        case "order":
            yield Query("tasting_order", "ask", "order", message("tasting_order", glasses=len(known["samples"])))


def tasting_opened(read: Read, view: View) -> Iterable[Query]:
    """A key of no tasting, or not the one that was sealed; a second opening; an opening before the last answer."""
    name = read.text("session") or ""
    known = view.get(tasting_key(name))
    if known is None:
        yield Query("tasting_unknown", "ask", "session", message("tasting_unknown", name=name[:40]))
    elif "opened" in known:
        yield Query("tasting_again", "ask", "session", message("tasting_again", name=known["name"]))
    elif not key_fits(known, read.text("key") or ""):
        yield Query("tasting_seal", "stop", "key", message("tasting_seal", name=known["name"]))
    elif len(known["answers"]) < len(known["servings"]):
        said = message("tasting_early", came=len(known["answers"]), sets=len(known["servings"]))
        yield Query("tasting_early", "note", "session", said)


def tasting_cited(read: Read, view: View) -> Iterable[Query]:
    """A plan names a tasting that the book has not, or that is not opened."""
    name = (read.text("tasting") or "").strip()
    known = view.get(tasting_key(name)) if name else None
    if name and (known is None or "opened" not in known):
        yield Query("tasting_cited", "ask", "tasting", message("tasting_cited", name=name[:40]))
