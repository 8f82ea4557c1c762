"""The API the phones speak: hand-in, cards, session, enrolment. In words: docs/hand-in.md."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import Response, abort, current_app, jsonify, request
from flask.typing import ResponseReturnValue
from marshmallow import ValidationError
from werkzeug.exceptions import TooManyRequests

from webapp.access import current, needs
from webapp.access.errors import error_answer as error_answer
from webapp.access.guard import COOKIE_AGE_S, device_cookie
from webapp.access.journal import note
from webapp.access.tries import Tries, network_of
from webapp.book import cards, intake
from webapp.book.house import codes, devices, hands, phone_keys
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.floor import bp
from webapp.floor.body import BadBody, read_json
from webapp.isolate import isolate_shown
from webapp.keeping.witnesses import Witnesses
from webapp.kinds import as_openapi
from webapp.kinds.as_schema import BATCH_MOST, hand_in_schema
from webapp.kinds.faults import fault_of
from webapp.shipping import assets
from webapp.words import sentence

MARKER = "cellarslate"
CURSOR_MOST = 2**53 - 1
GOODS_REV_MOST = 64
TOKEN_MOST = 200
NAME_MOST = 40
enrol_tries = Tries(most=10, window_s=60)
# Typed codes are short: all addresses together may guess a few a minute. What a QR carries needs no such bound.
typed_tries = Tries(most=30, window_s=60)
EVERYBODY = "everybody"


@bp.errorhandler(BadBody)
def bad_body(error: BadBody) -> Response:
    """A body that is no JSON of ours."""
    return error_answer(error.status, str(error))


@bp.post("/api/hand-in")
@needs("floor")
def hand_in() -> ResponseReturnValue:
    """Take a batch of entries and answer for each one."""
    body = read_json(request)
    entries = body.get("entries") if isinstance(body, dict) else None
    if isinstance(entries, list) and len(entries) > BATCH_MOST:
        return error_answer(413, f"A batch holds at most {BATCH_MOST} entries. Send half of it at a time.")
    try:
        batch = hand_in_schema().load(body)
    except ValidationError as error:
        return error_answer(422, "This is no batch of entries. See /api/openapi.json.", _problems(error))
    now = datetime.now(UTC)
    witnesses: Witnesses = current_app.extensions["witnesses"]
    if current.device:
        witnesses.take(current.device["id"], batch.get("heads"), now)
    via = "phone" if current.device else "page"
    try:
        settled = intake.hand_in(
            current.book, batch, via=via, now=now, carrier=_carrier(batch["device"]),
            may_answer=current.may("distiller"), phone=current.device["id"] if current.device else "",
            signed_in=current.person["code"] if current.person else "",
        )
    except BookError as error:
        return _busy(error)
    heads = {"heads": given} if current.device and (given := witnesses.give(now)) else {}
    key = {"key": phone_keys.newest_key(current.book, current.device["id"])} if current.device else {}
    return jsonify({"marker": MARKER, "ok": True, **settled, **heads, **key})


@bp.get("/api/cards")
@needs("floor")
def cards_since() -> ResponseReturnValue:
    """The cards that have changed since a cursor."""
    text = request.args.get("since", "0")
    if not (text.isascii() and text.isdecimal() and len(text) <= 16 and int(text) <= CURSOR_MOST):
        return error_answer(400, "`since` is the cursor of the last answer, a whole number. Leave it out for all.")
    known = request.args.get("goods")
    if known is not None and not (known.isascii() and len(known) <= GOODS_REV_MOST):
        return error_answer(400, "`goods` is the `goods_rev` of the last answer. Send it empty for all.")
    book, since = current.book, int(text)
    if since > intake.cursor(book):
        since = 0  # a book restored from a backup: its past is another one, the phone begins afresh
    about = {"book_id": intake.book_id(book), "server_now": utc_text(datetime.now(UTC))}
    parts: dict[str, object] = {**cards.cards_since(book, since, hands=_own_hands())}
    if known is not None:  # a phone of an earlier version asks for no goods
        parts |= cards.goods_since(book, known)
    since_then = {name: isolate_shown(part) for name, part in parts.items()}
    return jsonify({"marker": MARKER, "ok": True, **about, **since_then})


@bp.get("/api/session")
def session() -> ResponseReturnValue:
    """Return the phone and the person who ask, and the version that they would get."""
    device, person = current.device, current.person
    return jsonify(
        {
            "marker": MARKER,
            "ok": True,
            "device": {"id": device["id"], "name": device["name"]} if device else None,
            "person": {key: person[key] for key in ("code", "name", "access")} if person else None,
            "version": assets.version_lately(),
        }
    )


@bp.post("/api/enrol")
def enrol() -> ResponseReturnValue:
    """Let a phone in by its one-time code; the answer sets the phone's cookie."""
    body = read_json(request)
    token, name = (body.get("token"), body.get("name", "")) if isinstance(body, dict) else (None, None)
    if not isinstance(token, str) or not isinstance(name, str) or not _is_token(token) or not _is_name(name):
        return error_answer(422, "Send the code of the phone's QR as `token`, and a `name` of at most 40 characters.")
    device, secret = let_in(token, name)
    response = jsonify({"marker": MARKER, "ok": True, "device": {"id": device["id"], "name": device["name"]}})
    set_device_cookie(response, secret)
    return response


