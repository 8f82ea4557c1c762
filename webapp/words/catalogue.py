"""The catalogues: one file of Fluent messages for each language. The phone fetches the same files.

A message of a language that has none of it is said in English. Labels, titles and rules of the kinds are declared in
English beside what they name; a catalogue translates them under the id `declared_id` gives.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from pathlib import Path

from fluent.runtime import FluentBundle, FluentResource

from webapp.words.values import FUNCTIONS

FOLDER = Path(__file__).parent
ENGLISH = "en"
# What a catalogue is called, and whose numbers and dates go with it.
LOCALES = {ENGLISH: "en-GB"}


def catalogue_text(language: str) -> str:
    """Return the catalogue of a language as it stands in its file."""
    return (FOLDER / f"{language}.ftl").read_text(encoding="utf-8")


@cache
def bundle_of(language: str) -> FluentBundle:
    """Return the messages of a language, ready to be filled in. Numbers and dates are not isolated by marks."""
    bundle = FluentBundle([LOCALES[language]], functions=FUNCTIONS, use_isolating=False)
    bundle.add_resource(FluentResource(catalogue_text(language)))
    return bundle


def declared_id(path: Sequence[str]) -> str:
    """Return the id under which a catalogue may translate what a kind declares: `label-cut-event`."""
    return "-".join(path)
