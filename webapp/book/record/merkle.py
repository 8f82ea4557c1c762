"""A Merkle tree over the rows of a book: its root, and proofs that a row is in it and that it has only grown.

Source: RFC 9162, section 2.1 (a leaf is hashed behind 0x00, a node behind 0x01, SHA-256 throughout).
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence

HASH_BYTES = 32


def hash_leaf(row: bytes) -> bytes:
    """Return the 32 bytes that stand for a row of any length. Source: RFC 9162, 2.1.1."""
    return hashlib.sha256(b"\x00" + row).digest()


def hash_node(left: bytes, right: bytes) -> bytes:
    """Return the 32 bytes that stand for two subtrees, each given by its own 32. Source: RFC 9162, 2.1.1."""
    return hashlib.sha256(b"\x01" + left + right).digest()


class Frontier:
    """The right edge of a tree: all that is needed to go on with it, one hash for each bit set in its size."""

    def __init__(self, size: int = 0, edge: Sequence[bytes] = ()) -> None:
        """Go on with a tree of this size (leaves); raise ValueError for an edge that cannot belong to it."""
        if size < 0 or len(edge) != size.bit_count() or any(len(one) != HASH_BYTES for one in edge):
            raise ValueError("this edge does not belong to a tree of this size")
        self.size = size
        self.edge = list(edge)

    def append(self, leaf: bytes) -> None:
        """Add the hash of one leaf at the right; on average one node is hashed. Source: RFC 9162, 2.1.2."""
        size, made = self.size, leaf
        while size & 1:
            made = hash_node(self.edge.pop(), made)
            size >>= 1
        self.edge.append(made)
        self.size += 1

    def root(self) -> bytes:
        """Return the root, 32 bytes; of an empty tree the hash of nothing. Source: RFC 9162, 2.1.1."""
        if not self.edge:
            return hashlib.sha256().digest()
        made = self.edge[-1]
        for left in reversed(self.edge[:-1]):
            made = hash_node(left, made)
        return made


def root(leaves: Sequence[bytes]) -> bytes:
    """Return the root over the hashes of leaves, 32 bytes. Source: RFC 9162, 2.1.1."""
    tree = Frontier()
    for leaf in leaves:
        tree.append(leaf)
    return tree.root()


def prove_inclusion(leaves: Sequence[bytes], index: int) -> list[bytes]:
    """Return the hashes that lead from a leaf (from 0) to the root; IndexError outside. Source: RFC 9162, 2.1.3.1."""
    if not 0 <= index < len(leaves):
        raise IndexError(index)
    if len(leaves) == 1:
        return []
    at = _split(len(leaves))
    if index < at:
        return [*prove_inclusion(leaves[:at], index), root(leaves[at:])]
    return [*prove_inclusion(leaves[at:], index - at), root(leaves[:at])]


def prove_consistency(leaves: Sequence[bytes], first: int) -> list[bytes]:
    """Return the hashes by which the tree's first leaves are its beginning; IndexError for a size of none or more.

    Source: RFC 9162, 2.1.4.1.
    """
    if not 0 < first <= len(leaves):
        raise IndexError(first)
    return _prove_beginning(leaves, first, is_whole=True)


def _prove_beginning(leaves: Sequence[bytes], first: int, *, is_whole: bool) -> list[bytes]:
    if first == len(leaves):
        return [] if is_whole else [root(leaves)]
    at = _split(len(leaves))
    if first <= at:
        return [*_prove_beginning(leaves[:at], first, is_whole=is_whole), root(leaves[at:])]
    return [*_prove_beginning(leaves[at:], first - at, is_whole=False), root(leaves[:at])]


def is_included(leaf: bytes, index: int, size: int, proof: Sequence[bytes], head: bytes) -> bool:
    """Does the proof lead from this leaf, the index-th of size, to the head? Source: RFC 9162, 2.1.3.2."""
    if not 0 <= index < size:
        return False
    here, last, made = index, size - 1, leaf
    for one in proof:
        if last == 0:
            return False
        if here & 1 or here == last:
            made = hash_node(one, made)
            while not here & 1 and here:
                here, last = here >> 1, last >> 1
        else:
            made = hash_node(made, one)
        here, last = here >> 1, last >> 1
    return last == 0 and made == head


def is_consistent(first: int, first_head: bytes, second: int, second_head: bytes, proof: Sequence[bytes]) -> bool:
    """Is the tree of the first size the beginning of that of the second, by the proof? Source: RFC 9162, 2.1.4.2."""
    if first == second:
        return not proof and first_head == second_head
    if not 0 < first < second or not proof:
        return False
    path = [first_head, *proof] if first & (first - 1) == 0 else [*proof]
    here, last = first - 1, second - 1
    while here & 1:
        here, last = here >> 1, last >> 1
    old = new = path[0]
    for one in path[1:]:
        if last == 0:
            return False
        if here & 1 or here == last:
            old, new = hash_node(one, old), hash_node(one, new)
            while not here & 1 and here:
                here, last = here >> 1, last >> 1
        else:
            new = hash_node(new, one)
        here, last = here >> 1, last >> 1
    return last == 0 and old == first_head and new == second_head


def _split(size: int) -> int:
    """Return the largest power of two below a size of two or more."""
    return 1 << (size - 1).bit_length() - 1
