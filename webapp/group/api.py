"""The API between the sites and the group: enrolment, place in the log, hand-in. In words: docs/hand-in.md."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import Blueprint, Response, abort, current_app, jsonify, request
from flask.typing import ResponseReturnValue

from webapp.access import current
from webapp.access.errors import error_answer as error_answer
from webapp.access.guard import COOKIE_AGE_S, device_cookie
from webapp.access.tries import Tries, network_of
from webapp.book.house import devices
from webapp.book.intake import book_id
from webapp.book.record.errors import BookError
from webapp.floor.body import BadBody, read_json
from webapp.group import intake, registry
from webapp.group.parts import digest_of
from webapp.group.sites import SITE_ID, Stranger
from webapp.group.store import GroupBusy, Store

bp = Blueprint("group_api", __name__)
enrol_tries = Tries(most=10, window_s=60)
OURS = {"marker": "cellarslate", "ok": True}


@bp.errorhandler(BadBody)
def bad_body(error: BadBody) -> Response:
    """Answer a body that is no JSON of ours."""
    return error_answer(error.status, str(error))


@bp.errorhandler(GroupBusy)
def busy(error: GroupBusy) -> Response:
    """Answer while the database is away: the site keeps everything and comes again."""
    response = error_answer(503, str(error))
    response.headers["Retry-After"] = "5"
    return response


@bp.errorhandler(Stranger)
def stranger(error: Stranger) -> Response:
    """Answer a device that speaks for another device's site."""
    return error_answer(403, str(error))


@bp.post("/api/hand-in")
def hand_in() -> ResponseReturnValue:
    """Take a batch of a site's rows and answer for each one."""
    device = _device()
    batch = read_json(request)
    if isinstance(batch, dict) and len(batch.get("entries") or ()) > intake.BATCH_MOST:
        return error_answer(413, f"A batch holds at most {intake.BATCH_MOST} entries. Send half of it at a time.")
    try:
        settled = intake.hand_in(_store(), batch, device=device, now=datetime.now(UTC), is_out=_is_out)
    except (GroupBusy, Stranger):
        raise
    except BookError as error:
        return error_answer(422, str(error))
    current_app.extensions["folds"].wake.set()
    return jsonify({**OURS, "book_id": book_id(current.book), **settled})


@bp.get("/api/group/place")
def place() -> ResponseReturnValue:
    """Return the last number that the group has of a site's book, and its digest at a number that is asked about."""
    site, at = _own_site(_device()), request.args.get("at", "")
    number = int(at) if at.isascii() and at.isdecimal() and len(at) <= 15 else None
    rows = registry.newest(_store(), site) if number is None else []
    held = {(row["sort"], row["key"]): row["body"] for row in rows if row["body"] is not None}
    said = {} if number is not None else {"registry_digest": digest_of(held)}
    return jsonify({**OURS, "book_id": book_id(current.book), **intake.load_place(_store(), site, number), **said})


@bp.get("/api/group/registry")
def registry_rows() -> ResponseReturnValue:
    """List the rows that the group has of a site's registry: sort, key, and the hash of each."""
    rows = registry.newest(_store(), _own_site(_device()))
    listed = [[row["sort"], row["key"], row["sha256"]] for row in rows if row["body"] is not None]
    return jsonify({**OURS, "rows": listed})


@bp.get("/api/session")
def session() -> ResponseReturnValue:
    """Return the device that is asking."""
    device = current.device
    return jsonify({**OURS, "device": {"id": device["id"], "name": device["name"]} if device else None})


@bp.post("/api/enrol")
def enrol() -> ResponseReturnValue:
    """Let a site in by its one-time code; the answer sets the site's cookie."""
    body = read_json(request)
    token, name = (body.get("token"), body.get("name", "")) if isinstance(body, dict) else (None, None)
    if not isinstance(token, str) or not isinstance(name, str) or not 0 < len(token) <= 200 or not token.isascii():
        return error_answer(422, "Send the one-time code as `token`, and a `name` of at most 40 characters.")
    address = network_of(request.remote_addr)
    if wait_s := enrol_tries.wait_s(address):
        response = error_answer(429, f"Too many tries. Wait {wait_s} s.")
        response.headers["Retry-After"] = str(wait_s)
        return response
    try:
        device, secret = devices.enrol_device(current.book, token, name, datetime.now(UTC))
    except BookError as error:
        enrol_tries.failed(address)
        return error_answer(403, str(error))
    response = jsonify({**OURS, "device": {"id": device["id"], "name": device["name"]}})
    is_secure = bool(current_app.config["TLS"])
    response.set_cookie(
        device_cookie(), secret, max_age=COOKIE_AGE_S, httponly=True, samesite="Lax", secure=is_secure
    )
    return response


def _store() -> Store:
    store: Store = current_app.extensions["store"]
    return store


def _device() -> str:
    """Return the device that asks; 401 for anybody else."""
    if not current.device:
        abort(401, "This site is not let in. Join with a one-time code of the group's; nothing is lost.")
    return str(current.device["id"])


def _own_site(device: str) -> str:
    """Return the site that is asked about, if it belongs to the asking device or to no device yet; 403 else."""
    site = request.args.get("book_id", "")
    if not SITE_ID.match(site):
        abort(400, "Say which book, as `book_id`.")
    row = _store().one("SELECT device FROM sites WHERE site = %s", (site,))
    if row and row["device"] != device and not _is_out(row["device"]):
        abort(403, "This code lets in another site than that book.")
    return site


def _is_out(device_id: str) -> bool:
    device = devices.device_by_id(current.book, device_id)
    return device is None or bool(device["revoked_at"])
