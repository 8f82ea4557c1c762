"""Answering, amending, striking: each an entry of its own; originals stay legible."""

from datetime import datetime
from zoneinfo import ZoneInfo

from webapp.book.fold import queries
from webapp.book.house import registry
from webapp.book.record import log

from .conftest import F1, token


def test_a_rising_gravity_is_asked_about_and_the_likely_slip_offered(house, rising):
    page = house.client("IM").get("/desk/queries").text
    assert rising["settled"] == "queried"
    assert "it can only fall" in page
    assert "1.045" in page, "swapped digits are offered"


def test_it_stands_clears_the_query_and_is_an_entry(house, rising):
    client = house.client("IM")
    code = rising["queries"][0]["code"]
    data = {"query": code, "verdict": "stands", "reason": "sugar was added", "csrf_token": token(client, "/desk/")}
    assert client.post(f"/desk/entries/{rising['id']}/answer", data=data).status_code == 302
    assert not [q for q in queries.open_queries(house.book) if q["code"] == code]
    page = client.get(f"/desk/entries/{rising['id']}").text
    assert "sugar was added" in page and "answered" in page
    assert log.verify(house.book) == []


def test_an_answer_without_a_reason_is_not_taken(house, rising):
    client = house.client("IM")
    data = {"query": "", "verdict": "struck", "reason": "", "csrf_token": token(client, "/desk/")}
    page = client.post(f"/desk/entries/{rising['id']}/answer", data=data, follow_redirects=True).text
    assert "Say why" in page
    assert log.load_entry(house.book, rising["id"])["standing"] == "entered"


def test_striking_keeps_the_entry_legible(house, rising):
    client = house.client("IM")
    data = {"query": "", "verdict": "struck", "reason": "wrong tank", "csrf_token": token(client, "/desk/")}
    client.post(f"/desk/entries/{rising['id']}/answer", data=data)
    row = log.load_entry(house.book, rising["id"])
    assert row["standing"] == "struck" and row["entry"]["values"]["gravity"]["raw"] == "1.054"
    assert not queries.open_queries(house.book, mark=F1)
    assert "1.054" in client.get(f"/desk/entries/{rising['id']}").text


def test_amending_offers_the_tapped_figure_and_enters_a_new_entry(house, rising):
    client = house.client("IM")
    path = f"/desk/entries/{rising['id']}/amend"
    page = client.get(path + "?field=gravity&raw=1.045&unit=SG").text
    assert 'value="1.045"' in page and 'value="14.6"' in page
    data = {
        "temp": "14,6",
        "temp_unit": "degC",
        "gravity": "1.045",
        "gravity_unit": "SG",
        "read_at": "2025-09-25T06:00",
        "reason": "misread",
        "csrf_token": token(client, path),
    }
    answer = client.post(path, data=data)
    assert answer.status_code == 302, answer.text
    assert log.load_entry(house.book, rising["id"])["standing"] == "amended"
    assert not [q for q in queries.open_queries(house.book) if q["mark"] == F1]
    story = log.load_family(house.book, rising["id"])["members"]
    assert [row["entry"]["values"]["gravity"]["raw"] for row in story] == ["1.054", "1.045"]
    assert story[1]["entry"]["reason"] == "misread"


def test_what_cannot_be_read_comes_back_with_the_form_filled(house, rising):
    client = house.client("IM")
    path = f"/desk/entries/{rising['id']}/amend"
    data = {
        "temp": "warm",
        "temp_unit": "degC",
        "gravity": "1.045",
        "gravity_unit": "SG",
        "reason": "x",
        "csrf_token": token(client, path),
    }
    answer = client.post(path, data=data)
    assert answer.status_code == 422
    assert 'value="warm"' in answer.text and "no plain number" in answer.text


def test_a_floor_hand_sees_queries_but_cannot_answer(house, rising):
    client = house.client("NS")
    assert "it can only fall" in client.get("/desk/queries").text
    assert "It stands" not in client.get("/desk/queries").text
    data = {"verdict": "stands", "reason": "x", "csrf_token": token(client, "/desk/")}
    assert client.post(f"/desk/entries/{rising['id']}/answer", data=data).status_code == 403


def test_amending_speaks_of_the_minute_by_the_houses_clock(house, rising):
    """Whatever zone the phone was in: unchanged it stays to the second, changed it is the house's."""
    registry.set_site(house.book, {"time_zone": "Pacific/Auckland"}, "JK")
    client = house.client("IM")
    path = f"/desk/entries/{rising['id']}/amend"
    logged = log.load_entry(house.book, rising["id"])["entry"]["read_at"]
    shown = datetime.fromisoformat(logged).astimezone(ZoneInfo("Pacific/Auckland"))
    assert f'value="{shown:%Y-%m-%dT%H:%M}"' in client.get(path).text
    assert f"{shown:%Y-%m-%d %H:%M}" in client.get("/desk/entries").text
    data = {"temp": "14.6", "temp_unit": "degC", "gravity": "1.045", "gravity_unit": "SG", "reason": "misread"}

    def amend(minute):
        sent = data | {"read_at": minute, "csrf_token": token(client, path)}
        assert client.post(path, data=sent).status_code == 302
        family = [row for row in log.walk_entries(house.book) if row["entry"].get("amends") == rising["id"]]
        return max(family, key=lambda row: row["book_no"])["entry"]["read_at"]

    assert amend(f"{shown:%Y-%m-%dT%H:%M}") == logged
    assert amend("2025-09-25T18:30") == "2025-09-25T18:30:00+12:00"


def test_the_offered_figure_stands_beside_the_typed_one(house, rising):
    page = house.client("IM").get(f"/desk/entries/{rising['id']}").text
    assert "with 1.045 SG" in page and "It moves no spirit either way." in page
    assert page.index("It was 1.045 SG") < page.index("As read"), "the question above everything"
