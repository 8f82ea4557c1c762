"""What proves the book from outside: heads beside backups, on phones, with the group; and those it no longer has."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import current_app, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp import signed_heads
from webapp.access import current, needs
from webapp.access.again import fresh
from webapp.book.house import proof
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.keeping import schedule, witnesses
from webapp.words.desk import say

_LOST_MOST = 200


@bp.get("/proof")
@needs("office")
def proof_page() -> str:
    """List who keeps heads of this book and since when, and the heads that it no longer has."""
    folder, book = current_app.config["DATA_DIR"], current.book
    is_open = {(one["who"], one["line"]) for one in witnesses.unsettled(book, folder)}
    lost, known = witnesses.read_lost(folder)[-_LOST_MOST:][::-1], witnesses.read_known(folder)
    signed = witnesses.kept_heads(folder)
    names = witnesses.name_witnesses(book, {*known, *(one["who"] for one in lost)})
    found = [{**one, "name": names[one["who"]], "is_open": (one["who"], one["line"]) in is_open,
              "signed": signed_heads.read_signed(one["line"])} for one in lost]
    newest = sorted(known, key=lambda who: known[who]["at"], reverse=True)
    kept = [{"name": names[who], "at": known[who]["at"], "signed": signed[who]} for who in newest]
    return render_template(
        "desk/house/proof.html", kept=kept, lost=found, since=proof.proved_since(book), beside=_beside(),
        key=signed_heads.shorten(signed_heads.find_key(folder)),
    )


@bp.post("/proof")
@needs("office")
@fresh
def settle_lost_heads() -> ResponseReturnValue:
    """Note why the book lacks heads that witnesses had."""
    assert current.person
    try:
        witnesses.settle(current.book, current.person["code"], request.form.get("reason", ""), datetime.now(UTC))
    except BookError as error:
        flash(str(error), "ask")
    else:
        flash(say("desk-proof-noted_the_heads_stay_on"), "entered")
    return redirect(url_for("desk.proof_page"))


def _beside() -> list[signed_heads.SignedHead]:
    plan = schedule.read_plan(current_app.config["DATA_DIR"])
    try:
        return signed_heads.read_beside(plan.folder) if plan else []
    except OSError:
        return []
