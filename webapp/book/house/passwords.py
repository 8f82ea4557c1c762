"""Passwords that people choose for themselves: none that is short, common or easily guessed."""

from __future__ import annotations

import re

from webapp.book.house import people, registry
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

# zxcvbn's own scale, 0 to 4: 3 is beyond 10^8 guesses, "safely unguessable" by its authors (Wheeler, USENIX Security
# 2016, for a hash that is slow).
SCORE_LEAST = 3
# What is looked at of a longer one, its beginning and its end: some texts cost the estimate time that grows with their
# length squared and more.
_LOOKED_AT = 24


def choose_password(book: Book, code: str, password: str, by: str = "") -> None:
    """Set the password that a person chose. BookError where it is short, easily guessed, or nobody has this code."""
    person = people.person(book, code)
    words = [code, *(re.findall(r"\w+", person["name"]) if person else [])]
    refuse_guessable(password, [*words, *re.findall(r"\w+", str(registry.site(book).get("name") or ""))])
    people.set_password(book, code, password, by)


def refuse_guessable(password: str, own_words: list[str]) -> None:
    """Raise BookError with a sentence where a password is too short or long, or easily guessed.

    `own_words`: what somebody who knows them would try first, such as their name and that of the house.
    """
    from zxcvbn import zxcvbn  # its lists take a moment to load, and few start the program to choose a password

    if not people.PASSWORD_LEAST <= len(password) <= people.PASSWORD_MOST:
        raise BookError(
            f"A password has {people.PASSWORD_LEAST} to {people.PASSWORD_MOST} characters. Take a few words."
        )
    known = [*own_words, "cellarslate"]
    looked_at = dict.fromkeys([password[:_LOOKED_AT], password[-_LOOKED_AT:]])
    if max(int(zxcvbn(part, user_inputs=known)["score"]) for part in looked_at) < SCORE_LEAST:
        raise BookError(
            "This password is among the first that are guessed. Take four words that nobody would put together."
        )
