"""Phones: which are let in, when each was last heard, and what each has not handed in."""

from __future__ import annotations

from flask import abort, current_app, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.journal import note
from webapp.book.house import codes, devices
from webapp.desk.blueprint import bp
from webapp.desk.forms import PhoneForm
from webapp.labels.qr import qr_picture
from webapp.serving import phone_trust
from webapp.words.desk import say


@bp.route("/phones", methods=["GET", "POST"])
@needs("distiller")
def phones_page() -> ResponseReturnValue:
    """List phones with their gaps; make a one-time code for a new one."""
    form = PhoneForm()
    code = address = None
    if request.method == "POST" and form.validate():
        assert current.person
        grant = devices.new_grant(current.book, by=current.person["code"], name=str(form.name.data))
        code = codes.show_code(grant.code)
        address = url_for("floor.enrol_page", token=grant.token, _external=True)
    return render_template(
        "desk/house/phones.html",
        form=form,
        report=devices.report_devices(current.book),
        code=code,
        minutes=codes.MINUTES,
        address=address,
        start=url_for("floor.enrol_page", _external=True),
        trust=phone_trust.write_groups(current_app.config["DATA_DIR"]),
        trust_url=current_app.config.get("TRUST_URL"),
        picture=qr_picture(address) if address else None,
    )


@bp.post("/phones/<device_id>/revoke")
@needs("office")
def revoke(device_id: str) -> ResponseReturnValue:
    """Shut a phone out. What it holds stays on it and can be saved to a file."""
    if not any(phone["id"] == device_id for phone in devices.devices(current.book)):
        abort(404, say("desk-phones-there_is_no_such_phone"))
    assert current.person
    devices.revoke_device(current.book, device_id, by=current.person["code"])
    note("shut_out", about=device_id)
    flash(say("desk-phones-shut_out_entries_it_still"), "entered")
    return redirect(url_for("desk.phones_page"))
