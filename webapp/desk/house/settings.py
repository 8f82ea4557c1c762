"""The house, its ranges, its instruments, and who changed what."""

from __future__ import annotations

from typing import Any

from flask import abort, current_app, flash, redirect, render_template, request, url_for

import webapp.kinds
from webapp.access import current, needs
from webapp.book.before.corrections import table_words
from webapp.book.house import registry
from webapp.book.periods.periods import accounts_of
from webapp.book.periods.season import FIRST_MONTH
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import InstrumentForm, LimitForm, SiteForm, figure
from webapp.keeping import schedule
from webapp.kinds.as_form import pairs
from webapp.trade import units
from webapp.trade.marks import BadMark, parse_mark


def _by() -> str:
    assert current.person
    code: str = current.person["code"]
    return code


@bp.get("/settings")
@needs("distiller")
def settings_page() -> Any:
    """Show the house, ranges, instruments and the last changes."""
    return _settings(_site_form())


@bp.post("/settings")
@needs("office")
def set_house() -> Any:
    """Change the house."""
    form = _site_form()
    if not form.validate():
        return _settings(form), 422
    kept = {
        "name": form.name.data,
        "units": form.units.data,
        "decimal_mark": form.decimal_mark.data,
        "accounts": form.accounts.data or accounts_of(registry.site(current.book)),
        "height_m": figure(form.height_m) or 0.0,
        "time_zone": form.time_zone.data or "",
        "season_month": int(form.season_month.data or FIRST_MONTH),
    }
    registry.set_site(current.book, kept, by=_by())
    flash("Kept.", "entered")
    return redirect(url_for("desk.settings_page"))


def _site_form() -> SiteForm:
    site = registry.site(current.book)
    height = site.get("height_m")
    site["season_month"] = str(site.get("season_month") or FIRST_MONTH)
    return SiteForm(data={**site, "accounts": accounts_of(site), "height_m": "" if height is None else f"{height:g}"})


def _settings(form: SiteForm) -> str:
    return render_template(
        "desk/house/settings.html",
        form=form,
        limits=[_shown(limit) for limit in registry.limits(current.book)],
        check_limits=registry.check_limits(current.book),
        instruments=registry.instruments(current.book),
        changes=registry.changes(current.book, 50),
        backups=schedule.describe_backups(current_app.config["DATA_DIR"]),
    )


def _shown(limit: dict[str, Any]) -> dict[str, Any]:
    kind = webapp.kinds.get(limit["kind"])
    spec = kind.field(limit["field"]) if kind else None
    symbol = units.symbol(spec.units[0]) if spec and spec.units else ""
    label = f"{kind.title}: {spec.label}" if kind and spec else f"{limit['kind']}: {limit['field']}"
    return {**limit, "label": label, "symbol": symbol}


def _targets() -> list[tuple[str, str]]:
    return [
        (f"{kind.name}.{spec.name}", f"{kind.title}: {spec.label} [{units.symbol(spec.units[0])}]")
        for kind in webapp.kinds.ALL
        for spec in kind.fields
        if spec.sort == "number"
    ]


@bp.route("/limits", methods=["GET", "POST"])
@needs("distiller")
def limits_page() -> Any:
    """Set a range that replaces a kind's own; empty boxes take the kind's own back."""
    form = LimitForm(request.form if request.method == "POST" else request.args)
    form.target.choices = pairs(_targets())
    if request.method == "POST" and form.validate():
        words = _set_limit(form)
        if words is None:
            flash("Kept. The vessels concerned are judged anew.", "entered")
            return redirect(url_for("desk.limits_page"))
        form.key.errors = [words]
    shown = [_shown(limit) for limit in registry.limits(current.book)]
    status = 422 if request.method == "POST" else 200
    return render_template("desk/house/limits.html", form=form, limits=shown), status


def _set_limit(form: LimitForm) -> str | None:
    scope, key = str(form.scope.data), (form.key.data or "").strip()
    if scope == "vessel":
        try:
            key = parse_mark(key)
        except BadMark as error:
            return str(error)
        if registry.vessel(current.book, key) is None:
            return f"The book knows no vessel {key}."
    elif scope != "site" and not key:
        return "Say which: the sort of vessel, or the material."
    kind, field = str(form.target.data).split(".", 1)
    usual = (figure(form.usual_low), figure(form.usual_high))
    possible = (figure(form.possible_low), figure(form.possible_high))
    for low, high in (usual, possible):
        if low is not None and high is not None and low > high:
            return f"From {low:g} to {high:g} is no range. Swap the two."
    registry.set_limit(current.book, scope, key if scope != "site" else "", kind, field, usual, possible, by=_by())
    return None


@bp.route("/instruments/new", methods=["GET", "POST"])
@bp.route("/instruments/<instrument_id>/edit", methods=["GET", "POST"])
@needs("distiller")
def instrument_edit(instrument_id: str | None = None) -> Any:
    """Add an instrument, or change one."""
    known = {row["id"]: row for row in registry.instruments(current.book)}
    row = known.get(instrument_id or "")
    if instrument_id and row is None:
        abort(404, "There is no such instrument.")
    shown = {**row, **{n: "" if row.get(n) is None else f"{row[n]:g}" for n in ("low", "high")},
             "corrections": table_words(row["corrections"])} if row else {}
    form = InstrumentForm(data=shown)
    if row:
        form.id.data = row["id"]
    if request.method == "POST" and form.validate():
        kept = {"id": str(form.id.data).upper(), "sort": form.sort.data, "title": form.title.data or "",
                "low": figure(form.low), "high": figure(form.high), "unit": form.unit.data or "",
                "due_on": form.due_on.data or None, "state": form.state.data,
                "corrections": form.corrections.data or ""}  # fmt: skip
        try:
            registry.put_instrument(current.book, kept, by=_by())
        except BookError as error:
            form.corrections.errors = [str(error)]
        else:
            flash("Kept.", "entered")
            return redirect(url_for("desk.instrument_page", instrument_id=kept["id"]))
    status = 422 if request.method == "POST" else 200
    return render_template("desk/house/instrument_edit.html", form=form, row=row), status
