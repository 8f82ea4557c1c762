"""The tree of RFC 9162, by the reference vectors of certificate logs and by the RFC's own definition."""

from __future__ import annotations

import hashlib

import pytest

from webapp.book.record import merkle

# The eight leaves and nine roots of the reference tests of certificate logs (RFC 6962, whose tree RFC 9162 keeps).
# Written from memory, and found alike in public implementations of such logs.
ROWS = [
    bytes.fromhex(row)
    for row in (
        "", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f",
    )
]
ROOTS = [
    "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
    "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
    "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
    "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
    "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
    "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
    "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
    "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
]
MOST = 40
LEAVES = [merkle.hash_leaf(b"%d" % no) for no in range(MOST)]


def define(rows: list[bytes]) -> bytes:
    """Return the root word for word as RFC 9162, 2.1.1 defines it, with nothing of the program's."""
    if not rows:
        return hashlib.sha256(b"").digest()
    if len(rows) == 1:
        return hashlib.sha256(b"\x00" + rows[0]).digest()
    at = 1
    while at * 2 < len(rows):
        at *= 2
    return hashlib.sha256(b"\x01" + define(rows[:at]) + define(rows[at:])).digest()


@pytest.mark.parametrize("size", range(9))
def test_the_reference_roots(size: int) -> None:
    assert merkle.root([merkle.hash_leaf(row) for row in ROWS[:size]]).hex() == ROOTS[size]


def test_a_tree_that_goes_on_from_its_edge_is_as_the_definition_says() -> None:
    tree = merkle.Frontier()
    for size in range(MOST):
        assert tree.root() == define([b"%d" % no for no in range(size)])
        tree = merkle.Frontier(tree.size, tree.edge)
        tree.append(LEAVES[size])
    with pytest.raises(ValueError, match="edge"):
        merkle.Frontier(tree.size + 1, tree.edge)


def test_inclusion_holds_for_its_leaf_and_place_alone() -> None:
    for size in range(1, MOST):
        head = define([b"%d" % no for no in range(size)])
        for index in range(size):
            proof = merkle.prove_inclusion(LEAVES[:size], index)
            assert merkle.is_included(LEAVES[index], index, size, proof, head)
            assert not merkle.is_included(LEAVES[size], index, size, proof, head)
            assert not merkle.is_included(LEAVES[index], index, size, [*proof, head], head)
            if size > 1:
                assert not merkle.is_included(LEAVES[index], (index + 1) % size, size, proof, head)
                assert not merkle.is_included(LEAVES[index], index, size, proof[:-1], head)


def test_consistency_holds_for_a_tree_that_has_grown_and_not_for_one_rewritten() -> None:
    heads = [define([b"%d" % no for no in range(size)]) for size in range(MOST)]
    for second in range(1, MOST):
        for first in range(1, second + 1):
            proof = merkle.prove_consistency(LEAVES[:second], first)
            assert merkle.is_consistent(first, heads[first], second, heads[second], proof)
            for at in range(first):
                rewritten = [*LEAVES[:second]]
                rewritten[at] = merkle.hash_leaf(b"rewritten")
                forged = merkle.prove_consistency(rewritten, first)
                assert not merkle.is_consistent(first, heads[first], second, merkle.root(rewritten), forged)
