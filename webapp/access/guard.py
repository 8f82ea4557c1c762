"""Who is asking, and whether they may: loaded once per request, asked by every view."""

from __future__ import annotations

import secrets
import sqlite3
import time
from collections.abc import Callable
from datetime import UTC, datetime
from functools import wraps
from typing import ParamSpec
from zoneinfo import ZoneInfo

from flask import Flask, abort, current_app, g, redirect, request, session, url_for
from flask.typing import ResponseReturnValue
from flask_wtf.csrf import validate_csrf
from werkzeug.wrappers import Response

from webapp.access.tries import network_of
from webapp.book.house import devices, people, registry, sessions, signed_in
from webapp.book.house.devices import Device
from webapp.book.house.people import Person
from webapp.book.record.errors import BookError
from webapp.book.record.log import sha256
from webapp.book.record.months import zone_named
from webapp.book.record.store import Book
from webapp.kinds.rows import SiteSettings
from webapp.words.catalogue import ENGLISH
from webapp.words.desk import say
from webapp.words.houseunits import House, house_of
from webapp.words.language import best_of, is_offered, read_in

COOKIE = "cellarslate_device"
LANGUAGE_COOKIE = "cellarslate_language"
COOKIE_AGE_S = 400 * 24 * 3600  # the most that browsers keep
P = ParamSpec("P")
SAFE = ("GET", "HEAD", "OPTIONS")
FRESH_S = 600  # how long a password that was typed stands for what cannot be taken back
_SEEN_EVERY_S = 300
_CLOCK_BACK_S = 300  # a clock that is set back by so much ends nobody's session
RANK = {"floor": 0, "distiller": 1, "office": 2}


class _Current:
    """The book, the person and the phone of this request."""

    @property
    def book(self) -> Book:
        """The book of this app."""
        book: Book = current_app.extensions["book"]
        return book

    @property
    def site(self) -> SiteSettings:
        """The site's settings, read once a request."""
        if "site" not in g:
            g.site = registry.site(self.book)
        site: SiteSettings = g.site
        return site

    @property
    def house(self) -> House:
        """The units that the house reads in."""
        return house_of(self.site.get("units"))

    @property
    def zone(self) -> ZoneInfo:
        """The time zone of the house."""
        return zone_named(str(self.site.get("time_zone") or ""))

    @property
    def person(self) -> Person | None:
        """The person signed in on this browser, or None."""
        person: Person | None = g.get("person")
        return person

    @property
    def device(self) -> Device | None:
        """The enrolled phone that asks, or None; looked up when somebody wants to know."""
        if "device" not in g:
            g.device = _device()
        device: Device | None = g.device
        return device

    def may(self, access: str) -> bool:
        """Say whether the signed-in person has this access or more."""
        return self.person is not None and RANK[self.person["access"]] >= RANK[access]


current = _Current()


def is_api() -> bool:
    """Say whether the request is for the API, whose errors are JSON."""
    return request.path.startswith("/api/")


def load_current() -> Response | None:
    """Before each request: find the person, and refuse writes that other sites sent."""
    read_in(_language)
    g.person = _person()
    if request.method in SAFE or request.endpoint == "static":
        return None
    if not _from_us():
        abort(403, say("access-error-this_was_not_sent_from"))
    if not is_api():
        validate_csrf_of_page()
    return None


def validate_csrf_of_page() -> None:
    """Check the token of a page's form; raises CSRFError, whose page keeps what was typed."""
    from flask_wtf.csrf import CSRFError
    from wtforms import ValidationError

    if not current_app.config.get("WTF_CSRF_ENABLED", True):
        return
    try:
        validate_csrf(request.form.get("csrf_token") or request.headers.get("X-CSRFToken"))
    except ValidationError as error:
        raise CSRFError(str(error)) from error


def _from_us() -> bool:
    """Return whether this write comes from a page of ours.

    Browsers name the site that a write comes from; a tool that names none carries no cookies of other people.
    """
    site = request.headers.get("Sec-Fetch-Site")
    if site is not None and site not in ("same-origin", "none"):
        return False
    origin = request.headers.get("Origin")
    if origin is None:
        return True
    return origin == request.host_url.rstrip("/")


def sign_in(person: Person) -> None:
    """Begin a fresh session for this person; whatever stood in the old one is gone."""
    session.clear()
    session.permanent = True
    session["person"] = person["code"]
    session["id"] = secrets.token_hex(16)
    # Ties the session to the password of its day: a changed password ends every session.
    session["stamp"] = people.password_stamp(current.book, person["code"])
    session["began"] = session["fresh"] = session["seen"] = int(time.time())
    signed_in.begin(
        current_app.config["DATA_DIR"], session["id"], person["code"], datetime.now(UTC),
        network_of(request.remote_addr), request.user_agent.string,
    )


