"""Limits: the ranges of the kinds and the limits of the checks, each with where it comes from, found and set."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

import webapp.kinds
from webapp.access import current, needs
from webapp.book.before.limits import SITE_SCOPES, Limit, held_limit, held_ranges
from webapp.book.fold.registry_rows import load_limits
from webapp.book.house import registry
from webapp.book.limits import ALL, BY_SUBJECT
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import CheckLimitForm, LimitForm, figure
from webapp.kinds.as_form import pairs
from webapp.kinds.entry import Limits
from webapp.kinds.rows import SiteSettings
from webapp.kinds.spec import Field, Kind
from webapp.trade import units
from webapp.trade.marks import BadMark, parse_mark
from webapp.words.desk import say
from webapp.words.kindwords import kind_in
from webapp.words.language import language

Rows = list[dict[str, Any]]
# What an address may carry to the limits of the checks: words to find, and what fills the boxes.
_CHECK_WORDS = ("q", "scope", "key", "name", "value")


@bp.route("/limits", methods=["GET", "POST"])
@needs("distiller")
def limits_page() -> ResponseReturnValue:
    """List every range and limit; set a range that replaces a kind's own, or take it back with empty boxes."""
    form = _range_form()
    if request.method == "POST" and form.validate():
        words = _set_range(form)
        if words is None:
            flash(say("desk-limits-kept_the_vessels_concerned_are"), "entered")
            return redirect(url_for("desk.limits_page"))
        form.key.errors = [words]
    return _page(form, CheckLimitForm(request.args), 422 if request.method == "POST" else 200)


@bp.get("/limits/checks")
@needs("distiller")
def check_limits_page() -> ResponseReturnValue:
    """Lead on to the limits of the checks, which stand on the page of all limits."""
    given: dict[str, Any] = {name: request.args[name] for name in _CHECK_WORDS if name in request.args}
    return redirect(url_for("desk.limits_page", **given, _anchor="checks"))


@bp.post("/limits/checks")
@needs("distiller")
def put_check_limit() -> ResponseReturnValue:
    """Set a limit of a check; an empty figure gives the check's own back."""
    form = CheckLimitForm(request.form)
    if form.validate():
        words = _set_check_limit(form)
        if words is None:
            flash(say("desk-limits-kept_the_entries_concerned_are"), "entered")
            return redirect(url_for("desk.limits_page"))
        form.key.errors = [words]
    return _page(_range_form(), form, 422)


def _range_form() -> LimitForm:
    posted = request.method == "POST" and request.endpoint == "desk.limits_page"
    form = LimitForm(request.form if posted else request.args)
    form.target.choices = pairs(
        [(f"{kind.name}.{spec.name}", f"{_label(kind, spec)} [{_symbol(spec)}]") for kind, spec in _number_fields()]
    )
    return form


def _page(range_form: LimitForm, check_form: CheckLimitForm, status: int) -> tuple[str, int]:
    words = request.args.get("q", "").casefold().split()
    site = registry.site(current.book)
    set_limits = [{**row, **_worded(row["name"])} for row in registry.check_limits(current.book)]
    page = render_template(
        "desk/house/limits.html",
        text=request.args.get("q", ""),
        range_form=range_form,
        check_form=check_form,
        limits=_found(words, set_ranges(registry.limits(current.book))),
        ranges=_found(words, _held_ranges(load_limits(current.book))),
        set_limits=_found(words, set_limits),
        subjects={
            subject: found
            for subject, group in BY_SUBJECT.items()
            if (found := _found(words, _held_limits(subject, group, site, set_limits)))
        },
    )
    return page, status


def _found(words: Iterable[str], rows: Rows) -> Rows:
    """Return the rows that hold all the words in their texts, figures left out."""
    sought = list(words)
    return [row for row in rows if all(word in _text(row) for word in sought)]


def _text(row: Mapping[str, object]) -> str:
    parts = (part for value in row.values() for part in (value if isinstance(value, tuple) else (value,)))
    return " ".join(part for part in parts if isinstance(part, str)).casefold()


