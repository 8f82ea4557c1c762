"""Months and quarters of the tax accounts: seen, closed with a name, printed, and sent out."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Sequence
from datetime import UTC, datetime
from functools import partial

from flask import Response, abort, current_app, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.again import asked_again
from webapp.book.periods import closes, periods
from webapp.book.periods.known import Parts, load_held, parts_between
from webapp.book.periods.ledger import Ledger, load_ledger
from webapp.book.periods.open_questions import OpenQuestion, key_of, sentence_of
from webapp.book.periods.warnings import warnings
from webapp.book.periods.words import CAUTION
from webapp.book.record.errors import BookError
from webapp.book.record.units import house_units
from webapp.desk.blueprint import bp, local_time
from webapp.desk.periods.rows import (
    HELD,
    KNOWN,
    ROUNDED,
    as_json,
    csv_rows,
    held,
    held_account,
    held_rows,
    rounding,
    rows_of,
    title_of,
)
from webapp.keeping.witnesses import Witnesses
from webapp.signed_heads import SignedHead
from webapp.words.desk import say

HELD_MOST = 20  # vessels on a page: worth a gauge each


def _ledger() -> Ledger:
    return load_ledger(current.book, datetime.now(UTC), current.site)


def _period(ledger: Ledger, name: str) -> periods.Period:
    try:
        return periods.period_in(ledger, name, periods.accounts_of(current.site))
    except BookError as error:
        abort(404, str(error))


def _parts(period: periods.Period) -> Parts:
    return parts_between(current.book, period.start, period.until)


@bp.get("/periods")
@needs("floor")
def periods_page() -> ResponseReturnValue:
    """List every quarter and month with what was on hand at its end, newest first."""
    found = periods.periods_in(_ledger(), periods.accounts_of(current.site))
    return render_template("desk/periods/periods.html", found=found, held=held, title_of=title_of)


@bp.get("/periods/<name>")
@needs("floor")
def period_page(name: str) -> ResponseReturnValue:
    """Show one period: as stated, as now known, what stands against closing it, and what came late."""
    ledger = _ledger()
    period = _period(ledger, name)
    return render_template(
        "desk/periods/period.html",
        period=period,
        rows_of=rows_of,
        rounding=rounding,
        rounded=ROUNDED,
        title_of=title_of,
        notices=warnings(current.book, period),
        asked=[(one, _questions(one.questions)) for one in period.closed if one.questions],
        late=closes.late_entries(current.book) if _has_adjustments(period) or period.differs else [],
        ready=_draft(ledger, name)[0] is not None,
        caution=CAUTION,
    )


@bp.get("/periods/<name>/known")
@needs("floor")
def period_known(name: str) -> ResponseReturnValue:
    """Show how well each line of a period is known, by the instruments of its entries."""
    period = _period(_ledger(), name)
    return render_template(
        "desk/periods/known.html", period=period, rows_of=partial(rows_of, parts=_parts(period)), title_of=title_of,
        known=KNOWN, rounded=ROUNDED,
    )


@bp.get("/periods/<name>/held")
@needs("floor")
def period_held(name: str) -> ResponseReturnValue:
    """Show how well what stood in the vessels at the end of a period is known, the least known vessel first."""
    period = _period(_ledger(), name)
    vessels = load_held(current.book, period.until)
    return render_template(
        "desk/periods/held.html", period=period, vessels=vessels[:HELD_MOST], more=max(0, len(vessels) - HELD_MOST),
        accounts=held_rows(period, vessels), words=HELD, held=held, title_of=title_of,
    )


def _questions(found: Sequence[OpenQuestion]) -> list[dict[str, str]]:
    """Return open questions as the pages show them."""
    house = house_units(current.book)
    return [
        {
            "key": key_of(one), "entry": one["entry"], "weight": one["weight"], "mark": one["mark"], "at": one["at"],
            "kind": one["kind"].replace("_", " "), "words": sentence_of(one, house),
        }
        for one in found
    ]


def _has_adjustments(period: periods.Period) -> bool:
    return any(line.of for account in period.accounts for line in (*account.ins, *account.outs))


def _draft(ledger: Ledger, name: str) -> tuple[closes.Draft | None, str]:
    try:
        return closes.draft_of(current.book, ledger, name, datetime.now(UTC)), ""
    except BookError as error:
        return None, str(error)


@bp.route("/periods/<name>/close", methods=["GET", "POST"])
@needs("distiller")
def period_close(name: str) -> ResponseReturnValue:
    """Ask once more, then close: the figures that were shown are signed by who sends them."""
    ledger = _ledger()
    period = _period(ledger, name)
    assert current.person
    wrong = ""
    if request.method == "POST":
        if request.form.get("sure") != "yes":
            wrong = say("desk-periods-tick_that_you_have_looked")
        elif page := asked_again():
            return page
        else:
            try:
                digest, read = request.form.get("digest", ""), request.form.getlist("read")
                closes.close_period(current.book, name, current.person["code"], digest, datetime.now(UTC), read)
            except BookError as error:
                wrong = str(error)
                ledger = _ledger()  # the figures may have changed meanwhile: those now shown are those now signed
                period = _period(ledger, name)
            else:
                flash(say("desk-periods-is_closed_what_comes_to", name=name), "entered")
                return redirect(url_for("desk.period_page", name=name))
    draft, why_not = _draft(ledger, name)
    read = request.form.getlist("read")
    return render_template(
        "desk/periods/close.html", period=period, draft=draft, wrong=wrong or why_not, held_account=held_account,
        title_of=title_of, rows_of=rows_of, caution=CAUTION, read=read,
        questions=_questions(draft.questions) if draft else [],
        notices=[one for one in warnings(current.book, period) if one.code != "questions"],
    ), 422 if request.method == "POST" else 200


@bp.get("/periods/<name>.csv")
@needs("floor")
def period_csv(name: str) -> Response:
    """Send a period as CSV: one row a line, as stated and as now known."""
    return Response(period_csv_text(name), mimetype="text/csv", headers=_attached(f"{name}.csv"))


def period_csv_text(name: str) -> str:
    """Return a period as CSV; 404 where the book has none of that name."""
    out, period = io.StringIO(), _period(_ledger(), name)
    csv.writer(out).writerows(csv_rows(period, _parts(period)))
    return "\ufeff" + out.getvalue()


@bp.get("/periods/<name>.json")
@needs("floor")
def period_json(name: str) -> Response:
    """Send a period as JSON, with exact microlitres, notices and closes."""
    text = json.dumps(period_facts(name), ensure_ascii=False, indent=1)
    return Response(text + "\n", mimetype="application/json", headers=_attached(f"{name}.json"))


def period_facts(name: str) -> dict[str, object]:
    """Return a period as its JSON has it; 404 where the book has none of that name."""
    period = _period(_ledger(), name)
    whole = as_json(period, current.site, warnings(current.book, period, current.house), _parts(period))
    return whole | ({"heads": [one.told() for one in signed]} if (signed := _signed_heads(period)) else {})


def period_names() -> list[dict[str, object]]:
    """Return the months and quarters of the book, the newest first: `name`, and whether each `is_closed`."""
    found = periods.periods_in(_ledger(), periods.accounts_of(current.site))
    return [{"name": one.name, "is_closed": one.is_closed} for one in found]


@bp.get("/periods/<name>.pdf")
@needs("floor")
def period_pdf(name: str) -> Response:
    """Send a period as printable pages."""
    from webapp.desk.periods.paper import paper

    period, now = _period(_ledger(), name), datetime.now(UTC)
    house = current.site.get("name") or "Cellarslate"
    asked = [
        f"{one['mark']} {one['kind']}, {local_time(one['at'])}: {one['words']}"
        for closed in period.closed for one in _questions(closed.questions)
    ]
    printed, warned = local_time(now.isoformat(timespec="seconds")), warnings(current.book, period, current.house)
    made = paper(period, house, printed, warned, asked, _parts(period), _signed_heads(period))
    return Response(made, mimetype="application/pdf", headers=_attached(f"{name}.pdf", "inline"))


def _signed_heads(period: periods.Period) -> list[SignedHead]:
    """Return the heads of the book as it is now, for what leaves the house signed; none of an open period."""
    keeper: Witnesses = current_app.extensions["witnesses"]
    return keeper.sign_now(datetime.now(UTC)) if period.closed else []


def _attached(name: str, how: str = "attachment") -> dict[str, str]:
    return {"Content-Disposition": f'{how}; filename="cellarslate-{name}"'}
