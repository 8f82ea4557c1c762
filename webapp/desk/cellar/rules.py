"""The house's own rules of the cellar: when a cask is ready, what is due how often, the words of tasting."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Final

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from flask_wtf import FlaskForm
from wtforms import SelectField, StringField, TextAreaField
from wtforms.validators import Length, Optional, ValidationError

from webapp.access import current, needs
from webapp.book.cellar import casks
from webapp.book.cellar.allowances import CHOICES
from webapp.book.cellar.casks import Cask
from webapp.book.cellar.due import INTERVALS
from webapp.book.house import registry
from webapp.desk.blueprint import bp
from webapp.desk.cellar.pages import PAGES, VERDICTS
from webapp.desk.figures import name_units, typed
from webapp.desk.forms import figure, is_figure
from webapp.kinds.as_form import pairs
from webapp.kinds.rows import ReadyRule, SiteSettings
from webapp.kinds.state import NO_FILL
from webapp.trade.maturing import Found, lacks_of

FIGURES: Final = ("age_years", "strength_low", "strength_high", "score_low", "loss_high")
LACKS = {
    "too_young": "too young", "too_weak": "too weak", "too_strong": "too strong", "score_low": "score too low",
    "not_tasted": "not tasted", "loses_much": "loses much: look at it", "not_gauged": "not gauged",
}
# Name, words, unit, what is taken where nobody has said.
DUE = tuple((name, words, unit, INTERVALS[name]) for name, words, unit in (
    ("ferment_h", "Read a ferment every", "h"), ("regauge_months", "Regauge a cask every", "months"),
    ("sample_months", "Sample a cask every", "months"), ("taste_months", "Taste a cask every", "months"),
    ("instrument_days", "Tell of an instrument's check before", "days"),
    ("check_min", "Check bottles on the line every", "min"), ("check_bottles", "or after so many of them", "bottles"),
))
WORDS_MOST, SCORES_MOST, RULES_MOST = 40, 8, 40


def at_least_nothing(form: FlaskForm, field: StringField) -> None:
    """Refuse what is no figure, a figure below nothing, or one beyond all use."""
    is_figure(form, field)
    value = figure(field)
    if value is not None and not 0 <= value <= 10_000:
        raise ValidationError("Type a figure from 0 up, or leave it empty.")


class RuleForm(FlaskForm):
    """When casks of one spirit are ready; what is empty is not asked for."""

    what = StringField("Spirit, as the book names it; empty for all", [Optional(), Length(max=80)])
    age_years = StringField("In wood at least [years]", [at_least_nothing])
    strength_low = StringField("Strength from [% vol]", [at_least_nothing])
    strength_high = StringField("Strength to [% vol]", [at_least_nothing])
    score_low = StringField("Score at least [of 10]", [at_least_nothing])
    loss_high = StringField("Loss at most [% a year]", [at_least_nothing])


class HouseForm(FlaskForm):
    """What is due how often, and the words of tasting."""

    ferment_h = StringField("", [at_least_nothing])
    regauge_months = StringField("", [at_least_nothing])
    sample_months = StringField("", [at_least_nothing])
    taste_months = StringField("", [at_least_nothing])
    instrument_days = StringField("", [at_least_nothing])
    check_min = StringField("", [at_least_nothing])
    check_bottles = StringField("", [at_least_nothing])
    words = TextAreaField("Words for nose and mouth, one a line", [Optional(), Length(max=2000)])
    loss_allowance = SelectField("Beside the loss of casks: the allowance in the law of", choices=pairs(CHOICES))
    scores = TextAreaField("Scores beside nose, mouth, wood and fault, one a line", [Optional(), Length(max=400)])


@bp.get("/cellar/ready")
@needs("floor")
def ready_page() -> ResponseReturnValue:
    """List casks that are ready by the distiller's own rule, and those that lack one thing."""
    return _ready(RuleForm(None))


