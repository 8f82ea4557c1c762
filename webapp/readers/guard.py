"""Who reads by a key: shown as `Authorization: Bearer …` (RFC 6750), by a calendar that cannot in its address."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from functools import wraps
from typing import ParamSpec

from flask import Blueprint, Response, current_app, request
from flask.typing import ResponseReturnValue

from webapp.access.errors import error_answer
from webapp.access.journal import note_once
from webapp.access.tries import Tries, network_of
from webapp.book.house.reading_keys import SCOPES, find_key

bp = Blueprint("readers", __name__, url_prefix="/api/read")
P = ParamSpec("P")
IN_ADDRESS = ("calendar",)  # a key in an address is seen by whoever sees the address: it may read nothing else
# Keys cannot be guessed; this keeps whoever tries from writing the journal full.
_wrong = Tries(most=30, window_s=60)


def reads(scope: str) -> Callable[[Callable[P, ResponseReturnValue]], Callable[P, ResponseReturnValue]]:
    """Guard a view: a key that reads this part of the book."""
    assert scope in SCOPES

    def guard(view: Callable[P, ResponseReturnValue]) -> Callable[P, ResponseReturnValue]:
        @wraps(view)
        def guarded(*args: P.args, **kwargs: P.kwargs) -> ResponseReturnValue:
            return _refusal(scope) or view(*args, **kwargs)

        guarded.reads_scope = scope  # type: ignore[attr-defined]
        return guarded

    return guard


def _refusal(scope: str) -> Response | None:
    """Return the answer for whoever may not read this, or None."""
    address = network_of(request.remote_addr)
    if _wrong.wait_s(address):
        return error_answer(429, "Too many keys that are none. Wait a minute.")
    key = find_key(current_app.config["DATA_DIR"], _shown(scope), datetime.now(UTC))
    if key is None:
        if _shown(scope):
            _wrong.failed(address)
            note_once("refused", about=f"{request.method} {request.path}: no such key")
        words = "Show a key that is good, as Authorization: Bearer reads-… The office makes keys at the desk."
        answer = error_answer(401, words)
        answer.headers["WWW-Authenticate"] = "Bearer"
        return answer
    if scope not in key.scopes:
        return error_answer(403, f"This key does not read {scope}. It reads {', '.join(key.scopes)}.")
    return None


def _shown(scope: str) -> str:
    how, _, secret = request.headers.get("Authorization", "").partition(" ")
    if how.lower() == "bearer":
        return secret.strip()
    return request.args.get("key", "") if scope in IN_ADDRESS else ""
