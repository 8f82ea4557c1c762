"""A few notes to the next shift, and what was answered to the book at the time."""

from __future__ import annotations

from webapp.demo.story import Draft, day, load


def drafts() -> list[Draft]:
    """Return the notes and answers of the year."""
    notes = [
        Draft(day(*note["at"].split(" ")), "shift_note", note["vessel"], note["person"], {"text": note["text"]})
        for note in load("notes")
    ]
    return [*notes, *_answers()]


def _answers() -> list[Draft]:
    """The questions about the cold pears were answered when they moved again; all others still wait."""
    reason = "The room door stood open on cold nights. Warmed, fresh yeast and yeast food on the 27th; it moves again."
    return [
        Draft(
            day("2025-09-29", f"17:{10 + days}"), "answer", "", "IM",
            {"entry": f"@ferment:B-25-03:{days}", "verdict": "stands", "reason": reason},
        )
        for days in range(7, 12)
    ]  # fmt: skip
