"""The desk's own forms. Forms of entries come from the kinds (webapp.kinds.as_form)."""

from __future__ import annotations

from calendar import month_name
from collections.abc import Callable
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from flask_wtf import FlaskForm
from wtforms import (
    BooleanField,
    HiddenField,
    IntegerField,
    PasswordField,
    RadioField,
    SelectField,
    StringField,
    TextAreaField,
)
from wtforms.validators import EqualTo, InputRequired, Length, NumberRange, Optional, Regexp, ValidationError

from webapp.access.forms import PASSWORD_LEAST, UNITS
from webapp.book.house import parties
from webapp.book.house.passkeys import NAME_MOST
from webapp.book.limits import ALL
from webapp.kinds.as_form import pairs
from webapp.kinds.reasons import reason_of
from webapp.trade import units
from webapp.trade.errors import NotANumber
from webapp.words import sentence
from webapp.words.language import offered

SORTS = [(sort, sort) for sort in ("fermenter", "still", "receiver", "tank", "cask", "can", "place")]
ANSWERS = [("stands", "It stands"), ("struck", "Strike")]
SCOPES = [("site", "the site"), ("sort", "a sort of vessel"), ("material", "a material"), ("vessel", "one vessel")]
CHECK_SCOPES = [("site", "the site"), ("sort", "a sort of vessel"), ("product", "a product"), ("vessel", "one vessel")]
MONTHS = [(str(number), month_name[number]) for number in range(1, 13)]
ACCOUNTS = [("us", "production, storage, processing (US)"), ("warehouse", "one excise warehouse")]
ACCESS = [
    ("floor", "floor: log and look"),
    ("distiller", "distiller: also answer and amend"),
    ("office", "office: all"),
]


def is_figure(form: FlaskForm, field: StringField) -> None:
    """Refuse what is no figure; comma or point."""
    if field.data and field.data.strip():
        try:
            units.parse_number(field.data)
        except NotANumber as error:
            raise ValidationError(sentence(reason_of(error))) from error


def is_zone(form: FlaskForm, field: StringField) -> None:
    """Refuse what is no time zone; folders of the zones' own data would stop every page that shows a time."""
    try:
        ZoneInfo(str(field.data))
    except (ZoneInfoNotFoundError, ValueError, OSError) as error:
        raise ValidationError("There is no such time zone. Type one such as Europe/Vienna.") from error


def figure(field: StringField) -> float | None:
    """Return the figure in a box, or None where it is empty."""
    return units.parse_number(field.data) if field.data and field.data.strip() else None


class AnswerForm(FlaskForm):
    """An answer to one query."""

    query = HiddenField()
    verdict = RadioField("Answer", [InputRequired("Pick: it stands, or strike.")], choices=pairs(ANSWERS))
    reason = StringField("Reason", [InputRequired("Say why, in a few words."), Length(max=500)])


class VesselForm(FlaskForm):
    """A vessel: a place that holds spirit, wash or fruit."""

    base = StringField(
        "Code",
        [
            InputRequired("Type its code, such as F3 or C031."),
            Regexp(r"^[A-Za-z0-9]{1,7}\Z", message="1 to 7 letters or digits."),
        ],
    )
    title = StringField("What it is", [Optional(), Length(max=80)])
    sort = SelectField("Sort", choices=pairs(SORTS))
    place = StringField("Place", [Optional(), Length(max=40)])
    capacity_l = StringField("Capacity [L]", [is_figure])
    working_l = StringField("Working level [L]", [is_figure])
    tare_kg = StringField("Tare [kg]", [is_figure])
    wood = StringField("Wood", [Optional(), Length(max=40)])
    toast = StringField("Toast or char", [Optional(), Length(max=40)])
    in_zone = BooleanField("Stands inside a fire zone")
    curved = BooleanField("Label goes on a curve (bare mark)")
    note = StringField("Note", [Optional(), Length(max=200)])
    retired = BooleanField("Out of use")


class LimitForm(FlaskForm):
    """A range that replaces a kind's own, for the site, a material, a sort of vessel, or one vessel."""

    scope = SelectField("For", choices=pairs(SCOPES))
    key = StringField("Which", [Optional(), Length(max=40)])
    target = SelectField("Kind and field")
    usual_low = StringField("Usual from", [is_figure])
    usual_high = StringField("Usual to", [is_figure])
    possible_low = StringField("Possible from", [is_figure])
    possible_high = StringField("Possible to", [is_figure])


class CheckLimitForm(FlaskForm):
    """One limit of one check. An empty figure gives the check's own back.

    The form stands on a page beside LimitForm: fields of the same name have their own ids.
    """

    scope = SelectField("For", choices=pairs(CHECK_SCOPES), id="check-scope")
    key = StringField("Which", [Optional(), Length(max=80)], id="check-key")
    name = SelectField("Limit", choices=pairs([(one.name, one.words) for one in ALL.values()]))
    value = StringField("Figure", [is_figure])


class PersonForm(FlaskForm):
    """A person who logs or answers."""

    code = StringField(
        "Short code",
        [InputRequired("Type a short code."), Regexp(r"^[A-Za-z0-9]{1,8}\Z", message="1 to 8 letters or digits.")],
    )
    name = StringField("Name", [InputRequired("Type the name."), Length(max=80)])
    roles = StringField("Trade roles, the usual one first", [Optional(), Length(max=200)])
    access = SelectField("May", choices=pairs(ACCESS))
    pin = StringField(
        "Floor code (4 to 8 digits; empty keeps the old one)",
        [Optional(), Regexp(r"^[0-9]{4,8}\Z", message="4 to 8 digits.")],
    )
    retired = BooleanField("Has left the house")


