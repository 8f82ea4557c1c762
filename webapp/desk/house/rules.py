"""By which rules the book is judged, and what came out otherwise under other ones: shown until a person has read it."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime

from flask import Response, abort, flash, redirect, render_template, url_for
from flask.typing import ResponseReturnValue

import webapp.kinds
from webapp.access import current, needs
from webapp.book.fold import differences
from webapp.book.fold.differences import Difference, Moved, Said
from webapp.book.fold.judgings import Judging, changed_parts, judgings
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.words.desk import Later, say
from webapp.words.kindwords import kind_in
from webapp.words.language import language

SHOWN_MOST = 200
PARTS = {
    "kinds": Later("desk-rules-kinds_of_entry"), "checks": "checks", "sums": Later("desk-rules-sums_and_tables"),
    "fold": Later("desk-rules-the_fold"),
}


@dataclass(slots=True)
class Changed:
    """What became of one question: the entries it came to, those it went from, and those where it weighs otherwise."""

    came: list[Difference] = field(default_factory=list)
    went: list[Difference] = field(default_factory=list)
    weighs: list[Difference] = field(default_factory=list)


@bp.get("/rules")
@needs("floor")
def rules_page() -> ResponseReturnValue:
    """List every judging of the whole book, the last first."""
    unread = differences.count_unread(current.book)
    return render_template("desk/house/rules.html", found=judgings(current.book)[:SHOWN_MOST], unread=unread)


@bp.get("/rules/<no>")
@needs("floor")
def judging_page(no: str) -> ResponseReturnValue:
    """Show one judging: sums that came out otherwise entry by entry, and questions that came or went by their code."""
    judging = _judging(no)
    found = differences.list_differences(current.book, judging)
    sums = [one for one in found if one.is_sum_changed]
    return render_template(
        "desk/house/judging.html", judging=judging, found=found, sums=sums[:SHOWN_MOST], sums_many=len(sums),
        questions=sorted(by_code(found).items()), most=SHOWN_MOST, title_of=title_of, moves=moves,
        parts=[PARTS.get(name, name) for name in changed_parts(current.book, judging)],
    )


@bp.post("/rules/<no>/read")
@needs("distiller")
def read_judging(no: str) -> ResponseReturnValue:
    """Note that this person has read what came out otherwise."""
    assert current.person
    judging = _judging(no)
    try:
        differences.note_read(current.book, judging.no, current.person["code"], datetime.now(UTC))
        flash(say("desk-rules-kept_you_have_read_it"), "entered")
    except BookError as error:
        flash(str(error), "stop")
    return redirect(url_for("desk.judging_page", no=judging.no))


@bp.get("/rules/<no>/entries.csv")
@needs("floor")
def judging_csv(no: str) -> Response:
    """Return all that came out otherwise as a file, a line an entry."""
    judging = _judging(no)
    lines = _csv_lines(differences.list_differences(current.book, judging))
    name = f"cellarslate-rules-{judging.no}.csv"
    return Response(lines, mimetype="text/csv", headers={"Content-Disposition": f'attachment; filename="{name}"'})


def by_code(found: list[Difference]) -> dict[str, Changed]:
    """Return the changes of each question, by code: entries where it came, went, or changed its weight."""
    codes: dict[str, Changed] = {}
    for one in found:
        before, after = ({asked.name: asked for asked in said.asked} for said in (one.before, one.after))
        for name in {*before, *after}:
            then, now = before.get(name), after.get(name)
            changed = codes.setdefault((then or now or differences.Asked("", "", "")).code, Changed())
            if then is None:
                changed.came.append(one)
            elif now is None:
                changed.went.append(one)
            elif then.weight != now.weight:
                changed.weighs.append(one)
    return {code: changed for code, changed in codes.items() if changed.came or changed.went or changed.weighs}


def title_of(one: Difference) -> str:
    """Return the title of an entry's kind."""
    kind = webapp.kinds.get(one.kind)
    return kind_in(kind, language()).title if kind else one.kind


def moves(said: Said) -> list[str]:
    """Return the amounts that an entry moves, a line a flow: source, target, amount."""
    return [f"{_place(flow.source)} → {_place(flow.target)}: {_amount(flow)}" for flow in said.moved] or ["nothing"]


def _place(account: str) -> str:
    sort, _, name = account.partition(":")
    return {"v": name, "r": say("desk-rules-the_run"), "b": "bottles"}.get(sort, name.replace("_", " "))


def _amount(flow: Moved) -> str:
    parts = (
        (flow.lpa_ul, say(
            "desk-rules-l_pure_alcohol", flow=f"{flow.lpa_ul / 1000000.0:.3f}",
        )), (flow.volume_ml, f"{flow.volume_ml / 1e3:.1f} L"),
        (flow.mass_g, f"{flow.mass_g / 1e3:.1f} kg"),
    )
    return ", ".join(words for amount, words in parts if amount)


def _judging(no: str) -> Judging:
    found = next((one for one in judgings(current.book) if str(one.no) == no), None)
    if found is None:
        abort(404, say("desk-rules-the_book_was_never_judged"))
    return found


def _csv_lines(found: list[Difference]) -> Iterator[str]:
    heads = ["entry", "kind", "mark", "person", "read_at", "came", "went", "moves_before", "moves_now"]
    yield "\ufeff" + _csv_line(heads)
    for one in found:
        asked = [" ".join(f"{each.code} ({each.weight})" for each in side) for side in (one.came, one.went)]
        moved = ["; ".join(moves(side)) if one.is_sum_changed else "" for side in (one.before, one.after)]
        yield _csv_line([one.entry, one.kind, one.mark, one.person, one.read_at, *asked, *moved])


def _csv_line(cells: list[str]) -> str:
    out = io.StringIO()
    csv.writer(out).writerow(cells)
    return out.getvalue()
