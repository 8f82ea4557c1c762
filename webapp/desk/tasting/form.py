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

GLASSES_MOST = 5  # of a ranking: more than five are too many in one sitting; common practice, no source
SETS_MOST = 6
HEADS = "holds heads. Heads are never tasted. Take another sample."


class TastingForm(FlaskForm):
    """What is asked, of which samples, by whom."""

    name = StringField("Name of the tasting", [InputRequired("Give it a short name, such as T-26-03."),
                                               Regexp(r"^[\w][\w .-]*$", message="Letters, digits and - only, please."),
                                               Length(max=20)])
    question = StringField("Question, written down before pouring", [InputRequired("Write the question first."),
                                                                     Length(max=200)])
    method = RadioField("Method", choices=pairs(METHODS), default="triangle")
    alpha = RadioField("Risk of finding a difference that is none", choices=pairs([("5", "5 %"), ("1", "1 %")]),
                       default="5")
    served = StringField("Served at, all glasses alike", [InputRequired("Type the strength in the glass."),
                                                          Within(5, 90)])
    served_unit = SelectField("Unit of strength", choices=pairs(STRENGTH_UNITS))
    poured_by = SelectField("Poured by", validate_choice=False)
    tasters = SelectMultipleField("Tasters", option_widget=CheckboxInput(), widget=ListWidget(prefix_label=False),
                                  validate_choice=False)
    sets = IntegerField("Sets for each taster", [InputRequired("How many sets?"), NumberRange(1, SETS_MOST)], default=3)
    sample_a = SelectField("Sample A", validate_choice=False)
    words_a = StringField("of it", [Optional(), Length(max=60)])
    sample_b = SelectField("Sample B", validate_choice=False)
    words_b = StringField("of it", [Optional(), Length(max=60)])
    sample_c = SelectField("Sample C", validate_choice=False)
    words_c = StringField("of it", [Optional(), Length(max=60)])
    sample_d = SelectField("Sample D", validate_choice=False)
    words_d = StringField("of it", [Optional(), Length(max=60)])
    sample_e = SelectField("Sample E", validate_choice=False)
    words_e = StringField("of it", [Optional(), Length(max=60)])

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
            wrong.append("Two samples are the same. Say in words what sets them apart, or pick another.")
        if self.method.data == "ranking":
            if len(samples) < 3:
                wrong.append("A ranking wants three to five samples.")
        elif len(samples) != 2:
            wrong.append("This method compares two samples: pick A and B, and no more.")
        if not tasters or not set(tasters) <= people:
            wrong.append("Pick at least one taster.")
        elif len(tasters) * (self.sets.data or 0) > SERVINGS_MOST:
            wrong.append(f"That is more than {SERVINGS_MOST} sets of glasses. Fewer tasters, or fewer sets.")
        if self.poured_by.data in tasters:
            wrong.append("Who pours knows the codes, and does not taste. Let somebody else pour, or leave it open.")
        return wrong
