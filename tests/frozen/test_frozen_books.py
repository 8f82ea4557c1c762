"""Every version's frozen book opens, is judged, verifies, folds anew to the same, and says what it said."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterator
from datetime import datetime
from math import isclose
from pathlib import Path
from typing import Any, NamedTuple

import pytest

import webapp.kinds
from tests.frozen import VERSIONS, read_json, thaw_backup, thaw_book, thaw_export
from tests.frozen.changes import (
    AMOUNT_OFF,
    CHANGED_AMOUNTS,
    CHANGED_OFFERS,
    CHANGED_QUESTIONS,
    DROPPED_OFFERS,
    FIGURE_OFF,
    LEAST_OFF,
)
from tests.frozen.said import questions, said
from webapp import __version__
from webapp.backups import BOOK_NAME, restore_backup
from webapp.book import verification
from webapp.book.fold import fold, unjudged
from webapp.book.fold.evaluate import FAULT
from webapp.book.house import people, registry
from webapp.book.intake import hand_in
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.keeping.take_in import take_in

Asked = dict[str, list[dict[str, Any]]]
_FIGURE = re.compile(r"[0-9]+(?:,[0-9]{3})*(?:\.[0-9]+)?")
_PARTS = ("lpa_ul", "volume_ml", "mass_g")


def differences(before: Asked, now: Asked) -> list[tuple[str, str, Any, Any]]:
    """Return (entry, name of the question, what it said, what it says) of every question that is not as it was."""
    found = []
    for entry in sorted({*before, *now}):
        then = {line["name"]: line for line in before.get(entry, [])}
        after = {line["name"]: line for line in now.get(entry, [])}
        found += [(entry, n, then.get(n), after.get(n)) for n in sorted({*then, *after}) if then.get(n) != after.get(n)]
    return found


def check_says_as_then(book: Book, version: str, name: str) -> None:
    """Work all off; then sums, standing and questions are as they were, but for what changes.py documents."""
    unjudged.judge_all(book)
    assert verification.verify(book) == []
    then, now = read_json(version, name), _as_json(said(book))
    questions = then.pop("questions"), now.pop("questions")
    if version in CHANGED_OFFERS:
        _take_offers_of_then(version, *questions)
    unlike = [one for one in differences(*questions)
              if (one[2] or one[3])["code"] not in CHANGED_QUESTIONS.get(version, {})
              and not (version in CHANGED_AMOUNTS and _asks_the_same(one[2], one[3]))]
    assert unlike == []
    moved = _moved(then["flows_by_entry"], now["flows_by_entry"]) if version in CHANGED_AMOUNTS else None
    assert list(_otherwise(then, now, moved)) == []


def _take_offers_of_then(version: str, then: Any, now: Any) -> None:
    """Give questions the offers that they had then, where they still make them beside others, or may drop them."""
    dropped = DROPPED_OFFERS.get(version, {})
    for entry in then.keys() & now.keys():
        for before in then[entry]:
            for after in now[entry]:
                if _name_of(before) == _name_of(after) and (
                        before["code"] in dropped or _still_offers(before, after)):
                    after["suggestions"] = before["suggestions"]


def _name_of(asked: Any) -> tuple[str, str]:
    return asked["code"], asked["field"]


def _still_offers(then: Any, now: Any) -> bool:
    before, after = (
        {(one["field"], float(one["raw"].replace(",", ".")), one["unit"]) for one in asked["suggestions"]}
        for asked in (then, now)
    )
    return before <= after


def _asks_the_same(then: Any, now: Any) -> bool:
    """Say whether two questions have the same words, and figures that differ by at most FIGURE_OFF."""
    if not then or not now:
        return False
    texts = [json.dumps(one) for one in (then, now)]
    if len({_FIGURE.sub("#", text) for text in texts}) > 1:
        return False
    pairs = zip(*([float(figure.replace(",", "")) for figure in _FIGURE.findall(text)] for text in texts), strict=True)
    return all(isclose(a, b, rel_tol=FIGURE_OFF, abs_tol=0.1) for a, b in pairs)


class Moved(NamedTuple):
    """How far amounts may lie from what they were: uL of pure alcohol, mL and g."""

    through: dict[str, list[int]]  # of each account, all that went in or out of it
    postings: dict[str, list[list[Any]]]
    apart: int  # what all postings lie apart together: no sum of postings can lie further. [uL]


def _moved(then: dict[str, list[list[Any]]], now: dict[str, list[list[Any]]]) -> Moved:
    """Return the amounts that the postings of both reports move."""
    through: dict[str, list[int]] = {}
    for source, target, *amounts, _ in (flow for flows in then.values() for flow in flows):
        for account in (source, target):
            through[account] = [a + b for a, b in zip(through.get(account, [0, 0, 0]), amounts, strict=True)]
    pairs = [(a, b) for entry in then.keys() & now.keys() for a, b in zip(then[entry], now[entry], strict=False)]
    return Moved(through, then, sum(abs(a[2] - b[2]) for a, b in pairs))


def _otherwise(then: Any, now: Any, moved: Moved | None, path: tuple[Any, ...] = ()) -> Iterator[Any]:
    """Yield each place where a saying is not what it was; without `moved` every figure has to be the same."""
    if isinstance(then, dict) and isinstance(now, dict) and then.keys() == now.keys():
        for name in then:
            yield from _otherwise(then[name], now[name], moved, (*path, name))
    elif isinstance(then, list) and isinstance(now, list) and len(then) == len(now):
        for place, (a, b) in enumerate(zip(then, now, strict=True)):
            yield from _otherwise(a, b, moved, (*path, place))
    elif then != now and not (moved is not None and _is_about(then, now, moved, path)):
        yield path, then, now


def _is_about(then: Any, now: Any, moved: Moved, path: tuple[Any, ...]) -> bool:
    """Return whether an amount is what it was but for AMOUNT_OFF of itself, or of what went through its vessel."""
    if type(then) is not int or type(now) is not int or path[-1] in ("bottles", "on_hand"):
        return False
    part, *place = path
    if part in ("months", "periods"):
        return abs(then - now) <= moved.apart
    if part in ("stock", "bottles"):
        through = moved.through.get(f"{'v' if part == 'stock' else 'b'}:{place[0]}", [0, 0, 0])[_PARTS.index(place[1])]
    elif part == "flows":
        through = moved.through[place[0]][place[1]]
    elif part == "flows_by_entry" and place[2] in (2, 3, 4):
        ends = moved.postings[place[0]][place[1]][:2]
        through = max(moved.through[end][place[2] - 2] for end in ends if not end.startswith("out:"))
    else:
        return False
    return abs(then - now) <= AMOUNT_OFF * max(abs(then), through) + LEAST_OFF


def _as_json(value: Any) -> Any:
    """Return a value as it comes back from JSON."""
    if isinstance(value, dict):
        return {str(key): _as_json(one) for key, one in value.items()}
    return [_as_json(one) for one in value] if isinstance(value, list | tuple) else value


@pytest.mark.parametrize("version", VERSIONS)
def test_a_frozen_book_says_what_it_said_and_folds_anew_to_the_same(version: str, tmp_path: Path) -> None:
    with open_book(thaw_book(version, tmp_path / "book.sqlite")) as book:
        check_says_as_then(book, version, "said.json.xz")
        kept = fold.dump(book)
        fold.rebuild(book)
        assert fold.dump(book) == kept
        assert book.query("SELECT * FROM queries WHERE code = ?", (FAULT,)) == []


@pytest.mark.parametrize("version", VERSIONS)
def test_a_frozen_backup_is_restored_and_says_what_it_said(version: str, tmp_path: Path) -> None:
    many = restore_backup(thaw_backup(version, tmp_path / "backup.zip"), tmp_path / "data")
    assert many == read_json(version, "backup-said.json.xz")["head"]["entries"]
    with open_book(tmp_path / "data" / BOOK_NAME) as book:
        check_says_as_then(book, version, "backup-said.json.xz")


@pytest.mark.parametrize("version", VERSIONS)
def test_a_frozen_export_is_taken_in_and_says_what_the_book_said(version: str, tmp_path: Path) -> None:
    take_in(thaw_export(version, tmp_path / "export"), tmp_path / "data")
    with open_book(tmp_path / "data" / BOOK_NAME) as book:
        check_says_as_then(book, version, "said.json.xz")


@pytest.mark.parametrize("version", VERSIONS)
def test_a_frozen_phone_hands_in_and_is_answered_as_it_was(version: str, tmp_path: Path) -> None:
    frozen = read_json(version, "hand-in.json")
    with open_book(tmp_path / "book.sqlite") as book:
        registry.set_site(book, frozen["house"]["site"], "MD")
        for row in frozen["house"]["vessels"]:
            registry.put_vessel(book, row, "MD")
        for row in frozen["house"]["people"]:
            people.put_person(book, {name: row[name] for name in ("code", "name", "roles", "access")}, "MD")
        for sent in frozen["batches"]:
            now = datetime.fromisoformat(sent["answer"]["server_now"])
            now_said = _as_json(hand_in(book, sent["body"], via="phone", now=now)["results"])
            then_said = sent["answer"]["results"]
            if version in CHANGED_OFFERS:
                pairs = zip(then_said, now_said, strict=True)
                asked = [(a["id"], a.get("queries") or [], b.get("queries") or []) for a, b in pairs]
                then, after = ({id: some for id, *both in asked for some in both[n : n + 1]} for n in (0, 1))
                _take_offers_of_then(version, then, after)
            assert [_answered(one, version) for one in now_said] == [_answered(one, version) for one in then_said]
    entered = {one["id"]: one["state"] for one in _as_sent(read_json(version, "slate.json")["settled"])}
    assert entered == {one["id"]: one["settled"] for sent in frozen["batches"] for one in sent["answer"]["results"]}


def _answered(result: dict[str, Any], version: str) -> dict[str, Any]:
    """Return of an answer what does not belong to its arrival, without the questions that later rules ask otherwise."""
    answered = {name: _without_messages(result.get(name)) for name in ("id", "settled", "queries", "problems")}
    asked = answered["queries"] or []
    kept = [query for query in asked if query["code"] not in CHANGED_QUESTIONS.get(version, {})]
    if len(kept) < len(asked):
        answered |= {"queries": kept, "settled": answered["settled"] if kept else "entered"}
    return answered


def _without_messages(value: Any) -> Any:
    """Return what a phone of that version reads: the words; the messages they are made of came later."""
    if isinstance(value, dict):
        return {name: _without_messages(one) for name, one in value.items() if name != "message"}
    return [_without_messages(one) for one in value] if isinstance(value, list) else value


def _as_sent(slate: dict[str, Any]) -> list[dict[str, Any]]:
    return [{"id": line["entry"]["id"], "state": line["state"]} for line in slate["entries"]]


@pytest.mark.parametrize("version", VERSIONS)
def test_a_frozen_book_holds_every_kind_and_all_that_can_happen_to_an_entry(version: str, tmp_path: Path) -> None:
    """A frozen book would prove little if it were poor."""
    with open_book(thaw_book(version, tmp_path / "book.sqlite")) as book:
        kinds = {row["kind"] for row in book.query("SELECT DISTINCT kind FROM entries")}
        aside = {row["settled"] for row in book.query("SELECT settled FROM aside")}
        verdicts = {row["verdict"] for row in book.query("SELECT verdict FROM answers")}
        standings = {row["standing"] for row in book.query("SELECT standing FROM folded")}
        codes = {line["code"] for lines in questions(book).values() for line in lines}
        counts = Counter({table: book.query(f"SELECT count(*) AS n FROM {table}")[0]["n"]
                          for table in ("closes", "limits", "instruments", "devices", "amendments")})
    if version == __version__:
        assert kinds == {kind.name for kind in webapp.kinds.ALL}
    assert len(kinds) >= 37 and len(codes) >= 84
    assert aside == {"clash", "refused"} and verdicts == {"stands", "struck"}
    assert standings == {"entered", "stopped", "struck"} and min(counts.values()) >= 2
