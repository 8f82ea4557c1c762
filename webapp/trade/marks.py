"""Marks: the short code on a vessel's label, with a check character that catches a slip of finger or eye.

A mark is a base of 1 to 7 characters of A-Z and 0-9, a hyphen, and one check character: `F3-8`, `C031-G`.
Hyphens and spaces are presentation: they are ignored when a mark is typed, and put back when it is stored.

The check character is ISO 7064 MOD 37,36. That standard catches every wrong character, and all but one in 630
swaps of unlike neighbours for each state of the sum. Bases for which a swap would slip through
(`C078` and `C087` are such a pair) are therefore never issued and never accepted, so that for every mark
in use every single wrong character and every swap of neighbours is caught. static/trade/marks.js is the twin.

Source
------
[1] ISO/IEC 7064, "Check character systems", MOD 37,36 (hybrid system). The sum is written from memory of the standard
    and checked against the worked example of the Global Release Identifier, `A1-2425G-ABC1234002-M`.
"""

import re
from collections.abc import Iterable

ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
BASE_LENGTH_MAX = 7
TEXT_LENGTH_MAX = 300  # A typed mark or a scanned address; anything longer is neither.
_VALUE = {character: value for value, character in enumerate(ALPHABET)}
# White space is spelt out, here and in the twin: Python and JavaScript disagree about what \s means.
_SPACES = " \t\n\r\v\f\u00a0\u2009\u202f"
_ADDRESS = re.compile(r"https?://[^/?# \t\r\n]+/m/([a-z0-9 -]+)/?(?:[?#][^ \t\r\n]*)?", re.IGNORECASE | re.ASCII)
_ANY_SCHEME = re.compile(r"[a-z][a-z0-9+.]*:", re.IGNORECASE | re.ASCII)
_LOOKALIKES = [set("0ODQ"), set("1IL"), set("2Z"), set("5S"), set("6G"), set("8B"), set("VU"), set("MN")]


class BadMark(ValueError):
    """A text that is no mark of ours. `str(error)` says what to do, `code` names the reason, `bare` is the text."""

    def __init__(self, code: str, message: str, bare: str = "") -> None:
        super().__init__(message)
        self.code, self.bare = code, bare


def check_character(base: str) -> str:
    """Return the ISO 7064 MOD 37,36 check character of a base.

    Parameters
    ----------
    base : str
        Characters of A-Z and 0-9, any length of one or more. [characters]

    Returns
    -------
    character : str
        One of A-Z and 0-9.

    Raises
    ------
    BadMark
        If the base is empty or holds another character.

    Examples
    --------
    >>> check_character("A12425GABC1234002")
    'M'
    """
    if not base or any(character not in _VALUE for character in base):
        raise BadMark("characters", "A code is made of the letters A to Z and the digits 0 to 9. Leave the rest out.")
    product = 36
    for character in base:
        product = ((product + _VALUE[character]) % 36 or 36) * 2 % 37
    return ALPHABET[(1 - product) % 36]


def make_mark(base: str) -> str:
    """Return the mark for a base, in stored form, e.g. `F3` gives `F3-8`. Raises BadMark with what to do."""
    plain = _plain(base)
    if not plain:
        raise BadMark("empty", "Give the vessel a code first, such as F3 or C031.")
    if len(plain) > BASE_LENGTH_MAX:
        raise BadMark("too_long", f"A code has at most {BASE_LENGTH_MAX} letters and digits. Shorten it.")
    check = check_character(plain)
    twin = _blind_twin(plain + check)
    if twin:
        raise BadMark(
            "blind",
            f"{plain} cannot be told from {twin[:-1]}-{twin[-1]} when two neighbours are swapped. Choose another code.",
        )
    return f"{plain}-{check}"


def parse_mark(text: str) -> str:
    """Return the stored form of a typed mark or a scanned payload, or raise BadMark with what to do next.

    Lower case, spaces and missing hyphens are forgiven. A web address counts by its path `/M/<mark>` alone,
    whatever its host says; it is never followed.
    """
    text = text.strip(_SPACES)
    if not text:
        raise BadMark("empty", "Type the mark on the label, such as F3-8.")
    if len(text) > TEXT_LENGTH_MAX:
        raise BadMark("too_long", "This is too long for a mark. Type the large print on the label.")
    address = _ADDRESS.fullmatch(text)
    if address:
        text = address[1]
    elif _ANY_SCHEME.match(text):
        raise BadMark("foreign", "This code is not one of ours. Scan the label on the vessel, or type its mark.")
    plain = _plain(text)
    if any(character not in _VALUE for character in plain):
        raise BadMark("characters", "A mark has only letters A to Z and digits 0 to 9. Read the label again.")
    if len(plain) < 2:
        raise BadMark("too_short", "A mark has a code and a check character, such as F3-8. Type all of it.")
    if len(plain) > BASE_LENGTH_MAX + 1:
        raise BadMark("too_long", "This is too long for a mark. Type the large print on the label.")
    if check_character(plain[:-1]) != plain[-1] or _blind_twin(plain):
        raise BadMark(
            "check",
            f"{plain} is no mark: a character is wrong, or the last one is missing. Read the label again.",
            plain,
        )
    return f"{plain[:-1]}-{plain[-1]}"


def suggest(text: str, known: Iterable[str], limit: int = 3) -> list[str]:
    """Return the known marks that the text most likely meant, best first; an empty list where none is near."""
    address = _ADDRESS.fullmatch(text.strip(_SPACES))
    plain = _plain(address[1] if address else text)[: BASE_LENGTH_MAX + 3]
    if not plain:
        return []
    ranked = []
    for mark in known:
        whole = _plain(mark)
        # A person who leaves the check character out has typed the code right: that is the nearest slip of all.
        distance = min(_slips(plain, whole), _slips(plain, whole[:-1]) + 0.2)
        if distance <= (2 if len(plain) > 3 else 1):
            ranked.append((distance, mark))
    return [mark for _, mark in sorted(ranked)[:limit]]


def _plain(text: str) -> str:
    """Return the text without hyphens and white space, ASCII letters in upper case (others stay, to be refused)."""
    bare = re.sub(rf"[-\u2010-\u2015{_SPACES}]", "", text)
    return bare.upper() if bare.isascii() else bare


def _blind_twin(plain: str) -> str:
    """Return the text with two neighbours swapped that would pass the check as well, or an empty string."""
    for at in range(len(plain) - 1):
        if plain[at] != plain[at + 1]:
            twin = plain[:at] + plain[at + 1] + plain[at] + plain[at + 2 :]
            if check_character(twin[:-1]) == twin[-1]:
                return twin
    return ""


def _slips(typed: str, meant: str) -> float:
    """Return the number of slips (wrong, missing, added, swapped) between two texts; lookalikes count 0.4."""
    before: list[float] = []
    row = [float(at) for at in range(len(meant) + 1)]
    for i, one in enumerate(typed, 1):
        earlier, before, row = before, row, [float(i)]
        for j, other in enumerate(meant, 1):
            wrong = 0.0 if one == other else 0.4 if any({one, other} <= alike for alike in _LOOKALIKES) else 1.0
            best = min(before[j - 1] + wrong, before[j] + 1, row[j - 1] + 1)
            if i > 1 and j > 1 and one == meant[j - 2] and typed[i - 2] == other:
                best = min(best, earlier[j - 2] + 0.7)
            row.append(best)
    return row[-1]
