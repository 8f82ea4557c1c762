"""Certificates of laboratories: the list of all, and the band that other pages show of theirs."""

from __future__ import annotations

from flask import render_template, request
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.lineage import certificates
from webapp.desk.blueprint import bp
from webapp.kinds.message import message
from webapp.words import sentence
from webapp.words.language import language

SHOWN_MOST = 200


@bp.get("/certificates")
@needs("floor")
def certificates_page() -> ResponseReturnValue:
    """List the certificates, the newest sample first; those alone with a result that is over, or not safely under."""
    found = certificates.find_certificates(current.book)
    is_open = request.args.get("which") == "open"
    if is_open:
        found = [one for one in found if any(result["code"] in certificates.ASKED for result in one["results"])]
    return render_template(
        "desk/laboratory/certificates.html", found=found[:SHOWN_MOST], count=len(found), is_open=is_open,
        caution=sentence(message("lab-caution"), language()),
    )