def sign_out() -> None:
    """End the session, here and for whoever holds a copy of its cookie."""
    if session_id := session.get("id"):
        end_session(sha256(session_id))
    session.clear()


def end_session(session_sha256: str) -> None:
    """End a session, wherever its cookie is, by the SHA-256 of its id."""
    sessions.end_session(current.book, session_sha256, datetime.now(UTC))
    signed_in.take_off(current_app.config["DATA_DIR"], session_sha256)


def this_session() -> str:
    """Return the SHA-256 of the id of the session that asks."""
    return sha256(session.get("id", ""))


def is_fresh() -> bool:
    """Say whether the person typed their password within FRESH_S. The demo asks nobody: its doors have no passwords."""
    return bool(current_app.config.get("DEMO")) or 0 <= time.time() - session.get("fresh", 0) < FRESH_S


def make_fresh() -> None:
    """Note that the person has just shown that it is they: a new session takes the place of this one, which ends.

    It ends when the first one would have ended, and forms that are open elsewhere stay good.
    """
    assert current.person
    old, kept = this_session(), {name: session[name] for name in ("began", "csrf_token") if name in session}
    sign_in(current.person)
    session.update(kept)
    end_session(old)


def end_others(code: str) -> int:
    """End the sessions of a person, but the one that asks; return how many were open."""
    own = this_session()
    found = signed_in.listed(current_app.config["DATA_DIR"], code, datetime.now(UTC))
    others = [one["sha256"] for one in found if one["sha256"] != own]
    for digest in others:
        end_session(digest)
    return len(others)


def _language() -> str:
    """Return the language of who is asking: their own, this browser's choice, its system's, the house's, or English."""
    person: Person | None = g.get("person")
    for said in (person["language"] if person else "", request.cookies.get(LANGUAGE_COOKIE)):
        if said and is_offered(said):
            return said
    wanted = best_of(request.accept_languages.values())
    return wanted or _house_language()


def _house_language() -> str:
    try:
        return best_of([str(current.site.get("language") or ENGLISH)]) or ENGLISH
    except (BookError, sqlite3.Error):  # the page that says so has to be in some language
        return ENGLISH


def _person() -> Person | None:
    code = session.get("person")
    if not code:
        return None
    session_id = session.get("id", "")
    person, stamp, is_ended = sessions.find_person(current.book, code, session_id)
    age_s = time.time() - session.get("began", 0)
    is_old = not -_CLOCK_BACK_S <= age_s < signed_in.ABSOLUTE.total_seconds()
    is_over = session.get("stamp") != stamp or not session_id or is_ended or is_old
    if not person or person["retired"] or is_over:
        session.clear()
        return None
    if time.time() - session.get("seen", 0) >= _SEEN_EVERY_S:
        session["seen"] = int(time.time())
        signed_in.seen(current_app.config["DATA_DIR"], session_id, datetime.now(UTC))
    return person


def cookie_name(name: str, app: Flask) -> str:
    """Return the name that a cookie of ours has at this app.

    Under TLS browsers take `__Host-` from this very host only, over TLS only: whoever answers in our place on a plain
    port cannot plant a secret of their own on a phone. Ports share cookies: the demo's have names of their own, so
    that a look at it never puts a phone out of the real book on the same computer.
    """
    own = f"{name}_demo" if app.config.get("DEMO") else name
    return f"__Host-{own}" if app.config["TLS"] else own


def device_cookie() -> str:
    """Return the name of a phone's cookie."""
    return cookie_name(COOKIE, current_app)


def _device() -> Device | None:
    secret = request.cookies.get(device_cookie())
    return devices.by_secret(current.book, secret) if secret else None


def needs(access: str) -> Callable[[Callable[P, ResponseReturnValue]], Callable[P, ResponseReturnValue]]:
    """Guard a view: a signed-in person with this access or more. `floor` also lets an enrolled phone in at the API."""
    assert access in RANK

    def guard(view: Callable[P, ResponseReturnValue]) -> Callable[P, ResponseReturnValue]:
        @wraps(view)
        def guarded(*args: P.args, **kwargs: P.kwargs) -> ResponseReturnValue:
            if access == "floor" and is_api() and current.device:
                return view(*args, **kwargs)
            if current.person is None:
                if is_api():
                    abort(401, say("access-error-this_phone_is_not_let"))
                return redirect(url_for("access.sign_in", next=request.full_path.rstrip("?")))
            if not current.may(access):
                abort(403, say("access-error-this_needs_the_role_ask", access=access))
            return view(*args, **kwargs)

        guarded.needs_access = access  # type: ignore[attr-defined]
        return guarded

    return guard
