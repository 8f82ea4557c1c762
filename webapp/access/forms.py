"""The forms of the access pages."""

from __future__ import annotations

from flask_wtf import FlaskForm
from wtforms import HiddenField, PasswordField, RadioField, StringField
from wtforms.validators import EqualTo, InputRequired, Length, Regexp

from webapp.kinds.as_form import pairs

PASSWORD_LEAST = 10
UNITS = [("metric", "kg, L, °C, % vol"), ("us", "lb, gal, °F, proof")]


class SignInForm(FlaskForm):
    """Short code and password."""

    code = StringField("Your short code", [InputRequired("Type your short code."), Length(max=40)])
    password = PasswordField("Password", [InputRequired("Type your password."), Length(max=200)])
    next = HiddenField()


class AgainForm(FlaskForm):
    """The password of whoever is signed in, once more."""

    again_password = PasswordField("Your password", [InputRequired("Type your password."), Length(max=200)])
    next = HiddenField()


class InvitationForm(FlaskForm):
    """A person's own password, chosen by an invitation."""

    password = PasswordField(
        "A password of your own",
        [
            InputRequired("Type a password."),
            Length(PASSWORD_LEAST, 200, f"At least {PASSWORD_LEAST} characters; a few words will do."),
        ],
    )
    again = PasswordField("The same again", [EqualTo("password", "The two passwords differ. Type them again.")])


class SetUpForm(FlaskForm):
    """The first person of a new book, who sets up the rest."""

    setup_code = StringField("Set-up code", [InputRequired("Type the set-up code that the server printed.")])
    site = StringField("The house", [InputRequired("Type the name of the house."), Length(max=80)])
    units = RadioField("Units", choices=pairs(UNITS), default="metric")
    code = StringField(
        "Your short code",
        [
            InputRequired("Type a short code, such as your initials."),
            Regexp(r"^[A-Za-z0-9]{1,8}\Z", message="1 to 8 letters or digits."),
        ],
    )
    name = StringField("Your name", [InputRequired("Type your name."), Length(max=80)])
    password = PasswordField(
        "Password",
        [
            InputRequired("Type a password."),
            Length(PASSWORD_LEAST, 200, f"At least {PASSWORD_LEAST} characters; a few words will do."),
        ],
    )
    again = PasswordField("The same again", [EqualTo("password", "The two passwords differ. Type them again.")])
