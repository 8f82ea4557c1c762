"""The samples, glasses and key of a blind tasting as they stand in an entry: legible as they are, and read again."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterable, Sequence

from webapp.kinds.tasting_state import Sample, Serving

LETTERS = "ABCDEF"
SERVINGS_MOST = 72
CODE = re.compile(r"^[1-9]\d\d$")
# How many glasses with a code a set has; in a ranking as many as there are samples.
GLASSES = {"triangle": 3, "duo_trio": 2, "pair": 2, "pair_two_sided": 2}
# Letters of the key for a set: in a duo-trio the open reference stands before the two glasses with a code.
KEY_LETTERS = {**GLASSES, "duo_trio": 3}
_SAMPLE = re.compile(r"^([A-F])\s+(?:(run|batch)\s+)?([^,]{1,80}?)(?:,\s*(.{1,120}))?$")


def read_samples(text: str) -> tuple[list[Sample], list[str]]:
    """Return the samples of a text such as "A C001-Z; B run PL-31, 64 to 60 % vol", and the parts nobody can read."""
    found: list[Sample] = []
    odd = []
    for part in _parts(text):
        match = _SAMPLE.match(part)
        if match is None or match[1] in {one["letter"] for one in found}:
            odd.append(part[:40])
        else:
            found.append({"letter": match[1], "sort": match[2] or "vessel", "name": match[3].strip(),
                          "words": (match[4] or "").strip()})
    return found, odd


def samples_text(samples: Iterable[Sample]) -> str:
    """Return samples as an entry carries them."""
    return "; ".join(
        f"{one['letter']} {'' if one['sort'] == 'vessel' else one['sort'] + ' '}{one['name']}"
        + (f", {one['words']}" if one["words"] else "")
        for one in samples
    )


def read_glasses(text: str) -> tuple[list[Serving], list[str]]:
    """Return the sets of glasses of a text such as "NS 418 902 637; JK 271 550 803", and the parts nobody can read."""
    found: list[Serving] = []
    odd = []
    seen: set[str] = set()
    for part in _parts(text):
        person, *codes = part.split()
        if len(codes) < 2 or not all(map(CODE.match, codes)) or seen & set(codes) or len(set(codes)) < len(codes):
            odd.append(part[:40])
            continue
        seen |= set(codes)
        before = sum(one["person"] == person for one in found)
        found.append({"person": person, "set_no": before + 1, "codes": codes})
    return found, odd


def glasses_text(servings: Iterable[Serving]) -> str:
    """Return sets of glasses as an entry carries them."""
    return "; ".join(" ".join((one["person"], *one["codes"])) for one in servings)


def seal_of(key: str) -> str:
    """Return the seal of a key: its SHA-256 in hex."""
    return hashlib.sha256(key.encode()).hexdigest()


def read_key(key: str, method: str, samples: Sequence[Sample], servings: Sequence[Serving]) -> list[str] | None:
    """Return the letters of each set in the order of the sets, or None where the key is not of these sets.

    A key is a word of letters for each set and a last word that nobody can guess.
    """
    words = key.split()[:-1]
    letters = {one["letter"] for one in samples}
    wanted = KEY_LETTERS.get(method, len(samples))
    fits = len(words) == len(servings) and all(len(word) == wanted and set(word) <= letters for word in words)
    return words if fits else None


def _parts(text: str) -> list[str]:
    return [part.strip() for part in re.split(r"[;\n]", text) if part.strip()]
