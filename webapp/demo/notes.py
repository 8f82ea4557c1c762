"""A few notes to the next shift."""

from __future__ import annotations

from webapp.demo.story import Draft, day, load


def drafts() -> list[Draft]:
    """Return the notes of the year."""
    return [
        Draft(day(*note["at"].split(" ")), "shift_note", note["vessel"], note["person"], {"text": note["text"]})
        for note in load("notes")
    ]
