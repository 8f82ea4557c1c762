"""One shape for every error: JSON under /api, a page with one sentence elsewhere."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from flask import Flask, Response, current_app, jsonify, render_template, request
from werkzeug.exceptions import HTTPException
from werkzeug.wrappers import Response as WerkzeugResponse

from webapp.access.guard import is_api
from webapp.access.journal import note_once, path_asked
from webapp.book.record.damage import BookDamaged, is_damage
from webapp.book.record.errors import BookError
from webapp.words.desk import Later, say

WORDS = {
    400: Later("access-error-this_could_not_be_read"),
    403: Later("access-error-you_may_not_do_this"),
    404: Later("access-error-there_is_nothing_at_this"),
    405: Later("access-error-this_address_does_not_take"),
    413: Later("access-error-this_is_too_large_send"),
    415: Later("access-error-send_json_with_content_type"),
    429: Later("access-error-too_many_tries_wait_a"),
    500: Later("access-error-the_book_stumbled_nothing_handed"),
    503: Later("access-error-the_book_is_busy_try"),
}


def error_answer(status: int, words: str, problems: Sequence[Mapping[str, object]] = ()) -> Response:
    """Return an error in the API's one shape."""
    body = {"marker": "cellarslate", "ok": False, "error": words, "problems": list(problems), "status": status}
    response = jsonify(body)
    response.status_code = status
    return response


def init_app(app: Flask, csrf_error: type[Exception]) -> None:
    """Register the handlers on this app."""

    def on_http(error: HTTPException) -> WerkzeugResponse:
        status = error.code or 500
        own = error.description if error.description and error.description != type(error).description else None
        words = own or WORDS.get(status) or WORDS[400 if status < 500 else 500]
        return show_error(status, words, error)

    def on_csrf(error: Exception) -> WerkzeugResponse:
        note_once("refused", about=f"{request.method} {path_asked()}: without the page's token")
        words = say("access-error-this_page_was_open_too")
        return show_error(400, words, None)

    def on_book(error: BookError) -> WerkzeugResponse:
        return show_error(422, str(error), None)

    def on_damage(error: BookDamaged) -> WerkzeugResponse:
        return show_error(503, str(error), None)

    def on_crash(error: Exception) -> WerkzeugResponse:
        if is_damage(error) and "book" in current_app.extensions:
            current_app.extensions["book"].note_damage(error)
            return on_damage(BookDamaged(error))
        current_app.logger.exception("unhandled", exc_info=error)
        return show_error(500, WORDS[500], None)

    app.register_error_handler(csrf_error, on_csrf)
    app.register_error_handler(HTTPException, on_http)
    app.register_error_handler(BookError, on_book)
    app.register_error_handler(BookDamaged, on_damage)
    if not app.config.get("PROPAGATE_EXCEPTIONS"):
        app.register_error_handler(Exception, on_crash)


def show_error(status: int, words: str, error: HTTPException | None) -> WerkzeugResponse:
    """Return an error in the form that the caller can read: JSON under /api, a page elsewhere."""
    if error is not None and error.response is not None:
        assert isinstance(error.response, WerkzeugResponse)  # as every view makes them
        return error.response
    page = "" if is_api() else render_template("access/error.html", words=words)
    said = error_answer(status, words) if is_api() else Response(page, status)
    if error is not None:
        for name, value in error.get_headers():
            if name.lower() in ("allow", "retry-after"):
                said.headers[name] = value
    return said
