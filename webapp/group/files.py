"""The group's files: a trace over all sites, and a period of all sites, each as CSV and as JSON."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterator
from typing import Any

from flask import Response, abort

from webapp.access import needs
from webapp.book.house import registry
from webapp.book.lineage.lineage import Trace
from webapp.book.periods.periods import Period
from webapp.book.periods.warnings import warnings
from webapp.book.periods.words import CAUTION
from webapp.desk.periods import rows as period_rows
from webapp.desk.trace import files as trace_files
from webapp.group import pages, shown
from webapp.group.links import Link
from webapp.group.pages import bp
from webapp.group.periods import Total
from webapp.group.sites import SiteRow
from webapp.kinds.as_data import safe_cell
from webapp.words.desk import say

TRACE_HEADS = ("site", "site_name", *trace_files.HEADS)
PERIOD_HEADS = ("period", "site", "site_name", *period_rows.CSV_HEADS[1:])
STEPS_MOST = 400_000  # flows looked at on the way back; a page looks at fewer


def _trace(site: str, key: str) -> Trace:
    tracing = pages.tracing()
    subject = tracing.find(f"{site}/{key}")
    if subject is None:
        abort(404, say("group-files-no_site_has_anything_to"))
    return tracing.trace(subject, back_most=STEPS_MOST)


@bp.get("/trace/<site>/<key>.csv")
@needs("floor")
def trace_csv(site: str, key: str) -> Response:
    """Send the trace as CSV: the recall list with every place that the spirit went to (`on`), then the fruit and spirit
    that it was made of (`back`).
    """
    made, names = _trace(site, key), pages.names()
    lines = (_with_site(row, names) for row in trace_files.rows(made, pages.removals(made)))
    return trace_files.csv_file(made, TRACE_HEADS, lines)


@bp.get("/trace/<site>/<key>.json")
@needs("floor")
def trace_json(site: str, key: str) -> Response:
    """Send the whole trace over all sites, with what went from site to site."""
    made, names = _trace(site, key), pages.names()
    on_the_way = {node[2:] for node in made.nodes if node[2:4] == "t/"}
    more = {"sites": names, "transfers": [_transfer(one) for one in pages.links().links if one.id in on_the_way]}
    return trace_files.json_file(made, trace_files.as_json(made, pages.removals(made)) | more)


@bp.get("/periods/<name>.csv")
@needs("floor")
def period_csv(name: str) -> Response:
    """Send a period of all sites as CSV: the sum as now known, then each site's own, as stated and as now known."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(PERIOD_HEADS)
    writer.writerows([safe_cell(one) for one in row] for row in _period_rows(pages.total(name)))
    return Response("\ufeff" + out.getvalue(), mimetype="text/csv", headers=_attached(f"{name}.csv"))


@bp.get("/periods/<name>.json")
@needs("floor")
def period_json(name: str) -> Response:
    """Send a period of all sites as JSON, with exact microlitres, each site's closes, and what went between sites."""
    total = pages.total(name)
    whole = {
        "period": total.name, "closed": total.closed == len(total.sites),
        "sum": [period_rows.account_data(one, shown.rows_of(one)) for one in total.accounts],
        "sites": [_site(row, own, name) for row, own in total.sites],
        "transfers": [_transfer(one) for one in total.transfers],
        "rounding": str(period_rows.ROUNDED), "caution": CAUTION,
    }
    text = json.dumps(whole, ensure_ascii=False, indent=1)
    return Response(text + "\n", mimetype="application/json", headers=_attached(f"{name}.json"))


def _with_site(row: dict[str, Any], names: dict[str, str]) -> dict[str, Any]:
    """Return a row of a trace with the name of its site; spirit between sites or outside has none."""
    site = row.get("site") or str(row.get("node", ""))[2:].partition("/")[0]
    return row | {"site": site if site in names else "", "site_name": names.get(site, "")}


def _period_rows(total: Total) -> Iterator[list[str]]:
    for account in total.accounts:
        for row in shown.rows_of(account):
            yield [total.name, "", "all sites", "now_known", *period_rows.account_cells(account.name, row)]
    for site, own in total.sites:
        for period, *rest in list(period_rows.csv_rows(own))[1:] if own else ():
            yield [period, site["site"], site["name"], *rest]


def _site(row: SiteRow, own: Period | None, name: str) -> dict[str, object]:
    about: dict[str, object] = {"id": row["site"], "name": row["name"]}
    if own is None:
        return about | {"period": name, "stated": [], "now_known": []}
    book = pages.folds().work(row["site"]).book
    return about | period_rows.as_json(own, registry.site(book), warnings(book, own))


def _transfer(link: Link) -> dict[str, object]:
    flows = {
        side: [
            {"entry": flow["entry"], "n": flow["n"], "at": flow["at"], "lpa_ul": flow["lpa_ul"]} for flow in some
        ]
        for side, some in (("sent", link.sent), ("received", link.received))
    }
    return {"from": link.sender, "to": link.receiver, "document": link.document, "goods": link.goods,
            "sent_ul": link.sent_ul, "received_ul": link.received_ul, **flows}


def _attached(name: str) -> dict[str, str]:
    return {"Content-Disposition": f'attachment; filename="cellarslate-group-{name}"'}


__all__ = ["bp"]
