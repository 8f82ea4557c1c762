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
from webapp.words.desk import Later, say

TEXT_MOST = 60_000
_SHELLS = {"steel": STEEL_PER_C, "stainless": STAINLESS_PER_C, "other": 0.0}


class DipsForm(FlaskForm):
    """How a vessel is dipped. Of the two halves the one counts that `how` names."""

    how = RadioField(Later("desk-dips-how_its_litres_follow_from"), choices=pairs((
        ("table", Later("desk-dips-by_a_strapping_table")), ("cask", Later("desk-dips-by_the_dimensions_of_a")),
        ("none", Later("desk-dips-not_at_all_litres_are")))))
    of = SelectField(Later("desk-dips-what_is_measured"), choices=pairs((
        ("dip", Later("desk-dips-dip_from_the_bottom_up")), ("ullage", Later("desk-dips-ullage_from_the_top_down")))))
    table = TextAreaField(Later("desk-dips-table_a_line_of_dip"), [Optional(), Length(max=TEXT_MOST)])
    length = SelectField(Later("desk-dips-lengths_in"), choices=pairs((unit, unit) for unit in LENGTHS))
    volume = SelectField(Later("desk-dips-volumes_in"), choices=pairs((unit, unit) for unit in VOLUMES))
    shell = SelectField(Later("desk-dips-shell"), choices=pairs((
        ("stainless", Later("desk-dips-stainless_steel_48_10_6")), ("steel", Later("desk-dips-mild_steel_36_10_6")),
        ("other", Later("desk-dips-other_no_correction")))))
    shell_c = StringField(Later("desk-dips-the_table_holds_at"), [is_figure])
    shell_unit = SelectField(Later("desk-dips-temperature_in"), choices=pairs((("degC", "°C"), ("degF", "°F"))))
    tilt_mm = StringField(Later("desk-dips-tilt_add_to_each_reading"), [is_figure])
    bung = StringField(Later("desk-dips-diameter_at_the_bung_inside"), [is_figure])
    head = StringField(Later("desk-dips-diameter_of_a_head_inside"), [is_figure])
    long = StringField(Later("desk-dips-length_from_head_to_head"), [is_figure])
    lies = SelectField(Later("desk-dips-the_cask"), choices=pairs((("lies", "lies"), ("stands", "stands"))))


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
        return say("desk-dips-is_not_dipped_by_the")
    made = json.loads(dips)
    by = "ullage" if made["of"] == "ullage" else "dip"
    if "points" in made:
        (low, first), (high, last) = made["points"][0], made["points"][-1]
        return (say(
            "desk-dips-has_its_litres_from_its", by=by, count=len(made['points']), brief=brief(low),
            brief2=brief(high), brief3=brief(first), brief4=brief(last),
        ))
    sizes = " × ".join(brief(made[name]) for name in ("bung_cm", "head_cm", "length_cm"))
    how = "lying" if made["lies"] else "standing"
    return say("desk-dips-has_its_litres_estimated_from", by=by, sizes=sizes, how=how)


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
