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
from webapp.words.desk import Later, say

FIGURES: Final = ("age_years", "strength_low", "strength_high", "score_low", "loss_high")
LACKS = {
    "too_young": Later("desk-house_rules-too_young"), "too_weak": Later("desk-house_rules-too_weak"),
    "too_strong": Later("desk-house_rules-too_strong"), "score_low": Later("desk-house_rules-score_too_low"),
    "not_tasted": Later("desk-house_rules-not_tasted"), "loses_much": Later("desk-house_rules-loses_much_look_at_it"),
    "not_gauged": Later("desk-house_rules-not_gauged"),
}
# Name, words, unit, what is taken where nobody has said.
DUE = tuple((name, words, unit, INTERVALS[name]) for name, words, unit in (
    ("ferment_h", Later("desk-house_rules-read_a_ferment_every"), "h"),
    ("regauge_months", Later("desk-house_rules-regauge_a_cask_every"), "months"),
    ("sample_months", Later("desk-house_rules-sample_a_cask_every"), "months"),
    ("taste_months", Later("desk-house_rules-taste_a_cask_every"), "months"),
    ("instrument_days", Later("desk-house_rules-tell_of_an_instruments_check"), "days"),
    ("check_min", Later("desk-house_rules-check_bottles_on_the_line"), "min"),
    ("check_bottles", Later("desk-house_rules-or_after_so_many_of"), "bottles"),
))
WORDS_MOST, SCORES_MOST, RULES_MOST = 40, 8, 40


def at_least_nothing(form: FlaskForm, field: StringField) -> None:
    """Refuse what is no figure, a figure below nothing, or one beyond all use."""
    is_figure(form, field)
    value = figure(field)
    if value is not None and not 0 <= value <= 10_000:
        raise ValidationError(say("desk-house_rules-type_a_figure_from_0"))


class RuleForm(FlaskForm):
    """When casks of one spirit are ready; what is empty is not asked for."""

    what = StringField(Later("desk-house_rules-spirit_as_the_book_names"), [Optional(), Length(max=80)])
    age_years = StringField(Later("desk-house_rules-in_wood_at_least_years"), [at_least_nothing])
    strength_low = StringField(Later("desk-house_rules-strength_from_vol"), [at_least_nothing])
    strength_high = StringField(Later("desk-house_rules-strength_to_vol"), [at_least_nothing])
    score_low = StringField(Later("desk-house_rules-score_at_least_of_10"), [at_least_nothing])
    loss_high = StringField(Later("desk-house_rules-loss_at_most_a_year"), [at_least_nothing])


class HouseForm(FlaskForm):
    """What is due how often, and the words of tasting."""

    ferment_h = StringField("", [at_least_nothing])
    regauge_months = StringField("", [at_least_nothing])
    sample_months = StringField("", [at_least_nothing])
    taste_months = StringField("", [at_least_nothing])
    instrument_days = StringField("", [at_least_nothing])
    check_min = StringField("", [at_least_nothing])
    check_bottles = StringField("", [at_least_nothing])
    words = TextAreaField(Later("desk-house_rules-words_for_nose_and_mouth"), [Optional(), Length(max=2000)])
    loss_allowance = SelectField(Later("desk-house_rules-beside_the_loss_of_casks"), choices=pairs(CHOICES))
    scores = TextAreaField(Later("desk-house_rules-scores_beside_nose_mouth_wood"), [Optional(), Length(max=400)])


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
    flash(say("desk-house_rules-kept"), "entered")
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
        flash(say("desk-house_rules-kept_phones_have_it_with"), "entered")
        return redirect(url_for("desk.cellar_house_page"))
    status = 422 if request.method == "POST" else 200
    return render_template("desk/cellar/house_rules.html", form=form, due=DUE, pages=PAGES), status


def _lines(text: str | None, most: int) -> list[str]:
    return list(dict.fromkeys(line.strip()[:30] for line in (text or "").splitlines() if line.strip()))[:most]
