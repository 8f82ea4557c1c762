"""What a phone shows of itself and of its people: its public key, and a PIN that is typed on it for the first time."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import Response, jsonify, request
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.errors import error_answer
from webapp.access.journal import note
from webapp.access.tries import Tries
from webapp.book.house import hands, people, phone_keys
from webapp.book.house.hashing import WAIT_S, TooManyAtOnce
from webapp.book.record.errors import BookError
from webapp.book.record.signing import PublicKey
from webapp.floor import bp
from webapp.floor.body import read_json

MARKER = "cellarslate"
SEQ_MOST = 2**53 - 1
COORDINATE_LENGTH = 43  # 32 bytes in base64url
# A PIN has few digits: of one person five tries a minute on one phone, thirty an hour on all together.
here_tries = Tries(most=5, window_s=60)
person_tries = Tries(most=30, window_s=3600)


@bp.post("/api/phone-key")
@needs("floor")
def phone_key() -> ResponseReturnValue:
    """Keep the public half of the key by which a phone that is let in signs what is logged on it."""
    if not current.device:
        return error_answer(409, "Only a phone that is let in has a key. Let it in first.")
    body = read_json(request)
    said = body if isinstance(body, dict) else {}
    x, y, from_seq = said.get("x"), said.get("y"), said.get("from_seq")
    if not (isinstance(x, str) and isinstance(y, str) and len(x) == len(y) == COORDINATE_LENGTH) or not (
        type(from_seq) is int and 0 <= from_seq <= SEQ_MOST
    ):
        return error_answer(422, "Send x and y of the public key as a JSON Web Key has them, and from_seq.")
    try:
        name = phone_keys.introduce_key(
            current.book, current.device["id"], PublicKey(x, y), from_seq, datetime.now(UTC)
        )
    except BookError as error:
        return error_answer(422, str(error))
    note("phone_key", about=f"{current.device['id']} {name}")
    return jsonify({"marker": MARKER, "ok": True, "key": name})


@bp.post("/api/hand")
@needs("floor")
def show_hand() -> ResponseReturnValue:
    """Look at the PIN of a person who takes up this phone; the phone may look at it by itself from then on."""
    body = read_json(request)
    said = body if isinstance(body, dict) else {}
    code, pin = said.get("person"), said.get("pin")
    if not isinstance(code, str) or not isinstance(pin, str) or not _is_code(code) or not _is_code(pin):
        return error_answer(422, "Send `person`, a short code, and `pin`, its digits.")
    code = code.strip().upper()
    asking = current.device["id"] if current.device else current.person["code"] if current.person else ""
    here = f"{code}\n{asking}"
    if wait_s := max(here_tries.wait_s(here), person_tries.wait_s(code)):
        return _later(429, f"Too many tries. Wait {wait_s} s.", wait_s)
    here_tries.failed(here)  # counted before it is looked at: guesses side by side would all find the count of before
    person_tries.failed(code)
    try:
        kept = people.check_pin(current.book, code, pin)
    except TooManyAtOnce as error:
        here_tries.took_back(here)
        person_tries.took_back(code)
        return _later(503, str(error), WAIT_S)
    if kept is None:
        note("wrong_pin", about=f"{code if people.person(current.book, code) else 'no such code'} on {asking}")
        return error_answer(403, "That is not this person's PIN. Try again.")
    here_tries.passed(here)
    person_tries.took_back(code)
    if current.device:
        hands.note_shown(current.book, current.device["id"], code, datetime.now(UTC))
    return jsonify({"marker": MARKER, "ok": True, "pin": kept})


def _is_code(text: str) -> bool:
    return text.isascii() and 0 < len(text) <= people.CODE_MOST


def _later(status: int, words: str, wait_s: int) -> Response:
    response = error_answer(status, words)
    response.headers["Retry-After"] = str(wait_s)
    return response
