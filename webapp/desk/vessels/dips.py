"""How a vessel is dipped: its strapping table, or the dimensions of a cask."""

from __future__ import annotations

import json

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from flask_wtf import FlaskForm
from wtforms import RadioField, SelectField, StringField, TextAreaField
from wtforms.validators import Length, Optional

from webapp.access import current, needs
from webapp.book.house import registry
from webapp.book.house.dip_tables import LENGTHS, VOLUMES, brief, cask_typed, table_typed
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import figure, is_figure
from webapp.desk.vessels.vessels import known_vessel
from webapp.kinds.as_form import pairs
from webapp.kinds.rows import VesselRow
from webapp.trade.dipping import STAINLESS_PER_C, STEEL_PER_C
from webapp.trade.units import to_canonical

TEXT_MOST = 60_000
_SHELLS = {"steel": STEEL_PER_C, "stainless": STAINLESS_PER_C, "other": 0.0}


class DipsForm(FlaskForm):
    """How a vessel is dipped. Of the two halves the one counts that `how` names."""

    how = RadioField("How its litres follow from a dip", choices=pairs((
        ("table", "by a strapping table"), ("cask", "by the dimensions of a cask, an estimate"),
        ("none", "not at all: litres are typed"))))
    of = SelectField("What is measured", choices=pairs((
        ("dip", "dip: from the bottom up"), ("ullage", "ullage: from the top down"))))
    table = TextAreaField("Table: a line of dip and volume each", [Optional(), Length(max=TEXT_MOST)])
    length = SelectField("Lengths in", choices=pairs((unit, unit) for unit in LENGTHS))
    volume = SelectField("Volumes in", choices=pairs((unit, unit) for unit in VOLUMES))
    shell = SelectField("Shell", choices=pairs((
        ("stainless", "stainless steel, 48·10⁻⁶ a °C"), ("steel", "mild steel, 36·10⁻⁶ a °C"),
        ("other", "other: no correction"))))
    shell_c = StringField("The table holds at", [is_figure])
    shell_unit = SelectField("Temperature in", choices=pairs((("degC", "°C"), ("degF", "°F"))))
    tilt_mm = StringField("Tilt: add to each reading [mm]", [is_figure])
    bung = StringField("Diameter at the bung, inside", [is_figure])
    head = StringField("Diameter of a head, inside", [is_figure])
    long = StringField("Length from head to head, inside", [is_figure])
    lies = SelectField("The cask", choices=pairs((("lies", "lies"), ("stands", "stands"))))


@bp.route("/vessels/<mark>/dips", methods=["GET", "POST"])
@needs("office")
def vessel_dips(mark: str) -> ResponseReturnValue:
    """Show and change how a vessel is dipped."""
    row = known_vessel(mark)
    form, wrong = DipsForm(data=_boxes(row)), ""
    if request.method == "POST" and form.validate():
        try:
            dips = _typed(form, row)
            assert current.person
            kept = registry.put_vessel(current.book, {"mark": row["mark"], "dips": dips}, by=current.person["code"])
            flash(f"{row['mark']} {said_of(kept['dips'])}", "entered")
            return redirect(url_for("desk.vessel_page", mark=row["mark"]))
        except BookError as error:
            wrong = str(error)
    status = 422 if request.method == "POST" else 200
    return render_template("desk/vessels/dips.html", form=form, row=row, wrong=wrong), status


def said_of(dips: str) -> str:
    """Return how a vessel is dipped, as the end of a sentence that begins with its mark."""
    if not dips:
        return "is not dipped by the book: litres are typed."
    made = json.loads(dips)
    by = "ullage" if made["of"] == "ullage" else "dip"
    if "points" in made:
        (low, first), (high, last) = made["points"][0], made["points"][-1]
        return (f"has its litres from its {by}, by a table of {len(made['points'])} lines: "
                f"{brief(low)} to {brief(high)} cm, {brief(first)} to {brief(last)} L.")
    sizes = " × ".join(brief(made[name]) for name in ("bung_cm", "head_cm", "length_cm"))
    how = "lying" if made["lies"] else "standing"
    return f"has its litres estimated from its {by}, by its dimensions: {sizes} cm, {how}."


def _typed(form: DipsForm, row: VesselRow) -> str:
    of, length = str(form.of.data), str(form.length.data)
    if form.how.data == "none":
        return ""
    if form.how.data == "cask":
        return cask_typed(figure(form.bung), figure(form.head), figure(form.long), unit=length,
                          lies=form.lies.data == "lies", of=of)
    shell = figure(form.shell_c)
    shell_c = 20.0 if shell is None else float(to_canonical(shell, str(form.shell_unit.data)))
    return table_typed(
        form.table.data or "", length=length, volume=str(form.volume.data), of=of,
        shell_c=shell_c, per_c=_SHELLS[str(form.shell.data)],
        tilt_mm=figure(form.tilt_mm) or 0.0, capacity_l=row["capacity_l"],
    )


def _boxes(row: VesselRow) -> dict[str, object]:
    """Return what stands in the boxes: what the registry has, in centimetres, litres and °C."""
    made = json.loads(row["dips"]) if row["dips"] else {}
    boxes: dict[str, object] = {"how": "cask" if row["sort"] == "cask" else "table", "shell_c": "20", **made}
    if "points" in made:
        shells = [name for name, per_c in _SHELLS.items() if per_c == made["per_c"]]
        boxes |= {"how": "table", "table": "\n".join(f"{dip:.10g};{litres:.10g}" for dip, litres in made["points"]),
                  "shell": shells[0] if shells else "other", "shell_c": brief(made["shell_c"]),
                  "tilt_mm": brief(made["tilt_cm"] * 10) if made["tilt_cm"] else ""}
    elif made:
        boxes |= {"how": "cask", "bung": brief(made["bung_cm"]), "head": brief(made["head_cm"]),
                  "long": brief(made["length_cm"]), "lies": "lies" if made["lies"] else "stands"}
    return boxes
