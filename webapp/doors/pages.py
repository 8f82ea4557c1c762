"""The doors themselves: the front page, the desk signed in, this browser as a phone, a phone that was scanned in."""

from __future__ import annotations

import time
from datetime import UTC, datetime, timedelta
from typing import TypedDict

from flask import Response, abort, current_app, make_response, redirect, render_template, request, session, url_for
from flask.typing import ResponseReturnValue
from werkzeug.exceptions import TooManyRequests

from webapp.access import current
from webapp.access.guard import is_api, sign_in
from webapp.access.tries import Tries, network_of
from webapp.book.fold.heading import load_heading
from webapp.book.house import devices, people
from webapp.book.record.store import Book
from webapp.demo import own
from webapp.doors import bp
from webapp.doors.label_strip import STRIP, labels_of
from webapp.doors.trials import BY_KEY, SHEET_NAME, TRIALS, open_run, person
from webapp.labels.qr import qr_picture
from webapp.places import DEMO_DIR
from webapp.sheets.waiting import keep_waiting
from webapp.words.desk import say

DESK, PHONE_HERE, OWN_PHONE = "IM", "BT", "PR"
BY = "demo"
# Phones that the doors let in: of one address, and in all. The demo is invented, and still it is bounded.
PHONES_MOST = 500
phones_of_address = Tries(most=20, window_s=600)
CUT_COOKIE = "cellarslate_demo_cut"
CUT_S = 600
STALE = timedelta(hours=20)
_SILENCE = "The demo's signal is cut for this browser.\n"


class _Count(TypedDict):
    n: int


@bp.get("/")
@bp.get("", endpoint="front_short")
def front() -> ResponseReturnValue:
    """Show three doors, five things to try, and labels to hold a phone to."""
    book = current.book
    counts = load_heading(book).counts
    laid_at = own.laid_at(book)
    trust_url = current_app.config.get("TRUST_URL")
    return render_template(
        "doors/front.html",
        site=current.site, now=datetime.now(current.zone), run=open_run(book),
        entries=_count(book, "SELECT count(*) AS n FROM entries"),
        asked=counts.get("stop", 0) + counts.get("ask", 0), stops=counts.get("stop", 0),
        at_desk=person(DESK), here=person(PHONE_HERE), own=person(OWN_PHONE),
        trials=[(trial, trial.told(book), person(trial.who)) for trial in TRIALS],
        labels=labels_of(book, STRIP), cut_until=_cut_until(),
        is_stale=laid_at is None or datetime.now(UTC) - laid_at > STALE,
        join_url=trust_url, join_picture=qr_picture(trust_url) if trust_url else None,
        sheet=_sheet_waits(), sheet_name=SHEET_NAME,
    )


@bp.post("/desk")
def desk() -> ResponseReturnValue:
    """Sign in as the distiller, and show the desk."""
    _sit_down(DESK)
    return redirect(url_for("desk.today_page"))


@bp.post("/phone")
def phone() -> ResponseReturnValue:
    """Let this browser in as a phone, and say who holds it; the page's script opens it."""
    return _opened(request.form.get("who") or PHONE_HERE, "/today")


@bp.get("/join")
def join() -> ResponseReturnValue:
    """Show the door for a phone that was scanned in: one tap lets it in."""
    return render_template("doors/join.html", site=current.site, who=person(OWN_PHONE), code=OWN_PHONE)


@bp.post("/try/<key>")
def try_it(key: str) -> ResponseReturnValue:
    """Go to one of the things to try, as the person who does it."""
    trial = BY_KEY.get(key)
    if trial is None:
        abort(404, say("door-page-there_is_no_such_thing"))
    where = trial.where(current.book)
    if not where:
        abort(404, say("door-page-the_demo_has_none_left"))
    if trial.is_phone:
        return _opened(trial.who, where, is_cut=trial.is_cut)
    _sit_down(trial.who)
    _sheet_waits()
    # 307: the browser sends the form again, with the sheet's name in it.
    return redirect(where, 307) if trial.key == "sheet" else redirect(where)


@bp.post("/signal")
def signal() -> ResponseReturnValue:
    """Cut the signal of this browser's phone, or put it back."""
    response = make_response(redirect(url_for("doors.front", _anchor="signal")))
    if request.form.get("do") == "cut":
        response.set_cookie(
            CUT_COOKIE, str(int(time.time()) + CUT_S), max_age=CUT_S, httponly=True, samesite="Lax",
            secure=bool(current_app.config["TLS"]),
        )
    else:
        response.delete_cookie(CUT_COOKIE)
    return response


def lead() -> ResponseReturnValue | None:
    """Before each request: a stranger's first page is the front; where the signal is cut, the API answers nobody."""
    if request.path == "/" and request.method == "GET" and current.person is None and current.device is None:
        return redirect(url_for("doors.front"))
    if is_api() and _cut_until() is not None:
        # As a gate answers whose book is down: phones take it for no answer at all (static/slate/ask.js).
        return Response(_SILENCE, 503, mimetype="text/plain")
    return None


def _sheet_waits() -> str:
    """Put the sheet that can be taken in beside the book, as an uploaded one waits; return its digest."""
    return keep_waiting(current_app.config["DATA_DIR"], (DEMO_DIR / "sheet.csv").read_bytes())


def _cut_until() -> datetime | None:
    text = request.cookies.get(CUT_COOKIE, "")
    if not (text.isascii() and text.isdecimal() and len(text) <= 12):
        return None
    until = int(text)
    return datetime.fromtimestamp(until, current.zone) if time.time() < until <= time.time() + CUT_S else None


def _sit_down(code: str) -> None:
    found = people.person(current.book, code)
    if found is None or found["retired"]:
        abort(404, say("door-page-this_person_has_left_the"))
    # The form's own token outlives the change of session: a task's form may be sent on (307).
    token = session.get("csrf_token")
    sign_in(found)
    if token:
        session["csrf_token"] = token


def _opened(code: str, then: str, *, is_cut: bool = False) -> ResponseReturnValue:
    """Return the page that makes this browser a phone in that person's hand, and goes on to `then`."""
    who = person(code)
    if who is None:
        abort(404, say("door-page-there_is_nobody_of_that"))
    token = "" if current.device else _token()
    response = make_response(render_template(
        "doors/phone.html", site=current.site, who=who, token=token, then=then, is_cut=is_cut,
    ))
    response.delete_cookie(CUT_COOKIE)  # it has to hear of the vessels first
    return response


def _token() -> str:
    address = network_of(request.remote_addr)
    if wait_s := phones_of_address.wait_s(address):
        raise TooManyRequests(retry_after=wait_s)
    phones_of_address.failed(address)
    let_in = _count(current.book, "SELECT count(*) AS n FROM devices WHERE enrolled_by = ?", BY)
    if let_in >= PHONES_MOST:
        abort(429, say("door-page-the_demo_has_let_in"))
    return devices.new_token(current.book, BY, say("door-page-visitor", let_in=let_in + 1))


def _count(book: Book, sql: str, *values: object) -> int:
    (row,) = book.rows(_Count, sql, values)
    return row["n"]

