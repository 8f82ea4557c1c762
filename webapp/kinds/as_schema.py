"""Kind -> marshmallow schema: the shape of what travels. Values stay text as read; their meaning is read.py's."""

from __future__ import annotations

import re
from datetime import datetime
from typing import Any, TypeAlias
from uuid import UUID

from marshmallow import INCLUDE, Schema, ValidationError, fields, missing, validate

from webapp.kinds.faults import Fault
from webapp.kinds.spec import Field, Kind

BATCH_MOST = 200
TEXT_MOST = 2000
SIGNATURE_MOST = 200
SEQ_MOST = 2**53 - 1
ENCLOSED_MOST = 12  # pictures, papers and voice notes of one entry
DIGEST = re.compile(r"[0-9a-f]{64}\Z")
_STAMP = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,6})?)?(Z|[+-]\d\d:\d\d)\Z", re.ASCII)
_Codes: TypeAlias = dict[str, str | list[Any] | dict[Any, Any]]
# In place of the library's words, the codes that faults.py makes messages of.
_ANY: _Codes = {"required": Fault.MISSING, "null": Fault.NULL}
_NO_TEXT: _Codes = {**_ANY, "invalid": Fault.NO_TEXT}
_NO_NUMBER: _Codes = {**_ANY, "invalid": Fault.NO_NUMBER}
_NO_MEMBERS: _Codes = {**_ANY, "invalid": Fault.NO_MEMBERS}
_NO_LIST: _Codes = {**_ANY, "invalid": Fault.NO_LIST}
_NO_OBJECT: dict[str, str] = {"type": Fault.NO_OBJECT, "unknown": Fault.UNKNOWN}


def _check_uuid(value: str) -> None:
    try:
        good = str(UUID(value)) == value
    except ValueError:
        good = False
    if not good:
        raise ValidationError(Fault.NO_ID)


def _check_digest(value: str) -> None:
    if not DIGEST.match(value):
        raise ValidationError(Fault.NO_DIGEST)


def _check_instant(value: str) -> None:
    try:
        good = bool(_STAMP.match(value)) and 1970 <= datetime.fromisoformat(value).year <= 9000
    except ValueError:
        good = False
    if not good:
        raise ValidationError(Fault.NO_TIME)


def _check_printable(value: str) -> None:
    # Lone surrogates cannot be kept as UTF-8, and a NUL would cut the text short in SQLite.
    if "\x00" in value or any("\ud800" <= char <= "\udfff" for char in value):
        raise ValidationError(Fault.UNKEEPABLE)


def _text(most: int = TEXT_MOST, *, required: bool = False, load_default: object = missing) -> fields.String:
    return fields.String(
        validate=[_at_most(most), _check_printable], required=required, load_default=load_default,
        error_messages=_NO_TEXT,
    )


def _at_most(most: int) -> validate.Length:
    return validate.Length(max=most, error=Fault.LONGER)


def _instant(*, required: bool = False) -> fields.String:
    return fields.String(validate=_check_instant, required=required, error_messages=_NO_TEXT)


def _whole(least: int, most: int, *, required: bool = False) -> fields.Integer:
    return fields.Integer(
        strict=True, validate=validate.Range(least, most, error=Fault.BETWEEN), required=required,
        error_messages=_NO_NUMBER,
    )


def _names() -> fields.List[str]:
    return fields.List(_text(40), load_default=list, validate=_at_most(60), error_messages=_NO_LIST)


class ValueSchema(Schema):
    """One field as read: the text as typed, its unit, its instrument."""

    error_messages = _NO_OBJECT
    raw = _text(required=True)
    unit = _text(24, load_default="")
    instrument = _text(40, load_default="")


class EntrySchema(Schema):
    """One entry as handed in. Unknown members are kept, for phones newer than this book."""

    error_messages = _NO_OBJECT

    class Meta:
        unknown = INCLUDE

    id = fields.String(required=True, validate=_check_uuid, error_messages=_NO_TEXT)
    kind = _text(40, required=True)
    kind_version = _whole(1, 1000, required=True)
    mark = _text(16, load_default="")
    mark_by = fields.String(
        load_default="", validate=validate.OneOf(["", "scanned", "typed", "picked"], error=Fault.ONE_OF),
        error_messages=_NO_TEXT,
    )
    read_at = _instant(required=True)
    typed_at = _instant(required=True)
    person = _text(40, required=True)
    role = _text(40, load_default="")
    seen_by = _text(40, load_default="")
    device = _text(40, required=True)
    seq = _whole(1, SEQ_MOST, required=True)
    values = fields.Dict(
        keys=_text(40), values=fields.Nested(ValueSchema, error_messages=_ANY), required=True, validate=_at_most(60),
        error_messages=_NO_MEMBERS,
    )
    as_read = _names()
    looked_again = _names()
    remark = _text(load_default="")
    amends = fields.String(load_default=None, allow_none=True, validate=_check_uuid, error_messages=_NO_TEXT)
    reason = _text(load_default="")
    enclosed = fields.List(
        fields.String(validate=_check_digest, error_messages=_NO_TEXT), validate=_at_most(ENCLOSED_MOST),
        error_messages=_NO_LIST,
        metadata={"description": "SHA-256 of each picture, paper or voice note that belongs to it."},
    )
    shown = fields.String(
        validate=validate.OneOf(["", "pin", "now"], error=Fault.ONE_OF), error_messages=_NO_TEXT,
        metadata={"description": "Whether the person had typed their PIN on this phone, or typed it for this entry."},
    )
    signature = _text(SIGNATURE_MOST, load_default="")


