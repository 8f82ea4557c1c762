"""Passkeys at the door: what a browser is asked, and whether its answer is good. By the library `webauthn`.

W3C, Web Authentication Level 3, chapter 7: an answer is to this question, at this house, by somebody whom the device
has known by a finger, a face or a PIN; each question is answered once, in the session that asked it.
"""

from __future__ import annotations

import ipaddress
import json
import secrets
import sqlite3
import time
from datetime import UTC, datetime
from typing import NamedTuple
from urllib.parse import urlsplit

from flask import abort, current_app, jsonify, redirect, render_template, request, session, url_for
from flask.typing import ResponseReturnValue

from webapp.access.forms import SignInForm
from webapp.access.guard import current
from webapp.access.guard import sign_in as begin_session
from webapp.access.pages import bp, counted, home, inside
from webapp.book.house import passkeys, people
from webapp.book.house.beside import opened
from webapp.book.house.passkeys import Passkey
from webapp.book.house.people import Person
from webapp.book.record.clock import utc_text
from webapp.book.record.log import sha256
from webapp.words.desk import Later, say

GOOD_S = 300  # how long a question is good
ANSWER_MOST = 8000  # characters
FIELD = "passkey"
SIGN_IN, AGAIN, MAKE = "sign-in", "again", "make"
REFUSED = Later("access-passkey-does_not_open")
_KEPT = "passkey"  # in the session: what for, the challenge, when
_CHALLENGE_BYTES = 32


class Refused(Exception):
    """An answer that is not good; `str(error)` says to the journal why."""


class Place(NamedTuple):
    """The house as a browser knows it: the host's name, which a passkey is bound to, and the whole origin."""

    rp_id: str
    origin: str


def place() -> Place | None:
    """Return the place of this request; None where no passkey can be: at an address, or at a name that is not ours.

    A passkey is bound to a name: browsers take no IP address (WebAuthn Level 3, 5.1.3, "effective domain").
    """
    asked = request.host_url.rstrip("/").lower()
    if asked not in current_app.config["PASSKEY_ORIGINS"]:
        return None
    name = urlsplit(asked).hostname or ""
    try:
        ipaddress.ip_address(name)
    except ValueError:
        return Place(name, asked)
    return None


def new_question(purpose: str) -> bytes:
    """Return a new challenge for this session and purpose; an earlier one of the session is void."""
    challenge = secrets.token_bytes(_CHALLENGE_BYTES)
    session[_KEPT] = [purpose, challenge.hex(), int(time.time())]
    return challenge


def take_question(purpose: str) -> bytes:
    """Return the challenge of this session, and use it up. Refused where there is none, or it is not good any more."""
    kept = session.pop(_KEPT, None)
    if not kept or kept[0] != purpose:
        raise Refused("nothing was asked")
    if not 0 <= time.time() - kept[2] < GOOD_S:
        raise Refused("too late")
    now = time.time()
    with opened(current_app.config["DATA_DIR"]) as conn:
        conn.execute("DELETE FROM used_challenges WHERE at < ?", (utc_text(datetime.fromtimestamp(now - 3600, UTC)),))
        try:
            # The cookie may have been copied with the question inside: what was answered is kept here.
            conn.execute("INSERT INTO used_challenges VALUES (?, ?)",
                         (sha256(kept[1]), utc_text(datetime.fromtimestamp(now, UTC))))
        except sqlite3.IntegrityError as error:
            raise Refused("answered before") from error
    return bytes.fromhex(kept[1])


def options_to_make(person: Person, here: Place) -> str:
    """Return as JSON what a browser is asked to make a passkey by, for this session."""
    from webauthn import base64url_to_bytes, generate_registration_options, options_to_json
    from webauthn.helpers.structs import (
        AuthenticatorSelectionCriteria,
        PublicKeyCredentialDescriptor,
        ResidentKeyRequirement,
        UserVerificationRequirement,
    )

    has = passkeys.passkeys_of(current.book, person["code"])
    return options_to_json(generate_registration_options(
        rp_id=here.rp_id, rp_name=str(current.site.get("name") or "Cellarslate"), user_name=person["code"],
        user_display_name=person["name"], user_id=passkeys.user_handle(current.book, person["code"]),
        challenge=new_question(MAKE), timeout=GOOD_S * 1000,
        authenticator_selection=AuthenticatorSelectionCriteria(
            resident_key=ResidentKeyRequirement.REQUIRED, user_verification=UserVerificationRequirement.REQUIRED,
        ),
        exclude_credentials=[PublicKeyCredentialDescriptor(id=base64url_to_bytes(one["credential"])) for one in has],
    ))


def keep_made(person: Person, name: str, answer: str) -> None:
    """Keep the passkey that a browser has made. Refused where it is not good; BookError where it cannot be kept."""
    from webauthn import verify_registration_response
    from webauthn.helpers import bytes_to_base64url, parse_registration_credential_json

    here = place()
    challenge = take_question(MAKE)
    if here is None:
        raise Refused("not at a name of the house")
    try:
        said = parse_registration_credential_json(_read(answer))
        _refuse_framed(said.response.client_data_json)
        made = verify_registration_response(
            credential=said, expected_challenge=challenge, expected_rp_id=here.rp_id,
            expected_origin=here.origin, require_user_verification=True,
        )
    except _wrong() as error:
        raise Refused(str(error)) from error
    passkeys.add_passkey(
        current.book, person["code"], name, bytes_to_base64url(made.credential_id),
        bytes_to_base64url(made.credential_public_key), made.sign_count, here.rp_id, datetime.now(UTC),
    )


