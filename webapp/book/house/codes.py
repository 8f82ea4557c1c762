"""Codes that a person types: eight characters that cannot be taken for each other, the last one checks the others.

Seven of them are drawn by chance from thirty, which is 34 bits. That is little for a secret, so such a code is
short-lived, good for one phone, and guesses at it are counted (webapp/access/tries.py).
"""

from __future__ import annotations

import secrets

from webapp.book.record.errors import BookError

# No 0 and O, no 1, I and L, and no U, which is taken for V.
ALPHABET = "23456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 8
MINUTES = 15
_TYPED_MOST = 14  # with hyphens and spaces; what is longer is no code to type, but the one of a QR
_MISSING = "0O1ILU"
_PRESENTATION = str.maketrans("", "", " -\u2010\u2011\u2013\u00a0\t")


class BadCode(BookError):
    """A typed code that cannot be right; `str(error)` says what to look at. It was not looked up."""


def make_code() -> str:
    """Return a new code as it is kept, without its hyphen."""
    drawn = "".join(secrets.choice(ALPHABET) for _ in range(LENGTH - 1))
    return drawn + check_character(drawn, ALPHABET)


def show_code(code: str) -> str:
    """Return a code as it is shown and read out: two groups of four."""
    return f"{code[:4]}-{code[4:]}"


def is_typed(text: str) -> bool:
    """Say whether a text is short enough for a typed code; the token in a QR code is longer."""
    return len(text.strip()) <= _TYPED_MOST


def parse_code(text: str) -> str:
    """Return the code that was typed, in either case, with or without hyphen and spaces. Raises BadCode."""
    code = text.translate(_PRESENTATION).upper()
    if odd := next((one for one in code if one in _MISSING), ""):
        raise BadCode(f"No code has {odd} in it: 0, O, 1, I, L and U are left out. Look at that character again.")
    if len(code) != LENGTH:
        raise BadCode(f"A code has {LENGTH} characters, and this has {len(code)}. Look at it again.")
    if any(one not in ALPHABET for one in code):
        raise BadCode("A code is made of letters and digits. Look at it again.")
    if check_character(code[:-1], ALPHABET) != code[-1]:
        raise BadCode("One character of this code is not right. Look at it again; it is still good.")
    return code


def check_character(base: str, alphabet: str) -> str:
    """Return the check character of a text by the hybrid system of ISO/IEC 7064 for this alphabet.

    Parameters
    ----------
    base : str
        Characters of the alphabet, one or more. [characters]
    alphabet : str
        The characters in order, an even number of them whose successor is a prime: 10, 30, 36. [characters]

    Returns
    -------
    character : str
        One of the alphabet. Every single wrong character is found, and nearly every swap of neighbours.

    Source
    ------
    [1] ISO/IEC 7064, "Check character systems", hybrid systems MOD M+1,M; from memory of the standard, and checked
        against its published uses (tests/book/test_codes.py).

    Examples
    --------
    >>> check_character("0794", "0123456789")
    '5'
    """
    size = len(alphabet)
    product = size
    for one in base:
        product = ((product + alphabet.index(one)) % size or size) * 2 % (size + 1)
    return alphabet[(1 - product) % size]


def groups_of(digest: bytes) -> str:
    """Return a digest in short groups for the eye, sixteen characters of the same alphabet.

    Parameters
    ----------
    digest : bytes
        Such as a SHA-256, at least 16 bytes. [bytes]

    Returns
    -------
    groups : str
        Four groups of four, with a space between. [78 bits]
    """
    number, size = int.from_bytes(digest, "big"), len(ALPHABET)
    shown = ""
    for _ in range(16):
        number, at = divmod(number, size)
        shown += ALPHABET[at]
    return " ".join(shown[at : at + 4] for at in range(0, 16, 4))