@bp.post("/cellar/ready")
@needs("distiller")
def set_ready_rule() -> ResponseReturnValue:
    """Set the rule of one spirit, or of all; no figure at all takes it out."""
    form = RuleForm(request.form)
    if not form.validate():
        return _ready(form), 422
    _keep_rule(_rules(current.site), form)
    flash("Kept.", "entered")
    return redirect(url_for("desk.ready_page"))


def _ready(form: RuleForm) -> str:
    rules = _rules(current.site)
    name_units(form, strength_low="pct_vol", strength_high="pct_vol")
    now = datetime.now(UTC)
    judged = [(cask, _lacks(cask, rules, now)) for cask in casks.casks(current.book) if cask.holds]
    ready = [cask for cask, lacks in judged if lacks == []]
    nearly = [(cask, lacks) for cask, lacks in judged if lacks and len(lacks) == 1]
    changed = [one for one in registry.changes(current.book, 1000) if "ready_rules" in (one["after"] or {})][:5]
    return render_template("desk/cellar/ready.html", form=form, rules=rules, ready=ready, nearly=nearly, now=now,
                           words=LACKS, changed=changed, verdicts=VERDICTS, pages=PAGES)


def _rules(site: SiteSettings) -> list[ReadyRule]:
    said = site.get("ready_rules")
    return [rule for rule in said if isinstance(rule, dict)] if isinstance(said, list) else []


def _lacks(cask: Cask, rules: list[ReadyRule], now: datetime) -> list[str] | None:
    """Return the reasons why a cask is not ready by the rule of its spirit, else by that for all; None where there is
    no rule.
    """
    held = cask.holds or NO_FILL
    said = [str(name or "").lower() for name in (held["what"], held["material"])]
    own = next((rule for rule in rules if rule.get("what") and str(rule["what"]).lower() in said), None)
    rule = own or next((rule for rule in rules if not rule.get("what")), None)
    if rule is None:
        return None
    facts: Found = {"age_years": cask.age_years(now), "strength_pct": held["strength_pct"], "score": cask.score,
                    "loss_pct_year": cask.loss}
    return lacks_of(rule, facts)


def _keep_rule(rules: list[ReadyRule], form: RuleForm) -> None:
    assert current.person
    what = (form.what.data or "").strip()
    kept = [rule for rule in rules if str(rule.get("what") or "").lower() != what.lower()]
    made: ReadyRule = {"what": what}
    for name in FIGURES:
        if (value := figure(form[name])) is not None:
            made[name] = typed(value, "pct_vol") if name.startswith("strength") else value
    if len(made) > 1:
        kept.append(made)
    registry.set_site(current.book, {"ready_rules": kept[-RULES_MOST:]}, by=current.person["code"])


@bp.route("/cellar/house", methods=["GET", "POST"])
@needs("distiller")
def cellar_house_page() -> ResponseReturnValue:
    """Set what is due how often, and the house's words and scores of tasting."""
    site = current.site
    due = site.get("due") or {}
    tasting = site.get("tasting") or {}
    shown = {name: f"{due.get(name, default):g}" for name, _, _, default in DUE}
    shown["loss_allowance"] = str(site.get("loss_allowance") or "")
    shown |= {"words": "\n".join(tasting.get("words") or []), "scores": "\n".join(tasting.get("scores") or [])}
    form = HouseForm(data=shown)
    if request.method == "POST" and form.validate():
        assert current.person
        kept = {name: value for name, _, _, _ in DUE if (value := figure(form[name])) is not None}
        words = {"words": _lines(form.words.data, WORDS_MOST), "scores": _lines(form.scores.data, SCORES_MOST)}
        chosen = {"due": kept, "tasting": words, "loss_allowance": form.loss_allowance.data or ""}
        registry.set_site(current.book, chosen, by=current.person["code"])
        flash("Kept. Phones have it with their next cards.", "entered")
        return redirect(url_for("desk.cellar_house_page"))
    status = 422 if request.method == "POST" else 200
    return render_template("desk/cellar/house_rules.html", form=form, due=DUE, pages=PAGES), status


def _lines(text: str | None, most: int) -> list[str]:
    return list(dict.fromkeys(line.strip()[:30] for line in (text or "").splitlines() if line.strip()))[:most]
