"""Limits of the checks for one vessel, product or sort of vessel, or the whole site, with each change on record.

They lie in the site's settings: `checks` for the site itself, `check_limits` for the narrower ones. What they mean and
which wins: before/limits.py.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import TypedDict

from webapp.book.before.limits import LIMITS
from webapp.book.fold import unjudged
from webapp.book.fold.registry_rows import load_site
from webapp.book.record.changes import note_change
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

SCOPES = ("site", "sort", "product", "vessel")
MOST = 1e6


class CheckLimit(TypedDict):
    """A limit of a check that somebody has set, beside its default."""

    scope: str
    key: str
    name: str
    value: float
    default: float | None


def check_limits(book: Book) -> list[CheckLimit]:
    """Return every limit of a check that somebody has set: scope, key, name, value, default. Widest scope first."""
    site = load_site(book)
    told = {"site": {"": site.get("checks") or {}}} | (site.get("check_limits") or {})
    return [
        {"scope": scope, "key": key, "name": name, "value": value, "default": own.default if own else None}
        for scope in SCOPES
        for key, values in sorted((told.get(scope) or {}).items())
        for name, value in sorted(values.items())
        for own in (LIMITS.get(name),)
    ]


def set_check_limit(book: Book, scope: str, key: str, name: str, value: float | None, by: str) -> None:
    """Set a check's limit for a scope; None takes it out. Entries that it concerns are asked about anew.

    scope: site, sort, product or vessel; key: empty, the sort, the spirit or material as it is named, the mark.
    BookError says what is wrong.
    """
    key = _stored_key(book, scope, key, name, value)
    with book.write() as database:
        site = load_site(book)
        if scope == "site":
            values = dict(site.get("checks") or {})
            setting = "checks"
            after: Mapping[str, object] = values
        else:
            narrow = {s: {k: dict(v) for k, v in keys.items()} for s, keys in (site.get("check_limits") or {}).items()}
            values = narrow.setdefault(scope, {}).setdefault(key, {})
            setting, after = "check_limits", narrow
        before = values.pop(name, None)
        if value is not None:
            values[name] = float(value)
        line = (setting, json.dumps(_without_empty(after)))
        database.conn.execute("INSERT OR REPLACE INTO site VALUES (?, ?)", line)
        where = "/".join(part for part in (scope, key, name) if part)
        note_change(book, by, "check limit", where, _value_told(before), _value_told(value))
        unjudged.note_places(book, *_select_concerned(scope, key))
        unjudged.judge_slice(book)


def _stored_key(book: Book, scope: str, key: str, name: str, value: float | None) -> str:
    """Return the key in its stored form; raise BookError where scope, key, name or value is wrong."""
    if scope not in SCOPES or name not in LIMITS:
        raise BookError("There is no such limit. Pick it from the list.")
    if value is not None and not -MOST <= value <= MOST:
        raise BookError("A limit is a plain number. Type it in digits, or leave it empty to take it out.")
    key = "" if scope == "site" else key.strip()
    if scope != "site" and not key:
        raise BookError("Say which: the vessel, the product, or the sort of vessel.")
    if scope == "vessel" and book.one("SELECT mark FROM vessels WHERE mark = ?", (key,)) is None:
        raise BookError(f"The book knows no vessel {key[:20]}. Add it first, or look at its code.")
    return key.lower()[:80] if scope == "product" else key[:80]


def _select_concerned(scope: str, key: str) -> tuple[str, tuple[str, ...]]:
    """Return a SELECT of the places in the fold that such a limit may concern, and its parameters."""
    if scope == "vessel":
        return f"{unjudged.ALL} WHERE mark = ?", (key,)
    if scope == "sort":
        return f"{unjudged.ALL} WHERE mark IN (SELECT mark FROM vessels WHERE sort = ?)", (key,)  # noqa: S608
    return unjudged.ALL, ()  # a product may be anywhere


def _without_empty(told: Mapping[str, object]) -> dict[str, object]:
    """Return the settings without scopes and keys that hold nothing any more."""
    kept = {name: _without_empty(v) if isinstance(v, Mapping) else v for name, v in told.items()}
    return {name: value for name, value in kept.items() if value != {}}


def _value_told(value: float | None) -> dict[str, object] | None:
    return None if value is None else {"value": float(value)}
