"""Limits of the checks: set one for a vessel, a product, a sort of vessel, or the site."""

from __future__ import annotations

from typing import Any

from flask import flash, redirect, render_template, request, url_for
from flask_wtf import FlaskForm
from wtforms import SelectField, StringField
from wtforms.validators import Length, Optional

from webapp.access import current, needs
from webapp.book.house.check_limits import check_limits, set_check_limit
from webapp.book.limits import ALL
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import figure, is_figure
from webapp.kinds.as_form import pairs
from webapp.trade.marks import BadMark, parse_mark

SCOPES = [("site", "the site"), ("sort", "a sort of vessel"), ("product", "a product"), ("vessel", "one vessel")]


class CheckLimitForm(FlaskForm):
    """One limit of one check. An empty figure gives the check's own back."""

    scope = SelectField("For", choices=pairs(SCOPES))
    key = StringField("Which", [Optional(), Length(max=80)])
    name = SelectField("Limit", choices=pairs([(one.name, one.words) for one in ALL.values()]))
    value = StringField("Figure", [is_figure])


@bp.route("/limits/checks", methods=["GET", "POST"])
@needs("distiller")
def check_limits_page() -> Any:
    """List every limit of the checks and set one."""
    form = CheckLimitForm(request.form if request.method == "POST" else request.args)
    if request.method == "POST" and form.validate():
        words = _set(form)
        if words is None:
            flash("Kept. The entries concerned are asked about anew.", "entered")
            return redirect(url_for("desk.check_limits_page"))
        form.key.errors = [words]
    status = 422 if request.method == "POST" else 200
    own = [row | _worded(row["name"]) for row in check_limits(current.book)]
    all_of_them = [{"name": name, "default": one.default} | _worded(name) for name, one in ALL.items()]
    return render_template("desk/house/check_limits.html", form=form, own=own, limits=all_of_them), status


def _worded(name: str) -> dict[str, str]:
    one = ALL.get(name)
    return {"words": one.words if one else name, "unit": one.unit if one else ""}


def _set(form: CheckLimitForm) -> str | None:
    """Set the limit; return what is wrong, or None."""
    assert current.person
    scope, key = str(form.scope.data), (form.key.data or "").strip()
    try:
        if scope == "vessel":
            key = parse_mark(key)
        set_check_limit(current.book, scope, key, str(form.name.data), figure(form.value), by=current.person["code"])
    except (BadMark, BookError) as error:
        return str(error)
    return None