def _whole(low: int, high: int) -> Callable[[FlaskForm, StringField], None]:
    """Return a validator for a whole number from `low` to `high`."""

    def look(_form: FlaskForm, field: StringField) -> None:
        text = (field.data or "").strip()
        if not (text.isascii() and text.isdigit() and len(text) < 5 and low <= int(text) <= high):
            raise ValidationError(f"{low} to {high}, whole.")

    return look


class OwnPasswordForm(FlaskForm):
    """One's own password, changed."""

    old = PasswordField("The password until now", [InputRequired("Type your password."), Length(max=200)])
    password = PasswordField(
        "A new one",
        [
            InputRequired("Type a password."),
            Length(PASSWORD_LEAST, 200, f"At least {PASSWORD_LEAST} characters; a few words will do."),
        ],
    )
    again = PasswordField("The same again", [EqualTo("password", "The two passwords differ. Type them again.")])


class PasskeyForm(FlaskForm):
    """A new passkey: its name, and what the browser has made."""

    name = StringField("Its name", [InputRequired("Type a name."), Length(max=NAME_MOST)])
    passkey = HiddenField()


class BackupsForm(FlaskForm):
    """Where the backups by the clock go."""

    folder = StringField("Folder on the server, on another disk", [Optional(), Length(max=400)])
    every = StringField("Hours between two", [InputRequired("Type hours."), _whole(1, 720)], default="24")
    keep = StringField("How many are kept", [InputRequired("Type a number."), _whole(1, 1000)], default="14")
    elsewhere = BooleanField("Backups of this computer are made another way, daily")


class PartyForm(FlaskForm):
    """Somebody that the house buys from or sells to."""

    name = StringField("Name", [InputRequired("Type the name."), Length(max=parties.TEXT_MOST)])
    role = SelectField("They are a", choices=pairs([("supplier", "grower or supplier"), ("customer", "customer")]))
    address = StringField("Address", [Optional(), Length(max=parties.TEXT_MOST)])
    number = StringField("Number by which papers call them", [Optional(), Length(max=parties.TEXT_MOST)])
    note = StringField("Note", [Optional(), Length(max=parties.TEXT_MOST)])
    retired = BooleanField("Out of use")


class PhoneForm(FlaskForm):
    """A phone to let in."""

    name = StringField("Name of the phone", [InputRequired("Name it, such as PH-3."), Length(max=40)])


def languages_offered() -> list[tuple[str, str]]:
    """Return the languages that there are, each by its own name."""
    return list(offered().items())


class SiteForm(FlaskForm):
    """The house."""

    name = StringField("The house", [InputRequired("Type the name of the house."), Length(max=80)])
    units = RadioField("Units", choices=pairs(UNITS))
    decimal_mark = RadioField("Decimal mark", choices=pairs([(".", "point: 14.6"), (",", "comma: 14,6")]))
    accounts = RadioField("Accounts", [Optional()], choices=pairs(ACCOUNTS))
    height_m = StringField("Height above the sea [m]", [is_figure])
    language = SelectField("Language where nobody has chosen one", [Optional()], choices=languages_offered)
    time_zone = StringField("Time zone", [Optional(), Length(max=60), is_zone])
    pin_at_tax = BooleanField("What goes into or out of the accounts wants the PIN when it is logged")
    season_month = SelectField("A season begins in", [Optional()], choices=pairs(MONTHS))


class InstrumentForm(FlaskForm):
    """An instrument that is read."""

    id = StringField(
        "Number",
        [
            InputRequired("Type its number, such as TH-2."),
            Regexp(r"^[A-Za-z0-9-]{1,20}\Z", message="Letters, digits, hyphen."),
        ],
    )
    sort = StringField("Sort", [InputRequired("Type what it is, such as thermometer."), Length(max=40)])
    title = StringField("Description", [Optional(), Length(max=120)])
    low = StringField("Scale from", [is_figure])
    high = StringField("Scale to", [is_figure])
    unit = StringField("Unit", [Optional(), Length(max=20)])
    accuracy = SelectField("Class", choices=pairs([
        ("", "as the law prescribes"), ("I", "I"), ("II", "II"), ("III", "III"), ("IIII", "IIII")]))
    interval = StringField("Interval of the scale", [is_figure])
    corrections = TextAreaField(
        "Corrections of its certificate, what it shows: what to add, such as 0: -0.1; 20: 0; 40: +0.2",
        [Optional(), Length(max=1000)],
    )
    due_on = StringField(
        "Check due on", [Optional(), Regexp(r"^\d{4}-\d\d-\d\d\Z", message="Pick the day.")], render_kw={"type": "date"}
    )
    state = SelectField("State", choices=pairs([("in use", "in use"), ("out of use", "out of use")]))


class LabelForm(FlaskForm):
    """Which labels, on what."""

    layout = SelectField("On")
    start_at = IntegerField("First free label on the sheet", [Optional(), NumberRange(1, 200)], default=1)
    with_address = BooleanField("Flat labels carry the address, so that a phone's own camera opens the vessel")
    standoff = BooleanField("Also a stand-off label for vessels inside a fire zone", default=True)
