"""Customers and growers: listed, added, changed. Nobody is ever taken out: old papers keep their names."""

from __future__ import annotations

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.house import parties
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import PartyForm
from webapp.words.desk import say


@bp.get("/parties")
@needs("office")
def parties_page() -> ResponseReturnValue:
    """List customers and growers."""
    return render_template("desk/house/parties.html", found=parties.parties(current.book))


@bp.route("/parties/edit", methods=["GET", "POST"])
@needs("office")
def party_edit() -> ResponseReturnValue:
    """Add somebody, or change who is named by `name` and `role` in the address."""
    name, role = request.args.get("name", ""), request.args.get("role", "")
    row = parties.party(current.book, name, role) if name else None
    if name and row is None:
        abort(404, say("desk-parties-there_is_nobody_of_this"))
    form = PartyForm(data={**row, "retired": bool(row["retired"])} if row else {"role": role or "supplier"})
    if row:
        form.name.data, form.role.data = row["name"], row["role"]
    if request.method == "POST" and form.validate():
        words = _keep(form, row)
        if not words:
            flash(say("desk-parties-kept"), "entered")
            return redirect(url_for("desk.parties_page"))
        form.name.errors = [words]
    return render_template("desk/house/party_edit.html", form=form, row=row), 422 if request.method == "POST" else 200


def _keep(form: PartyForm, row: parties.Party | None) -> str:
    """Keep what the form says; return what is wrong with it, or an empty text."""
    assert current.person
    name, role = str(form.name.data).strip(), str(form.role.data)
    if not row and parties.party(current.book, name, role):
        return say("desk-parties-is_there_already_as_a", name=name, role=role)
    kept = {
        "name": name, "role": role, "address": form.address.data, "number": form.number.data, "note": form.note.data,
        "retired": bool(form.retired.data),
    }
    try:
        parties.put_party(current.book, kept, current.person["code"])
    except BookError as error:
        return str(error)
    return ""
