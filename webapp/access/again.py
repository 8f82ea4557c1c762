"""Password or passkey once more before what weighs: signing a month, giving the office role, taking data out."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import ParamSpec

from flask import make_response, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from werkzeug.wrappers import Response

from webapp.access.forms import AgainForm
from webapp.access.guard import FRESH_S, current, is_fresh, make_fresh, needs
from webapp.access.pages import bp, home, inside, tried
from webapp.access.passkeys import AGAIN, REFUSED, tried_passkey
from webapp.words.desk import Later

P = ParamSpec("P")
FIELD, PASSKEY_FIELD = "again_password", "again_passkey"
_NOT_CARRIED = (FIELD, PASSKEY_FIELD, "csrf_token")
_WRONG = Later("access-again-that_is_not_your_password")


def asked_again() -> Response | None:
    """Return None where the person has shown within FRESH_S that it is they; else the page that asks for it.

    A form that was on its way is carried along, and sent to the same address with the password or passkey beside it.
    """
    if is_fresh():
        return None
    if request.method != "POST":
        return redirect(url_for("access.again", next=request.full_path.rstrip("?")))
    wrong = ""
    if FIELD in request.form or PASSKEY_FIELD in request.form:
        wrong = _tried()
        if not wrong:
            return None
    carried = [(name, value) for name, value in request.form.items(multi=True) if name not in _NOT_CARRIED]
    form = AgainForm(formdata=None)
    if wrong:
        form.again_password.errors = [wrong]
    response = make_response(_page(form, request.full_path.rstrip("?"), carried), 422)
    response.headers["Cache-Control"] = "no-store"
    return response


def fresh(view: Callable[P, ResponseReturnValue]) -> Callable[P, ResponseReturnValue]:
    """Guard a view, below `needs`: the person must have shown within FRESH_S that it is they, or does so now."""

    @wraps(view)
    def guarded(*args: P.args, **kwargs: P.kwargs) -> ResponseReturnValue:
        return asked_again() or view(*args, **kwargs)

    return guarded


@bp.route("/again", methods=["GET", "POST"], endpoint="again")
@needs("floor")
def again_page() -> ResponseReturnValue:
    """Ask for password or passkey of whoever is signed in, then go on to the page that wanted it."""
    form = AgainForm()
    if request.method == "GET":
        form.next.data = request.args.get("next", "")
    elif PASSKEY_FIELD in request.form or form.validate():
        wrong = _tried()
        if not wrong:
            return redirect(inside(form.next.data) or url_for(home()))
        form.again_password.errors = [wrong]
    return _page(form, url_for("access.again"), []), 200 if request.method == "GET" else 422


def _page(form: AgainForm, action: str, carried: list[tuple[str, str]]) -> str:
    return render_template(
        "access/again.html", form=form, current_person=current.person, carried=carried, action=action,
        minutes=FRESH_S // 60,
    )


def _tried() -> str:
    """Return what is wrong with the password or passkey that came; where nothing is, no text, and a new session."""
    assert current.person
    if answer := request.form.get(PASSKEY_FIELD):
        person, wrong = tried_passkey(AGAIN, answer, "again"), REFUSED
    else:
        person, wrong = tried(current.person["code"], request.form.get(FIELD, ""), "again"), _WRONG
    if person is None:
        return wrong
    make_fresh()
    return ""
