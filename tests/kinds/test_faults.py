"""What is wrong with the shape of an entry: a message of the catalogue, which says what the library says of itself.

The oracle is marshmallow: its own words for each fault, by its own classes.
"""

from __future__ import annotations

from typing import Any

import pytest
from marshmallow import Schema, ValidationError, fields, validate

from tests.book.conftest import F1, entry
from webapp.book.record.soundness import check_entry
from webapp.kinds.as_schema import SEQ_MOST
from webapp.kinds.faults import Fault, fault_of
from webapp.kinds.message import Message
from webapp.words import sentence

WHOLE = 2**64  # no figure that a book can count


def words_of(field: Any, value: Any) -> str:
    """Return what the library says when it loads a value into a field."""
    with pytest.raises(ValidationError) as refused:
        Schema.from_dict({"field": field})().load({"field": value} if value is not ... else {})
    messages = refused.value.messages_dict["field"]
    while isinstance(messages, dict):
        messages = next(iter(messages.values()))
    return str(messages[0])


VALUE = Schema.from_dict({"raw": fields.String(required=True)})
# The member, what it holds (... where it is left out), the library's field that says what is wrong, and the path.
FAULTS: list[tuple[str, Any, Any, str]] = [
    ("kind", ..., fields.String(required=True), "kind"),
    ("kind", None, fields.String(), "kind"),
    ("kind", 3, fields.String(), "kind"),
    ("kind", "k" * 41, fields.String(validate=validate.Length(max=40)), "kind"),
    ("seq", ..., fields.Integer(required=True), "seq"),
    ("seq", "many", fields.Integer(strict=True), "seq"),
    ("seq", 1.5, fields.Integer(strict=True), "seq"),
    ("seq", WHOLE, fields.Integer(validate=validate.Range(1, SEQ_MOST)), "seq"),
    ("kind_version", 0, fields.Integer(validate=validate.Range(1, 1000)), "kind_version"),
    ("mark_by", "guessed", fields.String(validate=validate.OneOf(["", "scanned", "typed", "picked"])), "mark_by"),
    ("values", [], fields.Dict(), "values"),
    ("values", ..., fields.Dict(required=True), "values"),
    ("values", {"temp": {"raw": 3}}, fields.Dict(values=fields.Nested(VALUE)), "values.temp.raw"),
    ("values", {"temp": {}}, fields.Dict(values=fields.Nested(VALUE)), "values.temp.raw"),
    ("values", {"temp": "14,6"}, fields.Dict(values=fields.Nested(VALUE)), "values.temp"),
    ("values", {"temp": None}, fields.Dict(values=fields.Nested(VALUE)), "values.temp"),
    ("values", {"temp": {"raw": "1", "more": 1}}, fields.Dict(values=fields.Nested(VALUE)), "values.temp.more"),
    ("values", {f"v{n}": {"raw": "1"} for n in range(61)}, fields.Dict(validate=validate.Length(max=60)), "values"),
    ("as_read", "temp", fields.List(fields.String()), "as_read"),
    ("as_read", [3], fields.List(fields.String()), "as_read.0"),
    ("as_read", ["a"] * 61, fields.List(fields.String(), validate=validate.Length(max=60)), "as_read"),
]


@pytest.mark.parametrize(("name", "value", "field", "path"), FAULTS, ids=[f"{n}" for n in range(len(FAULTS))])
def test_a_fault_of_the_shape_says_what_the_library_says(name: str, value: Any, field: Any, path: str) -> None:
    body = dict(entry("ferment_reading", F1)) | {name: value}
    if value is ...:
        del body[name]
    (problem,), _ = check_entry(body)
    assert (problem.code, problem.field, problem.message.id) == ("malformed", path, "malformed")
    words = dict(problem.message.params)["words"]
    assert isinstance(words, Message), "not in the library's words, which no other language has"
    assert sentence(problem.message) == f"{path}: {words_of(field, value)}"


@pytest.mark.parametrize(
    ("name", "value", "words"),
    [
        ("id", "x", "The id is no UUID in lower case."),
        ("read_at", "yesterday", "A time needs date, hour and offset, such as 2025-09-24T08:05:00+02:00."),
        ("remark", "a\x00b", "This text holds characters that cannot be kept."),
    ],
)
def test_our_own_tests_of_a_member_say_what_they_said(name: str, value: str, words: str) -> None:
    (problem,), _ = check_entry(dict(entry("ferment_reading", F1)) | {name: value})
    assert sentence(problem.message) == f"{name}: {words}"


def test_every_fault_has_its_message_and_the_librarys_own_words_stand_as_they_are() -> None:
    for fault in Fault:
        assert isinstance(fault_of(fault.format(max=40, min=1, choices="a, b")), Message), fault
    assert fault_of("Not a valid tuple.") == "Not a valid tuple."
