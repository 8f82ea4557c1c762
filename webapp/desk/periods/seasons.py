"""Seasons in one sum; casks by kind and year filled."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import abort, render_template, request
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.cellar.years import by_kind_and_year
from webapp.book.house.uncertain import sum_of
from webapp.book.periods import season
from webapp.book.periods.footing import foot_amounts, in_litres, in_proof_gallons
from webapp.book.periods.periods import litres, proof_gallons
from webapp.book.record import months
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.periods.rows import KNOWN_STOCK, held, off_by_gal, off_by_l


@bp.get("/casks-by-year")
@needs("floor")
def casks_by_year_page() -> ResponseReturnValue:
    """Count casks by kind and year filled, now or at the end of a month; with `known`, how well that is known."""
    month, until = request.args.get("month", "").strip(), ""
    zone = str(current.site.get("time_zone") or "UTC")
    if month:
        try:
            until = months.month_start(months.next_month(months.months_of(month)[-1]), zone)
        except BookError as error:
            abort(404, str(error))
    rows = by_kind_and_year(current.book, until, is_known="known" in request.args)
    amounts = [row.lpa_ul for row in rows]
    shown = [foot_amounts(amounts, sum(amounts), measure) for measure in (in_litres(), in_proof_gallons())]
    return render_template(
        "desk/periods/casks_by_year.html", rows=list(zip(rows, *shown, strict=True)), month=month, total=sum(amounts),
        known=KNOWN_STOCK, whole=sum_of(row.known for row in rows) if rows else None, off_by_l=off_by_l,
        off_by_gal=off_by_gal, litres=litres, proof_gallons=proof_gallons,
        today=months.month_at(datetime.now(UTC).isoformat(timespec="seconds"), zone),
    )


@bp.get("/seasons")
@needs("floor")
def seasons_page() -> ResponseReturnValue:
    """Show each season in one sum: does its alcohol close?"""
    found = season.seasons(current.book, datetime.now(UTC), site=current.site)
    return render_template("desk/periods/seasons.html", found=found, held=held)
