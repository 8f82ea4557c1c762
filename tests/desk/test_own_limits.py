"""A check answered alike five times on one vessel offers a limit of its own. Common practice, no source."""

from html import unescape

import pytest

from webapp.book.fold import queries
from webapp.book.fold.own_limits import ALIKE_LEAST, own_limits
from webapp.book.house import registry
from webapp.trade.marks import make_mark

from .conftest import token

T1, T2 = make_mark("T1"), make_mark("T2")


@pytest.fixture
def tanks(house):
    for mark in (T1, T2):
        registry.put_vessel(house.book, {"mark": mark, "sort": "tank", "capacity_l": 1000}, by="OL")
        dip(house, mark, 0, "500.0")
    return house


def dip(house, mark, n, litres):
    return house.log("gauge", mark, n * 60 * 24, volume=(litres, "L"), temp=("20", "degC"), strength=("60", "pct_vol"))


def stands(house, asked):
    client = house.client("IM")
    for query in asked["queries"]:
        data = {"query": query["id"].partition(":")[2], "verdict": "stands", "reason": "its table is so",
                "csrf_token": token(client, "/desk/")}
        assert client.post(f"/desk/entries/{asked['id']}/answer", data=data).status_code == 302


def test_after_five_answers_alike_its_own_limit_is_offered_and_fills_the_boxes(tanks):
    """500 and 491 L by turns: 1.8 % off. 1.9 % would have let them all stand; the check's own is 1 %."""
    for n in range(1, ALIKE_LEAST):
        stands(tanks, dip(tanks, T1, n, ("500.0", "491.0")[n % 2]))
    open_now = dip(tanks, T1, ALIKE_LEAST, "491.0")
    assert [one["code"] for one in open_now["queries"]] == ["dip_sum"]
    assert own_limits(tanks.book, queries.open_queries(tanks.book)) == {}  # four answers are no custom
    stands(tanks, open_now)
    dip(tanks, T1, ALIKE_LEAST + 1, "500.0")
    dip(tanks, T2, 3, "491.0")
    found = own_limits(tanks.book, queries.open_queries(tanks.book))
    assert [(one.mark, one.name, one.value, one.times) for one in found.values()] == [(T1, "dip_pct", 1.9, 5)]
    page = unescape(tanks.client("IM").get("/desk/queries").text)
    assert "5 times it stood here." in page and page.count("only above 1.9 %") == 1
    boxes = tanks.client("IM").get(f"/desk/limits?scope=vessel&key={T1}&name=dip_pct&value=1.9").text
    assert 'value="1.9"' in boxes
    assert "times it stood" not in tanks.client("NS").get("/desk/queries").text  # a floor hand sets no limits


def test_a_limit_that_would_end_the_check_is_not_offered(tanks):
    """500 and 460 L by turns are 8 % apart: eight times the limit is no limit."""
    for n in range(1, ALIKE_LEAST + 1):
        stands(tanks, dip(tanks, T1, n, ("500.0", "460.0")[n % 2]))
    dip(tanks, T1, ALIKE_LEAST + 1, "500.0")
    assert queries.open_queries(tanks.book)
    assert own_limits(tanks.book, queries.open_queries(tanks.book)) == {}
