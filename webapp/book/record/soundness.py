"""The test at the book's door: whether a body is an entry at all.

Others are refused with reasons and kept aside. Figures are not judged here.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import datetime
from typing import Any, cast

from marshmallow import ValidationError

import webapp.kinds
from webapp.book.record.log import canonical
from webapp.book.record.upcast import stored_mark, upcast
from webapp.kinds.as_schema import DIGEST, ENCLOSED_MOST, SEQ_MOST, SIGNATURE_MOST, entry_schema
from webapp.kinds.entry import Entry
from webapp.kinds.faults import fault_of
from webapp.kinds.message import Message, message
from webapp.kinds.problem import Problem
from webapp.kinds.read import Read, label, read_plainly

ENTRY_BYTES_MOST = 64_000
_SCHEMA = entry_schema()
_LONG = ("remark", "reason")
_TIMES = ("read_at", "typed_at")
_VALUE_KEYS = {"raw", "unit", "instrument"}
_STAMP = re.compile(r"(?:19[789]|20\d)\d-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d{1,6})?)?(?:Z|[+-]\d\d:\d\d)\Z", re.ASCII)
_UUID = re.compile(r"[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\Z")


def check_entry(entry: object) -> tuple[list[Problem], str]:
    """Return (reasons against entering it, its canonical text); no reasons where it can be entered."""
    if not isinstance(entry, dict):
        return [_problem("no_entry", "", message("no_entry"))], ""
    try:
        text = canonical(entry)
        text.encode()
    except (ValueError, RecursionError):
        return [_problem("unkeepable", "", message("unkeepable"))], ""
    if len(text) > ENTRY_BYTES_MOST:
        return [_problem("too_long", "", message("too_long-entry"))], text
    try:
        if not is_plainly_sound(entry):
            _SCHEMA.load(entry)
    except ValidationError as error:
        return [_malformed(field, fault) for field, fault in _flat(error.messages, "")], text
    return _check_kind(cast(Entry, entry)), text  # the schema has passed it


def is_plainly_sound(entry: dict[str, object]) -> bool:
    """Return whether the schema would certainly accept it.

    This test costs a tenth of the schema's, which is asked for its words.
    """
    try:
        return _has_plain_shape(entry) and _has_plain_values(entry["values"])
    except (KeyError, AttributeError, TypeError):
        return False


def _has_plain_shape(entry: dict[str, Any]) -> bool:
    texts = [entry["kind"], entry["person"], entry["device"], entry.get("role", ""), entry.get("seen_by", "")]
    for name in ("as_read", "looked_again"):
        names = entry.get(name, [])
        texts += names if type(names) is list and len(names) <= 60 else [None]
    ids = [entry["id"], entry["id"] if entry.get("amends") is None else entry["amends"]]
    return (
        all(_is_short(text, 40) for text in texts)
        and _is_short(entry.get("mark", ""), 16)
        and _is_short(entry.get("signature", ""), SIGNATURE_MOST)
        and entry.get("mark_by", "") in ("", "scanned", "typed", "picked")
        and entry.get("shown", "") in ("", "pin", "now")
        and ("enclosed" not in entry or _are_digests(entry["enclosed"]))
        and type(entry["kind_version"]) is int
        and 1 <= entry["kind_version"] <= 1000
        and type(entry["seq"]) is int
        and 1 <= entry["seq"] <= SEQ_MOST
        and all(type(each) is str and _UUID.match(each) for each in ids)
        and all(type(text := entry.get(name, "")) is str and len(text) <= 2000 and text.isprintable() for name in _LONG)
        and all(type(entry[name]) is str and _STAMP.match(entry[name]) and _is_day(entry[name]) for name in _TIMES)
    )


def _has_plain_values(values: object) -> bool:
    return type(values) is dict and len(values) <= 60 and all(
        _is_short(name, 40)
        and value.keys() <= _VALUE_KEYS
        and _is_short(value["raw"], 100)
        and _is_short(value.get("unit", ""), 24)
        and _is_short(value.get("instrument", ""), 40)
        for name, value in values.items()
    )


def _are_digests(names: object) -> bool:
    return type(names) is list and len(names) <= ENCLOSED_MOST and all(
        type(name) is str and DIGEST.match(name) for name in names
    )


def _is_short(text: object, most: int) -> bool:
    return type(text) is str and len(text) <= most and text.isascii() and text.isprintable()


def _is_day(stamp: str) -> bool:
    try:
        return datetime.fromisoformat(stamp) is not None
    except ValueError:
        return False


def _check_kind(entry: Entry) -> list[Problem]:
    kind = webapp.kinds.get(entry["kind"])
    if kind is None:
        return [_problem("no_such_kind", "kind", message("no_such_kind", kind=entry["kind"][:40]))]
    if entry["kind_version"] > kind.version:
        return [_problem("newer_kind", "kind_version", message("newer_kind"))]
    problems = []
    mark = stored_mark(entry.get("mark") or "")
    if mark is None:
        problems.append(_problem("bad_mark", "mark", message("bad_mark", mark=entry["mark"])))
    elif not mark and kind.needs_mark:
        problems.append(_problem("missing", "mark", message("missing-mark")))
    if entry.get("amends") == entry["id"]:
        problems.append(_problem("amends_itself", "amends", message("amends_itself")))
    read = read_plainly(kind, upcast(entry))
    problems += read.problems
    return problems + list(_check_marks(read))


def _check_marks(read: Read) -> Iterator[Problem]:
    for spec in read.kind.fields:
        text = read.text(spec.name) if spec.sort == "mark" else None
        if text and not stored_mark(text):
            said = message("bad_mark-field", label=label(read.kind, spec), mark=text[:20])
            yield _problem("bad_mark", spec.name, said)


def _flat(messages: object, path: str) -> Iterator[tuple[str, str]]:
    """Yield (path of the field, its fault as the schema names it) from marshmallow's nested messages, at most a few."""
    if isinstance(messages, dict):
        for key, inner in list(messages.items())[:10]:
            # "value" and "key" are marshmallow's own steps into a mapping.
            step = path if key in ("value", "key", "_schema") else f"{path}.{key}".strip(".")
            yield from _flat(inner, step)
    else:
        for fault in messages if isinstance(messages, list) else [messages]:
            yield path, str(fault)


def _malformed(path: str, fault: str) -> Problem:
    words = fault_of(fault)
    said = message("malformed", path=path, words=words) if path else message("malformed-whole", words=words)
    return _problem("malformed", path, said)


def _problem(code: str, field: str, said: Message) -> Problem:
    return Problem(code, "refuse", field, said)
