"""The desk's own forms. Forms of entries come from the kinds (webapp.kinds.as_form)."""

from __future__ import annotations

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
    SelectMultipleField,
    StringField,
    TextAreaField,
)
from wtforms.validators import EqualTo, InputRequired, Length, NumberRange, Optional, Regexp, ValidationError
from wtforms.widgets import CheckboxInput, ListWidget

from webapp.access.forms import PASSWORD_LEAST, UNITS
from webapp.book.house import parties, reading_keys, registry
from webapp.book.house.passkeys import NAME_MOST
from webapp.book.limits import ALL
from webapp.kinds.as_form import pairs
from webapp.kinds.reasons import reason_of
from webapp.trade import units
from webapp.trade.errors import NotANumber
from webapp.words import sentence
from webapp.words.desk import Later, say
from webapp.words.language import language, offered
from webapp.words.local import month_name

SORTS = [(sort, Later(f"desk-sort-{sort}")) for sort in registry.SORTS]
ANSWERS = [("stands", Later("desk-forms-it_stands")), ("struck", Later("desk-forms-strike"))]
SCOPES = [
    ("site", Later("desk-forms-the_site")), ("sort", Later("desk-forms-a_sort_of_vessel")),
    ("material", Later("desk-forms-a_material")), ("vessel", Later("desk-forms-one_vessel")),
]
CHECK_SCOPES = [
    ("site", Later("desk-forms-the_site")), ("sort", Later("desk-forms-a_sort_of_vessel")),
    ("product", Later("desk-forms-a_product")), ("vessel", Later("desk-forms-one_vessel")),
]
ACCOUNTS = [
    ("us", Later("desk-forms-production_storage_processing_us")),
    ("warehouse", Later("desk-forms-one_excise_warehouse")),
]
ACCESS = [
    ("floor", Later("desk-forms-floor_log_and_look")),
    ("distiller", Later("desk-forms-distiller_also_answer_and_amend")),
    ("office", Later("desk-forms-office_all")),
]


def is_ticked(form: FlaskForm, field: SelectMultipleField) -> None:
    """Refuse a list of which nothing is ticked; a browser that is told so by the field would want every box ticked."""
    if not field.data:
        raise ValidationError(str(Later("desk-readers-tick_what")))


def is_figure(form: FlaskForm, field: StringField) -> None:
    """Refuse what is no figure; comma or point."""
    if field.data and field.data.strip():
        try:
            units.parse_number(field.data)
        except NotANumber as error:
            raise ValidationError(sentence(reason_of(error), language())) from error


def is_zone(form: FlaskForm, field: StringField) -> None:
    """Refuse what is no time zone; folders of the zones' own data would stop every page that shows a time."""
    try:
        ZoneInfo(str(field.data))
    except (ZoneInfoNotFoundError, ValueError, OSError) as error:
        raise ValidationError(say("desk-forms-there_is_no_such_time")) from error


def figure(field: StringField) -> float | None:
    """Return the figure in a box, or None where it is empty."""
    return units.parse_number(field.data) if field.data and field.data.strip() else None


class AnswerForm(FlaskForm):
    """An answer to one query."""

    query = HiddenField()
    verdict = RadioField(
        Later("desk-common-answer"), [InputRequired(Later("desk-forms-pick_it_stands_or_strike"))],
        choices=pairs(ANSWERS),
    )
    reason = StringField(
        Later("desk-common-reason"), [InputRequired(Later("desk-forms-say_why_in_a_few")), Length(max=500)],
    )


