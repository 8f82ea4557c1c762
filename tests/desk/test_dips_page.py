"""The page on which the office says how a vessel is dipped."""

from __future__ import annotations

import json
from typing import Any

import pytest

from tests.desk.conftest import C1, House, token
from webapp.book.house import registry
from webapp.trade.marks import make_mark

R2 = make_mark("R2")
TABLE = {"how": "table", "of": "dip", "length": "cm", "volume": "L", "shell": "steel", "shell_c": "20",
         "shell_unit": "degC",
         "tilt_mm": "", "table": "0;0\n50;500\n100;1000\n150;2000\n", "lies": "lies"}


def post(house: House, mark: str, **boxes: str) -> Any:
    """Return the page after the form was sent."""
    client, path = house.client("OL"), f"/desk/vessels/{mark}/dips"
    return client.post(path, data={**TABLE, **boxes, "csrf_token": token(client, path)}, follow_redirects=True)


def dips_of(house: House, mark: str) -> str:
    found = registry.vessel(house.book, mark)
    assert found is not None
    return found["dips"]


def test_a_table_is_typed_shown_again_and_taken_out(house: House) -> None:
    page = post(house, R2)
    assert "by a table of 4 lines: 0 to 150 cm, 0 to 2000 L." in page.text and "dipped by a table" in page.text
    assert '"points":[[0.0,0.0],[50.0,500.0]' in dips_of(house, R2)
    again = house.client("OL").get(f"/desk/vessels/{R2}/dips").text
    assert "50;500" in again and "100;1000" in again
    assert "litres are typed" in post(house, R2, how="none").text
    assert dips_of(house, R2) == ""


def test_a_table_that_holds_at_60_degrees_fahrenheit(house: House) -> None:
    """60 °F are 15 5/9 °C."""
    post(house, R2, shell_c="60", shell_unit="degF")
    assert json.loads(dips_of(house, R2))["shell_c"] == pytest.approx(15 + 5 / 9, abs=1e-6)


def test_a_slip_is_said_and_what_was_typed_stays(house: House) -> None:
    page = post(house, R2, table="0;0\n50;500\n50;501\n")
    assert page.status_code == 422
    assert "At 50 cm the table goes back or stands twice." in page.text and "50;501" in page.text
    assert dips_of(house, R2) == ""


def test_a_cask_is_estimated_by_its_dimensions(house: House) -> None:
    page = post(house, C1, how="cask", bung="69", head="56", long="89").text
    assert "estimated from its dip, by its dimensions: 69 × 56 × 89 cm, lying." in page
    assert 'value="69"' in house.client("OL").get(f"/desk/vessels/{C1}/dips").text
