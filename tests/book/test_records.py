"""The list of records is complete: each is mapped, and what it is mapped to exists."""

from __future__ import annotations

from pathlib import Path

import pytest

import webapp.kinds
from webapp import create_app
from webapp.book.periods.records import HELD, PAGES, records

# How many records of each law the list holds; counted apart from it, so that one that drops out is missed.
COUNTS = {"US": 24, "EU": 7, "Germany": 1, "UK": 4}


def test_every_record_is_held_somewhere_or_says_why_not() -> None:
    assert [record["id"] for record in records()] == list(HELD)
    for name, held in HELD.items():
        assert held.kinds or held.pages, name
        assert set(held.pages) <= set(PAGES), name
        for kind in held.kinds:
            assert webapp.kinds.get(kind) is not None, (name, kind)
        assert all(len(words) > 10 for words in held.lacks), name


@pytest.mark.parametrize("where", COUNTS)
def test_no_record_has_dropped_out(where: str) -> None:
    assert sum(record["where"] == where for record in records()) == COUNTS[where]


def test_every_record_says_rule_fields_term_and_source() -> None:
    for record in records():
        assert all(record[name] for name in ("rule", "record", "fields", "when", "keep", "source")), record["id"]


def test_every_kind_that_moves_or_proves_something_serves_a_record() -> None:
    """Kinds that no law asks for are named here, so that a new kind is thought about."""
    used = {kind for held in HELD.values() for kind in held.kinds}
    beside = {"cask_move", "tasting_note", "shift_note", "cut_plan", "best_run", "vat_plan",
              "tasting_session", "tasting_answer", "tasting_result", "note_heard", "enclosure"}
    assert {kind.name for kind in webapp.kinds.ALL} - used == beside


def test_every_page_is_there(tmp_path: Path) -> None:
    paths = {rule.rule for rule in create_app(tmp_path, testing=True).url_map.iter_rules()}
    assert {path for _, path in PAGES.values()} <= paths
