"""The page that an invitation opens: somebody sets their own password, which nobody else has seen."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import abort, current_app, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access.forms import InvitationForm
from webapp.access.guard import current
from webapp.access.guard import sign_in as begin_session
from webapp.access.journal import note
from webapp.access.pages import bp, by_address, home
from webapp.access.tries import network_of
from webapp.book.house import invitations
from webapp.book.record.errors import BookError
from webapp.words.desk import Later

VOID = Later("access-invitation-this_invitation_was_used_has")


@bp.route("/invitation/<token>", methods=["GET", "POST"])
def invitation(token: str) -> ResponseReturnValue:
    """Let the person whom this token invites set their password, once, and sign them in."""
    folder, now = current_app.config["DATA_DIR"], datetime.now(UTC)
    address = network_of(request.remote_addr)
    if by_address.wait_s(address):
        abort(429)
    person = invitations.invited(current.book, folder, token, now)
    if person is None:
        by_address.failed(address)
        abort(404, VOID)
    form = InvitationForm()
    if request.method == "POST" and form.validate():
        try:
            accepted = invitations.accept(current.book, folder, token, str(form.password.data), now)
        except BookError as error:
            form.password.errors = [str(error)]
        else:
            note("password", who=accepted["code"], about="by an invitation")
            begin_session(accepted)
            return redirect(url_for(home()))
    page = render_template("access/invitation.html", form=form, invited=person, site=current.site.get("name") or "")
    return page, 200 if request.method == "GET" else 422
