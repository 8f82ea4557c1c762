"""The record of the phone's answers against what the phone answers today, in a real browser."""

import json
from typing import Any

import pytest

from tests.trade import test_browser_agreement as sums
from tests.trade import test_cellar_agreement as cellar
from tests.trade import test_still_agreement as still
from tests.trade.phone_questions import cellar_asked, still_asked, sums_asked
from tests.trade.phone_record import FOLDER, LISTED, RECORDS, Case, list_differences, read_record, write_record
from tests.trade.refusal_words import said
from tests.trade.test_browser_agreement import page  # noqa: F401

pytestmark = pytest.mark.browser
ASKED = {"phone_sums.json": sums_asked, "phone_still.json": still_asked, "phone_cellar.json": cellar_asked}


@pytest.mark.parametrize("name", RECORDS)
def test_the_phone_answers_as_written_down(page: Any, name: str, request: pytest.FixtureRequest) -> None:  # noqa: F811
    asked = json.loads(json.dumps([sums.for_page(case) for case in ASKED[name]()]))
    answers = [said(answer) for answer in _ask(page, name, asked)]
    if request.config.getoption("--record"):
        write_record(name, asked, answers)
    record = read_record(name)
    assert [sums.for_page(case) for case, _ in record] == asked, "Other questions than written down: run with --record."
    for (case, written), answer in zip(record, answers, strict=True):
        differences = list(list_differences(answer, written, RECORDS[name]))
        assert not differences, f"{case[0]}{tuple(case[1:])}: {differences[:3]}"


def _ask(page: Any, name: str, asked: list[Case]) -> list[Any]:  # noqa: F811
    if name == "phone_sums.json":
        return json.loads(page.evaluate(sums.IN_PAGE, [json.dumps(asked), sums.LATER_MODULES]))
    if name == "phone_still.json":
        return json.loads(page.evaluate(still.IN_PAGE, json.dumps(asked)))
    return page.evaluate(cellar.IN_PAGE, json.dumps(asked))


def test_the_phones_list_of_sums_is_as_written_down(page: Any, request: pytest.FixtureRequest) -> None:  # noqa: F811
    listed = page.evaluate(
        """async () => {
          const { SUMS, INPUT_UNITS } = await import("/static/trade/index.js");
          return { sums: Object.values(SUMS).map((s) => [s.name, s.inputs, s.unit, s.decimals]), units: INPUT_UNITS };
        }"""
    )
    if request.config.getoption("--record"):
        (FOLDER / LISTED).write_text(json.dumps(listed, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
    assert json.loads((FOLDER / LISTED).read_text(encoding="utf-8")) == listed
