"""The forms of the access pages."""

from __future__ import annotations

from flask_wtf import FlaskForm
from wtforms import HiddenField, PasswordField, RadioField, StringField
from wtforms.validators import EqualTo, InputRequired, Length, Regexp

from webapp.kinds.as_form import pairs
from webapp.words.desk import Later

PASSWORD_LEAST = 10
UNITS = [("metric", "kg, L, °C, % vol"), ("us", "lb, gal, °F, proof")]


class SignInForm(FlaskForm):
    """Short code and password."""

    code = StringField(
        Later("access-forms-your_short_code"),
        [InputRequired(Later("access-forms-type_your_short_code")), Length(max=40)],
    )
    password = PasswordField(
        Later("access-forms-password"), [InputRequired(Later("access-forms-type_your_password")), Length(max=200)],
    )
    next = HiddenField()


class AgainForm(FlaskForm):
    """The password of whoever is signed in, once more."""

    again_password = PasswordField(
        Later("access-forms-your_password"),
        [InputRequired(Later("access-forms-type_your_password")), Length(max=200)],
    )
    next = HiddenField()


class InvitationForm(FlaskForm):
    """A person's own password, chosen by an invitation."""

    password = PasswordField(
        Later("access-forms-a_password_of_your_own"),
        [
            InputRequired(Later("access-forms-type_a_password")),
            Length(PASSWORD_LEAST, 200, Later("access-forms-at_least_characters_a_few", what=PASSWORD_LEAST)),
        ],
    )
    again = PasswordField(
        Later("access-forms-the_same_again"),
        [EqualTo("password", Later("access-forms-the_two_passwords_differ_type"))],
    )


class SetUpForm(FlaskForm):
    """The first person of a new book, who sets up the rest."""

    setup_code = StringField(
        Later("access-forms-set_up_code"), [InputRequired(Later("access-forms-type_the_set_up_code"))],
    )
    site = StringField(
        Later("access-forms-the_house"), [InputRequired(Later("access-forms-type_the_name_of_the")), Length(max=80)],
    )
    units = RadioField(Later("access-forms-units"), choices=pairs(UNITS), default="metric")
    code = StringField(
        Later("access-forms-your_short_code"),
        [
            InputRequired(Later("access-forms-type_a_short_code_such")),
            Regexp(r"^[A-Za-z0-9]{1,8}\Z", message=Later("access-forms-n1_to_8_letters_or")),
        ],
    )
    name = StringField(
        Later("access-forms-your_name"), [InputRequired(Later("access-forms-type_your_name")), Length(max=80)],
    )
    password = PasswordField(
        Later("access-forms-password"),
        [
            InputRequired(Later("access-forms-type_a_password")),
            Length(PASSWORD_LEAST, 200, Later("access-forms-at_least_characters_a_few", what=PASSWORD_LEAST)),
        ],
    )
    again = PasswordField(
        Later("access-forms-the_same_again"),
        [EqualTo("password", Later("access-forms-the_two_passwords_differ_type"))],
    )
