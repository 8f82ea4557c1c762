"""Codes and serving orders of a blind tasting: drawn by the system's own randomness, each order used equally often."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import product
from random import Random, SystemRandom

from webapp.book.record.store import Book
from webapp.kinds.tasting_state import Serving
from webapp.kinds.tasting_texts import GLASSES, LETTERS, SERVINGS_MOST, seal_of

# Of two samples; in a duo-trio the open reference stands first.
_ORDERS = {
    "triangle": ("AAB", "ABA", "BAA", "BBA", "BAB", "ABB"), "duo_trio": ("AAB", "ABA", "BAB", "BBA"),
    "pair": ("AB", "BA"), "pair_two_sided": ("AB", "BA"),
}
SALT_BITS = 128


def count_orders(method: str, samples: int) -> int:
    """Return how many serving orders a method has: a multiple of it uses all equally often."""
    return len(_ORDERS.get(method) or balanced_orders(samples))


def balanced_orders(samples: int) -> list[str]:
    """Return orders of samples in which each stands in each place, and before each other one, equally often.

    Williams, Aust. J. Sci. Res. A 2 (1949) 149, from memory: a square for an even number, two for an odd one.
    """
    first = [0]
    for step in range(1, samples):
        first.append((first[-1] + (step if step % 2 else -step)) % samples)
    rows = [[(place + turn) % samples for place in first] for turn in range(samples)]
    if samples % 2:
        rows += [row[::-1] for row in rows]
    return ["".join(LETTERS[place] for place in row) for row in rows]


def draw_tasting(
    method: str, samples: int, tasters: Sequence[str], sets_each: int, chance: Random | None = None
) -> tuple[list[Serving], str]:
    """Return the glasses of each taster, and the key: which sample each holds, with a word that nobody can guess.

    Orders are used equally often, as far as their number goes; no code stands on two glasses. `chance` is for tests.
    """
    draw = chance or SystemRandom()
    many = len(tasters) * sets_each
    if not 0 < many <= SERVINGS_MOST:
        raise ValueError(f"{many} sets of glasses")
    names = list(LETTERS[:samples])
    draw.shuffle(names)  # which sample stands where in the squares is drawn too
    orders = [
        order if method in _ORDERS else "".join(names[LETTERS.index(letter)] for letter in order)
        for order in _ORDERS.get(method) or balanced_orders(samples)
    ]
    dealt = orders * (many // len(orders)) + draw.sample(orders, many % len(orders))
    draw.shuffle(dealt)
    glasses = GLASSES.get(method, samples)
    codes = [str(code) for code in draw.sample(range(100, 1000), many * glasses)]
    turns = list(product(range(1, sets_each + 1), tasters))
    servings: list[Serving] = [
        {"person": person, "set_no": number, "codes": codes[at * glasses : (at + 1) * glasses]}
        for at, (number, person) in enumerate(turns)
    ]
    return servings, " ".join((*dealt, f"{draw.getrandbits(SALT_BITS):032x}"))


def keep_key(book: Book, key: str) -> str:
    """Put a key aside until its tasting is opened; return its seal."""
    seal = seal_of(key)
    with book.write() as database:
        database.conn.execute("INSERT OR IGNORE INTO tasting_keys VALUES (?, ?)", (seal, key))
    return seal


def load_key(book: Book, seal: str) -> str | None:
    """Return the key of a seal, or None where this book does not have it."""
    row = book.one("SELECT key FROM tasting_keys WHERE seal = ?", (seal,))
    return str(row["key"]) if row else None
