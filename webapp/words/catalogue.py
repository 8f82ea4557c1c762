"""The catalogues: one file of Fluent messages for each language. The phone fetches the same files.

A message of a language that has none of it is said in English. Labels, titles and rules of the kinds are declared in
English beside what they name; a catalogue translates them under the id `declared_id` gives.
"""

from __future__ import annotations

import logging
import re
from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from webapp.words.houseunits import METRIC, US, House

if TYPE_CHECKING:
    from fluent.runtime import FluentBundle

_log = logging.getLogger("cellarslate.words")
FOLDER = Path(__file__).parent
ENGLISH = "en"
# The line of a catalogue below which the phone needs nothing for its forms: it stands with the questions of the book.
_AFTER = "### A phone fetches what follows after its first install."
# Words that turn with the units of the house, and messages that are nothing else.
_TURNS = re.compile(r"\{ UNITS\(\) ->\n +\[us\] (.+)\n +\*\[metric\] (.+)\n +\}")
_TURNING = re.compile(rf"^([\w-]+) = {_TURNS.pattern}$", re.MULTILINE)
# A message of the phone's screens, to the next line that begins at the margin.
_SCREENS = re.compile(r"^floor-.*\n(?: .*\n|\n)*", re.MULTILINE)
# The line below which only the desk reads. What follows is said by `webapp/words/desk.py`.
DESK = "### Only the desk reads what follows."
# How a message begins.
_BEGINS = re.compile(r"^([a-zA-Z][\w-]*) = ?", re.MULTILINE)
# What a catalogue is called, and whose numbers and dates go with it.
_SIX = {ENGLISH: "en-GB", "de": "de-DE", "fr": "fr-FR", "es": "es-ES", "it": "it-IT", "cs": "cs-CZ"}


def _locales() -> dict[str, str]:
    """Return the locale of each language: of the six, and of any other that a file adds, as CLDR has it."""
    found = dict(_SIX)
    for code in sorted(path.stem for path in FOLDER.glob("*.ftl") if path.stem not in _SIX):
        from babel.core import get_global

        found[code] = get_global("likely_subtags").get(code, code).replace("_", "-")
    return found


LOCALES = _locales()


@cache
def has_catalogue(language: str) -> bool:
    """Return whether there is a file of a language."""
    return (FOLDER / f"{language}.ftl").is_file()


def catalogue_text(language: str) -> str:
    """Return the catalogue of a language as its file has it, without what only the desk reads."""
    return _whole(language).partition(DESK)[0]


def desk_text(language: str) -> str:
    """Return the section of a language's catalogue that the desk alone reads."""
    return _whole(language).partition(DESK)[2]


def _whole(language: str) -> str:
    if not has_catalogue(language):
        return ""
    return (FOLDER / f"{language}.ftl").read_text(encoding="utf-8")


def phone_parts(language: str) -> tuple[str, str]:
    """Return the messages that a phone needs from the start, and those it fetches after it; without comments."""
    plain = [line for line in catalogue_text(language).splitlines() if line == _AFTER or not line.startswith("#")]
    first, _, later = "\n".join(plain).partition(_AFTER)
    return first.strip(), later.strip()


def sound_messages(language: str) -> dict[str, str]:
    """Return the messages of a language's phone that can be read; where a brace is missing, English stands instead."""
    found = messages_in(catalogue_text(language))
    for id_, text in list(found.items()):
        if text.count("{") != text.count("}"):
            line = catalogue_text(language).partition(f"\n{id_} =")[0].count("\n") + 2
            _log.error("%s.ftl:%s: %s has a brace too many or too few; it is said in English", language, line, id_)
            del found[id_]
    return found


def messages_in(text: str) -> dict[str, str]:
    """Return the text of each message as it stands in its file, by its id; without comments."""
    text = "\n".join(line for line in text.splitlines() if not line.startswith("#"))
    starts = list(_BEGINS.finditer(text))
    ends = [*(one.start() for one in starts[1:]), len(text)]  # of no message there is no end
    return {one[1]: text[one.end():end].strip() for one, end in zip(starts, ends, strict=False)}


@cache
def bundle_of(language: str, house: House = METRIC) -> FluentBundle:
    """Return the messages of a language, ready to be filled in. Numbers and dates are not isolated by marks."""
    from fluent.runtime import FluentBundle, FluentResource

    from webapp.words.values import functions_of

    bundle = FluentBundle([LOCALES[language]], functions=functions_of(house), use_isolating=False)
    bundle.add_resource(FluentResource(settled(_without_screens(catalogue_text(language)), house)))
    return bundle


def _without_screens(text: str) -> str:
    """Return a catalogue without the words of the phone's screens (`floor-`): the book says none of them."""
    return _SCREENS.sub("", text)


def settled(text: str, house: House) -> str:
    """Return a catalogue for the units of one house: what turns with them is chosen once, not in every sentence."""
    side = 1 if house == US else 2
    for word in _TURNING.finditer(text):
        text = text.replace(f"{{ {word[1]} }}", word[side + 1])
    return _TURNS.sub(lambda turns: turns[side], text)


def declared_id(path: Sequence[str]) -> str:
    """Return the id under which a catalogue may translate what a kind declares: `label-cut-event`."""
    return "-".join(path)
