"""Kind -> plain data: what the phone reads, the heads and rows of CSV files."""

from __future__ import annotations

import dataclasses
import hashlib
import json
import re
from collections.abc import Mapping
from typing import Any

import webapp.kinds
from webapp.kinds.read import Read
from webapp.kinds.spec import Field, Figure, Kind, Rule

Data = dict[str, Any]  # of JSON

_CODE = ("keys", "effect")  # not data
_ASIDE = ("feeds", "account", "about")  # no phone asks for them, and every byte is part of the first install
PHONE_CHECKS = ("ferment_heat", "held_strength", "vessel_not_empty")  # of all checks those that a phone looks for
_FIELD_ASIDE = ("source", "aside", "help")  # the form's own page has the help
_SAID_ONLY = ("typed",)  # of a figure: there only where it is said
_PARTS: dict[str, type[Field | Rule | Figure]] = {"fields": Field, "rules": Rule, "figures": Figure}
# What a spreadsheet may take for a formula: at the start of a cell, of a line in it, and after a semicolon, at which
# office programs set to a decimal comma cut the line; in the wide letters of East Asian keyboards too.
_FORMULA = re.compile(r"(^[\t\r\n\v\f \xa0\u3000\"']*|[;\t\r\n][ \xa0\"']*)(?=[=+\-@\uff1d\uff0b\uff0d\uff20])")
ENTRY_HEADS = (
    "book_no", "id", "kind", "mark", "mark_by", "read_at", "typed_at", "received_at", "skew_s", "person", "role",
    "seen_by", "device", "seq", "remark", "amends", "reason", "settled", "queries",
)


def kind_data(kind: Kind) -> Data:
    """Return the kind as JSON-able data for a phone, without its functions."""
    data = {f.name: getattr(kind, f.name) for f in dataclasses.fields(kind) if f.name not in (*_CODE, *_ASIDE)}
    data["fields"] = [
        {name: value for name, value in dataclasses.asdict(spec).items() if name not in _FIELD_ASIDE}
        for spec in kind.fields
    ]
    data["rules"] = [dataclasses.asdict(rule) for rule in kind.rules]
    data["figures"] = [
        {name: value for name, value in dataclasses.asdict(figure).items() if name not in _SAID_ONLY or value}
        for figure in kind.figures
    ]
    data["checks"] = [name for name in kind.checks if name in PHONE_CHECKS]
    data["short"] = kind.short or kind.title
    if not kind.taxed:
        del data["taxed"]  # every byte is part of the first install
    plain: Data = json.loads(json.dumps(data, default=list))  # of every sort that JSON has
    return plain


def kinds_data() -> Data:
    """Return every kind for the phone, with a version that changes whenever any of them does."""
    kinds = [kind_data(kind) for kind in webapp.kinds.ALL]
    version = hashlib.sha256(json.dumps(kinds, sort_keys=True).encode()).hexdigest()[:16]
    plain = {part: _plain(spec) for part, spec in _PARTS.items()}
    return {"version": version, "plain": plain, "kinds": [_short(kind, plain) for kind in kinds]}


def without_words(data: Data) -> dict[str, object]:
    """Return the data of `kinds_data` without the words of the kinds: a phone gets those in its own language.

    Of a choice its value is left, and of a danger from where on it is one.
    """
    return data | {"kinds": [_wordless(kind) for kind in data["kinds"]]}


def _wordless(kind: Data) -> Data:
    fields = [
        {k: [[one[0]] for one in v] if k in ("choices", "danger") else v for k, v in spec.items() if k != "label"}
        for spec in kind["fields"]
    ]
    rules = [{k: v for k, v in rule.items() if k != "words"} for rule in kind["rules"]]
    figures = [{k: v for k, v in figure.items() if k != "label"} for figure in kind["figures"]]
    rest = {k: v for k, v in kind.items() if k not in ("title", "short", "summary")}
    return rest | {"fields": fields, "rules": rules, "figures": figures}


def _plain(spec: type[Field | Rule | Figure]) -> dict[str, object]:
    """Return what a part of a kind says where nobody says otherwise: sent once."""
    return {
        one.name: json.loads(json.dumps(one.default)) for one in dataclasses.fields(spec)
        if one.default is not dataclasses.MISSING and one.name not in (*_FIELD_ASIDE, *_SAID_ONLY)
    }


def _short(kind: Data, plain: Mapping[str, Mapping[str, object]]) -> Data:
    """Return a kind whose parts leave out what is plain: every byte is read at each start."""
    return kind | {
        part: [{k: v for k, v in one.items() if k not in said or said[k] != v} for one in kind[part]]
        for part, said in plain.items()
    }


def csv_heads(kind: Kind) -> list[str]:
    """Return the heads of the CSV of one kind: as read first, canonical with its unit in the head after it."""
    heads = list(ENTRY_HEADS)
    for spec in kind.fields:
        heads.append(spec.name if spec.sort != "number" else f"{spec.name}_as_read")
        if spec.units:
            heads += [f"{spec.name}_unit", f"{spec.name}_{spec.units[0]}"]
        if spec.instrument:
            heads.append(f"{spec.name}_instrument")
    return heads + [f"{figure.name}_{figure.unit}" for figure in kind.figures]


def csv_row(kind: Kind, read: Read, meta: Mapping[str, object]) -> list[str]:
    """Return one row under `csv_heads`: `meta` holds what the book knows of the entry (book_no, settled, ...)."""
    row = [safe_cell(meta.get(head, read.entry.get(head))) for head in ENTRY_HEADS]
    for spec in kind.fields:
        given = read.raw(spec.name)
        row.append(safe_cell(given.get("raw")))
        if spec.units:
            row += [safe_cell(given.get("unit")), safe_cell(read.values.get(spec.name))]
        if spec.instrument:
            row.append(safe_cell(given.get("instrument")))
    return row + [safe_cell(read.figures.get(figure.name)) for figure in kind.figures]


def safe_cell(value: object) -> str:
    """Return text that no spreadsheet takes for a formula; numbers stay numbers."""
    if value is None:
        return ""
    if isinstance(value, float):
        return repr(round(value, 6))
    text = str(value)
    is_number = text.lstrip("+-").replace(",", ".", 1).replace(".", "", 1).isdigit()
    if is_number:
        return text
    text = _FORMULA.sub(r"\1'", text)
    return f"'{text}" if text.startswith(("\t", "\r", "\n")) else text


def summary(read: Read) -> str:
    """Return the one line that a list shows for an entry."""
    from webapp.kinds.read import fill_sentence

    return fill_sentence(read.kind.summary, read) if read.kind.summary else read.kind.title
