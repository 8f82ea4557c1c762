"""Other rules: the desk says how far the judging is, what came out otherwise, and keeps saying it until it is read."""

import csv
import io

import pytest

from webapp.book import checks
from webapp.book.fold import differences, judgings, replay, rules, unjudged
from webapp.kinds.message import as_said

from .conftest import F1, R1, token

LINE = "Other rules have judged the book, and 3 entries came out otherwise than before."


def run_version(patch, name, ask=""):
    """Run a program of other rules; it may ask something about every gauge and every reading."""
    parts = rules.current_rules().parts | {"checks": name}
    told = rules.Rules(rules.NUMBER, name)
    told.__dict__["parts"] = parts
    patch.setattr(rules, "current_rules", lambda: told)

    def new_check(read, view):
        if ask and read.kind.name in ("gauge", "ferment_reading"):
            yield checks.Query(ask, "stop" if read.kind.name == "gauge" else "note", "", as_said("Is that so?"))

    patch.setitem(checks.CHECKS, "instrument", new_check)


@pytest.fixture
def updated(house, monkeypatch):
    """A gauge and two readings, then a program that stops every gauge; its judging has begun."""
    monkeypatch.setattr(replay, "SLICE_S", 0.0)
    monkeypatch.setattr(replay, "SLICE_LEAST", 1)
    house.gauge = house.log("gauge", R1, 0, volume=("100", "L"), temp=("20", "degC"), strength=("70", "pct_vol"))["id"]
    for n in range(2):
        house.log("ferment_reading", F1, 600 + n, temp=("14.0", "degC"), gravity=(f"1.05{9 - n}", "SG"))
    run_version(monkeypatch, "next", "strange_figure")
    with house.book.write():
        judgings.adopt_rules(house.book)
    return house


def test_the_desk_says_how_far_the_judging_is(updated):
    client = updated.client("IM")
    version = judgings.last_judging(updated.book).version
    assert f"3 of 3 entries are still to be judged by the rules of version {version}." in client.get("/desk/").text
    assert "Not all is judged yet." in client.get("/desk/rules/2").text
    assert "not yet" in client.get("/desk/rules").text
    assert LINE not in client.get("/desk/").text, "it is said when all is judged"


def test_what_came_out_otherwise_is_shown_until_it_is_read(updated):
    unjudged.judge_all(updated.book)
    client = updated.client("IM")
    assert LINE in client.get("/desk/").text and LINE in client.get("/desk/vessels").text
    page = client.get("/desk/rules/2").text
    assert "1 entry moves other amounts than before." in page
    assert f"→ {R1}: 70.000 L pure alcohol, 100.0 L" in page
    assert "Now: nothing" in page
    assert "strange figure" in page and page.count(f"/desk/entries/{updated.gauge}") == 2
    assert "Other than before: checks." in page
    form = {"csrf_token": token(client, "/desk/rules/2")}
    assert client.post("/desk/rules/2/read", data=form).status_code == 302
    assert LINE not in client.get("/desk/").text
    assert "Read by IM" in client.get("/desk/rules/2").text
    assert client.post("/desk/rules/2/read", data=form).status_code == 302, "twice does no harm"
    assert differences.count_unread(updated.book) == {}


def test_the_floor_may_look_and_not_put_it_away(updated):
    unjudged.judge_all(updated.book)
    client = updated.client("NS")
    page = client.get("/desk/rules/2").text
    assert "strange figure" in page and "I have read it" not in page
    assert client.post("/desk/rules/2/read", data={"csrf_token": token(client, "/desk/")}).status_code == 403
    assert list(differences.count_unread(updated.book)) == [2]


def test_all_of_it_comes_as_a_file(updated):
    unjudged.judge_all(updated.book)
    text = updated.client("NS").get("/desk/rules/2/entries.csv").text
    rows = list(csv.DictReader(io.StringIO(text.lstrip("\ufeff"))))
    assert len(rows) == 3 and rows[0]["entry"] == updated.gauge
    assert rows[0]["came"] == "strange_figure (stop)" and rows[0]["moves_now"] == "nothing"
    assert rows[1]["moves_before"] == "", "its sums are what they were"


def test_rules_that_change_nothing_say_so_and_ask_for_nothing(house, filled, monkeypatch):
    run_version(monkeypatch, "plain")
    with house.book.write():
        judgings.adopt_rules(house.book)
    unjudged.judge_all(house.book)
    client = house.client("IM")
    assert "Nothing came out otherwise." in client.get("/desk/rules/2").text
    assert "came out otherwise than before" not in client.get("/desk/").text
    assert client.get("/desk/rules/99").status_code == 404