class VesselForm(FlaskForm):
    """A vessel: a place that holds spirit, wash or fruit."""

    base = StringField(
        Later("desk-forms-code"),
        [
            InputRequired(Later("desk-forms-type_its_code_such_as")),
            Regexp(r"^[A-Za-z0-9]{1,7}\Z", message=Later("desk-forms-n1_to_7_letters_or")),
        ],
    )
    title = StringField(Later("desk-forms-what_it_is"), [Optional(), Length(max=80)])
    sort = SelectField(Later("desk-common-sort"), choices=pairs(SORTS))
    place = StringField(Later("desk-common-place"), [Optional(), Length(max=40)])
    capacity_l = StringField(Later("desk-forms-capacity_l"), [is_figure])
    working_l = StringField(Later("desk-forms-working_level_l"), [is_figure])
    tare_kg = StringField(Later("desk-forms-tare_kg"), [is_figure])
    wood = StringField(Later("desk-forms-wood"), [Optional(), Length(max=40)])
    toast = StringField(Later("desk-forms-toast_or_char"), [Optional(), Length(max=40)])
    in_zone = BooleanField(Later("desk-forms-stands_inside_a_fire_zone"))
    curved = BooleanField(Later("desk-forms-label_goes_on_a_curve"))
    note = StringField(Later("desk-forms-note"), [Optional(), Length(max=200)])
    retired = BooleanField(Later("desk-forms-out_of_use"))


class LimitForm(FlaskForm):
    """A range that replaces a kind's own, for the site, a material, a sort of vessel, or one vessel."""

    scope = SelectField(Later("desk-forms-for"), choices=pairs(SCOPES))
    key = StringField(Later("desk-forms-which"), [Optional(), Length(max=40)])
    target = SelectField(Later("desk-forms-kind_and_field"))
    usual_low = StringField(Later("desk-forms-usual_from"), [is_figure])
    usual_high = StringField(Later("desk-forms-usual_to"), [is_figure])
    possible_low = StringField(Later("desk-forms-possible_from"), [is_figure])
    possible_high = StringField(Later("desk-forms-possible_to"), [is_figure])


class CheckLimitForm(FlaskForm):
    """One limit of one check. An empty figure gives the check's own back.

    The form stands on a page beside LimitForm: fields of the same name have their own ids.
    """

    scope = SelectField(Later("desk-forms-for"), choices=pairs(CHECK_SCOPES), id="check-scope")
    key = StringField(Later("desk-forms-which"), [Optional(), Length(max=80)], id="check-key")
    name = SelectField(Later("desk-forms-limit"), choices=pairs([(one.name, one.words) for one in ALL.values()]))
    value = StringField(Later("desk-forms-figure"), [is_figure])


class PersonForm(FlaskForm):
    """A person who logs or answers."""

    code = StringField(
        Later("desk-forms-short_code"),
        [InputRequired(Later("desk-forms-type_a_short_code")), Regexp(
            r"^[A-Za-z0-9]{1,8}\Z", message=Later("desk-forms-n1_to_8_letters_or"),
        )],
    )
    name = StringField(Later("desk-common-name"), [InputRequired(Later("desk-forms-type_the_name")), Length(max=80)])
    roles = StringField(Later("desk-forms-trade_roles_the_usual_one"), [Optional(), Length(max=200)])
    access = SelectField(Later("desk-common-may"), choices=pairs(ACCESS))
    pin = StringField(
        Later("desk-forms-floor_code_4_to_8"),
        [Optional(), Regexp(r"^[0-9]{4,8}\Z", message=Later("desk-forms-n4_to_8_digits"))],
    )
    retired = BooleanField(Later("desk-forms-has_left_the_house"))


def _whole(low: int, high: int) -> Callable[[FlaskForm, StringField], None]:
    """Return a validator for a whole number from `low` to `high`."""

    def look(_form: FlaskForm, field: StringField) -> None:
        text = (field.data or "").strip()
        if not (text.isascii() and text.isdigit() and len(text) < 5 and low <= int(text) <= high):
            raise ValidationError(say("desk-forms-to_whole", low=low, high=high))

    return look


