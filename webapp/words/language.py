"""Which languages there are, and which one is being read now.

A request names its reader before anything is said (access/guard.py); what is said outside a request is English. Who
reads is looked up when the first word is asked for, not before.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar

from webapp.words.catalogue import ENGLISH, LOCALES, has_catalogue

# What each language calls itself; of a language that a file alone adds, CLDR says it.
_OWN_NAMES = {"en": "English", "de": "Deutsch", "fr": "Français", "es": "Español", "it": "Italiano", "cs": "Čeština"}


def _own_name(code: str) -> str:
    from babel import Locale

    name = Locale.parse(code).get_language_name(code) or code
    return name[:1].upper() + name[1:]


LANGUAGES: dict[str, str] = {code: _OWN_NAMES.get(code) or _own_name(code) for code in LOCALES}

_reading: ContextVar[Callable[[], str] | str] = ContextVar("reading", default=ENGLISH)


def offered() -> dict[str, str]:
    """Return the languages that there is a catalogue of, each with its own name."""
    return {code: name for code, name in LANGUAGES.items() if has_catalogue(code)}


def is_offered(code: object) -> bool:
    """Return whether somebody may read in a language."""
    return isinstance(code, str) and code in LANGUAGES and has_catalogue(code)


def best_of(wanted: Iterable[str]) -> str | None:
    """Return the first language that is offered of those a browser wants, best first: de-AT is German."""
    each = (tag.replace("_", "-").partition("-")[0].lower() for tag in wanted)
    return next((code for code in each if is_offered(code)), None)


def read_in(language: Callable[[], str] | str) -> None:
    """Say from now on, in this thread, all words in a language; a function is asked with the first word."""
    _reading.set(language)


@contextmanager
def reading(language: str) -> Iterator[None]:
    """Say all words in a language for a while, whoever asks."""
    before = _reading.set(language)
    try:
        yield
    finally:
        _reading.reset(before)


def language() -> str:
    """Return the language that is being read: in a request its reader's, else English."""
    now = _reading.get()
    if callable(now):
        now = now()
        _reading.set(now)
    return now


def html_lang() -> str:
    """Return the `lang` attribute of a page."""
    now = language()
    return LOCALES[now] if now == ENGLISH else now
