"""Mutants that no test can kill, because they do the same: each named with the reason, in equivalent.toml."""

from __future__ import annotations

import tomllib
from typing import NamedTuple

from tests.mutants.rooms import TOP

LIST = TOP / "tests/mutants/equivalent.toml"


class Equivalent(NamedTuple):
    """A mutant that does the same as the program."""

    path: str
    was: str
    becomes: str
    why: str


def read_equivalents() -> list[Equivalent]:
    """Return the list."""
    return [Equivalent(**one) for one in tomllib.loads(LIST.read_text()).get("mutant", [])]
