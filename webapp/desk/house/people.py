"""People: who logs, under which code, and who may answer."""

from __future__ import annotations

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.journal import note
from webapp.book.house import people
from webapp.desk.blueprint import bp
from webapp.desk.forms import PersonForm


@bp.get("/people")
@needs("office")
def people_page() -> ResponseReturnValue:
    """List the people of the house."""
    return render_template("desk/house/people.html", people=people.people(current.book))


@bp.route("/people/new", methods=["GET", "POST"])
@bp.route("/people/<code>", methods=["GET", "POST"])
@needs("office")
def person_edit(code: str | None = None) -> ResponseReturnValue:
    """Add a person, or change one. Nobody is ever taken out: old entries keep their hand."""
    row = people.person(current.book, code) if code else None
    if code and row is None:
        abort(404, "There is no such person.")
    shown = {**row, "roles": ", ".join(row["roles"]), "pin": ""} if row else {}
    form = PersonForm(data=shown)
    if row:
        form.code.data = row["code"]
    if request.method == "POST" and form.validate():
        words = _keep(form, row)
        if words is None:
            flash("Kept.", "entered")
            return redirect(url_for("desk.people_page"))
        form.access.errors = [words]
    return render_template("desk/house/person_edit.html", form=form, row=row), 422 if request.method == "POST" else 200


def _keep(form: PersonForm, row: people.Person | None) -> str | None:
    assert current.person
    code = row["code"] if row else str(form.code.data).upper()
    if not row and people.person(current.book, code):
        return f"There is a {code} already. Pick another code."
    keeps_office = form.access.data == "office" and not form.retired.data
    others = [
        p for p in people.people(current.book) if p["code"] != code and p["access"] == "office" and not p["retired"]
    ]
    if row and not keeps_office and not others:
        return "Somebody must keep the office role. Give it to another person first."
    roles = [role.strip() for role in (form.roles.data or "").split(",") if role.strip()]
    kept = {
        "code": code,
        "name": form.name.data,
        "roles": roles,
        "access": form.access.data,
        "retired": bool(form.retired.data),
    }
    people.put_person(current.book, kept, by=current.person["code"])
    if form.pin.data:
        people.set_pin(current.book, code, str(form.pin.data), by=current.person["code"])
    if form.password.data:
        people.set_password(current.book, code, str(form.password.data), by=current.person["code"])
    note("person", about=f"{code}: {_said(row, kept, has_password=bool(form.password.data))}")
    return None


def _said(row: people.Person | None, kept: dict[str, object], *, has_password: bool) -> str:
    """Return in words what a person may do from now on, as the journal of access keeps it."""
    said = ["new" if row is None else "changed", f"may {kept['access']}"]
    said += ["has left"] * bool(kept["retired"]) + ["password set"] * has_password
    return ", ".join(said)
