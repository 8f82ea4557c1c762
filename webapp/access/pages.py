"""Sign in, sign out, first-run set-up, and the page that helps a phone to trust the server."""

from __future__ import annotations

import hmac
from collections.abc import Callable
from typing import NoReturn
from urllib.parse import urlsplit

from flask import (
    Blueprint,
    Flask,
    Response,
    abort,
    current_app,
    make_response,
    redirect,
    render_template,
    request,
    url_for,
)
from flask.typing import ResponseReturnValue

from webapp.access.forms import SetUpForm, SignInForm
from webapp.access.guard import current
from webapp.access.guard import sign_in as begin_session
from webapp.access.guard import sign_out as end_session
from webapp.access.journal import note, note_once
from webapp.access.tries import Remembered, Tries, network_of
from webapp.book.house import people, registry
from webapp.book.house.hashing import WAIT_S, TooManyAtOnce
from webapp.book.house.passwords import refuse_guessable
from webapp.book.house.people import Person
from webapp.book.record.errors import BookError
from webapp.serving import phone_trust
from webapp.words.desk import say

bp = Blueprint("access", __name__)
# A name from one address; all names from one address; a name from addresses that never signed it in. The last is
# larger: somebody who guesses wrongly must not keep a name out, and never from where it is used to signing in.
by_name_here = Tries(most=5, window_s=60)
by_address = Tries(most=30, window_s=60)
by_name = Tries(most=40, window_s=60)
used_here = Remembered()


def setup_code(app: Flask) -> str | None:
    """Return the code that opens the set-up page, or None once there are people in the book."""
    book = app.extensions["book"]
    if people.people(book):
        return None
    if "SETUP_CODE" not in app.config:
        import secrets

        app.config["SETUP_CODE"] = "-".join(secrets.token_hex(2) for _ in range(3))
    code: str = app.config["SETUP_CODE"]
    return code


@bp.route("/sign-in", methods=["GET", "POST"], endpoint="sign_in")
def sign_in_page() -> ResponseReturnValue:
    """Show the sign-in form; let in, or say what to do."""
    if setup_code(current_app):
        return redirect(url_for("access.set_up"))
    form = SignInForm()
    if request.method == "GET":
        form.next.data = request.args.get("next", "")
    elif form.validate():
        person = tried(str(form.code.data).strip(), str(form.password.data))
        if person:
            begin_session(person)
            return redirect(inside(form.next.data) or url_for(home()))
        form.password.errors = [say("access-sign_in-code_or_password_is_wrong")]
    return render_template("access/sign_in.html", form=form), 200 if request.method == "GET" else 401


def tried(code: str, password: str, passed: str = "signed_in") -> Person | None:
    """Return whose code and password these are, or None; counted and noted in the journal, `passed` where they are.

    Whoever tries too often, and whoever comes while many stand in line, is sent away with a page.
    """
    name = code.upper()

    def look() -> tuple[Person | None, str]:
        person = people.check_password(current.book, code, password)
        return person, "" if person else _shown(name)

    return counted(name, look, passed)


def counted(name: str, look: Callable[[], tuple[Person | None, str]], passed: str) -> Person | None:
    """Return whom `look` finds, counted against this name, this address and both; noted with what `look` says of it."""
    address = network_of(request.remote_addr)
    here = f"{name}\n{address}"
    is_used = here in used_here
    wait_s = max(by_name_here.wait_s(here), by_address.wait_s(address), 0 if is_used else by_name.wait_s(name))
    if wait_s:
        note_once("sent_away", about=_shown(name))
        _send_away(429, say("access-sign_in-too_many_tries_wait_s", wait_s=wait_s), wait_s)
    # Counted before it is looked at: guesses side by side would all find the count of before.
    by_name_here.failed(here)
    by_address.failed(address)
    if not is_used:
        by_name.failed(name)
    try:
        person, about = look()
    except TooManyAtOnce as error:  # nothing was guessed
        by_name_here.took_back(here)
        by_address.took_back(address)
        if not is_used:
            by_name.took_back(name)
        _send_away(503, str(error), WAIT_S)
    if person is not None:
        by_name_here.passed(here)
        by_address.took_back(address)
        if not is_used:
            by_name.took_back(name)
        used_here.add(here)
    note(passed if person else "not_signed_in", person["code"] if person else "", about)
    return person


