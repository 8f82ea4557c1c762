"""The page of limits: found, set, taken back, refused in words, kept from the floor."""

import re
from html import unescape

import pytest

import webapp.kinds
from tests.desk.conftest import F1, token
from webapp.book.house import registry
from webapp.book.house.check_limits import check_limits
from webapp.book.limits import ALL

LIMITS = "/desk/limits"
PAGE = "/desk/limits/checks"


def _post(client, **given):
    data = {"scope": "vessel", "key": F1, "name": "gravity_rise", "value": "0.01", "csrf_token": token(client, LIMITS)}
    return client.post(PAGE, data=data | given)


def test_a_limit_for_one_vessel_settles_its_question(house, rising):
    assert [q["code"] for q in rising["queries"]] == ["ferment_gravity_rose"]
    client = house.client("IM")
    assert _post(client).status_code == 302
    assert "1.054 is above" not in client.get("/desk/queries").text
    assert [(row["scope"], row["key"], row["value"]) for row in check_limits(house.book)] == [("vessel", F1, 0.01)]
    page = client.get(LIMITS).text
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
    for path in (LIMITS, PAGE):
        assert house.client("NS").get(path).status_code == 403
    data = {"scope": "site", "key": "", "name": "gravity_rise", "value": "0.01"}
    assert house.client("NS").post(PAGE, data=data).status_code in (400, 403)
    assert check_limits(house.book) == []


def test_a_limit_is_not_set_without_the_token_of_its_form(house):
    client = house.client("IM")
    assert client.post(PAGE, data={"scope": "site", "name": "gravity_rise", "value": "1"}).status_code in (400, 422)
    assert check_limits(house.book) == []


def test_the_old_address_leads_to_the_section_of_the_one_page(house):
    answer = house.client("IM").get(PAGE)
    assert answer.status_code == 302 and answer.location == f"{LIMITS}#checks"
    assert 'id="checks"' in house.client("IM").get(LIMITS).text


def _rows(page, table):
    """Return the rows of a table of the page, cell by cell."""
    body = page.split(f'aria-label="{table}"')[1].split("</table>")[0] if f'aria-label="{table}"' in page else ""
    cells = [re.findall(r"<td>(.*?)</td>", row) for row in body.split("<tr>")]
    return [[unescape(cell).strip() for cell in row] for row in cells if row]


def test_each_range_and_limit_stands_with_the_scope_it_comes_from(house):
    registry.set_limit(house.book, "site", "", "ferment_reading", "temp", (10, 26), None, by="IM")
    registry.set_limit(house.book, "vessel", F1, "ferment_reading", "temp", (12, 24), None, by="IM")
    registry.set_check_limit(house.book, "site", "", "gravity_rise", 0.002, "IM")
    registry.set_check_limit(house.book, "vessel", F1, "gravity_rise", 0.01, "IM")
    page = house.client("IM").get(LIMITS).text
    spec = webapp.kinds.get("ferment_reading").field("temp")
    possible = f"{spec.possible[0]:g} to {spec.possible[1]:g} °C"
    ranges = [row[1:] for row in _rows(page, "All ranges") if row[0] == "Ferment reading: " + spec.label]
    assert ranges == [["10 to 26 °C", possible, "site, possible: the kind's own"], ["12 to 24 °C", "", f"vessel {F1}"]]
    words = ALL["gravity_rise"].words
    held = [row[1:] for row in _rows(page, "All limits") if row[0] == words]
    assert held == [["0.002 SG", "site", "0.001 SG"], ["0.01 SG", f"vessel {F1}", "0.001 SG"]]


def test_the_search_narrows_ranges_and_limits_alike(house):
    client = house.client("IM")
    whole, narrowed = client.get(LIMITS).text, client.get(LIMITS, query_string={"q": "Gravity"}).text
    for table in ("All ranges", "All limits"):
        found = _rows(narrowed, table)
        assert 0 < len(found) < len(_rows(whole, table))
    assert all("gravity" in row[0].casefold() for row in _rows(narrowed, "All ranges"))
    registry.set_limit(house.book, "vessel", F1, "ferment_reading", "temp", (12, 24), None, by="IM")
    registry.set_check_limit(house.book, "vessel", F1, "gravity_rise", 0.01, "IM")
    of_vessel = client.get(LIMITS, query_string={"q": F1.lower()}).text
    assert [len(_rows(of_vessel, table)) for table in ("Ranges", "All ranges", "Limits set so far", "All limits")] == [
        1, 1, 1, 1,
    ]
    assert "No limit here holds these words." in client.get(LIMITS, query_string={"q": "xyzzy"}).text


def test_the_page_shows_every_number_of_every_kind_and_every_limit(house):
    page = house.client("IM").get(LIMITS).text
    numbers = [spec for kind in webapp.kinds.ALL for spec in kind.fields if spec.sort == "number"]
    assert (len(_rows(page, "All ranges")), len(_rows(page, "All limits"))) == (len(numbers), len(ALL))
    assert len(re.findall(r' id="([^"]+)"', page)) == len(set(re.findall(r' id="([^"]+)"', page)))


def test_the_page_asks_the_book_at_most_fifteen_times(house):
    for number in range(12):
        registry.set_check_limit(house.book, "product", f"plum {number}", "gravity_rise", 0.01, "IM")
        registry.set_limit(house.book, "material", f"plum {number}", "ferment_reading", "temp", (9, 30), None, by="IM")
    client, asked = house.client("IM"), []
    client.get(LIMITS)
    house.book.db.conn.set_trace_callback(asked.append)
    page = client.get(LIMITS).text
    house.book.db.conn.set_trace_callback(None)
    assert len(_rows(page, "Limits set so far")) == 12
    assert 0 < len(asked) <= 15, asked
