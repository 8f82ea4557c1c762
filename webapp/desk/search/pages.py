"""What answers to a text, by sort. A vessel's own mark leads to its page at once."""

from __future__ import annotations

from flask import redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.fold import states
from webapp.book.search import keeping, near
from webapp.book.search.finding import Found, find
from webapp.book.search.folding import TEXT_MOST, Wanted, read_wanted
from webapp.book.search.lines import ONLY_FOR
from webapp.desk.blueprint import bp
from webapp.desk.search.shown import CONTEXT_TYPING, GROUPS, list_groups

SHOWN, SHOWN_ALONE, SHOWN_TYPING = 8, 100, 4  # of each sort: on the page, where one sort is asked for, under the box


@bp.get("/search")
@needs("floor")
def search_page() -> ResponseReturnValue:
    """Show what answers, vessels first. `in` keeps one sort; `all` shows the list though a mark names one vessel."""
    wanted, only = _wanted(), request.args.get("in")
    only = only if only in GROUPS else None
    found = _find(wanted, only, SHOWN_ALONE if only else SHOWN)
    vessel = found.exact_vessel
    if vessel and not only and "all" not in request.args:
        return redirect(url_for("desk.vessel_page", mark=vessel.key))
    groups = list_groups(found, wanted)
    marks = [hit.key for hit in found.hits.get("vessel", [])]
    return render_template(
        "desk/search/search.html",
        wanted=wanted, only=only, groups=groups, most=SHOWN_ALONE, group_words=GROUPS,
        held=states.load_fills(current.book, marks) if marks else {},
        near=near.suggest(current.book, wanted) if wanted and not groups else [],
        is_behind=keeping.is_behind(current.book),
    )


@bp.get("/search/hits")
@needs("floor")
def search_hits() -> ResponseReturnValue:
    """Send the first that answer as a piece of a page, for the list under the box."""
    wanted = _wanted()
    groups = list_groups(_find(wanted, None, SHOWN_TYPING), wanted, CONTEXT_TYPING)
    return render_template("desk/search/hits.html", groups=groups, wanted=wanted)


def _wanted() -> Wanted:
    return read_wanted(request.args.get("q", "")[:TEXT_MOST])


def _find(wanted: Wanted, only: str | None, most: int) -> Found:
    hidden = {sort for sort, access in ONLY_FOR.items() if not current.may(access)}
    return find(current.book, wanted, hidden=hidden, only=only, most=most)