def _shown(name: str) -> str:
    """Return a code that exists; of anything else only that it does not: people type their password there."""
    return name if people.person(current.book, name) else say("access-sign_in-no_such_code")


def _send_away(status: int, words: str, wait_s: int) -> NoReturn:
    response = make_response(render_template("access/error.html", words=words), status)
    response.headers["Retry-After"] = str(wait_s)
    abort(response)


def home() -> str:
    """Return the endpoint of the first page of a person: the desk, or the page that this server has in its place."""
    return str(current_app.config.get("HOME", "desk.today_page"))


def inside(target: str | None) -> str | None:
    """Return the path of the page to go on to, if it is a page of ours; never another site."""
    parts = urlsplit(target or "")
    if not target or parts.scheme or parts.netloc or not target.startswith("/") or target[1:2] in ("/", "\\"):
        return None
    return target


@bp.post("/sign-out")
def sign_out() -> ResponseReturnValue:
    """End the session. The slate on this phone stays as it is."""
    note("signed_out")
    end_session()
    return redirect(url_for("access.sign_in"))


@bp.route("/set-up", methods=["GET", "POST"])
def set_up() -> ResponseReturnValue:
    """The first run: the house, and the first person, who may then do everything."""
    wanted = setup_code(current_app)
    if wanted is None:
        return redirect(url_for("access.sign_in"))
    form = SetUpForm()
    form.site.label.text = current_app.config.get("HOUSE", form.site.label.text)
    if request.method == "GET":
        form.setup_code.data = request.args.get("code", "")
    elif form.validate():
        address = network_of(request.remote_addr)
        if by_address.wait_s(address):
            abort(429)
        if hmac.compare_digest(str(form.setup_code.data).strip().lower().encode(), wanted.encode()):
            try:
                return _first_person(form)
            except BookError as error:
                form.password.errors = [str(error)]
                return render_template("access/set_up.html", form=form), 422
        by_address.failed(address)
        form.setup_code.errors = [say("access-sign_in-that_is_not_the_code")]
    return render_template("access/set_up.html", form=form), 200 if request.method == "GET" else 422


def _first_person(form: SetUpForm) -> ResponseReturnValue:
    code = str(form.code.data).upper()
    refuse_guessable(str(form.password.data), [code, *str(form.name.data).split(), *str(form.site.data).split()])
    registry.set_site(current.book, {"name": form.site.data, "units": form.units.data}, by=code)
    row = {"code": code, "name": form.name.data, "roles": ["master distiller"], "access": "office"}
    people.put_person(current.book, row, by=code)
    people.set_password(current.book, code, str(form.password.data), by=code)
    person = people.person(current.book, code)
    assert person
    begin_session(person)
    return redirect(url_for(home()))


@bp.get("/trust")
def trust() -> ResponseReturnValue:
    """Show the page that explains how a phone comes to trust this server's own certificate authority."""
    folder = current_app.config["DATA_DIR"]
    words = phone_trust.page_words(folder, request.user_agent.string, request.args.get("for", ""))
    # In plain http on the computer itself there is nothing to try: all comes, trusted or not.
    seen = phone_trust.SEEN_PATH if request.is_secure else ""
    return render_template(
        "access/trust.html", **words, address="/", seen=seen, onward="To the floor",
        port=urlsplit(request.host_url).port or 443,
    )


@bp.get(phone_trust.SEEN_PATH)
def trust_seen() -> Response:
    """Send a picture of nothing: a phone that gets it over https trusts the house (static/doors/trust.js)."""
    response = Response(phone_trust.SEEN, mimetype="image/svg+xml")
    # The page that asks lies at the plain port, which is another origin.
    response.headers["Cross-Origin-Resource-Policy"] = "cross-origin"
    return response


@bp.get(phone_trust.PEM_PATH)
def trust_certificate() -> Response:
    """Hand out the public certificate of the house's own authority."""
    return _handed(phone_trust.ca_pem(current_app.config["DATA_DIR"]), "application/x-x509-ca-cert")


@bp.get(phone_trust.PROFILE_PATH)
def trust_profile() -> Response:
    """Hand out the same certificate as a profile for iPhones and iPads."""
    return _handed(phone_trust.ca_mobileconfig(current_app.config["DATA_DIR"]), "application/x-apple-aspen-config")


def _handed(body: bytes | None, mimetype: str) -> Response:
    if body is None:
        abort(404, say("access-sign_in-this_server_has_no_authority"))
    return Response(body, mimetype=mimetype)