class OwnPasswordForm(FlaskForm):
    """One's own password, changed."""

    old = PasswordField(
        Later("desk-forms-the_password_until_now"),
        [InputRequired(Later("desk-forms-type_your_password")), Length(max=200)],
    )
    password = PasswordField(
        Later("desk-forms-a_new_one"),
        [
            InputRequired(Later("desk-forms-type_a_password")),
            Length(PASSWORD_LEAST, 200, Later("desk-forms-at_least_characters_a_few", what=PASSWORD_LEAST)),
        ],
    )
    again = PasswordField(
        Later("desk-forms-the_same_again"), [EqualTo("password", Later("desk-forms-the_two_passwords_differ_type"))],
    )


class PasskeyForm(FlaskForm):
    """A new passkey: its name, and what the browser has made."""

    name = StringField(
        Later("desk-forms-its_name"), [InputRequired(Later("desk-forms-type_a_name")), Length(max=NAME_MOST)],
    )
    passkey = HiddenField()


class BackupsForm(FlaskForm):
    """Where the backups by the clock go."""

    folder = StringField(Later("desk-forms-folder_on_the_server_on"), [Optional(), Length(max=400)])
    every = StringField(
        Later("desk-forms-hours_between_two"), [InputRequired(Later("desk-forms-type_hours")), _whole(1, 720)],
        default="24",
    )
    keep = StringField(
        Later("desk-forms-how_many_are_kept"), [InputRequired(Later("desk-forms-type_a_number")), _whole(1, 1000)],
        default="14",
    )
    elsewhere = BooleanField(Later("desk-forms-backups_of_this_computer_are"))


class PartyForm(FlaskForm):
    """Somebody that the house buys from or sells to."""

    name = StringField(
        Later("desk-common-name"), [InputRequired(Later("desk-forms-type_the_name")), Length(max=parties.TEXT_MOST)],
    )
    role = SelectField(
        Later("desk-forms-they_are_a"),
        choices=pairs(
            [("supplier", Later("desk-forms-grower_or_supplier")), ("customer", Later("desk-party_edit-customer"))],
        ),
    )
    address = StringField(Later("desk-forms-address"), [Optional(), Length(max=parties.TEXT_MOST)])
    number = StringField(Later("desk-forms-number_by_which_papers_call"), [Optional(), Length(max=parties.TEXT_MOST)])
    note = StringField(Later("desk-forms-note"), [Optional(), Length(max=parties.TEXT_MOST)])
    retired = BooleanField(Later("desk-forms-out_of_use"))


class PhoneForm(FlaskForm):
    """A phone to let in."""

    name = StringField(
        Later("desk-forms-name_of_the_phone"),
        [InputRequired(Later("desk-forms-name_it_such_as_ph")), Length(max=40)],
    )


class ReadersForm(FlaskForm):
    """A key for a tool that reads."""

    name = StringField(
        Later("desk-readers-name"), [InputRequired(Later("desk-readers-name_it")), Length(max=reading_keys.NAME_MOST)],
    )
    days = SelectField(
        Later("desk-readers-good_for"),
        choices=pairs(
            (str(days), Later("desk-readers-days", days=days)) for days in (30, 90, 366, reading_keys.DAYS_MOST)
        ),
        default="366",
    )
    scopes = SelectMultipleField(
        Later("desk-readers-may_read"), [is_ticked],
        choices=pairs((one, Later(f"desk-readers-scope_{one}")) for one in reading_keys.SCOPES),
        widget=ListWidget(prefix_label=False), option_widget=CheckboxInput(),
    )


def months() -> list[tuple[str, str]]:
    """Return the months by their numbers."""
    return [(str(number), month_name(number)) for number in range(1, 13)]


def languages_offered() -> list[tuple[str, str]]:
    """Return the languages that there are, each by its own name."""
    return list(offered().items())


