"""Which language somebody reads in: chosen at the foot of every page, kept with the person and with the browser."""

from __future__ import annotations

from flask import current_app, make_response, redirect, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access.guard import LANGUAGE_COOKIE, current
from webapp.access.pages import bp, home, inside
from webapp.book.house import people
from webapp.words.language import is_offered

_AGE_S = 400 * 24 * 3600  # the most that browsers keep


@bp.post("/language")
def set_language() -> ResponseReturnValue:
    """Read in another language from now on, on this browser and wherever this person signs in; empty: as it was."""
    said = request.form.get("language", "")
    code = said if is_offered(said) else ""
    if current.person and current.person["language"] != code:
        people.set_language(current.book, current.person["code"], code, by=current.person["code"])
    answer = make_response(redirect(inside(request.form.get("next")) or url_for(home())))
    if code:
        answer.set_cookie(LANGUAGE_COOKIE, code, max_age=_AGE_S, secure=current_app.config["TLS"], samesite="Lax")
    else:
        answer.delete_cookie(LANGUAGE_COOKIE, secure=current_app.config["TLS"], samesite="Lax")
    return answer
