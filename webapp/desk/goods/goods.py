"""Bottled goods on hand, and where cases went."""

from __future__ import annotations

import csv
import io
from typing import Final

from flask import Response, render_template
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.goods import goods
from webapp.book.goods.goods import BottlingOnHand, Removal
from webapp.book.periods.periods import litres, proof_gallons
from webapp.desk.blueprint import bp
from webapp.kinds.as_data import safe_cell

REMOVALS: Final = (
    "at", "happened", "cases", "bottles", "case_from", "case_to", "document", "to_whom", "batch", "lot_mark", "entry",
)
REMOVALS_SHOWN_MOST = 200


class Listed(Removal):
    """A removal with the names of its bottling."""

    batch: str
    lot_mark: str


@bp.get("/bottled")
@needs("floor")
def bottled_page() -> ResponseReturnValue:
    """List every bottling with its bottles on hand, and the last removals."""
    found = goods.bottlings(current.book)
    gone = _removals(found)
    return render_template(
        "desk/goods/bottled.html", found=found, gone=gone[:REMOVALS_SHOWN_MOST], n=len(gone), litres=litres,
        proof_gallons=proof_gallons,
    )


@bp.get("/bottled.csv")
@needs("floor")
def bottled_csv() -> Response:
    """Send every removal of bottled goods as CSV, newest first."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(REMOVALS)
    writer.writerows([safe_cell(line[name]) for name in REMOVALS] for line in _removals(goods.bottlings(current.book)))
    headers = {"Content-Disposition": 'attachment; filename="cellarslate-bottled-goods.csv"'}
    return Response("\ufeff" + out.getvalue(), mimetype="text/csv", headers=headers)


def _removals(found: list[BottlingOnHand]) -> list[Listed]:
    by_id = {one["id"]: one for one in found}
    lines: list[Listed] = [
        {**line, "batch": by_id[line["bottling"]].get("batch") or "",
         "lot_mark": by_id[line["bottling"]].get("lot_mark") or ""}
        for line in goods.removals(current.book, by_id)
    ]
    return sorted(lines, key=lambda line: (line["at"], line["id"]), reverse=True)
