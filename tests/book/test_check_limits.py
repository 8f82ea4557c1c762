"""Limits of checks for one vessel, product or sort: the narrowest wins, questions follow, each change is on record."""

from datetime import timedelta

import pytest

from tests.book.conftest import NOW, T1, entry, send
from webapp.book.fold.queries import for_entry
from webapp.book.house import registry
from webapp.book.house.check_limits import check_limits, set_check_limit
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book


def _short_dip(book: Book) -> str:
    """A tank gauged at 200 L, and hours later dipped 1.5 % short of that; return the second entry."""
    # Small enough that its dip tells less than the limits in question.
    registry.put_vessel(book, {"mark": T1, "capacity_l": 450.0, "working_l": 440.0}, by="JK")
    first = entry("gauge", T1, what="plum", volume="200 L", strength="60 pct_vol", temp="20 degC", seq=1,
                  read_at=NOW - timedelta(hours=9))
    second = entry("gauge", T1, what="plum", volume="197 L", strength="60 pct_vol", temp="20 degC", seq=2,
                   read_at=NOW - timedelta(hours=1))
    send(book, first, second)
    return str(second["id"])


def _asked(book: Book, entry_id: str) -> set[str]:
    return {query["code"] for query in for_entry(book, entry_id)} & {"dip_sum"}


def test_the_narrowest_limit_holds_and_questions_follow_each_change(book: Book) -> None:
    dipped = _short_dip(book)
    assert _asked(book, dipped) == {"dip_sum"}
    set_check_limit(book, "site", "", "dip_pct", 2.0, "JK")
    assert _asked(book, dipped) == set()
    set_check_limit(book, "sort", "tank", "dip_pct", 1.2, "JK")
    assert _asked(book, dipped) == {"dip_sum"}
    set_check_limit(book, "product", "Plum", "dip_pct", 1.8, "JK")
    assert _asked(book, dipped) == set()
    set_check_limit(book, "vessel", T1, "dip_pct", 0.5, "JK")
    assert _asked(book, dipped) == {"dip_sum"}
    for scope, key in (("vessel", T1), ("product", "plum"), ("sort", "tank")):
        set_check_limit(book, scope, key, "dip_pct", None, "JK")
    assert _asked(book, dipped) == set()
    assert [(row["scope"], row["value"], row["default"]) for row in check_limits(book)] == [("site", 2.0, 1.0)]
    set_check_limit(book, "site", "", "dip_pct", None, "JK")
    assert check_limits(book) == []
    assert _asked(book, dipped) == {"dip_sum"}


def test_another_vessel_is_not_concerned(book: Book) -> None:
    dipped = _short_dip(book)
    set_check_limit(book, "sort", "cask", "dip_pct", 5.0, "JK")
    set_check_limit(book, "product", "pear", "dip_pct", 5.0, "JK")
    assert _asked(book, dipped) == {"dip_sum"}


def test_who_changed_what_from_what_to_what(book: Book) -> None:
    set_check_limit(book, "vessel", T1, "dip_pct", 2.0, "JK")
    set_check_limit(book, "vessel", T1, "dip_pct", 3.0, "NS")
    last = registry.changes(book, 1)[0]
    assert (last["person"], last["what"], last["key"]) == ("NS", "check limit", f"vessel/{T1}/dip_pct")
    assert (last["before"], last["after"]) == ({"value": 2.0}, {"value": 3.0})


@pytest.mark.parametrize(
    ("scope", "key", "name", "value", "words"),
    [
        ("site", "", "no_such", 1.0, "Pick it from the list"),
        ("planet", "", "dip_pct", 1.0, "Pick it from the list"),
        ("vessel", "X9-9", "dip_pct", 1.0, "knows no vessel X9-9"),
        ("product", "  ", "dip_pct", 1.0, "Say which"),
        ("site", "", "dip_pct", float("nan"), "plain number"),
    ],
)
def test_what_is_wrong_is_said(book: Book, scope: str, key: str, name: str, value: float, words: str) -> None:
    with pytest.raises(BookError, match=words):
        set_check_limit(book, scope, key, name, value, "JK")
