"""The boxes with which a blind tasting is set out."""

from __future__ import annotations

import re

from flask_wtf import FlaskForm
from wtforms import IntegerField, RadioField, SelectField, SelectMultipleField, StringField
from wtforms.validators import InputRequired, Length, NumberRange, Optional, Regexp
from wtforms.widgets import CheckboxInput, ListWidget

from webapp.desk.blending.vat_form import STRENGTH_UNITS, Within
from webapp.kinds.as_form import pairs
from webapp.kinds.tasting_session import METHODS
from webapp.kinds.tasting_state import Sample
from webapp.kinds.tasting_texts import LETTERS, SERVINGS_MOST
from webapp.words.desk import Later, say

GLASSES_MOST = 5  # of a ranking: more than five are too many in one sitting; common practice, no source
SETS_MOST = 6
HEADS = Later("desk-tasting_form-holds_heads_heads_are_never")


class TastingForm(FlaskForm):
    """What is asked, of which samples, by whom."""

    name = StringField(
        Later("desk-tasting_form-name_of_the_tasting"),
        [
            InputRequired(Later("desk-tasting_form-give_it_a_short_name")),
            Regexp(r"^[\w][\w .-]*$", message=Later("desk-tasting_form-letters_digits_and_only_please")),
            Length(max=20),
        ],
    )
    question = StringField(
        Later("desk-tasting_form-question_written_down_before_pouri"),
        [InputRequired(Later("desk-tasting_form-write_the_question_first")), Length(max=200)],
    )
    method = RadioField(Later("desk-tasting_form-method"), choices=pairs(METHODS), default="triangle")
    alpha = RadioField(
        Later("desk-tasting_form-risk_of_finding_a_difference"), choices=pairs([("5", "5 %"), ("1", "1 %")]),
        default="5",
    )
    served = StringField(
        Later("desk-tasting_form-served_at_all_glasses_alike"),
        [InputRequired(Later("desk-tasting_form-type_the_strength_in_the")), Within(5, 90)],
    )
    served_unit = SelectField(Later("desk-tasting_form-unit_of_strength"), choices=pairs(STRENGTH_UNITS))
    poured_by = SelectField(Later("desk-tasting_form-poured_by"), validate_choice=False)
    tasters = SelectMultipleField(
        Later("desk-tasting_form-tasters"), option_widget=CheckboxInput(), widget=ListWidget(prefix_label=False),
        validate_choice=False,
    )
    sets = IntegerField(
        Later("desk-tasting_form-sets_for_each_taster"),
        [InputRequired(Later("desk-tasting_form-how_many_sets")), NumberRange(1, SETS_MOST)], default=3,
    )
    sample_a = SelectField(Later("desk-tasting_form-sample_a"), validate_choice=False)
    words_a = StringField(Later("desk-tasting_form-of_it"), [Optional(), Length(max=60)])
    sample_b = SelectField(Later("desk-tasting_form-sample_b"), validate_choice=False)
    words_b = StringField(Later("desk-tasting_form-of_it"), [Optional(), Length(max=60)])
    sample_c = SelectField(Later("desk-tasting_form-sample_c"), validate_choice=False)
    words_c = StringField(Later("desk-tasting_form-of_it"), [Optional(), Length(max=60)])
    sample_d = SelectField(Later("desk-tasting_form-sample_d"), validate_choice=False)
    words_d = StringField(Later("desk-tasting_form-of_it"), [Optional(), Length(max=60)])
    sample_e = SelectField(Later("desk-tasting_form-sample_e"), validate_choice=False)
    words_e = StringField(Later("desk-tasting_form-of_it"), [Optional(), Length(max=60)])

    def boxes(self) -> list[tuple[SelectField, StringField]]:
        """Return the boxes of the samples, A to E: what it is, and words about it."""
        return [(self[f"sample_{letter}"], self[f"words_{letter}"]) for letter in LETTERS[:GLASSES_MOST].lower()]

    def samples(self) -> list[Sample]:
        """Return the samples that were picked, lettered in their order."""
        picked = [(str(what.data), str(words.data or "")) for what, words in self.boxes() if what.data]
        made: list[Sample] = []
        for letter, (what, words) in zip(LETTERS, picked, strict=False):
            sort, _, name = what.partition(":")
            made.append({"letter": letter, "sort": sort, "name": name, "words": re.sub(r"[;\n]", ",", words).strip()})
        return made

    def faults(self, heads: set[str], people: set[str]) -> list[str]:
        """Return what is wrong between the boxes, in sentences that say what to do next."""
        samples, tasters = self.samples(), list(dict.fromkeys(self.tasters.data or []))
        wrong = [f"{one['name']} {HEADS}" for one in samples if one["sort"] == "vessel" and one["name"] in heads]
        if len({(one["sort"], one["name"], one["words"]) for one in samples}) < len(samples):
            wrong.append(say("desk-tasting_form-two_samples_are_the_same"))
        if self.method.data == "ranking":
            if len(samples) < 3:
                wrong.append(say("desk-tasting_form-a_ranking_wants_three_to"))
        elif len(samples) != 2:
            wrong.append(say("desk-tasting_form-this_method_compares_two_samples"))
        if not tasters or not set(tasters) <= people:
            wrong.append(say("desk-tasting_form-pick_at_least_one_taster"))
        elif len(tasters) * (self.sets.data or 0) > SERVINGS_MOST:
            wrong.append(say("desk-tasting_form-that_is_more_than_sets", what=SERVINGS_MOST))
        if self.poured_by.data in tasters:
            wrong.append(say("desk-tasting_form-who_pours_knows_the_codes"))
        return wrong
