"""Blind tastings: the list of them, one set out and opened, and the sheet for whoever pours."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import Response, abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book import intake
from webapp.book.cellar import tasting_draw, tastings
from webapp.book.fold import states
from webapp.book.goods import bottlings
from webapp.book.house import people, registry
from webapp.book.record import log
from webapp.book.record.rows import Logged
from webapp.book.still import runs
from webapp.desk.blueprint import bp
from webapp.desk.figures import amount
from webapp.desk.tasting.form import TastingForm
from webapp.desk.tasting.words import finding, found_by, guess_bars
from webapp.kinds.effects.tasting import NEVER_TASTED
from webapp.kinds.tasting_session import METHODS
from webapp.kinds.tasting_state import Tasting
from webapp.kinds.tasting_texts import glasses_text, samples_text
from webapp.trade import units
from webapp.words.desk import say

SORTS = ("cask", "tank", "receiver", "can")
RUNS_MOST, BATCHES_MOST = 20, 20
METHOD_NAMES = dict(METHODS)
Choices = list[tuple[str, str]]


@bp.get("/tastings")
@needs("floor")
def tastings_page() -> ResponseReturnValue:
    """List the blind tastings, the newest first."""
    found = tastings.load_tastings(current.book)
    told = {one["name"]: finding(one) for one in found}
    return render_template("desk/tasting/tastings.html", found=found, told=told, methods=METHOD_NAMES)


@bp.route("/tastings/new", methods=["GET", "POST"])
@needs("distiller")
def tasting_new() -> ResponseReturnValue:
    """Set out a tasting: draw codes and orders, seal the key, and enter all but the key."""
    form = TastingForm()
    choices, heads = _choices()
    crew = people.people(current.book, with_retired=False)
    for what, _ in form.boxes():
        what.choices = [("", "–"), *choices]
    names = [(one["code"], one["name"]) for one in crew]
    form.poured_by.choices, form.tasters.choices = [("", say("desk-tasting-not_said")), *names], names
    wrong: list[str] = []
    if request.method == "POST":
        is_whole = form.validate()
        wrong = form.faults(heads, {one["code"] for one in crew})
        if is_whole and not wrong and tastings.load_tasting(current.book, str(form.name.data)):
            wrong = [say("desk-tasting-the_book_has_a_tasting")]
        if is_whole and not wrong:
            name = _enter(form)
            flash(say("desk-tasting-the_codes_are_drawn_and"), "entered")
            return redirect(url_for("desk.tasting_page", name=name))
    else:
        form.name.data = _next_name()
        form.served.data = "50" if current.site.get("units") == "us" else "25"
        form.served_unit.data = "proof" if current.site.get("units") == "us" else "pct_vol"
    page = render_template("desk/tasting/new.html", form=form, wrong=wrong, found_by=found_by())
    return page, 422 if request.method == "POST" else 200


def _choices() -> tuple[Choices, set[str]]:
    """Return what may be a sample, and the marks of vessels with heads: nobody is offered these."""
    rows = [row for row in registry.vessels(current.book) if row["sort"] in SORTS and not row["retired"]]
    held = states.load_fills(current.book, (row["mark"] for row in rows))
    offered: Choices = []
    heads: set[str] = set()
    for row in rows:
        fill = held.get(row["mark"])
        if not fill or fill["mash"]:
            continue
        if fill["what"].lower().startswith(NEVER_TASTED):
            heads.add(row["mark"])
        else:
            offered.append((f"vessel:{row['mark']}", f"{row['name'] or row['mark']}, {fill['what']} {fill['name']}"))
    offered += [(f"run:{run['name']}", say("desk-tasting-run2", run=run['name'], what=run['what']))
                for run in runs.runs(current.book, limit=RUNS_MOST) if run["name"]]
    batches = [str(one["name"]) for one in bottlings.batches(current.book)[:BATCHES_MOST]]
    return [*offered, *((f"batch:{name}", say("desk-tasting-batch", name=name)) for name in batches)], heads


def _next_name() -> str:
    year = datetime.now(current.zone).strftime("%y")
    taken = {one["name"].casefold() for one in tastings.load_tastings(current.book)}
    return next(name for n in range(1, 1000) if (name := f"T-{year}-{n:02d}").casefold() not in taken)


def _enter(form: TastingForm) -> str:
    samples, tasters = form.samples(), list(dict.fromkeys(form.tasters.data))
    servings, key = tasting_draw.draw_tasting(form.method.data, len(samples), tasters, int(form.sets.data or 1))
    name = str(form.name.data).strip()
    seal = tasting_draw.keep_key(current.book, key)
    _log("tasting_session", {
        "name": name, "question": str(form.question.data).strip(), "method": form.method.data,
        "alpha": form.alpha.data, "samples": samples_text(samples), "poured_by": form.poured_by.data or "",
        "glasses": glasses_text(servings), "seal": seal,
    }, served=(str(form.served.data), form.served_unit.data))
    return name


def _log(kind: str, texts: dict[str, str], served: tuple[str, str] | None = None) -> None:
    assert current.person
    values: dict[str, object] = {name: {"raw": text} for name, text in texts.items() if text}
    if served:
        values["reduced_to"] = {"raw": served[0], "unit": served[1]}
    now = datetime.now(UTC)
    intake.enter_page_entry(
        current.book, kind=kind, mark="", values=values, person=current.person["code"],
        role=(current.person.get("roles") or [""])[0], read_at=now.isoformat(timespec="seconds"), now=now,
    )


def known_tasting(name: str) -> Tasting:
    """Return a tasting of the book by its name; 404 where there is none."""
    found = tastings.load_tasting(current.book, name[:80])
    if found is None:
        abort(404, say("desk-tasting-the_book_has_no_tasting"))
    return found


def _may_pour(tasting: Tasting) -> bool:
    """Say whether somebody may see the key before the opening: who pours, or a distiller who does not taste."""
    assert current.person
    code = current.person["code"]
    return code not in {one["person"] for one in tasting["servings"]} and (
        current.may("distiller") or code == _poured_by(tasting))


def _poured_by(tasting: Tasting) -> str:
    row = log.load_entry(current.book, tasting["entry"])
    return str((row["entry"]["values"].get("poured_by") or {}).get("raw") or "") if row else ""


def _may_open(tasting: Tasting) -> bool:
    """Say whether somebody may open it: a distiller; one who tastes only when the last answer is in."""
    is_complete = len(tasting["answers"]) >= len(tasting["servings"])
    return current.may("distiller") and (is_complete or _may_pour(tasting))


@bp.get("/tastings/<name>")
@needs("floor")
def tasting_page(name: str) -> ResponseReturnValue:
    """Show a tasting: who has answered, and once it is open what it found."""
    tasting = known_tasting(name)
    told = tastings.tell(tasting)
    answered = {(one["person"], one["set_no"]) for one in tasting["answers"]}
    rows = log.get_all(current.book, [tasting["entry"], *(one["entry"] for one in tasting["answers"]),
                                      *([tasting["opened"]["entry"]] if "opened" in tasting else [])])
    opened_at = rows[tasting["opened"]["entry"]]["received_at"] if "opened" in tasting else ""
    late = [one["person"] for one in tasting["answers"] if opened_at and rows[one["entry"]]["received_at"] > opened_at]
    is_open = "opened" in tasting
    return render_template(
        "desk/tasting/tasting.html", tasting=tasting, told=told, finding=finding(tasting),
        method=METHOD_NAMES[tasting["method"]], bars=guess_bars(told, tasting["method"]) if told else [],
        answered=answered, may_pour=not is_open and _may_pour(tasting), may_open=not is_open and _may_open(tasting),
        served=_served(rows[tasting["entry"]]), late=late,
        names={one["code"]: one["name"] for one in people.people(current.book)},
    )


def _served(row: Logged | None) -> str:
    given = (row["entry"]["values"].get("reduced_to") if row else None) or {}
    try:
        typed = units.parse_number(str(given.get("raw") or ""))
        return amount(float(units.to_canonical(typed, str(given.get("unit") or ""))), "pct_vol", 1)
    except ValueError:
        return ""


@bp.post("/tastings/<name>/open")
@needs("distiller")
def tasting_open(name: str) -> ResponseReturnValue:
    """Open a tasting: its key becomes an entry, and answers after it do not count."""
    tasting = known_tasting(name)
    if not _may_open(tasting):
        abort(403, say("desk-tasting-you_taste_in_this_one2"))
    key = tasting_draw.load_key(current.book, tasting["seal"])
    if key is None:
        flash(say("desk-tasting-its_key_is_not_in"),
              "stop")
    elif "opened" not in tasting:
        decision = request.form.get("decision", "").strip()[:500]
        _log("tasting_result", {"session": tasting["name"], "key": key, "decision": decision})
        flash(say("desk-tasting-it_is_open_answers_from"), "entered")
    return redirect(url_for("desk.tasting_page", name=tasting["name"]))


@bp.get("/tastings/<name>/serving.pdf")
@needs("floor")
def serving_pdf(name: str) -> Response:
    """Send the serving sheet for whoever pours: the code of each glass and what goes into it."""
    from webapp.desk.paper.imprint import imprint_of
    from webapp.desk.paper.serving import serving_paper

    tasting = known_tasting(name)
    if "opened" not in tasting and not _may_pour(tasting):
        abort(403, say("desk-tasting-this_sheet_says_which_sample"))
    key = tasting["opened"]["key"] if "opened" in tasting else tasting_draw.load_key(current.book, tasting["seal"])
    row = log.load_entry(current.book, tasting["entry"])
    body = serving_paper(
        tasting, tastings.letters_of(tasting, key or ""),
        imprint_of(url_for("desk.tasting_page", name=tasting["name"])),
        method=METHOD_NAMES[tasting["method"]], served=_served(row),
        names={one["code"]: one["name"] for one in people.people(current.book)},
    )
    kept = "".join(one if one.isalnum() or one in "-_" else "-" for one in tasting["name"].lower())[:60]
    headers = {"Content-Disposition": f'inline; filename="serving-{kept}.pdf"'}
    return Response(body, mimetype="application/pdf", headers=headers)
