"""The book's sums against the phone's answers as they are written down."""

import json

import pytest

from tests.trade.book_answers import answer_cellar, answer_still, answer_sum
from tests.trade.phone_record import FOLDER, LISTED, RECORDS, list_differences, read_record
from tests.trade.refusal_words import said
from webapp.trade import sums

ANSWERS = {"phone_sums.json": answer_sum, "phone_still.json": answer_still, "phone_cellar.json": answer_cellar}


@pytest.mark.parametrize("name", RECORDS)
def test_the_book_answers_as_the_phone_did(name: str) -> None:
    record = read_record(name)
    assert len(record) > 150
    for case, phone in record:
        differences = list(list_differences(said(ANSWERS[name](case)), phone, RECORDS[name]))
        assert not differences, f"{case[0]}{tuple(case[1:])}: {differences[:3]}"


def test_each_sum_has_the_inputs_the_unit_and_the_decimals_of_the_phones() -> None:
    listed = json.loads((FOLDER / LISTED).read_text(encoding="utf-8"))
    assert [[one.name, list(one.inputs), one.unit, one.decimals] for one in sums.SUMS.values()] == listed["sums"]
    assert listed["units"] == sums.INPUT_UNITS
