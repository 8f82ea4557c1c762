"""What somebody may have meant: words of the index one slip away from one that nothing answers to.

Source
------
[1] F. J. Damerau, "A technique for computer detection and correction of spelling errors", Communications of the ACM
    7 (3), 1964: one letter too many, too few, another, or two changed about make up four fifths of all slips.
"""

from __future__ import annotations

import json

from webapp.book.record.store import Book
from webapp.book.search.folding import Wanted, read_wanted

LEAST = 4  # letters of a word that is corrected
LONGEST = 20
OFFERED_MOST = 3
_LETTERS = "abcdefghijklmnopqrstuvwxyz"
_KNOWN = """
SELECT w.value AS word, coalesce((SELECT doc FROM search_names_words WHERE term = w.value), 0)
+ coalesce((SELECT doc FROM search_remarks_words WHERE term = w.value), 0) AS many
FROM json_each(?) w WHERE many > 0 ORDER BY many DESC LIMIT ?
"""


def suggest(book: Book, wanted: Wanted) -> list[str]:
    """Return texts that the book has an answer to, each with one word put right, the commonest first."""
    words = wanted.text.split()
    for at, word in enumerate(words):
        looked_for = read_wanted(word)
        if not LEAST <= len(looked_for.code) <= LONGEST or _is_known(book, looked_for):
            continue
        slips = json.dumps(sorted(_slips(looked_for.code)))
        known = book.db.conn.execute(_KNOWN, (slips, OFFERED_MOST)).fetchall()
        if known:
            return [" ".join([*words[:at], right, *words[at + 1 :]]) for right, _ in known]
    return []


def _is_known(book: Book, wanted: Wanted) -> bool:
    sql = (
        "SELECT EXISTS (SELECT 1 FROM search_names_fts WHERE search_names_fts MATCH :broad) "
        "OR EXISTS (SELECT 1 FROM search_remarks WHERE search_remarks MATCH :broad)"
    )
    return bool(book.db.conn.execute(sql, {"broad": wanted.broad}).fetchone()[0])


def _slips(word: str) -> set[str]:
    """Return every word that is one slip of a letter away."""
    cuts = [(word[:at], word[at:]) for at in range(len(word) + 1)]
    made = {a + b[1:] for a, b in cuts if b}
    made |= {a + b[1] + b[0] + b[2:] for a, b in cuts if len(b) > 1}
    made |= {a + letter + b[1:] for a, b in cuts if b for letter in _LETTERS}
    made |= {a + letter + b for a, b in cuts for letter in _LETTERS}
    return made - {word}
