"""Certificates of laboratories: whose sample each was of, what was found, and how that stands to the law's limits.

What a certificate is about is settled by the day on which its sample was taken: what stood in the vessel on that day,
or the batch or lot that it names.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from typing import TypedDict

from webapp.book.lineage.lineage import Trace
from webapp.book.record.log import JOIN_FOLDED
from webapp.book.record.store import Book
from webapp.kinds.entry import Entry
from webapp.kinds.lab_certificate import KIND, SUBSTANCES
from webapp.kinds.message import message_from_json
from webapp.kinds.plain import Json
from webapp.trade import units
from webapp.words import sentence

LISTED_MOST = 500
# Codes of checks/laboratory.py, and what the pages call them.
VERDICTS = {"lab_over": "over", "lab_not_safely": "not safely under", "lab_under": "under"}
AT_LEAST = {"lab_over": "too little", "lab_not_safely": "not safely enough", "lab_under": "enough"}
ASKED = ("lab_over", "lab_not_safely")
UNTESTED = ("methanol", "ethyl_carbamate")  # a page says so where no certificate speaks of them


class Result(TypedDict):
    """One result: the substance, what the paper prints, the verdict where a limit is known, and the sentence of it."""

    name: str
    label: str
    shown: str
    plus_minus: str
    code: str
    verdict: str
    words: str


class Certificate(TypedDict):
    """A certificate with its results in the order of the form."""

    entry: str
    mark: str
    batch: str
    spirit: str
    laboratory: str
    document: str
    method: str
    taken_on: str
    results: list[Result]
    papers: list[str]  # SHA-256 of the paper itself, where it is in the book


class _Row(TypedDict):
    id: str
    mark: str
    body: str
    asked: str
    papers: str


# Of the certificate and of what it amends; those alone whose files have come, and which nobody has struck.
_PAPERS = (
    "(SELECT json_group_array(n.sha256) FROM enclosed n JOIN enclosures k ON k.sha256 = n.sha256 "
    "JOIN folded p ON p.entry = n.entry AND p.standing <> 'struck' WHERE n.about IN (e.id, f.root))"
)


def find_certificates(book: Book, *, mark: str | None = None, limit: int = LISTED_MOST) -> list[Certificate]:
    """Return the certificates that have effect, of one vessel or of all, the newest sample first."""
    rows = book.rows(
        _Row,
        "SELECT e.id, e.mark, e.body, coalesce((SELECT json_group_array(json_array(q.code, q.field, json(q.message))) "  # noqa: S608
        f"FROM queries q WHERE q.entry = e.id), '[]') AS asked, {_PAPERS} AS papers FROM entries e {JOIN_FOLDED} "
        "WHERE e.kind = 'lab_certificate' AND f.standing = 'entered' AND (:mark IS NULL OR e.mark = :mark) "
        "ORDER BY e.book_no DESC LIMIT :limit",
        {"mark": mark, "limit": max(1, min(limit, LISTED_MOST))},
    )
    return sorted((_certificate(row) for row in rows), key=lambda one: one["taken_on"], reverse=True)


def of_fill(found: Iterable[Certificate], mark: str, since: str, until: str = "") -> list[Certificate]:
    """Return those of what stood in a vessel between two times (UTC texts); open where `until` is empty."""
    return [
        one for one in found
        if one["mark"] == mark and since[:10] <= one["taken_on"] and (not until or one["taken_on"] <= until[:10])
    ]


def of_trace(found: Sequence[Certificate], made: Trace) -> list[Certificate]:
    """Return those of what a trace is about, of what that was made of, and of the bottles it went into."""
    kept: dict[str, Certificate] = {}
    for node in made.nodes.values():
        facts = node.facts
        names = {str(facts.get(name) or "").casefold() for name in ("batch", "lot_mark")} - {""}
        of_node = [one for one in found if one["batch"].casefold() in names]
        if node.id[:2] == "f:" and node.mark and node.sort != "run":
            of_node += of_fill(found, node.mark, node.at, str(facts.get("ended_at") or ""))
        kept.update((one["entry"], one) for one in of_node)
    return [one for one in found if one["entry"] in kept]


def untested(found: Iterable[Certificate]) -> list[str]:
    """Return the words for what no certificate speaks of, of what always should be: methanol, ethyl carbamate."""
    told = {result["name"] for one in found for result in one["results"]}
    labels = {name: label for name, label, *_ in SUBSTANCES}
    return [labels[name].lower() for name in UNTESTED if name not in told]


def _certificate(row: _Row) -> Certificate:
    entry: Entry = json.loads(row["body"])
    said = {name: str(value.get("raw") or "").strip() for name, value in entry["values"].items()}
    asked = {field: (code, message) for code, field, message in json.loads(row["asked"]) if code in VERDICTS}
    return {
        "entry": row["id"], "mark": row["mark"],
        "batch": said.get("batch", ""), "spirit": said.get("spirit", ""), "laboratory": said.get("laboratory", ""),
        "document": said.get("document", ""), "method": said.get("method", ""), "taken_on": said.get("taken_on", ""),
        "papers": json.loads(row["papers"]),
        "results": [one for name, label, *_ in SUBSTANCES if (one := _result(entry, name, label, asked))],
    }


def _result(entry: Entry, name: str, label: str, asked: Mapping[str, tuple[str, Json]]) -> Result | None:
    typed, below = _shown(entry, name), _shown(entry, f"{name}_below")
    if not typed and not below:
        return None
    code, message = asked.get(name, ("", None))
    names = AT_LEAST if name == "volatile_substances" else VERDICTS
    return {
        "name": name, "label": label.split(",")[0], "shown": typed or f"none found, below {below}",
        "plus_minus": _shown(entry, f"{name}_plus_minus"), "code": code, "verdict": names.get(code, ""),
        "words": sentence(message_from_json(message)) if message else "",
    }


def _shown(entry: Entry, name: str) -> str:
    typed = entry["values"].get(name) or {}
    raw, spec = str(typed.get("raw") or "").strip(), KIND.field(name)
    if not raw or spec is None:
        return ""
    return f"{raw} {units.symbol(typed['unit'])}".strip() if typed.get("unit") in spec.units else raw
