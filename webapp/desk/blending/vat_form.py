"""The boxes of the vat planner. They travel in the address, so that a choice can be gone back to and sent on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from flask import request
from flask_wtf import FlaskForm
from wtforms import BooleanField, SelectField, StringField
from wtforms.validators import Length, Optional, ValidationError

from webapp.book.checks import site_limit
from webapp.book.vats.sum import Source
from webapp.book.vats.wish import AIMS, Wish
from webapp.desk.figures import amount, name_units, or_us, typed
from webapp.desk.figures import figure as shown
from webapp.desk.forms import figure
from webapp.kinds.as_form import pairs
from webapp.kinds.reasons import reason_of
from webapp.kinds.rows import SiteSettings
from webapp.trade import units
from webapp.trade.errors import NotANumber
from webapp.words import sentence
from webapp.words.desk import Later, say
from webapp.words.language import language

AIM_WORDS = {
    "fewest": Later("desk-vat_form-as_few_vessels_as_can"), "oldest_stays": Later("desk-vat_form-the_oldest_stays"),
    "oldest_first": Later("desk-vat_form-the_oldest_goes_first"),
}
_UNITS = {"volume": "L", "soak": "kg"}
STRENGTH_UNITS = [("pct_vol", Later("desk-vat_form-vol")), ("proof", "proof")]


class Within:
    """A figure between two ends; comma or point."""

    def __init__(self, low: float, high: float) -> None:
        self.low, self.high = low, high

    def __call__(self, form: FlaskForm, field: StringField) -> None:
        """Refuse what is no figure, or lies outside."""
        try:
            value = figure(field)
        except NotANumber as error:
            raise ValidationError(sentence(reason_of(error), language())) from error
        if value is not None and not self.low <= value <= self.high:
            raise ValidationError(say("desk-vat_form-between_and_please", low=f"{self.low:g}", high=f"{self.high:g}"))


class VatForm(FlaskForm):
    """What the vat should be, and what may go into it."""

    what = SelectField(Later("desk-common-spirit"), choices=[], validate_choice=False)
    strength = StringField(Later("desk-vat_form-strength_empty_as_it_comes"), [Optional(), Within(1, 190)])
    strength_unit = SelectField(Later("desk-vat_form-unit_of_strength"), choices=pairs(STRENGTH_UNITS))
    volume = StringField(Later("desk-vat_form-volume_l_empty_all_they"), [Optional(), Within(1, 1e6)])
    within = StringField(Later("desk-vat_form-volume_may_be_off_by"), [Optional(), Within(0, 50)])
    share = StringField(Later("desk-vat_form-most_of_any_one_vessel"), [Optional(), Within(1, 100)])
    lot_share = StringField(Later("desk-vat_form-most_of_any_one_lot"), [Optional(), Within(1, 100)])
    youngest = StringField(Later("desk-vat_form-youngest_in_wood_years"), [Optional(), Within(0, 100)])
    soak = StringField(Later("desk-vat_form-the_wood_of_a_200"), [Optional(), Within(0, 50)])
    aim = SelectField(Later("desk-vat_form-aim"), choices=pairs([(aim, AIM_WORDS[aim]) for aim in AIMS]))
    in_part = BooleanField(Later("desk-vat_form-casks_may_be_drawn_in"))
    name = StringField(Later("desk-vat_form-name_of_the_vat"), [Optional(), Length(max=80)])

    @classmethod
    def of_request(cls, site: SiteSettings) -> VatForm:
        """Return the form as the address has it; where it is new, with the house's usual figures."""
        usual = {
            "strength_unit": "proof" if site.get("units") == "us" else "pct_vol", "within": "2",
            "youngest": f"{site_limit('vat_youngest_years', site):g}",
            "soak": shown((site_limit("soak_low_kg", site) + site_limit("soak_high_kg", site)) / 2, "kg", None),
            "aim": "fewest",
        }
        given = request.args  # where a vat is kept, too: the page posts to its own address
        if "solve" in given:
            made = cls(formdata=given, meta={"csrf": False})
        else:
            made = cls(formdata=None, data=usual | given.to_dict(), meta={"csrf": False})
        name_units(made, **_UNITS)
        made.soak.label.text = made.soak.label.text.replace("200 L", or_us("200 L", "53 gal"))
        return made

    def number(self, name: str) -> float | None:
        """Return the figure in a box, strength in % vol at 20 degC; None where it is empty or wrong."""
        field = self[name]
        try:
            value = figure(field)
        except ValueError:
            return None
        if value is not None and name == "strength":
            return float(units.to_canonical(value, self.strength_unit.data))
        return typed(value, _UNITS[name]) if name in _UNITS else value

    def wish(self) -> Wish:
        """Return the wish for the vat, from the form."""
        return Wish(
            strength_pct=self.number("strength"), volume_l=self.number("volume"),
            within_pct=self.number("within") or 0.0, share_most_pct=self.number("share") or 100.0,
            lot_most_pct=self.number("lot_share") or 100.0, always=frozenset(self.always()), aim=self.aim.data,
        )

    def picked(self, sources: Sequence[Source]) -> set[str]:
        """Return the marks that may go in: those ticked; before anything is ticked, all that are old enough."""
        if "solve" in request.args:
            return set(request.args.getlist("use")) | self.always()
        least = self.number("youngest") or 0.0
        return {one.mark for one in sources if least <= 0 or (one.years is not None and one.years >= least)}

    def always(self) -> set[str]:
        """Return the marks that must go in."""
        return set(request.args.getlist("always"))

    def as_told(self, source: Source) -> Source:
        """Return a source with the years that somebody typed from the papers, and drawn in part where casks may be."""
        told = request.args.get(f"years-{source.mark}", "").strip()
        try:
            years = units.parse_number(told) if told else None
        except ValueError:
            years = None
        if years is not None and 0 <= years <= 200:
            source = replace(source, years=years, is_least=False, papers=source.papers or "")
        return replace(source, is_whole=False) if self.in_part.data else source


def wish_words(form: VatForm) -> str:
    """Return in a line what was asked for, for the record."""
    strength, volume = form.number("strength"), form.number("volume")
    parts = [
        amount(strength, "pct_vol") if strength else say("desk-vat_form-strength_as_it_comes"),
        say(
            "desk-vat_form-within", volume=amount(volume, 'L', None), figure=f"{form.number('within') or 0:g}",
        ) if volume else say("desk-vat_form-all_they_give"),
    ]
    for name, words in (("share", say("desk-vat_form-of_one_vessel")), ("lot_share", say("desk-vat_form-of_one_lot"))):
        if form.number(name):
            parts.append(say("desk-vat_form-at_most", figure=f"{form.number(name):g}", words=words))
    if form.number("youngest"):
        parts.append(say("desk-vat_form-youngest_years_in_wood", figure=f"{form.number('youngest'):g}"))
    kept = amount(form.number("soak") or 0, "kg", None)
    parts += [AIM_WORDS.get(form.aim.data, ""), say(
        "desk-vat_form-wood_keeps_of", kept=kept, what=or_us('200 L', '53 gal'),
    )]
    return "; ".join(part for part in parts if part)
