"""Whoever is signed in: their own password and passkeys, and where else they are signed in."""

from __future__ import annotations

import hmac
from datetime import UTC, datetime

from flask import abort, current_app, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.again import fresh
from webapp.access.guard import end_others, end_session, this_session
from webapp.access.guard import sign_in as begin_session
from webapp.access.journal import note
from webapp.access.pages import tried
from webapp.access.passkeys import Refused, keep_made, options_to_make, place
from webapp.book.house import passkeys, signed_in
from webapp.book.house.passwords import choose_password
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import OwnPasswordForm, PasskeyForm
from webapp.words.desk import say


@bp.route("/you", methods=["GET", "POST"])
@needs("floor")
def you_page() -> ResponseReturnValue:
    """Show where the person is signed in; change their own password, which ends all of it but here."""
    assert current.person
    form = OwnPasswordForm()
    status = 200
    if form.is_submitted():
        status = 422
        if form.validate() and _changed(form):
            flash(say("desk-you-your_password_is_changed_you"), "entered")
            return redirect(url_for("desk.you_page"))
    found = signed_in.listed(current_app.config["DATA_DIR"], current.person["code"], datetime.now(UTC))
    return render_template(
        "desk/house/you.html", form=form, sessions=found, here=this_session(), name_of=signed_in.name_of,
        idle_h=int(signed_in.IDLE.total_seconds() // 3600), most_h=int(signed_in.ABSOLUTE.total_seconds() // 3600),
        passkeys=passkeys.passkeys_of(current.book, current.person["code"]),
    ), status


def _changed(form: OwnPasswordForm) -> bool:
    assert current.person
    code = current.person["code"]
    if tried(code, str(form.old.data), "again") is None:
        form.old.errors = [say("desk-you-that_is_not_your_password")]
        return False
    try:
        choose_password(current.book, code, str(form.password.data), by=code)
    except BookError as error:
        form.password.errors = [str(error)]
        return False
    note("password", about="changed by themselves")
    end_others(code)
    person = current.person
    end_session(this_session())
    begin_session(person)
    return True


@bp.post("/you/sessions/<session_sha256>/end")
@needs("floor")
@fresh
def end_one(session_sha256: str) -> ResponseReturnValue:
    """End another session of one's own."""
    assert current.person
    found = signed_in.listed(current_app.config["DATA_DIR"], current.person["code"], datetime.now(UTC))
    if not any(hmac.compare_digest(one["sha256"].encode(), session_sha256.encode()) for one in found):
        abort(404, say("desk-you-there_is_no_such_session"))
    end_session(session_sha256)
    note("session_ended", about="one of their own")
    flash(say("desk-you-ended"), "entered")
    return redirect(url_for("desk.you_page"))


@bp.post("/you/sessions/end-others")
@needs("floor")
@fresh
def end_all_others() -> ResponseReturnValue:
    """End every session of one's own but this one."""
    assert current.person
    ended = end_others(current.person["code"])
    note("session_ended", about=f"{ended} others of their own")
    flash(say("desk-you-ended_you_are_signed_in", ended=ended), "entered")
    return redirect(url_for("desk.you_page"))


@bp.route("/you/passkeys/new", methods=["GET", "POST"])
@needs("floor")
@fresh
def passkey_new() -> ResponseReturnValue:
    """Make a passkey of one's own."""
    assert current.person
    here = place()
    if here is None:
        abort(404, say("desk-you-no_passkey_can_be_made"))
    form, refused = PasskeyForm(), ""
    if form.validate_on_submit():
        try:
            keep_made(current.person, str(form.name.data), str(form.passkey.data))
        except Refused as error:
            note("refused", about=f"passkey: {error}")
            refused = say("desk-you-this_took_too_long_or")
        except BookError as error:
            refused = str(error)
        else:
            note("passkey", about=f"added: {form.name.data}")
            flash(say("desk-you-kept_you_can_sign_in"), "entered")
            return redirect(url_for("desk.you_page"))
    options = options_to_make(current.person, here)
    page = render_template("desk/house/passkey_new.html", form=form, options=options, here=here, refused=refused)
    return page, 422 if request.method == "POST" else 200


@bp.post("/you/passkeys/<credential>/end")
@needs("floor")
@fresh
def passkey_end(credential: str) -> ResponseReturnValue:
    """End a passkey of one's own."""
    assert current.person
    code = current.person["code"]
    ended = passkeys.end_passkey(current.book, code, credential, by=code, now=datetime.now(UTC))
    if ended is None:
        abort(404, say("desk-you-there_is_no_such_passkey"))
    note("passkey", about=f"ended: {ended['name']}")
    flash(say("desk-you-ended_it_opens_nothing_any"), "entered")
    return redirect(url_for("desk.you_page"))
