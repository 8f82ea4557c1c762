"""The page of the day: its sentence, its lines, what each role sees of it, and what it says when all is well."""

from __future__ import annotations

import html
import re
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from tests.desk.conftest import C1, F1, R1, R2, R3, S1, START, token
from tests.desk.test_page_reads import STATEMENTS_MOST
from webapp.book.house import devices, registry
from webapp.book.periods import ledger, notices
from webapp.book.today import cuts, facts
from webapp.book.today.day import Day, RunDay, StillDay, Stretch
from webapp.book.today.due import Due, PhoneState
from webapp.desk.today import dayline, pages, sentence


@pytest.fixture(autouse=True)
def patient(monkeypatch):
    """Wait for a forecast, however busy the machine is."""
    monkeypatch.setattr(cuts, "LONGEST_S", 60.0)


def text_of(page: str) -> str:
    return html.unescape(re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", page)))


def heading(page: str) -> str:
    found = re.search(r"<h1>(.*?)</h1>", page, re.DOTALL)
    assert found
    return text_of(found[1]).strip()


def minutes_ago(many: float) -> float:
    """Minutes from the world's start until so many before now: what `log` counts in."""
    return (datetime.now(UTC) - START).total_seconds() / 60 - many


def today(house, code="IM"):
    return house.client(code).get("/desk/").text


# The sentence.


def day(now_s: float = 0.0, *runs: RunDay, reads=()) -> Day:
    still = StillDay(S1, "S1", runs, ())
    return Day(now_s - 36_000, now_s + 50_400, now_s, (still,) if runs else (), (), tuple(reads))


def run(part: str = "hearts", cut: cuts.NextCut | None = None, *, is_over: bool = False) -> RunDay:
    return RunDay("r", "R-1", "plum", (Stretch(part, -3600.0, 0.0),), is_over, None, cut)


def cut_at(at: float, low: float, high: float) -> cuts.NextCut:
    return cuts.NextCut("hearts", "tails", 60.0, "plan", "due", {"at": at, "low": low, "high": high})


@pytest.fixture
def in_page(house):
    """As in a request of somebody signed in: the clock is the house's."""
    registry.set_site(house.book, {"time_zone": "UTC"}, by="OL")
    with house.app.test_request_context("/desk/"):
        yield


@pytest.mark.usefixtures("in_page")
@pytest.mark.parametrize(("owed", "of_day", "due", "phones", "said"), [
    (0, day(), [], [], "Nothing is owed. Nothing is due today."),
    (0, day(reads=[(3600.0, F1, "F1")]), [], [], "Nothing is owed. Next is F1 to read at 01:00."),
    (0, day(reads=[(3600.0, F1, "F1"), (4000.0, R1, "F2")]), [], [],
     "Nothing is owed. Next is the round of two ferments at 01:00."),
    (1, day(), [], [], "One answer is owed."),
    (4, day(0.0, run(cut=cut_at(3600, 3000, 4200))), [], [], "Four answers are owed, S1 cuts at 01:00."),
    (4, day(0.0, run(cut=cut_at(60, -60, 300))), [], [], "Four answers are owed, S1 cuts any minute."),
    (0, day(0.0, run("heads", cuts.NextCut("heads", "hearts", None, "", "too_little"))), [], [],
     "Nothing is owed, S1 runs heads."),
    (0, day(86_400.0, run(cut=cut_at(3600, 3000, 4200))), [], [], "Nothing is owed, S1 was to cut at 01:00."),
    (0, day(0.0, run(is_over=True)), [], [], "Nothing is owed. Nothing is due today."),
    (13, day(), [Due("stuck", F1, "F1", 0), Due("regauge", C1, "C1", 1), Due("regauge", C1, "C2", 1)], [],
     "13 answers are owed, F1 is stuck, two casks are to be regauged."),
    (0, day(), [Due("stands", R2, "T3", 40)], [PhoneState("PH-3", None, is_silent=True, missing=0)],
     "Nothing is owed, T3 stands long, PH-3 is silent."),
])
def test_the_sentence_says_the_day(owed, of_day, due, phones, said):
    assert sentence.heading(owed, of_day, [], due, phones, 86_400.0) == said


# The line.


@pytest.mark.usefixtures("in_page")
def test_the_line_draws_an_interval_only_where_there_is_one():
    told = dayline.day_line(day(0.0, run(cut=cut_at(3600, 3000, 4200)))).lanes[0]
    (doubt,) = [bar for bar in told.bars if bar.part == "doubt"]
    (stroke,) = [mark for mark in told.marks if mark.sign == "stroke"]
    assert doubt.x < stroke.x < doubt.x + doubt.width
    assert told.dotted[0][1] == pytest.approx(doubt.x)
    assert "cut to tails about 01:00, between 00:50 and 01:10, by the plan" in told.words
    for state, words in (("too_little", "too little is read"), ("past", "is reached"), ("working", "worked out")):
        without = dayline.day_line(day(0.0, run(cut=cuts.NextCut("hearts", "tails", 60.0, "plan", state)))).lanes[0]
        assert not without.dotted and not [bar for bar in without.bars if bar.part == "doubt"]
        assert words in without.words
        assert [mark.second for mark in without.marks if mark.label == "cut to tails" and mark.second], "and is seen"


@pytest.mark.usefixtures("in_page")
def test_the_line_shows_the_working_day_and_what_lies_beyond():
    zone = ZoneInfo("UTC")
    noon = datetime(2026, 11, 30, 12, tzinfo=zone).timestamp()
    start = noon - 12 * 3600
    plain = dayline.day_line(Day(start, start + 86_400, noon, (), (), ()))
    assert [words for _, words, _ in plain.ticks] == [f"{hour:02d}:00" for hour in range(6, 23, 2)]
    begun = RunDay("r", "", "", (Stretch("heads", start + 5 * 3600, noon),), is_over=False, last=None, cut=None)
    early = StillDay(S1, "S1", (begun,), ())
    assert dayline.day_line(Day(start, start + 86_400, noon, (early,), (), ())).ticks[0][1] == "04:00"


# The page.


def test_a_book_without_anything_says_so(house):
    page = today(house)
    assert heading(page) == "Nothing is owed. Nothing is due today."
    assert "No figure waits for an answer." in page and "Nothing is due." in text_of(page)


def test_a_question_comes_with_its_picture_and_leads_to_its_form(house, rising):
    page = today(house)
    assert heading(page).startswith("One answer is owed")
    assert "it can only fall" in page and 'class="slip"' in page
    assert f"/desk/entries/{rising['id']}" in page


def test_the_offer_is_the_likely_figure_in_the_form(house, filled):
    house.log("ferment_reading", F1, 0, temp=("14.0", "degC"), gravity=("1.049", "SG"))
    wrong = house.log("ferment_reading", F1, 1440, temp=("66.6", "degC"), gravity=("1.045", "SG"))
    path = f"/desk/entries/{wrong['id']}/amend?field=temp&amp;raw=66.6&amp;unit=degF"
    assert path in today(house) and "button asked__offer" in today(house)
    assert "/amend" not in today(house, "NS"), "who may not amend is not offered it"


def test_the_old_address_of_the_questions_leads_on(house):
    client = house.client("NS")
    assert client.get("/desk/?weight=note").headers["Location"] == "/desk/queries?weight=note"
    assert client.get(f"/desk/?mark={F1}").headers["Location"] == f"/desk/queries?mark={F1}"


def test_phones_backup_and_disk_are_for_the_office(house):
    with house.book.write():
        devices.note_heard(house.book, house.device["id"], "2025-09-24T06:00:00Z", 0.0)
    for code, is_shown in (("OL", True), ("IM", False), ("NS", False)):
        page = today(house, code)
        assert ("PH-2" in page, "Backup" in page, "Disk" in page) == (is_shown,) * 3, code
        assert ("is silent" in heading(page)) == is_shown
        assert "every entry by the rules and limits" in page


def test_since_somebody_was_last_here(house, filled, monkeypatch):
    client = house.client("IM")
    assert "Since you were last here" not in client.get("/desk/").text, "the first visit has nothing before it"
    house.log("ferment_reading", F1, 0, temp=("14.0", "degC"), gravity=("1.049", "SG"))
    assert "Since you were last here" not in client.get("/desk/").text, "a look a moment later is the same visit"
    monkeypatch.setattr(pages, "AWAY_S", -1)
    assert "Nothing has come in." in client.get("/desk/").text
    house.log("fruit_intake", F1, 10, gross=("900", "kg"), tare=("9", "kg"), material="pear", grower_lot="Ostrey Farm",
              sugar=("12.9", "Bx"), temp=("15", "degC"), rot=("1", "pct"))
    page = text_of(client.get("/desk/").text)
    assert "Since you were last here" in page and "entry of one person" in page and "Fruit intake" in page


def test_the_last_answer_is_told_when_none_is_owed(house, rising):
    client = house.client("IM")
    data = {"query": "", "verdict": "struck", "reason": "wrong tank", "csrf_token": token(client, "/desk/queries")}
    client.post(f"/desk/entries/{rising['id']}/answer", data=data)
    page = text_of(client.get("/desk/").text)
    assert "No figure waits for an answer." in page and "by you: struck, “wrong tank”" in page


def test_what_the_house_holds_leads_to_its_lists(house):
    house.log("gauge", C1, 0, net_weight=("150", "kg"), strength=("62", "pct_vol"), temp=("20", "degC"),
              purpose="opening", what="plum")
    page = today(house)
    total = re.search(r'house__total"><a href="/desk/periods"><strong>([\d.]+)', page)
    flows = house.book.one("SELECT sum(lpa_ul) AS ul FROM flows WHERE source = 'out:opening'")
    assert total and float(total[1]) == pytest.approx(flows["ul"] / 1e6, abs=0.05)
    assert "/desk/trace?q=plum" in page and "data-charts" in page


def test_a_us_house_is_counted_in_proof_gallons(house):
    registry.set_site(house.book, {"units": "us"}, by="OL")
    house.log("gauge", C1, 0, net_weight=("150", "kg"), strength=("62", "pct_vol"), temp=("20", "degC"),
              purpose="opening", what="plum")
    page = text_of(today(house))
    ul = house.book.one("SELECT sum(lpa_ul) AS ul FROM flows WHERE source = 'out:opening'")["ul"]
    # 1.9018 L of pure alcohol at 20 degC are a proof gallon: 27 CFR 30.11 by Table 1.
    assert f"{ul / 1e6 / 1.9018:.1f}" in page and "proof gallons" in page
    assert "27 CFR 19.632" in page, "a month that is over has its day in the US"


@pytest.fixture
def under_way(house, filled):
    """A run in its hearts just now, with a plan for its cut, and a run before it."""
    house.log("cut_plan", S1, minutes_ago(4000), what="pear", hearts_to=("68", "pct_vol"))
    for begun, name in ((3000, "R-1"), (130, "R-2")):
        ago = lambda minutes, begun=begun: minutes_ago(begun - minutes)  # noqa: E731
        house.log("charge", S1, ago(0), run_name=name, from_vessel=F1, wash=("450", "L"),
                  wash_strength=("6.0", "pct_vol"), heads_to=R1, hearts_to=R2, tails_to=R3)
        house.log("cut", S1, ago(25), event="heads_cut", receiver=R2, strength=("81", "pct_vol"))
        for minutes, pct in ((30, 80.5), (50, 79.0), (70, 77.2), (90, 75.1), (110, 72.8)):
            house.log("run_reading", S1, ago(minutes), strength=(str(pct), "pct_vol"), flow=("12", "L_h"))
        if name == "R-1":
            house.log("run_end", S1, ago(200), reason="strength")


def test_a_run_under_way_says_its_next_cut(house, under_way):
    clock = r"\d\d:\d\d"
    assert re.search(rf"S1\S* cuts (at {clock}|any minute)", heading(today(house)))
    said = rf"R-2 pear: hearts since {clock}; cut to tails about {clock}, between {clock} and {clock}"
    assert re.search(said, text_of(today(house)))


def test_the_page_reads_once_with_a_run_under_way(house, under_way):
    """The bound is the house's own, not out of a standard."""
    client = house.client("OL")
    client.get("/desk/")
    for held in (ledger._held, notices._held, facts._held):
        held.clear()
    said = []
    house.book.db.conn.set_trace_callback(said.append)
    client.get("/desk/")
    house.book.db.conn.set_trace_callback(None)
    assert 5 < len(said) <= STATEMENTS_MOST, (len(said), said)
