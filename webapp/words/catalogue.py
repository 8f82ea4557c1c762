"""The catalogues: one file of Fluent messages for each language. The phone fetches the same files.

A message of a language that has none of it is said in English. Labels, titles and rules of the kinds are declared in
English beside what they name; a catalogue translates them under the id `declared_id` gives.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from fluent.runtime import FluentBundle

FOLDER = Path(__file__).parent
ENGLISH = "en"
# The line of a catalogue below which the phone needs nothing for its forms: it stands with the questions of the book.
_AFTER = "### A phone fetches what follows after its first install."
# What a catalogue is called, and whose numbers and dates go with it.
LOCALES = {ENGLISH: "en-GB"}


def catalogue_text(language: str) -> str:
    """Return the catalogue of a language as it stands in its file."""
    return (FOLDER / f"{language}.ftl").read_text(encoding="utf-8")


def phone_parts(language: str) -> tuple[str, str]:
    """Return the messages that a phone needs from the start, and those it fetches after it; without comments."""
    plain = [line for line in catalogue_text(language).splitlines() if line == _AFTER or not line.startswith("#")]
    first, _, later = "\n".join(plain).partition(_AFTER)
    return first.strip(), later.strip()


@cache
def bundle_of(language: str) -> FluentBundle:
    """Return the messages of a language, ready to be filled in. Numbers and dates are not isolated by marks."""
    from fluent.runtime import FluentBundle, FluentResource

    from webapp.words.values import FUNCTIONS

    bundle = FluentBundle([LOCALES[language]], functions=FUNCTIONS, use_isolating=False)
    bundle.add_resource(FluentResource(catalogue_text(language)))
    return bundle


def declared_id(path: Sequence[str]) -> str:
    """Return the id under which a catalogue may translate what a kind declares: `label-cut-event`."""
    return "-".join(path)
