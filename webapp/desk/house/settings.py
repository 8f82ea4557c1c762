"""The house, its instruments, and who changed what."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

from flask import abort, current_app, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.again import fresh
from webapp.access.journal import note
from webapp.book.before.corrections import table_words
from webapp.book.house import registry
from webapp.book.periods.periods import accounts_of
from webapp.book.periods.season import FIRST_MONTH
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import BackupsForm, InstrumentForm, SiteForm, figure
from webapp.desk.house.limits import set_ranges
from webapp.keeping import schedule
from webapp.sealed import recipient_of
from webapp.words.catalogue import ENGLISH
from webapp.words.desk import say


def _by() -> str:
    assert current.person
    code: str = current.person["code"]
    return code


@bp.get("/settings")
@needs("distiller")
def settings_page() -> ResponseReturnValue:
    """Show the house, ranges, instruments and the last changes."""
    return _settings(_site_form())


@bp.post("/settings/backups")
@needs("office")
@fresh
def set_backups() -> ResponseReturnValue:
    """Name the folder of the backups, or say that they are made another way."""
    form = BackupsForm()
    if form.validate():
        try:
            _keep_backups(form)
        except BookError as error:
            form.folder.errors = [str(error)]
        else:
            flash(say("desk-settings-kept"), "entered")
            return redirect(url_for("desk.settings_page", _anchor="backups"))
    return _settings(_site_form(), form), 422


def _keep_backups(form: BackupsForm) -> None:
    folder, named = current_app.config["DATA_DIR"], (form.folder.data or "").strip()
    if named:
        schedule.check_folder(folder, Path(named))
        plan = schedule.Plan(Path(named), timedelta(hours=int(form.every.data)), int(form.keep.data))
        schedule.keep_plan(folder, plan)
    else:
        schedule.keep_plan(folder, None, is_elsewhere=bool(form.elsewhere.data))
    note("backup", about=f"from now on to {named}" if named else "from now on none by the clock")


def _backups_form() -> BackupsForm:
    folder = current_app.config["DATA_DIR"]
    plan = schedule.read_plan(folder)
    if plan is None:
        is_elsewhere = not schedule.is_asked(folder) and not schedule.read_status(folder)
        return BackupsForm(formdata=None, data={"elsewhere": is_elsewhere})
    every = f"{plan.every / timedelta(hours=1):g}"
    return BackupsForm(formdata=None, data={"folder": str(plan.folder), "every": every, "keep": str(plan.keep)})


@bp.post("/settings")
@needs("office")
def set_house() -> ResponseReturnValue:
    """Change the house."""
    form = _site_form()
    if not form.validate():
        return _settings(form), 422
    kept = {
        "name": form.name.data,
        "units": form.units.data,
        "decimal_mark": form.decimal_mark.data,
        "accounts": form.accounts.data or accounts_of(current.site),
        "height_m": figure(form.height_m) or 0.0,
        "time_zone": form.time_zone.data or "",
        "language": form.language.data or ENGLISH,
        "pin_at_tax": bool(form.pin_at_tax.data),
        "season_month": int(form.season_month.data or FIRST_MONTH),
    }
    registry.set_site(current.book, kept, by=_by())
    flash(say("desk-settings-kept"), "entered")
    return redirect(url_for("desk.settings_page"))


def _site_form() -> SiteForm:
    site = current.site
    height = site.get("height_m")
    month = str(site.get("season_month") or FIRST_MONTH)
    shown = {"season_month": month, "accounts": accounts_of(site), "height_m": "" if height is None else f"{height:g}",
             "language": site.get("language") or ENGLISH}
    return SiteForm(data={**site, **shown})


def _settings(form: SiteForm, backups_form: BackupsForm | None = None) -> str:
    return render_template(
        "desk/house/settings.html",
        form=form,
        limits=set_ranges(registry.limits(current.book)),
        check_limits=registry.check_limits(current.book),
        instruments=registry.instruments(current.book),
        changes=registry.changes(current.book, 50),
        backups_form=backups_form or _backups_form(),
        is_encrypted=bool(recipient_of(current_app.config["DATA_DIR"])),
        backups=schedule.describe_backups(current_app.config["DATA_DIR"]),
    )


@bp.route("/instruments/new", methods=["GET", "POST"])
@bp.route("/instruments/<instrument_id>/edit", methods=["GET", "POST"])
@needs("distiller")
def instrument_edit(instrument_id: str | None = None) -> ResponseReturnValue:
    """Add an instrument, or change one."""
    known = {row["id"]: row for row in registry.instruments(current.book)}
    row = known.get(instrument_id or "")
    if instrument_id and row is None:
        abort(404, say("desk-settings-there_is_no_such_instrument"))
    shown = {**row, **{n: "" if row.get(n) is None else f"{row[n]:g}" for n in ("low", "high", "interval")},
             "corrections": table_words(row["corrections"])} if row else {}
    form = InstrumentForm(data=shown)
    if row:
        form.id.data = row["id"]
    if request.method == "POST" and form.validate():
        kept = {"id": str(form.id.data).upper(), "sort": form.sort.data, "title": form.title.data or "",
                "low": figure(form.low), "high": figure(form.high), "unit": form.unit.data or "",
                "due_on": form.due_on.data or None, "state": form.state.data,
                "accuracy": form.accuracy.data or "", "interval": figure(form.interval),
                "corrections": form.corrections.data or ""}
        try:
            registry.put_instrument(current.book, kept, by=_by())
        except BookError as error:
            form.corrections.errors = [str(error)]
        else:
            flash(say("desk-settings-kept"), "entered")
            return redirect(url_for("desk.instrument_page", instrument_id=kept["id"]))
    status = 422 if request.method == "POST" else 200
    return render_template("desk/house/instrument_edit.html", form=form, row=row), status
