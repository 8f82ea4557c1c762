"""Does the registry say what its changes say? Each change notes what it changed to: the last of them must stand there.

So is found who was given a right, a vessel another tare or a check another limit behind the book's back. A book states
once what no change has named until then (`state_registry`); from there on each row and each column is held.
"""

from __future__ import annotations

import json
from collections.abc import Mapping

from webapp.book.house import parties, passkeys, people, phone_keys, registry
from webapp.book.record.changes import note_change
from webapp.book.record.schema import REGISTRY_STATED
from webapp.book.record.store import Book

TROUBLES_MOST = 20
STATEMENT = "statement"
# Secrets are noted as "(set)"; whether there is one is no column of its own.
_NOT_HELD = ("password", "pin", "secret_sha256", "has_password", "has_pin")
_CHECK_LIMITS = ("checks", "check_limits")  # settings of the site whose changes are noted one by one
Rows = dict[str, dict[str, object]]


def verify(book: Book) -> list[str]:
    """Return a sentence for each row of the registry that is not what its changes have made of it."""
    troubles: list[str] = []
    told, is_stated = _told(book), book.one("SELECT 1 FROM settings WHERE name = ?", (REGISTRY_STATED,)) is not None
    stated_columns = _stated_columns(book) or ({"person": ["password_mark"]} if is_stated else {})
    for what, rows in _registry(book).items():
        for key, said in told.get(what, {}).items():
            row = rows.get(key)
            if row is None and what == "passkey":
                continue  # a book that was taken in has none, and one that is not there lets nobody in
            if row is None:
                troubles.append(f"The {_name(what, key)} is no longer in the registry, and no change has taken it out.")
                continue
            odd = [name for name, value in said.items() if name in row and not _is_same(row[name], value)]
            # What was empty when the registry was stated, and was named by no change, is empty still.
            odd += [name for name in stated_columns.get(what, ()) if name not in said and row.get(name)]
            if odd:
                troubles.append(f"The {_name(what, key)} is not as its changes say: {', '.join(odd)}.")
        if is_stated:
            # Of a phone that was only heard of nothing is noted: nothing lets it in.
            heard = _find_without_secret(book) if what == "device" else set()
            unnamed = [key for key in rows if key not in told.get(what, {}) and key not in heard]
            troubles += [f"The {_name(what, key)} is in the registry, and no change put it there." for key in unnamed]
    return troubles[:TROUBLES_MOST]


def state_registry(book: Book) -> None:
    """Note as one change what the registry says and no change has named, unless that was done. Inside a write.

    Where a line of the registry or of its changes cannot be read, nothing is noted: `verify` says so.
    """
    if book.one("SELECT 1 FROM settings WHERE name = ?", (REGISTRY_STATED,)):
        return
    try:
        said = _unnamed(book)
    except (ValueError, TypeError, LookupError, AttributeError):
        return
    note_change(book, "", STATEMENT, "registry", None, said)
    book.db.conn.execute("INSERT INTO settings VALUES (?, (SELECT max(no) FROM changes))", (REGISTRY_STATED,))


def _unnamed(book: Book) -> dict[str, object]:
    """Return by what they are the rows and columns that no change has named, and all columns that there are."""
    told, stated, columns = _told(book), {}, {}
    for what, rows in _registry(book).items():
        heard = _find_without_secret(book) if what == "device" else set()
        unnamed = {
            key: {name: value for name, value in row.items() if name not in told.get(what, {}).get(key, {}) and value}
            for key, row in rows.items() if key not in heard
        }
        stated[what] = {key: row for key, row in unnamed.items() if row or key not in told.get(what, {})}
        columns[what] = sorted({name for row in rows.values() for name in row})
    return {**{what: rows for what, rows in stated.items() if rows}, "columns": columns}


def proved_since(book: Book) -> str:
    """Return the UTC time from which each column of the registry is held; empty where it always was."""
    row = book.one("SELECT at FROM changes WHERE what = ? ORDER BY no DESC LIMIT 1", (STATEMENT,))
    return str(row["at"]) if row else ""


def _name(what: str, key: str) -> str:
    return f"{what} {key}".strip()


