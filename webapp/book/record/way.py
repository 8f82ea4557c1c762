"""How an entry came, as its `via` says it: by what, by which phone, and what was found about who logged it.

The chain covers `via`, and it travels with the entry. `phone d-7f3k2m9q sp`: the first word says how it came; from a
phone the second says which phone brought it, and the third has a letter for each finding (docs/hand-in.md).
"""

from __future__ import annotations

from typing import Final, NamedTuple

PHONE: Final = "phone"
PAGE: Final = "page"
SIGNED: Final = "s"  # by a key of the phone that the entry names
UNSIGNED: Final = "u"  # although that phone signs what it logs
SHOWN: Final = "p"  # the person had typed their PIN on that phone since they took it up
SHOWN_NOW: Final = "P"  # and typed it for this very entry
NOT_SHOWN: Final = "n"  # the person has a PIN, and had not typed it there
NOT_SHOWN_NOW: Final = "f"  # the house wants it typed for this very entry, and it was not
WITNESS_NOT_SHOWN: Final = "w"  # a second person is named who has a PIN, and has never typed it on that phone


class Way(NamedTuple):
    """A `via` in its parts. `carrier` is the phone that brought it, or who was signed in; empty: not on record."""

    how: str
    carrier: str
    findings: str


def read_way(via: str) -> Way:
    """Return the parts of a `via`; entries of earlier versions have the first alone."""
    how, _, rest = via.partition(" ")
    carrier, _, findings = rest.partition(" ")
    return Way(how, carrier, findings)
