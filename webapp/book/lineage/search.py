"""What a person types to find a trace: a mark, a batch, a case number, a lot mark, a run's name, a delivery."""

from __future__ import annotations

import json
import re
from dataclasses import dataclass
from typing import TypedDict

from webapp.book.fold.reader_rows import BottlingRow, FillRow
from webapp.book.lineage.lineage import find_subject
from webapp.book.lineage.names import LOAD
from webapp.book.record.store import Book

HITS_MOST = 40
CASES_MOST = 20_000  # bottlings looked at for a case number, the newest first
TEXT_MOST = 60
LOOKED_AT_MOST = 20_000  # loads, or charges, whose own words are looked through, the newest first: decades of a house
_CASE = re.compile(r"^(.*?)(\d{1,18})R?$", re.IGNORECASE)


class _Said(TypedDict):
    id: str
    mark: str
    read_at: str
    said: str


@dataclass(frozen=True, slots=True)
class Hit:
    """One thing that answers to the text."""

    key: str  # of its trace
    sort: str  # vessel, bottling, fill, run, load
    name: str
    words: str
    at: str = ""


def search(book: Book, text: str) -> list[Hit]:
    """Return the subjects that the text may mean, the surest first, each once; at most HITS_MOST."""
    text = text.strip()[:TEXT_MOST]
    if not text:
        return []
    hits: dict[str, Hit] = {}
    for hit in [*_marks(book, text), *_bottlings(book, text), *_fills(book, text), *_runs(book, text),
                *_loads(book, text)]:
        hits.setdefault(hit.key, hit)
    return list(hits.values())[:HITS_MOST]


def _marks(book: Book, text: str) -> list[Hit]:
    """Return the fill of a vessel with this mark, and those before it."""
    subject = find_subject(book, text)
    if subject is None:
        return []
    rows = book.rows(
        FillRow,
        "SELECT * FROM fills WHERE mark = (SELECT mark FROM fills WHERE id = ?) ORDER BY since DESC LIMIT ?",
        (subject.id, HITS_MOST),
    ) if subject.sort == "fill" else []
    if not rows:
        return [Hit(subject.key, "vessel", text, "what this names")]
    rows.sort(key=lambda row: row["id"] != subject.id)
    return [_fill(row) for row in rows]


def _fill(row: FillRow) -> Hit:
    words = ", ".join(part for part in (row["what"], row["name"], row["lot"]) if part)
    words += " (emptied)" if row["ended_at"] else " (stands there now)"
    return Hit(row["id"], "fill", row["mark"], words.strip(), row["since"])


def _bottlings(book: Book, text: str) -> list[Hit]:
    """Return bottlings of this batch or lot mark, or with this case among their cases."""
    rows = book.rows(BottlingRow, "SELECT * FROM bottlings ORDER BY at DESC LIMIT ?", (CASES_MOST,))
    wanted, case = text.casefold(), _CASE.match(text)
    by_name = [row for row in rows if wanted in (row["batch"].casefold(), row["lot_mark"].casefold())]
    by_case = [row for row in rows if row["odd_case"].casefold() == wanted or (case and _has_case(row, case))]
    return [_bottling(row) for row in [*by_name, *by_case][:HITS_MOST]]


def _bottling(row: BottlingRow) -> Hit:
    cases = " to ".join(part for part in (row["case_from"], row["case_to"]) if part)
    parts = (f"cases {cases}" if cases else "", row["lot_mark"], "" if row["tank"] else "received in bottles")
    words = ", ".join(part for part in parts if part)
    return Hit(row["id"], "bottling", row["batch"] or f"bottling of {row['tank']}", words, row["at"])


def _has_case(row: BottlingRow, case: re.Match[str]) -> bool:
    first, last = _CASE.match(row["case_from"]), _CASE.match(row["case_to"])
    if not first or not last or case[1].casefold() != first[1].casefold():
        return False
    return int(first[2]) <= int(case[2]) <= int(last[2])


def _fills(book: Book, text: str) -> list[Hit]:
    """Return fills of this batch, then those of this lot, the newest first."""
    return [_fill(row) for row in book.rows(FillRow, _NAMED, {"text": text, "most": HITS_MOST})]


_NAMED = """
SELECT * FROM (SELECT * FROM fills WHERE name = :text AND name <> '' ORDER BY since DESC LIMIT :most)
UNION ALL
SELECT * FROM (SELECT * FROM fills WHERE lot = :text AND lot <> '' ORDER BY since DESC LIMIT :most)
"""


def _runs(book: Book, text: str) -> list[Hit]:
    rows = _said(book, "charge", ("run_name",), text)
    runs = book.query(
        "SELECT w.value AS entry, r.* FROM json_each(?) w LEFT JOIN amendments a ON a.id = w.value "
        "JOIN runs r ON r.id = coalesce(a.root, w.value)",
        (json.dumps([row["id"] for row in rows]),),
    )
    by_entry = {run["entry"]: run for run in runs}
    return [
        Hit(run["id"], "run", row["said"], f"{run['what']} on {run['still']}", run["started_at"])
        for row in rows
        if (run := by_entry.get(row["id"]))
    ]


def _loads(book: Book, text: str) -> list[Hit]:
    rows = _said(book, "fruit_intake", ("grower_lot", "batch"), text)
    folded = book.query(
        "SELECT w.value AS entry, f.root FROM json_each(?) w LEFT JOIN amendments a ON a.id = w.value "
        "JOIN folded f ON f.root = coalesce(a.root, w.value) WHERE f.standing = 'entered'",
        (json.dumps([row["id"] for row in rows]),),
    )
    roots = {row["entry"]: row["root"] for row in folded}
    return [
        Hit(f"{LOAD}{roots[row['id']]}", "load", row["said"], f"into {row['mark']}", row["read_at"])
        for row in rows
        if row["id"] in roots
    ]


def _said(book: Book, kind: str, fields: tuple[str, ...], text: str) -> list[_Said]:
    """Return entries of a kind, newest first, of which a field holds the text; `said` is the first of the fields."""
    like = "%" + text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%"
    paths = [f"json_extract(body, '$.values.{name}.raw')" for name in fields]
    tests = " OR ".join(f"{path} LIKE :like ESCAPE '\\'" for path in paths)
    return book.rows(
        _Said,
        f"SELECT id, mark, read_at, {paths[0]} AS said FROM "  # noqa: S608
        "(SELECT * FROM entries WHERE kind = :kind ORDER BY book_no DESC LIMIT :looked_at) "
        f"WHERE body LIKE :like ESCAPE '\\' AND ({tests}) LIMIT :most",
        {"kind": kind, "like": like, "most": HITS_MOST, "looked_at": LOOKED_AT_MOST},
    )