class SiteForm(FlaskForm):
    """The house."""

    name = StringField(
        Later("desk-forms-the_house"), [InputRequired(Later("desk-forms-type_the_name_of_the")), Length(max=80)],
    )
    units = RadioField(Later("desk-forms-units"), choices=pairs(UNITS))
    decimal_mark = RadioField(
        Later("desk-forms-decimal_mark"),
        choices=pairs([(".", Later("desk-forms-point_14_6")), (",", Later("desk-forms-comma_14_6"))]),
    )
    accounts = RadioField(Later("desk-forms-accounts"), [Optional()], choices=pairs(ACCOUNTS))
    height_m = StringField(Later("desk-forms-height_above_the_sea_m"), [is_figure])
    language = SelectField(
        Later("desk-forms-language_where_nobody_has_chosen"), [Optional()], choices=languages_offered,
    )
    time_zone = StringField(Later("desk-forms-time_zone"), [Optional(), Length(max=60), is_zone])
    pin_at_tax = BooleanField(Later("desk-forms-what_goes_into_or_out"))
    season_month = SelectField(Later("desk-forms-a_season_begins_in"), [Optional()], choices=months)


class InstrumentForm(FlaskForm):
    """An instrument that is read."""

    id = StringField(
        Later("desk-common-number"),
        [
            InputRequired(Later("desk-forms-type_its_number_such_as")),
            Regexp(r"^[A-Za-z0-9-]{1,20}\Z", message=Later("desk-forms-letters_digits_hyphen")),
        ],
    )
    sort = StringField(
        Later("desk-common-sort"), [InputRequired(Later("desk-forms-type_what_it_is_such")), Length(max=40)],
    )
    title = StringField(Later("desk-common-description"), [Optional(), Length(max=120)])
    low = StringField(Later("desk-forms-scale_from"), [is_figure])
    high = StringField(Later("desk-forms-scale_to"), [is_figure])
    unit = StringField(Later("desk-forms-unit"), [Optional(), Length(max=20)])
    accuracy = SelectField(Later("desk-forms-class"), choices=pairs([
        ("", Later("desk-forms-as_the_law_prescribes")), ("I", "I"), ("II", "II"), ("III", "III"), ("IIII", "IIII")]))
    interval = StringField(Later("desk-forms-interval_of_the_scale"), [is_figure])
    corrections = TextAreaField(
        Later("desk-forms-corrections_of_its_certificate_wha"),
        [Optional(), Length(max=1000)],
    )
    due_on = StringField(
        Later("desk-forms-check_due_on"), [Optional(), Regexp(
            r"^\d{4}-\d\d-\d\d\Z", message=Later("desk-forms-pick_the_day"),
        )], render_kw={"type": "date"}
    )
    state = SelectField(
        Later("desk-common-state"),
        choices=pairs([("in use", Later("desk-forms-in_use")), ("out of use", Later("desk-forms-out_of_use2"))]),
    )


class LayoutForm(FlaskForm):
    """What labels are printed on, from which place, and as what file."""

    layout = SelectField(Later("desk-common-on"))
    start_at = IntegerField(Later("desk-forms-first_free_label_on_the"), [Optional(), NumberRange(1, 200)], default=1)
    own_width = StringField(Later("desk-forms-own_width_mm"), [Optional(), Length(max=10)])
    own_height = StringField(Later("desk-forms-own_height_mm"), [Optional(), Length(max=10)])
    own_clear = StringField(Later("desk-forms-own_clear_mm"), [Optional(), Length(max=10)])
    file = SelectField(Later("desk-forms-label_file"), default="pdf")


class CaseLabelForm(LayoutForm):
    """Which cases, on what. It changes nothing, so that it is asked for by its address."""

    class Meta:
        """It is sent by GET."""

        csrf = False

    first = StringField(Later("desk-forms-case_from"), [Optional(), Length(max=40)])
    last = StringField(Later("desk-forms-case_to"), [Optional(), Length(max=40)])


class LabelForm(LayoutForm):
    """Which labels, on what."""

    with_address = BooleanField(Later("desk-forms-flat_labels_carry_the_address"))
    standoff = BooleanField(Later("desk-forms-also_a_stand_off_label"), default=True)
