"""Words as they are indexed and as they are looked for: both sides are folded alike.

Case, accents and leading zeros do not count; a code is found with its hyphens, with spaces or with neither. So `C6`,
`c-006` and `C 006` are one, and the beginning of a word finds the whole of it.

Source
------
[1] Unicode Standard Annex 15, normalisation form KD, and the Unicode Standard, section 5.18, case folding. unicode.org
[2] SQLite, "FTS5 Extension", sections 3.2 and 3.3, full-text query syntax and prefix queries. sqlite.org/fts5.html
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

TEXT_MOST = 80  # characters of a search that are looked at
WORDS_MOST = 8  # words of a search that are looked for
INDEXED_MOST = 2_000  # characters of a remark that are indexed
CODE_MOST = 40  # characters of a chunk that is joined to one code
HEAD_MOST = 3  # letters before a space and a number that may belong to it: C 006
_PIECE = re.compile(r"[^\W\d_]+|\d+")
_CHUNK = re.compile(r"[^\s,;:()\"'„“”!?]+")
# Letters that have no accent to take off (Unicode has no decomposition for them).
_LETTERS = str.maketrans({"ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "æ": "ae", "œ": "oe", "ı": "i"})
_UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


def fold(text: str) -> str:
    """Return a text without case and accents."""
    plain = unicodedata.normalize("NFKD", text.casefold().translate(_LETTERS))
    return plain if plain.isascii() else "".join(one for one in plain if not unicodedata.combining(one))


def index_words(*texts: str) -> str:
    """Return the words under which texts are found, each once, with spaces between them."""
    found: dict[str, None] = {}
    for text in texts:
        cut = text[:INDEXED_MOST]
        found.update(dict.fromkeys(_words(fold(cut))))
        if not cut.isascii():
            # Mühle is found as Muhle and as Muehle. Composed first: an umlaut may come as two characters.
            spelt = unicodedata.normalize("NFC", cut.casefold()).translate(_UMLAUTS)
            found.update(dict.fromkeys(_words(fold(spelt))))
    return " ".join(found)


def squash(text: str) -> str:
    """Return a text as one code: no separators, no leading zeros in its numbers."""
    return _joined(_PIECE.findall(fold(text[:TEXT_MOST])))


def _words(folded: str) -> Iterator[str]:
    head = ""
    for chunk in _CHUNK.findall(folded):
        pieces = _PIECE.findall(chunk)
        if not pieces:
            continue
        for piece in pieces:
            yield piece
            yield _bare(piece)
        if len(pieces) > 1 and len(chunk) <= CODE_MOST:
            for at in range(len(pieces) - 1):  # K-26-03 is found from the 26 on, too
                yield "".join(pieces[at:])
                yield _joined(pieces[at:])
        if head and pieces[0].isdecimal() and len(chunk) <= CODE_MOST:
            yield head + "".join(pieces)
            yield head + _joined(pieces)
        head = _head(pieces)


def _head(pieces: list[str]) -> str:
    """Return the letters that may belong to a number after a space; empty where these are none."""
    return pieces[0] if len(pieces) == 1 and pieces[0].isalpha() and len(pieces[0]) <= HEAD_MOST else ""


def _bare(piece: str) -> str:
    return piece.lstrip("0") or "0" if piece.isdecimal() else piece


def _joined(pieces: Iterable[str]) -> str:
    return "".join(_bare(piece) for piece in pieces)


@dataclass(frozen=True, slots=True)
class Wanted:
    """What somebody looks for. `broad` and `exact` are queries of FTS5; `beginnings`: how its words begin, folded."""

    text: str
    code: str  # as one code (squash)
    broad: str
    exact: str
    beginnings: tuple[str, ...]

    def __bool__(self) -> bool:
        return bool(self.broad)

    def is_called(self, *names: str) -> bool:
        """Say whether one of these names is the one looked for, separators and leading zeros aside."""
        return any(squash(name) == self.code for name in names if name)


def read_wanted(text: str) -> Wanted:
    """Return the search that a text asks for; false where it has no letter and no digit in it."""
    text = " ".join(text[:TEXT_MOST].split())
    chunks = [pieces for chunk in _CHUNK.findall(fold(text)) if (pieces := _PIECE.findall(chunk))][:WORDS_MOST]
    tests: list[str] = []
    beginnings: dict[str, None] = {}
    at = 0
    while at < len(chunks):
        pieces, test = chunks[at], _any(_tests(chunks[at]))
        following = chunks[at + 1] if at + 1 < len(chunks) else []
        head = _head(pieces)
        if head and following and following[0].isdecimal():
            both = [head, *following]
            tests_of_both = _tests(both)
            beginnings.update(dict.fromkeys(_beginnings(both)))
            if len(head) > 1:  # they may as well be two words
                tests_of_both.append(f"({test} AND {_any(_tests(following))})")
                beginnings.update(dict.fromkeys([*_beginnings(pieces), *_beginnings(following)]))
            test = _any(tests_of_both)
            at += 1
        else:
            beginnings.update(dict.fromkeys(_beginnings(pieces)))
        tests.append(test)
        at += 1
    code = squash(text)
    return Wanted(text, code, " AND ".join(tests), f'"{code}"' if code else "", tuple(beginnings))


def _tests(pieces: list[str]) -> list[str]:
    """Return the queries of one chunk: what begins as it was typed, or is called so without its leading zeros.

    Of a number with leading zeros no more than the number itself is meant: C-006 is C6, and not C60. A number of
    zeros alone is half typed.
    """
    typed, bare = "".join(pieces), _joined(pieces)
    if bare == typed or not pieces[-1].strip("0"):
        return [f'"{typed}"*']
    return [f'"{typed}"*', f'"{bare}"']


def _any(tests: list[str]) -> str:
    return tests[0] if len(tests) == 1 else f"({' OR '.join(tests)})"


def _beginnings(pieces: list[str]) -> list[str]:
    return list(dict.fromkeys(("".join(pieces), _joined(pieces))))


@dataclass(frozen=True, slots=True)
class Part:
    """A part of a text that is shown; `is_hit`: it is what was looked for."""

    text: str
    is_hit: bool


def mark_hits(text: str, beginnings: Iterable[str]) -> list[Part]:
    """Return a text in parts, each word that begins with what was looked for being a hit."""
    wanted = tuple(beginnings)
    parts: list[Part] = []
    end = 0
    for match in _CHUNK.finditer(text):
        if wanted and any(word.startswith(wanted) for word in index_words(match[0]).split()):
            parts += [Part(text[end : match.start()], False), Part(match[0], True)]
            end = match.end()
    return [part for part in [*parts, Part(text[end:], False)] if part.text]


def cut_out(text: str, beginnings: Iterable[str], most: int) -> str:
    """Return the part of a long text around its first hit, at most `most` characters and two ellipses."""
    if len(text) <= most:
        return text
    first = next((part for part in _offsets(mark_hits(text, beginnings))), 0)
    start = max(0, first - most // 3)
    start = text.find(" ", start) + 1 if start else 0
    cut = text[start : start + most]
    if start + most < len(text):
        cut = cut.rpartition(" ")[0] or cut
        return f"{'… ' if start else ''}{cut} …"
    return f"… {cut}" if start else cut


def _offsets(parts: Iterable[Part]) -> Iterator[int]:
    at = 0
    for part in parts:
        if part.is_hit:
            yield at
        at += len(part.text)
