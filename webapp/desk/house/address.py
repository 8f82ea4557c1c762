"""How phones reach the book: the address it has, what makes phones trust it, and the other ways with their price."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import current_app, render_template, request
from flask.typing import ResponseReturnValue

from webapp.access import needs
from webapp.desk.blueprint import bp
from webapp.desk.house.trust import trust_now


@bp.get("/address")
@needs("distiller")
def address_page() -> ResponseReturnValue:
    """Say how phones reach this book, and how else they could."""
    url = current_app.config.get("SITE_URL") or request.url_root
    return render_template("desk/house/address.html", url=url, trust=trust_now(datetime.now(UTC)))