def tried_passkey(purpose: str, answer: str, passed: str) -> Person | None:
    """Return whose passkey answers, or None; counted and noted in the journal as a password is."""
    key = _named(answer)

    def look() -> tuple[Person | None, str]:
        try:
            used = _check(purpose, key, answer)
        except Refused as error:
            whose = f"passkey of {key['person']}" if key else "passkey"
            return None, f"{whose}: {error}"
        return people.person(current.book, used["person"]), f"by the passkey {used['name']}"

    return counted(key["person"] if key else "", look, passed)


def _check(purpose: str, key: Passkey | None, answer: str) -> Passkey:
    """Return the passkey whose answer this is, its use noted. Refused says why not."""
    from webauthn import verify_authentication_response
    from webauthn.helpers import base64url_to_bytes, parse_authentication_credential_json

    challenge = take_question(purpose)
    here = place()
    if here is None:
        raise Refused("not at a name of the house")
    if key is None:
        raise Refused("not known, or ended")
    if purpose == AGAIN and (current.person is None or key["person"] != current.person["code"]):
        raise Refused("somebody else's")
    if key["rp_id"] != here.rp_id:
        raise Refused(f"made for {key['rp_id']}")
    try:
        said = parse_authentication_credential_json(_read(answer))
        _refuse_framed(said.response.client_data_json)
        handle = said.response.user_handle
        # Asked for anybody, it must say whose it is (WebAuthn Level 3, 7.2, step 6).
        if (handle is None and purpose == SIGN_IN) or (
            handle is not None and handle != passkeys.user_handle(current.book, key["person"])
        ):
            raise Refused("made for somebody else")
        used = verify_authentication_response(
            credential=said, expected_challenge=challenge, expected_rp_id=here.rp_id, expected_origin=here.origin,
            credential_public_key=base64url_to_bytes(key["public_key"]),
            # Looked at below, so that the journal has it in plain words.
            credential_current_sign_count=0, require_user_verification=True,
        )
    except _wrong() as error:
        raise Refused(str(error)) from error
    if not passkeys.note_use(current.book, key["credential"], used.new_sign_count, datetime.now(UTC)):
        raise Refused(f"its count was {key['sign_count']} and came as {used.new_sign_count}: it may have a copy")
    return key


def _named(answer: str) -> Passkey | None:
    """Return the open passkey that an answer names."""
    try:
        return passkeys.open_passkey(current.book, str(_read(answer).get("id"))[:1400])
    except _wrong():
        return None


def _read(answer: str) -> dict[str, object]:
    if len(answer) > ANSWER_MOST:
        raise ValueError("too long")
    read = json.loads(answer)
    if not isinstance(read, dict):
        raise TypeError("no object")
    return read


def _refuse_framed(client_data: bytes) -> None:
    """Refuse what came out of a frame in somebody else's page (Level 3, 7.2, step 14): no page of ours is framed."""
    if json.loads(client_data).get("crossOrigin"):
        raise Refused("asked in a page of others")


def _wrong() -> tuple[type[Exception], ...]:
    """Return what the library and Python raise for answers that are no good or cannot be read."""
    from webauthn.helpers.exceptions import WebAuthnException

    return WebAuthnException, ValueError, TypeError, LookupError, AttributeError, RecursionError


@bp.post("/passkey/question")
def passkey_question() -> ResponseReturnValue:
    """Return as JSON what a browser is asked: for anybody at the sign-in, else for whoever is signed in."""
    from webauthn import base64url_to_bytes, generate_authentication_options, options_to_json
    from webauthn.helpers.structs import PublicKeyCredentialDescriptor, UserVerificationRequirement

    here = place()
    if here is None:
        abort(404, say("access-passkey-not_here"))
    of = current.person if request.form.get("for") == AGAIN else None
    own = passkeys.passkeys_of(current.book, of["code"]) if of else []
    options = generate_authentication_options(
        rp_id=here.rp_id, challenge=new_question(AGAIN if of else SIGN_IN), timeout=GOOD_S * 1000,
        allow_credentials=[PublicKeyCredentialDescriptor(id=base64url_to_bytes(one["credential"])) for one in own
                           if one["rp_id"] == here.rp_id],
        user_verification=UserVerificationRequirement.REQUIRED,
    )
    return jsonify(json.loads(options_to_json(options)))


@bp.post("/sign-in/passkey")
def sign_in_by_passkey() -> ResponseReturnValue:
    """Let in whoever has answered with a passkey, or say what to do."""
    person = tried_passkey(SIGN_IN, request.form.get(FIELD, ""), "signed_in")
    if person:
        begin_session(person)
        return redirect(inside(request.form.get("next")) or url_for(home()))
    form = SignInForm(formdata=None)
    form.next.data = request.form.get("next", "")
    return render_template("access/sign_in.html", form=form, refused=REFUSED), 401


