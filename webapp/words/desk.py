"""The words of the desk, of its doors and of its papers: the last section of each catalogue.

There are thousands, and a page says some dozens of them. So the section is cut into its messages by their first lines,
and only a message that chooses or calls a function is parsed, when it is first said. One that is plain text with
parameters in it is put together as it stands.
"""

from __future__ import annotations

import logging
import re
from collections.abc import Mapping
from functools import cache
from typing import TYPE_CHECKING, Any

from markupsafe import Markup, escape

from webapp.words.catalogue import ENGLISH, desk_text, messages_in, settled
from webapp.words.houseunits import METRIC
from webapp.words.language import language

if TYPE_CHECKING:
    from fluent.runtime import FluentBundle

_log = logging.getLogger("cellarslate.words")
_PLACE = re.compile(r"\{ \$(\w+) \}")
_REFERRED = re.compile(r"(?<![$\w-])(-?[a-z]\w*-[\w-]+)")
# What a page is made of: no text of a catalogue may be taken for it.
_MARKS = {"&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;"}

# A text, or texts with names of parameters between them: text, name, text, name, text.
_Plain = list[str]


def say(id_: str, **params: object) -> str:
    """Return a message of the desk as plain text, in the language that is being read."""
    for each in dict.fromkeys((language(), ENGLISH)):
        made = _said(each, id_, params)
        if made is not None:
            return made
    _log.error("no message %s in the catalogue", id_)
    return id_


def t(id_: str, **params: object) -> Markup:
    """Return a message of the desk for a page. Parameters are escaped, but what is markup already."""
    for each in dict.fromkeys((language(), ENGLISH)):
        if not params:
            text = _whole_text(each, id_)
        else:
            text = _said(each, id_, {name: _escaped(value) for name, value in params.items()}, is_page=True)
        if text is not None:
            return Markup(text)  # noqa: S704 — the catalogue's own words and escaped parameters
    _log.error("no message %s in the catalogue", id_)
    return escape(id_)


class Later(str):
    """A message that is said when it is shown: for forms, which are declared before anybody reads them.

    As a `str` it is the message's id, so that two of them compare as what they are.
    """

    params: Mapping[str, object]

    def __new__(cls, id_: str, **params: object) -> Later:
        """Make one of a message's id and parameters."""
        made = super().__new__(cls, id_)
        made.params = params
        return made

    def __str__(self) -> str:
        """Return the sentence in the reader's language."""
        return say(str.__str__(self), **self.params)

    def __html__(self) -> Markup:
        """Return the sentence in the reader's language, escaped for a page."""
        return t(str.__str__(self), **self.params)

    def __mod__(self, values: object) -> str:
        """Return the sentence with values put in: validators put their limits in so."""
        return str(self) % values

    def __add__(self, other: str) -> str:
        """Return the sentence with a text after it."""
        return f"{self}{other}"

    def __radd__(self, other: str) -> str:
        """Return the sentence with a text before it."""
        return f"{other}{self}"

    def __format__(self, spec: str) -> str:
        """Return the sentence as a part of a text."""
        return format(str(self), spec)


@cache
def sources(language: str) -> dict[str, str]:
    """Return the text of each message of the desk as its file has it, by its id, for a metric house."""
    return messages_in(settled(desk_text(language), METRIC))


@cache
def _plain(language: str, id_: str, *, is_page: bool) -> _Plain | None:
    """Return a message in pieces, or None where it does more than hold its parameters, or is not there."""
    source = sources(language).get(id_)
    if source is None or "{" in _PLACE.sub("", source):
        return None
    pieces = _PLACE.split(" ".join(line.strip() for line in source.splitlines()))
    return [escape_text(one) if is_page and at % 2 == 0 else one for at, one in enumerate(pieces)]


@cache
def _whole_text(language: str, id_: str) -> str | None:
    return _said(language, id_, {}, is_page=True)


def escape_text(text: str) -> str:
    """Return a text of a catalogue for a page: of what marks a page up, nothing; apostrophes as they are."""
    for mark, safe in _MARKS.items():
        text = text.replace(mark, safe)
    return text


def _said(language: str, id_: str, params: Mapping[str, object], *, is_page: bool = False) -> str | None:
    pieces = _plain(language, id_, is_page=is_page)
    if pieces is None:
        return _formed(language, id_, params, is_page=is_page) if id_ in sources(language) else None
    if len(pieces) == 1:
        return pieces[0]
    return "".join(
        _text(language, params.get(one, f"{{${one}}}")) if at % 2 else one for at, one in enumerate(pieces)
    )


def _text(language: str, value: object) -> str:
    if isinstance(value, float) and language != ENGLISH:
        from webapp.words.say import locale_of
        from webapp.words.values import figure_text

        return figure_text(str(value), locale_of(language))
    return str(value)


def _escaped(value: object) -> object:
    return value if isinstance(value, int | float) else str(escape(value))


def _counted(value: object) -> Any:
    """Return a number as Fluent takes it, in plain digits, so that a message may choose by it."""
    from fluent.runtime.types import fluent_number

    return fluent_number(value, useGrouping=False) if isinstance(value, int | float) else value


def _formed(language: str, id_: str, params: Mapping[str, object], *, is_page: bool) -> str:
    """Return a message that chooses by what it is given."""
    bundle = _bundle(language, id_, is_page)
    pattern = bundle.get_message(id_).value
    assert pattern is not None
    text, errors = bundle.format_pattern(pattern, {name: _counted(value) for name, value in params.items()})
    for error in errors:
        _log.error("message %s: %s", id_, error)
    return str(text)


@cache
def _bundle(language: str, id_: str, is_page: bool) -> FluentBundle:
    """Return a message and those that it refers to, ready to be filled in."""
    from fluent.runtime import FluentBundle, FluentResource

    from webapp.words.catalogue import LOCALES
    from webapp.words.say import locale_of
    from webapp.words.values import functions_of

    known, wanted, found = sources(language), [id_], dict[str, str]()
    while wanted:
        one = wanted.pop()
        if one in known and one not in found:
            found[one] = known[one].replace("&", "&amp;").replace("<", "&lt;") if is_page else known[one]
            wanted += _REFERRED.findall(known[one])
    plural = locale_of(language).plural_form
    functions: dict[str, Any] = {**functions_of(METRIC), "PLURAL": lambda many: str(plural(abs(many)))}
    bundle = FluentBundle([LOCALES[language]], functions=functions, use_isolating=False)
    lines = (f"{name} = {_indented(text)}" for name, text in found.items())
    bundle.add_resource(FluentResource("\n".join(lines) + "\n"))
    return bundle


def _indented(text: str) -> str:
    return text.replace("\n", "\n    ")