@bp.get("/api/openapi.json")
def describe() -> ResponseReturnValue:
    """This API, described for machines."""
    return jsonify(as_openapi.spec())


def let_in(token: str, name: str) -> tuple[devices.Device, str]:
    """Return the device made of a one-time code, and its secret; aborts with a sentence where the code is no good."""
    address = network_of(request.remote_addr)
    is_typed = codes.is_typed(token)
    if wait_s := max(enrol_tries.wait_s(address), typed_tries.wait_s(EVERYBODY) if is_typed else 0):
        raise TooManyRequests(retry_after=wait_s)
    # Counted before it is looked at: guesses side by side would all find the count of before.
    enrol_tries.failed(address)
    if is_typed:
        typed_tries.failed(EVERYBODY)
    try:
        device, secret = devices.enrol_device(current.book, token.strip(), name.strip(), datetime.now(UTC))
    except codes.BadCode as error:
        _take_back(address, is_typed=True)  # it was not looked up, so it was no guess
        abort(403, str(error))
    except BookError as error:
        note("not_let_in", about=name)
        abort(403, str(error))
    _take_back(address, is_typed=is_typed)
    note("let_in", about=f"{device['name']} {device['id']}")
    return device, secret


def _take_back(address: str, *, is_typed: bool) -> None:
    enrol_tries.took_back(address)
    if is_typed:
        typed_tries.took_back(EVERYBODY)


def set_device_cookie(response: Response, secret: str) -> None:
    """Give the phone its secret: never readable by script, never sent by other sites' requests."""
    is_secure = bool(current_app.config["TLS"])
    response.set_cookie(
        device_cookie(), secret, max_age=COOKIE_AGE_S, httponly=True, samesite="Lax", secure=is_secure
    )


def _is_token(token: str) -> bool:
    return token.isascii() and 0 < len(token) <= TOKEN_MOST


def _is_name(name: str) -> bool:
    return len(name) <= NAME_MOST and (name.isprintable() or not name)


def _own_hands() -> set[str]:
    """Return the codes of those whose PIN the asking phone may look at: who has typed it there, or is signed in."""
    if current.device:
        return hands.on_phone(current.book, current.device["id"])
    return {current.person["code"]} if current.person else set()


def _carrier(claimed: str) -> str:
    """Return the device that carries a batch, by whose clock it is measured.

    It is the asking phone, never another enrolled one.
    """
    if current.device:
        return str(current.device["id"])
    known = devices.device_by_id(current.book, claimed)
    return "" if claimed == devices.DESK or (known and known["enrolled_at"]) else claimed


def _busy(error: BookError) -> Response:
    response = error_answer(503, str(error))
    response.headers["Retry-After"] = "5"
    return response


def _problems(error: ValidationError) -> list[dict[str, str]]:
    messages = error.normalized_messages()
    return [{"field": str(name), "words": " ".join(map(_said, _flat(words)))} for name, words in messages.items()]


def _said(fault: object) -> str:
    said = fault_of(str(fault))
    return said if isinstance(said, str) else sentence(said)


def _flat(words: object) -> list[object]:
    if isinstance(words, dict):
        return [one for part in words.values() for one in _flat(part)]
    return [one for part in words for one in _flat(part)] if isinstance(words, list) else [words]