def _number_fields() -> list[tuple[Kind, Field]]:
    return [(kind, spec) for kind in webapp.kinds.ALL for spec in kind.fields if spec.sort == "number"]


def _label(kind: Kind, spec: Field) -> str:
    read = kind_in(kind, language())
    field = read.field(spec.name)
    return f"{read.title}: {field.label if field else spec.label}"


def _symbol(spec: Field) -> str:
    return units.symbol(spec.units[0]) if spec.units else ""


def set_ranges(rows: Sequence[Mapping[str, Any]]) -> Rows:
    """Return ranges that somebody has set, with the words of their field and its unit."""
    shown = []
    for row in rows:
        kind = webapp.kinds.get(row["kind"])
        spec = kind.field(row["field"]) if kind else None
        label = _label(kind, spec) if kind and spec else f"{row['kind']}: {row['field']}"
        shown.append({**row, "label": label, "symbol": _symbol(spec) if spec else ""})
    return shown


def _held_ranges(ranges: Limits) -> Rows:
    """Return for every field the ranges that hold for the whole site, then those of each narrower scope."""
    narrower = sorted({(scope, key) for scope, key, _ in ranges if scope != "site"})
    rows: Rows = []
    for kind, spec in _number_fields():
        told = {"label": _label(kind, spec), "symbol": _symbol(spec)}
        own = {"usual": (spec.usual, "", ""), "possible": (spec.possible, "", "")}
        rows.append(told | own | held_ranges(kind.name, SITE_SCOPES, ranges).get(spec.name, {}))
        for scope in narrower:
            found = held_ranges(kind.name, (scope,), ranges).get(spec.name)
            if found:
                rows.append(told | found)
    return rows


def _held_limits(subject: str, group: Iterable[Limit], site: SiteSettings, narrower: Rows) -> Rows:
    """Return for every limit of a subject the one that holds for the whole site, then those of each narrower scope."""
    rows: Rows = []
    for one in group:
        scopes = [(), *(((row["scope"], row["key"]),) for row in narrower
                        if row["name"] == one.name and row["scope"] != "site")]
        for scope in scopes:
            value, held, key = held_limit(one.name, site, scope)
            rows.append({"subject": subject, "scope": held, "key": key, "value": value, "default": one.default,
                         **_worded(one.name)})
    return rows


def _worded(name: str) -> dict[str, str]:
    one = ALL.get(name)
    return {"words": one.words if one else name, "unit": one.unit if one else ""}


def _by() -> str:
    assert current.person
    return str(current.person["code"])


def _set_range(form: LimitForm) -> str | None:
    """Set the range; return what is wrong, or None."""
    scope, key = str(form.scope.data), (form.key.data or "").strip()
    if scope == "vessel":
        try:
            key = parse_mark(key)
        except BadMark as error:
            return str(error)
        if registry.vessel(current.book, key) is None:
            return say("desk-limits-the_book_knows_no_vessel", key=key)
    elif scope != "site" and not key:
        return say("desk-limits-say_which_the_sort_of")
    kind, field = str(form.target.data).split(".", 1)
    usual = (figure(form.usual_low), figure(form.usual_high))
    possible = (figure(form.possible_low), figure(form.possible_high))
    for low, high in (usual, possible):
        if low is not None and high is not None and low > high:
            return say("desk-limits-from_to_is_no_range", low=f"{low:g}", high=f"{high:g}")
    registry.set_limit(current.book, scope, key if scope != "site" else "", kind, field, usual, possible, by=_by())
    return None


def _set_check_limit(form: CheckLimitForm) -> str | None:
    """Set the limit; return what is wrong, or None."""
    scope, key = str(form.scope.data), (form.key.data or "").strip()
    try:
        if scope == "vessel":
            key = parse_mark(key)
        registry.set_check_limit(current.book, scope, key, str(form.name.data), figure(form.value), by=_by())
    except (BadMark, BookError) as error:
        return str(error)
    return None
