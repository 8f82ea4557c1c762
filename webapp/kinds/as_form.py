"""Kind -> Flask-WTF form. The same form is cached by the phone as a shell and posted by a browser without script.

Whether a figure is usual or possible is read.py's to say; the form only asks that what is required is there.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType
from typing import Protocol

from flask_wtf import FlaskForm
from wtforms import RadioField, SelectField, StringField, TextAreaField
from wtforms.fields.choices import SelectChoice
from wtforms.validators import InputRequired, Length, Optional

from webapp.kinds.spec import Field, Kind
from webapp.trade import units

TEXT_MOST = 2000
# What a form says beside what its kind declares, in English; `{what}` is filled in. `lowers`: a label begins with
# a small letter within a sentence. The instruments by their sorts.
FORM_WORDS: Mapping[str, str] = MappingProxyType({
    "lowers": "yes", "unit_of": "Unit of {what}", "read_at": "Read at", "who": "Who", "role": "Role",
    "seen_by": "Seen by",
    "remark": "Remark", "missing": "{what} is missing. Type it.", "yes": "yes", "no": "no",
    "alcoholmeter": "Alcoholmeter used", "dip": "Dip used", "refractometer": "Refractometer used",
    "saccharometer": "Saccharometer used", "scale": "Scale used", "thermometer": "Thermometer used",
    "density meter": "Density meter used", "pH meter": "pH meter used",
})


class Box(Protocol):
    """A box of a form: what was typed in it, and what is said beside it."""

    data: str | None
    errors: Sequence[str]
    render_kw: dict[str, object] | None


class KindForm(Protocol):
    """The form of a kind, as `form_class` makes it: its kind, and its boxes by name."""

    kind: Kind
    read_at: Box
    role: Box
    remark: Box

    def __getitem__(self, name: str) -> Box: ...

    def __contains__(self, name: str) -> bool: ...


def form_class(kind: Kind, words: Mapping[str, str] = FORM_WORDS) -> type[FlaskForm]:
    """Return the form class of a kind: `<field>`, `<field>_unit`, `<field>_instrument`, and what all entries carry."""
    made: dict[str, object] = {"kind": kind}
    for spec in kind.fields:
        made[spec.name] = _box(spec, words)
        if spec.units:
            first = sorted(spec.units, key=lambda unit: unit != spec.typed_in)  # stable: the rest as declared
            choices = pairs((unit, units.symbol(unit)) for unit in first)
            # Left out with its figure, the unit is nobody's error; read.py judges it where there is a figure.
            within = spec.label.lower() if words["lowers"] else spec.label
            made[f"{spec.name}_unit"] = SelectField(
                words["unit_of"].replace("{what}", within), choices=choices, validate_choice=False
            )
        if spec.instrument:
            made[f"{spec.name}_instrument"] = StringField(
                words[spec.instrument], [Optional(), Length(max=40)]
            )
    made["read_at"] = StringField(words["read_at"], [Optional(), Length(max=40)], render_kw={"type": "datetime-local"})
    made["person"] = StringField(words["who"], [Optional(), Length(max=40)])
    made["role"] = StringField(words["role"], [Optional(), Length(max=40)])
    made["seen_by"] = StringField(words["seen_by"], [Optional(), Length(max=40)])
    made["remark"] = TextAreaField(words["remark"], [Optional(), Length(max=TEXT_MOST)])
    return type(f"{kind.name.title().replace('_', '')}Form", (FlaskForm,), made)


def pairs(choices: Iterable[tuple[str, str]]) -> list[SelectChoice]:
    """Return (value, label) pairs as WTForms wants them."""
    return [SelectChoice(value, label) for value, label in choices]


def _box(spec: Field, words: Mapping[str, str]) -> object:
    needed = [InputRequired(words["missing"].replace("{what}", spec.label))] if spec.required else [Optional()]
    about = {"data-field": spec.name, "data-sort": spec.sort}
    if spec.sort == "choice":
        # No choice is made beforehand: an untouched field logs nothing.
        return _radio(spec, needed, list(spec.choices), about)
    if spec.sort == "yes_no":
        return _radio(spec, needed, [("yes", words["yes"]), ("no", words["no"])], about)
    more = dict(about)
    if spec.sort == "number":
        # type=number swallows a comma on some phones; text with a decimal keypad does not.
        more |= {"inputmode": "decimal", "autocomplete": "off", "data-unit-codes": " ".join(spec.units)}
    elif spec.sort == "date":
        more |= {"type": "date"}
    elif spec.sort == "time":
        more |= {"type": "time"}
    elif spec.sort == "mark":
        more |= {"autocapitalize": "characters", "autocomplete": "off", "data-vessels": " ".join(spec.vessels)}
    elif spec.name in ("text", "nose", "words"):
        return TextAreaField(spec.label, [*needed, Length(max=TEXT_MOST)], description=spec.help, render_kw=about)
    return StringField(spec.label, [*needed, Length(max=TEXT_MOST)], description=spec.help, render_kw=more)


def _radio(spec: Field, needed: list[object], choices: list[tuple[str, str]], about: dict[str, str]) -> RadioField:
    # read.py judges the choice, in words of ours; an answer that WTForms calls invalid would be lost with its page.
    return RadioField(
        spec.label, needed, choices=pairs(choices), description=spec.help, validate_choice=False, render_kw=about
    )


def entry_values(form: KindForm) -> dict[str, dict[str, str]]:
    """Return the filled-in boxes as an entry's `values`; untouched fields are left out."""
    values: dict[str, dict[str, str]] = {}
    for spec in form.kind.fields:
        raw = (form[spec.name].data or "").strip()
        if not raw:
            continue
        value = {"raw": raw}
        if spec.units:
            value["unit"] = form[f"{spec.name}_unit"].data or spec.units[0]
        if spec.instrument and (used := (form[f"{spec.name}_instrument"].data or "").strip()):
            value["instrument"] = used
        values[spec.name] = value
    return values
