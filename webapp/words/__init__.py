"""The sentences for people, made where they are read: one catalogue for each language, shared with the phone.

What knows numbers, months and plurals of every language takes a while to load, so it is loaded with the first sentence.
"""

from __future__ import annotations

from webapp.kinds.message import Message
from webapp.words.catalogue import ENGLISH
from webapp.words.houseunits import METRIC, House


def sentence(said: Message, language: str = ENGLISH, house: House = METRIC) -> str:
    """Return the sentence that a message makes in a language; in English where that language has no such message.

    What was worked out is said in the units of the house that reads it, what was typed as it was typed.
    """
    from webapp.words.say import make_sentence

    return make_sentence(said, language, house)
