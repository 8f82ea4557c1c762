"""The fold as its definition says, in as few lines as can be: sort everything, go through once, keep nothing clever.

The incremental fold is compared with this. It shares `evaluate` with the book (what one entry comes to), and nothing of
places, versions, differences, replays or tables.
"""

from __future__ import annotations

import json
from dataclasses import asdict
from typing import Any

from webapp.book.before.view import BookView
from webapp.book.fold.evaluate import evaluate
from webapp.book.fold.families import Plan, typed_key
from webapp.book.fold.registry_rows import Known
from webapp.book.record.clock import correct_time, order_skew, sort_text, utc_text
from webapp.book.record.log import canonical
from webapp.book.record.store import Book
from webapp.book.record.upcast import upcast
from webapp.kinds.message import to_json


def fold_plainly(book: Book) -> dict[str, Any]:
    """Return states, flows, queries and standings of the whole log."""
    rows = {row["id"]: row | {"entry": json.loads(row["body"])} for row in book.query("SELECT * FROM entries")}
    answers = [row for row in rows.values() if row["kind"] == "answer"]
    families: dict[str, list[str]] = {}
    for row in rows.values():
        if row["kind"] != "answer":
            families.setdefault(_root(rows, row["id"]), []).append(row["id"])
    plans = [_plan(rows, answers, root, ids) for root, ids in families.items()]
    states: dict[str, Any] = {}
    found: dict[str, Any] = {"flows": [], "queries": [], "standing": []}
    with book.write():
        known = Known(book)
        for plan in sorted(plans, key=lambda plan: plan.order_key):
            view = BookView(plan.at, plan.typed_at, plan.received_at, plan.skew_s, plan.root, known, states.get,
                            via=plan.via)
            outcome = evaluate(plan, view, known)
            states |= outcome.effect.states
            flows = [f for f in outcome.effect.flows if f.lpa_ul or f.volume_ml or f.mass_g]
            found["flows"] += [(plan.id, *asdict(f).values(), plan.at) for f in flows]
            found["queries"] += [
                (plan.id, name, q.code, q.weight, q.field, canonical(to_json(q.message)), answer)
                for name, q, answer in outcome.questions
            ]
            found["standing"].append((plan.root, plan.id, plan.order_key, outcome.standing))
    return {"states": states} | {name: sorted(lines) for name, lines in found.items()}


def fold_kept(book: Book) -> dict[str, Any]:
    """Return the same from the book's tables."""
    from webapp.book.fold.fold import load_state

    keys = [row["key"] for row in book.query("SELECT DISTINCT key FROM states")]
    flows = (
        "SELECT entry, source, target, lpa_ul, volume_ml, mass_g, source_fill, target_fill, reason, source_account, "
        "target_account, sort, at FROM flows"
    )
    queries = "SELECT entry, name, code, weight, field, message, answer FROM queries"
    standing = "SELECT root, entry, order_key, standing FROM folded"
    return {
        "states": {key: load_state(book, key) for key in keys},
        "flows": sorted(tuple(row.values()) for row in book.query(flows)),
        "queries": sorted(tuple(row.values()) for row in book.query(queries)),
        "standing": sorted(tuple(row.values()) for row in book.query(standing)),
    }


def as_bytes(found: dict[str, Any]) -> bytes:
    """Return it canonical, for comparing."""
    return canonical(found).encode()


def _root(rows: dict[str, Any], entry_id: str) -> str:
    chain = [entry_id]
    while True:
        row = rows.get(chain[-1])
        amends = row["entry"].get("amends") if row and row["kind"] != "answer" else None
        if not amends:
            return chain[-1]
        if amends in chain:  # a ring: its lowest id
            return min(chain[chain.index(amends) :])
        chain.append(amends)


def _plan(rows: dict[str, Any], answers: list[Any], root: str, ids: list[str]) -> Plan:
    amended = {rows[i]["entry"].get("amends") for i in ids}
    leaves = [i for i in ids if i not in amended] or ids
    row = rows[max(leaves, key=lambda i: typed_key(rows[i]))]
    clock, seen = row, {row["id"]}
    while (earlier := rows.get(clock["entry"].get("amends"))) and earlier["id"] not in seen:
        if earlier["kind"] == "answer" or utc(earlier["read_at"]) != utc(row["read_at"]):
            break
        clock = earlier
        seen.add(earlier["id"])
    at = correct_time(row["read_at"], order_skew(clock["skew_s"]))
    plan = Plan(
        root, upcast(row["entry"]), f"{sort_text(at)}|{row['device']}|{row['seq']:016d}|{row['id']}", utc_text(at),
        utc_text(correct_time(row["typed_at"], order_skew(row["skew_s"]))), row["received_at"], row["skew_s"],
        via=row["via"],
    )
    struck_at = ""
    for said in sorted(answers, key=typed_key):
        values = {name: value["raw"] for name, value in said["entry"]["values"].items()}
        if values["entry"] not in {root, *ids}:
            continue
        query = values.get("query", "")
        if values["verdict"] == "struck":
            struck_at = typed_key(said)
        else:
            if query in ("", "amended_after_strike"):
                struck_at = ""
            if values["entry"] == row["id"]:
                plan.stands[query] = said["id"]
    plan.struck = bool(struck_at)
    plan.amended_after_strike = plan.struck and plan.id != root and typed_key(row) > struck_at
    return plan


def utc(stamp: str) -> str:
    """Return an instant as UTC text."""
    return sort_text(correct_time(stamp, 0))
