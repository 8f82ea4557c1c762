"""The page of the checks' limits: set, taken back, refused in words, kept from the floor."""

import pytest

from tests.desk.conftest import F1, token
from webapp.book.house.check_limits import check_limits

PAGE = "/desk/limits/checks"


def _post(client, **given):
    data = {"scope": "vessel", "key": F1, "name": "gravity_rise", "value": "0.01", "csrf_token": token(client, PAGE)}
    return client.post(PAGE, data=data | given)


def test_a_limit_for_one_vessel_settles_its_question(house, rising):
    assert [q["code"] for q in rising["queries"]] == ["ferment_gravity_rose"]
    client = house.client("IM")
    assert _post(client).status_code == 302
    assert "1.054 is above" not in client.get("/desk/").text
    assert [(row["scope"], row["key"], row["value"]) for row in check_limits(house.book)] == [("vessel", F1, 0.01)]
    page = client.get(PAGE).text
    assert "A gravity may seem to rise by" in page and "0.01 SG" in page and "0.001 SG" in page
    changed = house.client("OL").get("/desk/settings").text
    assert f"check limit vessel/{F1}/gravity_rise" in changed
    assert _post(client, value="").status_code == 302
    assert check_limits(house.book) == []


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({"key": "F1"}, "F1 is no mark"),
        ({"scope": "product", "key": ""}, "Say which"),
        ({"value": "a lot"}, "That is no plain number"),
    ],
)
def test_what_is_wrong_is_said(house, given, words):
    answer = _post(house.client("IM"), **given)
    assert answer.status_code == 422 and words in answer.text


def test_the_floor_may_not(house):
    assert house.client("NS").get(PAGE).status_code == 403
