"""Bottled goods on hand and where cases went; casks by kind and year; seasons in one sum."""

from __future__ import annotations

import csv
import io
from datetime import UTC, datetime
from typing import Any

from flask import Response, abort, render_template, request

from webapp.access import current, needs
from webapp.book.cellar.years import by_kind_and_year
from webapp.book.goods import goods
from webapp.book.house import registry
from webapp.book.periods import season
from webapp.book.periods.periods import litres, proof_gallons
from webapp.book.record import months
from webapp.book.record.errors import BookError
from webapp.desk import bp
from webapp.kinds.as_data import cell

REMOVALS = ("at", "happened", "cases", "bottles", "case_from", "case_to", "document", "to_whom", "batch", "lot_mark",
            "entry")  # fmt: skip
REMOVALS_SHOWN_MOST = 200


@bp.get("/bottled")
@needs("floor")
def bottled_page() -> Any:
    """List every bottling with its bottles on hand, and the last removals."""
    found = goods.bottlings(current.book)
    gone = _removals(found)
    return render_template(
        "desk/bottled.html", found=found, gone=gone[:REMOVALS_SHOWN_MOST], n=len(gone), litres=litres,
        proof_gallons=proof_gallons,
    )  # fmt: skip


@bp.get("/bottled.csv")
@needs("floor")
def bottled_csv() -> Response:
    """Send every removal of bottled goods as CSV, newest first."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(REMOVALS)
    writer.writerows([cell(line[name]) for name in REMOVALS] for line in _removals(goods.bottlings(current.book)))
    headers = {"Content-Disposition": 'attachment; filename="cellarslate-bottled-goods.csv"'}
    return Response("\ufeff" + out.getvalue(), mimetype="text/csv", headers=headers)


def _removals(found: list[dict[str, Any]]) -> list[dict[str, Any]]:
    by_id = {one["id"]: one for one in found}
    lines = [
        line | {name: by_id[line["bottling"]].get(name) or "" for name in ("batch", "lot_mark")}
        for line in goods.removals(current.book, by_id)
    ]
    return sorted(lines, key=lambda line: (line["at"], line["id"]), reverse=True)


@bp.get("/casks-by-year")
@needs("floor")
def casks_by_year_page() -> Any:
    """Count casks by kind and year filled, now or at the end of a month."""
    month, until = request.args.get("month", "").strip(), ""
    zone = str(registry.site(current.book).get("time_zone") or "UTC")
    if month:
        try:
            until = months.begins(months.next_month(months.months_of(month)[-1]), zone)
        except BookError as error:
            abort(404, str(error))
    rows = by_kind_and_year(current.book, until)
    return render_template(
        "desk/casks_by_year.html", rows=rows, month=month, litres=litres, proof_gallons=proof_gallons,
        today=months.month_at(datetime.now(UTC).isoformat(timespec="seconds"), zone),
    )  # fmt: skip


@bp.get("/seasons")
@needs("floor")
def seasons_page() -> Any:
    """Show each season in one sum: does its alcohol close?"""
    return render_template("desk/seasons.html", found=season.seasons(current.book, datetime.now(UTC)), litres=litres)