class HandInSchema(Schema):
    """A batch. Entries are checked one by one later, so that a bad one never blocks its neighbours."""

    error_messages = _NO_OBJECT

    class Meta:
        unknown = INCLUDE

    now = _instant(required=True)
    device = _text(40, required=True)
    head = fields.Tuple(
        (_whole(0, SEQ_MOST), _text(64)), error_messages=_ANY,
        metadata={"description": "The `head` of the answer that this phone had last."},
    )
    # Whatever it is: it must never hold entries back.
    heads = fields.Raw(
        metadata={"description": "The `heads` of the answer that this phone had last, as they came."}
    )
    entries = fields.List(fields.Raw(), required=True, validate=_at_most(BATCH_MOST), error_messages=_NO_LIST)


class MessageSchema(Schema):
    """A sentence before it is made: the id of a message in the catalogue, and its parameters by name."""

    id = fields.String(required=True)
    params = fields.Dict(required=True)


class QuerySchema(Schema):
    """A question of the book to an entry."""

    id = fields.String()
    code = fields.String()
    weight = fields.String(validate=validate.OneOf(["stop", "ask", "note"]))
    field = fields.String()
    message = fields.Nested(MessageSchema)
    words = fields.String(metadata={"description": "The sentence that the message makes, in English."})
    suggestions = fields.List(fields.Dict())


class ResultSchema(Schema):
    """The book's answer for one entry of a batch."""

    id = fields.String(required=True, allow_none=True)
    settled = fields.String(
        required=True, validate=validate.OneOf(["entered", "known", "queried", "clash", "refused"])
    )
    book_no = fields.Integer()
    received_at = fields.String()
    digest = fields.String()
    queries = fields.List(fields.Nested(QuerySchema))
    problems = fields.List(fields.Dict())


class ReceiptSchema(Schema):
    """The answer to a hand-in."""

    marker = fields.String(required=True)
    ok = fields.Boolean(required=True)
    book_id = fields.String(required=True)
    server_now = fields.String(required=True)
    skew_s = fields.Float(required=True)
    results = fields.List(fields.Nested(ResultSchema), required=True)
    devices = fields.Dict(required=True)
    cursor = fields.Integer(required=True)
    head = fields.Tuple(
        (fields.Integer(), fields.String()), required=True,
        metadata={"description": "The last book number and its digest."},
    )
    heads = fields.List(fields.String(), metadata={
        "description": "What the book holds, signed, a line of JSON for each of its lists: to be kept and sent back."})
    key = fields.String(metadata={"description": "The thumbprint of the key that this phone brought last, or empty."})
    has_head = fields.Boolean(metadata={"description": "Whether the book still has the head that was sent with it."})


class ErrorSchema(Schema):
    """The shape of every error."""

    marker = fields.String(required=True)
    ok = fields.Boolean(required=True)
    error = fields.String(required=True)
    problems = fields.List(fields.Dict(), required=True)
    status = fields.Integer(required=True)


def entry_schema() -> Schema:
    """Return the schema of one entry, whatever its kind."""
    return EntrySchema()


def hand_in_schema() -> Schema:
    """Return the schema of a batch."""
    return HandInSchema()


def values_schema(kind: Kind) -> type[Schema]:
    """Return the schema class of the `values` of one kind, for the API description and for tests."""
    made: dict[str, fields.Field[Any]] = {}
    for spec in kind.fields:
        inner: dict[str, fields.Field[Any]] = {"raw": _raw_field(spec)}
        if spec.units:
            inner["unit"] = fields.String(required=True, validate=validate.OneOf(spec.units))
        if spec.instrument:
            inner["instrument"] = _text(40)
        schema = Schema.from_dict(inner, name=f"{_camel(kind.name)}{_camel(spec.name)}")
        made[spec.name] = fields.Nested(schema, required=spec.required, metadata={"description": _describe(spec)})
    return Schema.from_dict(made, name=f"{_camel(kind.name)}Values")


def _raw_field(spec: Field) -> fields.String:
    if spec.sort == "choice":
        return fields.String(required=True, validate=validate.OneOf([value for value, _ in spec.choices]))
    if spec.sort == "yes_no":
        return fields.String(required=True, validate=validate.OneOf(["yes", "no"]))
    return _text(required=True)


def _describe(spec: Field) -> str:
    return f"{spec.label}. {spec.help}".strip()


def _camel(name: str) -> str:
    return "".join(part.capitalize() for part in name.split("_"))
