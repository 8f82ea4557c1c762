"""The floor's pages as the server gives them: filled in for whoever is signed in, and working without script.

A phone with the worker never comes here; it opens the shells it keeps (shells.py).
"""

from __future__ import annotations

from datetime import UTC, datetime

from flask import abort, make_response, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from flask_wtf import FlaskForm
from wtforms import StringField
from wtforms.validators import InputRequired, Length

import webapp.kinds
from webapp.access import current
from webapp.floor import bp, page_entry
from webapp.floor.api import TOKEN_MOST, let_in, set_device_cookie
from webapp.kinds.as_form import KindForm, form_class
from webapp.kinds.spec import Kind
from webapp.trade.marks import BadMark, parse_mark
from webapp.words.desk import Later, say
from webapp.words.kindwords import form_words, kind_in
from webapp.words.language import language


class EnrolForm(FlaskForm):
    """The one-time code from the office, and a name for the phone."""

    token = StringField(
        Later("floor-enrol-code"), [InputRequired(Later("floor-enrol-type_the_code")), Length(max=TOKEN_MOST)]
    )
    name = StringField(Later("floor-enrol-name"), [Length(max=40)])


@bp.get("/")
@bp.get("/today")
def today() -> ResponseReturnValue:
    """Show every vessel with its contents, and the work under way."""
    found = page_entry.all_cards() if current.person else []
    return render_template("floor/today.html", shell=False, cards=found)


@bp.get("/scan")
def scan() -> ResponseReturnValue:
    """Scan or type a mark; without script the mark comes in the address and leads on."""
    typed = request.args.get("mark", "")
    if not typed:
        return render_template("floor/scan.html", shell=False)
    try:
        return redirect(url_for("floor.vessel", mark=parse_mark(typed)))
    except BadMark as error:
        return render_template("floor/scan.html", shell=False, mark_error=_bad_mark(error)), 422


@bp.get("/m/<mark>")
@bp.get("/M/<mark>", endpoint="label")
def vessel(mark: str) -> ResponseReturnValue:
    """Show the card of one vessel."""
    mark = _mark(mark)
    card = page_entry.card(mark) if current.person else None
    if current.person and card is None:
        abort(404, say("floor-vessel-not_in_book", mark=mark))
    kinds = [kind_in(kind, language()) for kind in webapp.kinds.ALL]
    titles = {kind.name: kind.short or kind.title for kind in kinds}
    return render_template("floor/vessel.html", shell=False, card=card, mark=mark, titles=titles)


@bp.get("/m/<mark>/run")
@bp.get("/M/<mark>/run", endpoint="label_run")
def run(mark: str) -> ResponseReturnValue:
    """Show the sheet of the run on one still."""
    return render_template("floor/run.html", shell=False, mark=_mark(mark))


@bp.route("/m/<mark>/log/<kind>", methods=["GET", "POST"])
@bp.route("/M/<mark>/log/<kind>", methods=["GET", "POST"], endpoint="label_log")
def log(mark: str, kind: str) -> ResponseReturnValue:
    """The form of a kind about one vessel."""
    return _form_page(_mark(mark), _kind(kind))


@bp.route("/log/<kind>", methods=["GET", "POST"])
def log_without_mark(kind: str) -> ResponseReturnValue:
    """The form of a kind that needs no vessel."""
    declared = _kind(kind)
    if declared.needs_mark:
        return redirect(url_for("floor.scan"))
    return _form_page("", declared)


@bp.get("/job/<name>")
def job(name: str) -> ResponseReturnValue:
    """A job that is more than one form; the phone's own modules draw it."""
    return render_template("floor/job.html", shell=False)


@bp.get("/slate")
def slate() -> ResponseReturnValue:
    """Show the entries that this phone holds."""
    return render_template("floor/slate.html", shell=False)


@bp.get("/more")
def more() -> ResponseReturnValue:
    """Show the settings of this phone, the cautions, and the way to the desk."""
    return render_template("floor/more.html", shell=False)


@bp.get("/who")
def who() -> ResponseReturnValue:
    """Show the choice of the person who logs."""
    return render_template("floor/who.html", shell=False)


@bp.route("/start", methods=["GET", "POST"])
@bp.route("/enrol/<token>", methods=["GET", "POST"])
def enrol_page(token: str = "") -> ResponseReturnValue:
    """Let this phone in by a one-time code."""
    form = EnrolForm(token=token)
    error = ""
    if form.validate_on_submit():
        _, secret = let_in(str(form.token.data), str(form.name.data or ""))
        response = make_response(redirect(url_for("floor.today")))
        set_device_cookie(response, secret)
        return response
    if request.method == "POST":
        error = " ".join(str(words) for errors in form.errors.values() for words in errors)
    shown = str(form.token.data or token)
    return render_template("floor/enrol.html", shell=False, form=form, token=shown, error=error), 422 if error else 200


def _form_page(mark: str, kind: Kind) -> ResponseReturnValue:
    kind = kind_in(kind, language())
    form: KindForm = form_class(kind, form_words())()
    problems: list[page_entry.Said] = []
    status = 200
    if request.method == "POST":
        # What is missing is said by read.py, in the same words as on the phone; the form only keeps what was typed.
        problems = page_entry.log(kind, mark, form, datetime.now(UTC))
        if not problems:
            return redirect(url_for("floor.vessel", mark=mark) if mark else url_for("floor.today"))
        status = 422
    last = page_entry.last_values(mark, kind) if mark and current.person else {}
    page = render_template("floor/log.html", shell=False, kind=kind, form=form, mark=mark, last=last, problems=problems)
    return page, status


def _kind(name: str) -> Kind:
    kind = webapp.kinds.get(name)
    if kind is None or not kind.floor:
        abort(404, say("floor-form-no_such"))
    return kind


def _mark(text: str) -> str:
    try:
        return parse_mark(text)
    except BadMark as error:
        abort(404, _bad_mark(error))


def _bad_mark(error: BadMark) -> str:
    return say("floor-mark-bad", why=error.code, mark=error.bare)
