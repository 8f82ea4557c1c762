"""The book's sums against the phone's answers as they are written down."""

import pytest

from tests.trade.book_answers import answer_cellar, answer_still, answer_sum
from tests.trade.phone_record import RECORDS, list_differences, read_record

ANSWERS = {"phone_sums.json": answer_sum, "phone_still.json": answer_still, "phone_cellar.json": answer_cellar}


@pytest.mark.parametrize("name", RECORDS)
def test_the_book_answers_as_the_phone_did(name: str) -> None:
    record = read_record(name)
    assert len(record) > 150
    for case, phone in record:
        differences = list(list_differences(ANSWERS[name](case), phone, RECORDS[name]))
        assert not differences, f"{case[0]}{tuple(case[1:])}: {differences[:3]}"
