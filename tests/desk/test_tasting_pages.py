"""Blind tastings at the desk: set out without heads, poured by a sheet that no taster sees, opened, and cited."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from typing import Any

import pypdfium2
import pytest

from tests.desk.conftest import C1, R1, R2, S1, House, token
from webapp.book import intake
from webapp.book.cellar import tasting_draw, tastings
from webapp.desk.tasting.words import p_words, times_in

FORM = {"name": "T-1", "question": "Told apart?", "method": "triangle", "alpha": "5", "served": "25",
        "served_unit": "pct_vol", "poured_by": "", "tasters": ["NS"], "sets": "6", "sample_a": f"vessel:{C1}",
        "words_a": "", "sample_b": f"vessel:{R2}", "words_b": "64 to 60 %"}


@pytest.fixture
def filled(house: House) -> None:
    """Plum spirit in a cask, hearts and heads of a run in two receivers."""
    house.log("gauge", C1, -40 * 1440, what="plum", net_weight=("168.0", "kg"), strength=("61.0", "pct_vol"),
              temp=("12", "degC"), purpose="opening")
    house.log("charge", S1, 0, run_name="R-25-02", from_vessel=R1, wash=("482", "L"), wash_strength=("5.1", "pct_vol"))
    for n, (mark, part) in enumerate(((R1, "heads"), (R2, "hearts"))):
        house.log("fraction_gauge", mark, 300 + n, still=S1, fraction=part, volume=("4", "L"), temp=("20", "degC"),
                  strength=("75", "pct_vol"), goes_to="stays")


def set_out(client: Any, **other: Any) -> Any:
    return client.post("/desk/tastings/new",
                       data=FORM | other | {"csrf_token": token(client, "/desk/tastings/new")})


def answer_all(house: House, *, right: int) -> None:
    tasting = tastings.load_tasting(house.book, "T-1")
    assert tasting
    key = tasting_draw.load_key(house.book, tasting["seal"])
    assert key
    for n, (serving, word) in enumerate(tastings.letters_of(tasting, key)):
        odd = next(code for code, letter in zip(serving["codes"], word, strict=True) if word.count(letter) == 1)
        code = odd if n < right else next(one for one in serving["codes"] if one != odd)
        now = datetime.now(UTC)
        values = {"session": {"raw": "T-1"}, "set_no": {"raw": str(serving["set_no"]), "unit": "count"},
                  "picked": {"raw": code}}
        intake.enter_page_entry(house.book, kind="tasting_answer", mark="", values=values, person="NS", role="",
                                read_at=now.isoformat(timespec="seconds"), now=now)


def test_heads_are_offered_to_nobody_and_refused(house: House, filled: None) -> None:
    client = house.client("IM")
    page = client.get("/desk/tastings/new").text
    assert f"vessel:{C1}" in page and f"vessel:{R2}" in page and f"vessel:{R1}" not in page
    assert "Heads are never tasted" in page and "spit" in page
    answer = set_out(client, sample_b=f"vessel:{R1}")
    assert answer.status_code == 422
    assert f"{R1} holds heads. Heads are never tasted. Take another sample." in answer.text
    assert tastings.load_tastings(house.book) == []


@pytest.mark.parametrize(("other", "says"), [
    ({"sample_b": ""}, "two samples"), ({"sample_b": f"vessel:{C1}", "words_b": ""}, "are the same"),
    ({"method": "ranking"}, "three to five"), ({"tasters": []}, "at least one taster"), ({"sets": "99"}, "Number must"),
    ({"poured_by": "NS"}, "does not taste"), ({"served": "much"}, "field__error"), ({"question": ""}, "question first"),
    ({"name": "a/b"}, "Letters, digits"), ({"tasters": ["NS", "IM", "OL"] * 9, "sets": "0"}, "field__error"),
])
def test_what_cannot_be_held_is_refused_with_what_to_do(
    house: House, filled: None, other: dict[str, Any], says: str
) -> None:
    answer = set_out(house.client("IM"), **other)
    assert answer.status_code == 422 and says in answer.text
    assert tastings.load_tastings(house.book) == []


def test_a_tasting_is_set_out_poured_answered_opened_and_cited(house: House, filled: None) -> None:
    maker, taster = house.client("IM"), house.client("NS")
    assert set_out(maker).status_code == 302
    assert "of that name" in set_out(maker).text
    tasting = tastings.load_tasting(house.book, "T-1")
    assert tasting and len(tasting["servings"]) == 6
    key = tasting_draw.load_key(house.book, tasting["seal"])
    assert key and "Serving sheet" in maker.get("/desk/tastings/T-1").text
    for page in ("/desk/tastings/T-1", f"/desk/entries/{tasting['entry']}", "/desk/tastings"):
        seen = taster.get(page)
        assert seen.status_code == 200 and key.split()[-1] not in seen.text and "serving.pdf" not in seen.text
    assert taster.get("/desk/tastings/T-1/serving.pdf").status_code == 403
    sheet = maker.get("/desk/tastings/T-1/serving.pdf")
    assert sheet.mimetype == "application/pdf"
    with pypdfium2.PdfDocument(sheet.data) as document:
        words = " ".join(page.get_textpage().get_text_range() for page in document)
    serving, letters = tastings.letters_of(tasting, key)[0]
    for code, letter in zip(serving["codes"], letters, strict=True):
        assert f"{code} = {letter}" in re.sub(r"\s+", " ", words)
    answer_all(house, right=5)
    assert "6 of 6 answers" in taster.get("/desk/tastings/T-1").text
    opened = {"csrf_token": token(maker, "/desk/tastings/T-1"), "decision": "cut at 62"}
    assert taster.post("/desk/tastings/T-1/open", data=opened).status_code in (400, 403)
    assert maker.post("/desk/tastings/T-1/open", data=opened).status_code == 302
    page = maker.get("/desk/tastings/T-1").text
    assert "5 of 6 right; 5 were needed. They can be told apart." in page
    assert "By guessing alone so many or more come 1 time in 56 (p 0.02)." in page, "13 of 729, counted by hand"
    assert "cut at 62" in page and "find a difference four times in five" in page
    assert "Tasted blind" in taster.get(f"/desk/vessels/{C1}").text
    traced = taster.get(f"/desk/trace/{C1}").text
    assert "Tasted blind" in traced and "/desk/tastings/T-1" in traced
    assert "Tasted blind" not in taster.get(f"/desk/trace/{R1}").text
    house.log("cut_plan", S1, 10**6 + 50, what="plum", hearts_to=("62", "pct_vol"), tasting="T-1")
    assert "Blind tasting T-1" in taster.get("/desk/runs/plans").text
    maker.post("/desk/tastings/T-1/open", data=opened)
    assert len(house.book.query("SELECT id FROM entries WHERE kind = 'tasting_result'")) == 1


def test_who_tastes_opens_only_when_the_last_answer_is_in(house: House, filled: None) -> None:
    maker = house.client("IM")
    set_out(maker, tasters=["IM"])
    data = {"csrf_token": token(maker, "/desk/tastings/new")}
    assert maker.get("/desk/tastings/T-1/serving.pdf").status_code == 403
    assert maker.post("/desk/tastings/T-1/open", data=data).status_code == 403
    other = house.client("OL")
    with house.book.write() as database:
        database.conn.execute("DELETE FROM tasting_keys")
    answer = other.post("/desk/tastings/T-1/open", data={"csrf_token": token(other, "/desk/tastings/new")},
                        follow_redirects=True)
    assert "Its key is not in this book" in answer.text
    assert other.get("/desk/tastings/nonesuch").status_code == 404


@pytest.mark.parametrize(("p", "times", "said"), [
    (0.000855, "1 time in 1,170", "p 0.0009"), (129 / 6561, "1 time in 51", "p 0.02"), (0.22, "1 time in 5", "p 0.22"),
    (0.6, "6 times in 10", "p 0.60"), (1.0, "10 times in 10", "p 1.00"), (0.00001, "1 time in 100,000",
                                                                           "p below 0.0001"),
])
def test_chances_are_said_in_words(p: float, times: str, said: str) -> None:
    assert (times_in(p), p_words(p)) == (times, said)