def _registry(book: Book) -> dict[str, Rows]:
    """Return the rows of the registry by what the changes call them, and by their keys."""
    # A book that was taken in has no passwords: where there is none, nobody gets in by one.
    marks = {row["code"]: {"password_mark": people.password_mark(row["password"])} for row in
             book.query("SELECT code, password FROM people WHERE password IS NOT NULL")}
    site = {row["name"]: json.loads(row["value"]) for row in book.query("SELECT name, value FROM site")}
    limits = book.query("SELECT scope || '/' || key || '/' || kind || '/' || field AS at, usual, possible FROM limits")
    phones = book.query("SELECT id, name, revoked_at FROM devices")
    held: dict[str, dict[str, dict[str, object]]] = {
        "person": {one["code"]: {**one, **marks.get(one["code"], {})} for one in people.people(book)},
        "vessel": {row["mark"]: {**row} for row in registry.vessels(book)},
        "instrument": {row["id"]: {**row} for row in registry.instruments(book)},
        "phone key": {one["thumbprint"]: {**one} for one in phone_keys.all_keys(book)},
        "passkey": {one["credential"]: passkeys.held(one) for one in passkeys.all_passkeys(book)},
        "party": {f"{one['name']}, {one['role']}": {**one} for one in parties.parties(book)},
        "limit": {row["at"]: {"usual": row["usual"], "possible": row["possible"]} for row in limits},
        "check limit": dict(_check_limits(site)),
        "device": {row["id"]: {"name": row["name"], "revoked_at": row["revoked_at"]} for row in phones},
        "site": {"": {name: value for name, value in site.items() if name not in _CHECK_LIMITS}} if site else {},
    }
    return {
        what: {key: {name: value for name, value in row.items() if name not in _NOT_HELD} for key, row in rows.items()}
        for what, rows in held.items()
    }


def _find_without_secret(book: Book) -> set[str]:
    return {row["id"] for row in book.query("SELECT id FROM devices WHERE secret_sha256 IS NULL")}


def _check_limits(site: Mapping[str, object]) -> Rows:
    """Return the limits of checks that the site's settings hold, by their place as the changes name it."""
    found: Rows = {}
    plain, narrow = (site.get(name) for name in _CHECK_LIMITS)
    for name, value in (plain if isinstance(plain, dict) else {}).items():
        found[f"site/{name}"] = {"value": value}
    for scope, keys in (narrow if isinstance(narrow, dict) else {}).items():
        for key, values in keys.items():
            found |= {f"{scope}/{key}/{name}": {"value": value} for name, value in values.items()}
    return found


def _told(book: Book) -> dict[str, Rows]:
    """Return each row as all changes together have made it, by what it is and by its key."""
    found: dict[str, Rows] = {}
    for what, key, before, after in book.db.conn.execute("SELECT what, key, before, after FROM changes ORDER BY no"):
        told = json.loads(after or "{}")
        if what == STATEMENT:
            for of, rows in told.items():
                for one, row in (rows.items() if of != "columns" else ()):
                    found.setdefault(of, {}).setdefault(one, {}).update(row)
        elif not told and before not in (None, "{}"):
            found.setdefault(what, {}).pop(key, None)  # taken out
        else:
            held = {name: value for name, value in told.items() if name not in _NOT_HELD}
            if what == "site":
                _take_check_limits(found.setdefault("check limit", {}), held)
            found.setdefault(what, {}).setdefault(key, {}).update(held)
    return found


def _take_check_limits(found: Rows, told: dict[str, object]) -> None:
    """Move limits of checks that were set with the whole site to the limits that changes name one by one."""
    for name, is_plain in zip(_CHECK_LIMITS, (True, False), strict=True):
        if name in told:
            for old in [where for where in found if where.startswith("site/") == is_plain]:
                del found[old]
            found |= _check_limits({name: told.pop(name)})


def _stated_columns(book: Book) -> dict[str, list[str]]:
    """Return the columns that there were when the registry was stated, by what they are of."""
    row = book.one("SELECT after FROM changes WHERE what = ? ORDER BY no DESC LIMIT 1", (STATEMENT,))
    columns = json.loads(row["after"] or "{}").get("columns", {}) if row else {}
    return columns if isinstance(columns, dict) else {}


def _is_same(kept: object, told: object) -> bool:
    if isinstance(kept, bool | int | float) and isinstance(told, bool | int | float):
        return float(kept) == float(told)
    return _plain(kept) == _plain(told)


def _plain(value: object) -> object:
    return "" if value is None else value
