"""Still runs: the list, and each with its curve and cuts."""

from __future__ import annotations

import json
from typing import Any

from flask import abort, render_template

from webapp.access import current, needs
from webapp.book import runs
from webapp.desk import bp


@bp.get("/runs")
@needs("floor")
def runs_page() -> Any:
    """List runs, the newest first."""
    return render_template("desk/runs.html", runs=runs.runs(current.book, limit=100))


@bp.get("/runs/<run_id>")
@needs("floor")
def run_page(run_id: str) -> Any:
    """Show one run: curve with cuts, every reading, fractions and pure alcohol in and out."""
    run = runs.run(current.book, run_id)
    if run is None:
        abort(404, "The book has no such run. Look for it in the list of runs.")
    return render_template("desk/run.html", run=run, balance=_balance(run), curve=json.dumps(_curve(run)))


def _balance(run: dict[str, Any]) -> dict[str, float] | None:
    """Return pure alcohol in, out, and not accounted; None until every fraction that matters is gauged. [L]"""
    charged = run["charge"]["lpa_l"]
    parts = {part["fraction"] for part in run["fractions"]}
    if not charged or not ({"hearts", "low_wines"} & parts):
        return None
    out = sum(part["lpa_l"] or 0.0 for part in run["fractions"])
    return {"charged": charged, "out": out, "open": charged - out, "share_pct": 100 * (charged - out) / charged}


def _curve(run: dict[str, Any]) -> dict[str, Any]:
    points = [[r["at"], r["true_strength"]] for r in run["readings"] if r.get("true_strength") is not None]
    cuts = [{"at": c["at"], "event": c["event"]} for c in run["cuts"]]
    return {"points": points, "cuts": cuts, "started_at": run["started_at"], "ended_at": run["ended_at"]}
