"""The list the distiller opens after work: what the book asks, with three answers to each."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book import intake
from webapp.book.fold import queries
from webapp.book.fold.own_limits import own_limits
from webapp.book.fold.queries import Question
from webapp.book.limits import ALL
from webapp.book.periods import notices
from webapp.book.record import log
from webapp.desk.blueprint import bp, read_heading
from webapp.desk.forms import AnswerForm
from webapp.desk.shown import entry_lines
from webapp.words.desk import say

SHOWN_MOST = 200


@bp.get("/queries")
@needs("floor")
def queries_page() -> ResponseReturnValue:
    """Show open queries, the heaviest first; notes only when asked for."""
    weight = request.args.get("weight") or None
    mark = request.args.get("mark") or None
    found = queries.open_queries(current.book, weight=weight, mark=mark, limit=SHOWN_MOST)
    if weight is None:
        found = [query for query in found if query["weight"] != "note"]
    rows = list(log.get_all(current.book, (query["entry"] for query in found)).values())
    return render_template(
        "desk/entries/queries.html",
        found=found,
        groups=by_entry(found),
        lines={row["id"]: row for row in entry_lines(current.book, rows)},
        counts=read_heading().counts,
        own=own_limits(current.book, found),
        limits=ALL,
        weight=weight,
        mark=mark,
        form=AnswerForm(),
        most=SHOWN_MOST,
        notices=[] if weight or mark else notices.notices(current.book, datetime.now(UTC), current.site),
    )


def by_entry(found: list[Question]) -> list[list[Question]]:
    """Return queries with those to one entry together, in the order of the first of each."""
    groups: dict[str, list[Question]] = {}
    for query in found:
        groups.setdefault(query["entry"], []).append(query)
    return list(groups.values())


@bp.post("/entries/<entry_id>/answer")
@needs("distiller")
def answer(entry_id: str) -> ResponseReturnValue:
    """Enter an answer: it stands, or it is struck, with the reason. An entry like any other."""
    form = AnswerForm()
    back = request.form.get("back") or url_for("desk.queries_page")
    if not back.startswith("/desk"):
        back = url_for("desk.queries_page")
    if not form.validate():
        wrong = " ".join(str(words) for errors in form.errors.values() for words in errors)
        flash(say("desk-queries-not_answered", why=wrong), "stop")
        return redirect(back)
    assert current.person
    now = datetime.now(UTC)
    values = {
        "entry": {"raw": entry_id},
        "verdict": {"raw": form.verdict.data},
        "reason": {"raw": form.reason.data.strip()},
    }
    if form.query.data:
        values["query"] = {"raw": form.query.data}
    result = intake.enter_page_entry(
        current.book,
        kind="answer",
        mark="",
        values=values,
        person=current.person["code"],
        role=(current.person.get("roles") or [""])[0],
        read_at=now.isoformat(timespec="seconds"),
        now=now,
    )
    if result["settled"] == "refused":
        flash(say("desk-queries-not_answered", why=" ".join(p["words"] for p in result["problems"])), "stop")
    else:
        flash(
            say("desk-queries-it_stands") if form.verdict.data == "stands" else say(
                "desk-queries-struck_the_entry_stays_legible",
            ),
            "entered",
        )
    return redirect(back)
