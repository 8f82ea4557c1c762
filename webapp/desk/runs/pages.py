"""Still runs: the list, each with its curve, cuts, balance and yield, and several beside each other."""

from __future__ import annotations

import json
from datetime import UTC, datetime

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book import intake
from webapp.book.cellar.tastings import of_run
from webapp.book.checks.run_balance import is_stripping
from webapp.book.still import feints, runs, wishes, yields
from webapp.book.still.run_account import balance_of
from webapp.book.still.run_uncertain import load_open
from webapp.desk.blueprint import bp
from webapp.desk.figures import or_us, sign, value_of
from webapp.desk.runs.picture import WIDE, bars
from webapp.kinds.run_state import Run
from webapp.words.desk import say

BESIDE_MOST = 4


@bp.get("/runs")
@needs("floor")
def runs_page() -> ResponseReturnValue:
    """List runs, the newest first; tick some to see them beside each other."""
    found = runs.runs(current.book, limit=100)
    best = {line["run"] for wish in wishes.wishes(current.book).values() for line in wish["best"].values()}
    return render_template("desk/runs/runs.html", runs=found, best=best, most=BESIDE_MOST)


@bp.get("/runs/<run_id>")
@needs("floor")
def run_page(run_id: str) -> ResponseReturnValue:
    """Show one run: curve with cuts, balance, yield, every reading and fraction."""
    run = runs.run(current.book, run_id)
    if run is None:
        abort(404, say("desk-run-the_book_has_no_such"))
    balance = balance_of(run, current.site)
    wish = wishes.wishes(current.book).get(wishes.fruit_of(run["what"]))
    return render_template(
        "desk/runs/run.html",
        run=run,
        balance=balance,
        uncertain=load_open(current.book, run_id, run, balance) if balance else None,
        bars=bars(balance) if balance else [],
        wide=WIDE,
        yielded=yields.of_run(current.book, run),
        best=wish["best"].get(run["still"]) if wish else None,
        plan=wishes.plan_for(wish, run["still"]),
        curve=json.dumps(curve_of(run)), tastings=of_run(current.book, run["name"]),
    )


@bp.post("/runs/<run_id>/best")
@needs("distiller")
def best_run(run_id: str) -> ResponseReturnValue:
    """Name a run the best of its fruit on its still: an entry like any other."""
    run = runs.run(current.book, run_id)
    if run is None:
        abort(404, say("desk-run-the_book_has_no_such"))
    assert current.person
    why, now = request.form.get("why", "").strip()[:2000], datetime.now(UTC)
    result = intake.enter_page_entry(
        current.book,
        kind="best_run",
        mark=run["still"],
        values={"run": {"raw": run_id}} | ({"why": {"raw": why}} if why else {}),
        person=current.person["code"],
        role=(current.person.get("roles") or [""])[0],
        read_at=now.isoformat(timespec="seconds"),
        now=now,
    )
    if result["settled"] == "refused":
        flash((say("desk-run-not_marked") + " ") + " ".join(p["words"] for p in result["problems"]), "stop")
    else:
        flash(say("desk-run-marked_as_the_best_run", what=run['what'] or say("desk-run-this_still")), "entered")
    return redirect(url_for("desk.run_page", run_id=run_id))


@bp.get("/runs/beside")
@needs("floor")
def runs_beside() -> ResponseReturnValue:
    """Show chosen runs side by side: figures, cuts, and their curves over pure alcohol."""
    ids = list(dict.fromkeys(request.args.getlist("run")))[:BESIDE_MOST]
    known = runs.runs_by_id(current.book, ids)
    found = [known[run_id] for run_id in ids if run_id in known]
    yielded = yields.of_runs(current.book, found)
    lines = [
        {"run": run, "balance": balance_of(run, current.site), "yielded": yielded.get(run["id"]),
         "hearts": next((part for part in run["fractions"] if part["fraction"] == "hearts"), None),
         "cuts": {cut["event"]: cut for cut in run["cuts"]}}
        for run in found
    ]
    pure = {"pure": value_of(1.0, "LPA"), "pureUnit": or_us(
        say("desk-common-l_pure_alcohol"), say("desk-common-proof_gal2"),
    )}
    title = say("desk-beside-over_alcohol")
    curves = json.dumps([
        pure | curve_of(run) | {"name": run["name"] or run["started_at"][:10], "title": title} for run in found
    ])
    return render_template("desk/runs/beside.html", lines=lines, curves=curves, most=BESIDE_MOST)


@bp.get("/runs/yields")
@needs("floor")
def yields_page() -> ResponseReturnValue:
    """Show the yield of each ferment beside the official flat rates and the house's own years."""
    found = yields.batches(current.book)
    return render_template(
        "desk/runs/yields.html", found=found, years=yields.by_year(found), rates=yields.flat_rates(),
        year_names=sorted({one["began"][:4] for one in found}),
    )


@bp.get("/runs/feints")
@needs("floor")
def feints_page() -> ResponseReturnValue:
    """Show the account of feints by fruit."""
    return render_template("desk/runs/feints.html", lines=feints.account(current.book))


@bp.get("/runs/plans")
@needs("floor")
def plans_page() -> ResponseReturnValue:
    """Show the cut plans and best runs by fruit, with who, when and why."""
    return render_template("desk/runs/plans.html", wishes=wishes.wishes(current.book))


def curve_of(run: Run) -> dict[str, object]:
    """Return the data of a run that the desk's script draws."""
    lines = {line["entry"]: line for line in [*run["cuts"], *run["readings"]]}
    read = sorted((one for one in lines.values() if one.get("true_strength") is not None), key=lambda one: one["at"])
    strengths = [(line, line["true_strength"] or 0.0) for line in read]
    points = [[line["at"], value_of(pct, "pct_vol"), line.get("flow"), pct] for line, pct in strengths]
    cuts = [{"at": c["at"], "event": c["event"], "typed_at": c.get("typed_at")} for c in run["cuts"]]
    return {
        "points": points, "cuts": cuts, "unit": sign("pct_vol"), "started_at": run["started_at"],
        "ended_at": run["ended_at"], "first": first_part(run), "words": _curve_words(),
    }


def _curve_words() -> dict[str, str]:
    """Return the words that the desk's script writes beside the curve of a run."""
    parts = {part: say(f"desk-part-{part.replace(' ', '_')}") for part in ("heads", "hearts", "tails", "low wines")}
    return parts | {
        "title": say("desk-run-true_strength_through"), "line": say("desk-run-true_strength"),
        "late": say("desk-run-cut_logged", at="{at}", typed_at="{typed_at}"),
    }


def first_part(run: Run) -> str:
    """Return the part that runs before any cut: heads, or low wines where a receiver of the hearts alone is named."""
    to = run["receivers"]
    is_whole = is_stripping(run) and bool(to.get("hearts")) and not (to.get("heads") or to.get("tails"))
    return "low wines" if is_whole else "heads"
