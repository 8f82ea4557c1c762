"""Periods, records and instruments at the desk: seen, closed with a name, printed, sent out."""

import csv
import io
import json
import re
from datetime import UTC, datetime, timedelta
from decimal import Decimal

import pypdfium2
import pytest

from webapp import signed_heads
from webapp.access import guard
from webapp.book.house import registry
from webapp.book.periods import closes
from webapp.book.periods.periods import litres
from webapp.book.record import heads

from .conftest import C1, F1, PASSWORD, R2, START, token

OCTOBER = int((datetime(2025, 10, 10, 8, tzinfo=UTC) - START).total_seconds() // 60)  # minutes after the house's start


@pytest.fixture
def season(house):
    """28 L of pure alcohol in R2 in October, of which 3.5 are destroyed in November."""
    registry.set_site(house.book, {"accounts": "us", "time_zone": "Europe/Paris"}, by="OL")
    hearts = {"temp": ("20", "degC"), "strength": ("70", "pct_vol")}
    house.log("gauge", R2, OCTOBER, volume=("40", "L"), **hearts, purpose="opening")
    house.log(
        "destruction", R2, OCTOBER + 30 * 1440, what="heads", volume=("5", "L"), **hearts, place="yard",
        manner="poured out", withdrawn="no", watched_by="IM",
    )
    return house


def rows_of(client, name):
    return list(csv.DictReader(io.StringIO(client.get(f"/desk/periods/{name}.csv").text.lstrip("\ufeff"))))


def test_the_list_leads_to_months_and_quarters(season):
    page = season.client("NS").get("/desk/periods").text
    for shown in ("2025-Q4", "2025-10", "28.00", "24.50", 'href="/desk/periods/2025-11"', "open"):
        assert shown in page


def test_a_period_shows_each_line_with_its_rule_and_the_caution(season):
    page = season.client("NS").get("/desk/periods/2025-11").text
    # 24.5 L at 20 degC are 12.9 proof gallons: 24.5 / 1.9018.
    for shown in ("Production", "24.50", "12.9", "Destroyed", "27 CFR 19.617", "not legal advice", "Open"):
        assert shown in page
    assert season.client("NS").get("/desk/periods/2031-01").status_code == 404
    assert season.client("NS").get("/desk/periods/all").status_code == 404


def test_csv_json_and_paper_say_the_same(season):
    client = season.client("NS")
    rows = [row for row in rows_of(client, "2025-Q4") if row["basis"] == "stated" and row["account"] == "production"]
    assert [(row["row"], row["lpa_ul"]) for row in rows] == [
        ("opening", "0"), ("in", "28000000"), ("total_in", "28000000"), ("out", "3500000"), ("total_out", "3500000"),
        ("closing", "24500000"),
    ]
    whole = json.loads(client.get("/desk/periods/2025-Q4.json").text)
    shown = whole["stated"][0]["rows"]
    assert [(row["lpa_ul"], row["lpa_l"], row["proof_gal"]) for row in shown] == [
        (int(row["lpa_ul"]), row["lpa_l"], row["proof_gal"]) for row in rows
    ]
    assert whole["start_utc"] == "2025-09-30T22:00:00Z" and whole["closed"] is False and "legal" in whole["caution"]
    answer = client.get("/desk/periods/2025-Q4.pdf")
    assert answer.mimetype == "application/pdf"
    text = "".join(page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(answer.data))
    for words in ("2025-Q4", "Production", "24.50", "12.9", "27 CFR 19.617", "Signature", "This is not legal advice"):
        assert words in text
    for path in ("/desk/periods/2025-Q9.csv", "/desk/periods/x.json", "/desk/periods/2025-13.pdf"):
        assert client.get(path).status_code == 404


def test_lines_add_up_as_shown_everywhere_and_the_page_says_which_were_moved(season):
    """A leak, heads poured out and a sample of 0.2345 L each of 28: 0.23 thrice come to 0.69, where 0.70 are gone."""
    small = {"temp": ("20", "degC"), "strength": ("70", "pct_vol")}
    season.log("loss", R2, OCTOBER + 31 * 1440, cause="leak", volume=("0.335", "L"), found="drops", done="pumped")
    season.log("destruction", R2, OCTOBER + 32 * 1440, what="heads", volume=("0.335", "L"), **small, place="yard",
               manner="poured out", withdrawn="no", watched_by="IM")
    season.log("sample", R2, OCTOBER + 33 * 1440, size=("335", "mL"), number=("1", "count"), purpose="analysis",
               went="destroyed")
    client = season.client("NS")
    page = client.get("/desk/periods/2025-11").text
    rows = [one for one in rows_of(client, "2025-11") if (one["basis"], one["account"]) == ("stated", "production")]
    of = {name: [Decimal(one["lpa_l"]) for one in rows if one["row"] == name] for name in {one["row"] for one in rows}}
    assert sum(of["out"]) == of["total_out"][0] and of["opening"][0] - of["total_out"][0] == of["closing"][0]
    shown = json.loads(client.get("/desk/periods/2025-11.json").text)
    assert [one["lpa_l"] for one in shown["stated"][0]["rows"]] == [one["lpa_l"] for one in rows]
    assert "largest remainder" in shown["rounding"] and shown["rounding"] in page
    pdf = pypdfium2.PdfDocument(client.get("/desk/periods/2025-11.pdf").data)
    text = " ".join("".join(one.get_textpage().get_text_range() for one in pdf).split())
    assert "largest remainder" in text
    for one in rows:
        assert f'<td class="number">{one["lpa_l"]}</td><td class="number">{one["proof_gal"]}</td>' in page
        assert f'{one["lpa_l"]} {one["proof_gal"]}' in text
    assert [one["line"] for one in rows if Decimal(one["lpa_l"]) != litres(int(one["lpa_ul"]))], of
    assert "shown off their nearest" in page and "shown off their nearest" in text


def test_closing_asks_once_more_and_signs_what_was_shown(season):
    client = season.client("IM")
    page = client.get("/desk/periods/2025-10/close").text
    assert "28.00" in page and "In the name of IM, this closes 2025-10 for good" in page
    data = {"csrf_token": token(client, "/desk/periods/2025-10/close"), "digest": digest_in(page)}
    assert client.post("/desk/periods/2025-10/close", data=data).status_code == 422
    assert "Tick that you have looked" in client.post("/desk/periods/2025-10/close", data=data).text
    assert not closes.closes(season.book)
    season.log("gauge", R2, OCTOBER + 60, volume=("39", "L"), temp=("20", "degC"), strength=("70", "pct_vol"),
               purpose="stock")
    answer = client.post("/desk/periods/2025-10/close", data=data | {"sure": "yes"})
    assert answer.status_code == 422 and "changed while you looked" in answer.text
    page = client.get("/desk/periods/2025-10/close").text
    data |= {"digest": digest_in(page), "read": re.findall(r'name="read" value="([^"]+)"', page)}
    page = client.post("/desk/periods/2025-10/close", data=data | {"sure": "yes"}, follow_redirects=True).text
    assert "2025-10 is closed" in page and "was closed by IM" in page and "Close it" not in page
    (row,) = closes.closes(season.book)
    assert (row["month"], row["person"], row["figures"]["closing"]["production"]) == ("2025-10", "IM", 27_300_000)
    assert "is closed already" in client.get("/desk/periods/2025-10/close").text
    assert season.client("NS").get("/desk/periods/2025-11/close").status_code == 403


def test_a_close_wants_the_password_again_and_signs_what_was_shown(season, monkeypatch):
    client, address = season.client("IM"), "/desk/periods/2025-10/close"
    page = client.get(address).text
    data = {"csrf_token": token(client, address), "digest": digest_in(page), "sure": "yes",
            "read": re.findall(r'name="read" value="([^"]+)"', page)}
    eleven_minutes_on = guard.time.time() + 660
    monkeypatch.setattr(guard.time, "time", lambda: eleven_minutes_on)
    asked = client.post(address, data=data)
    assert asked.status_code == 422 and "Is it still you?" in asked.text and not closes.closes(season.book)
    carried = re.findall(r'<input type="hidden" name="(sure|digest|read)" value="([^"]*)"', asked.text)
    assert ("sure", "yes") in carried and len(carried) == 2 + len(data["read"])
    assert client.post(address, data=data | {"again_password": "not this"}).status_code == 422
    assert not closes.closes(season.book)
    assert client.post(address, data=data | {"again_password": PASSWORD}).status_code == 302
    assert closes.closes(season.book)


def digest_in(page):
    return page.split('name="digest" value="')[1].split('"')[0]


def test_a_close_wants_each_open_question_read_and_carries_them(season):
    season.log("gauge", R2, OCTOBER + 1440, volume=("55", "L"), temp=("20", "degC"), strength=("70", "pct_vol"))
    client = season.client("IM")
    address = "/desk/periods/2025-10/close"
    page = client.get(address).text
    keys = re.findall(r'name="read" value="([^"]+)"', page)
    assert keys and "for good" in page and "The entry" in page
    data = {"csrf_token": token(client, address), "digest": digest_in(page), "sure": "yes"}
    refused = client.post(address, data=data | {"read": keys[1:]})
    assert refused.status_code == 422 and "not ticked as read" in refused.text and not closes.closes(season.book)
    done = client.post(address, data=data | {"read": keys}, follow_redirects=True).text
    assert "open, each read by IM" in done and R2 in done
    whole = json.loads(client.get("/desk/periods/2025-10.json").text)
    assert [len(one["open_questions"]) for one in whole["closes"]] == [len(keys)]
    text = pypdfium2.PdfDocument(client.get("/desk/periods/2025-10.pdf").data)[0].get_textpage().get_text_range()
    assert "Open when it was closed" in text


def test_a_signed_close_carries_the_heads_of_the_book_and_an_open_period_none(season):
    keeper = season.app.extensions["witnesses"]
    keeper.look(datetime.now(UTC))
    client = season.client("IM")
    page = client.get("/desk/periods/2025-10/close").text
    data = {"csrf_token": token(client, "/desk/periods/2025-10/close"), "digest": digest_in(page), "sure": "yes",
            "read": re.findall(r'name="read" value="([^"]+)"', page)}
    assert client.post("/desk/periods/2025-10/close", data=data).status_code == 302
    whole = json.loads(client.get("/desk/periods/2025-10.json").text)
    signed = signed_heads.read_signed("\n".join(json.dumps(one) for one in whole["heads"]))
    assert len(signed) == 5 and signed_heads.compare(season.book, signed) == []
    assert {one.head.name: one.head.size for one in signed}["closes"] == 1
    text = "".join(page.get_textpage().get_text_range() for page in
                   pypdfium2.PdfDocument(client.get("/desk/periods/2025-10.pdf").data))
    assert heads.read_heads(text) == [one.head for one in signed]  # what `verify --heads` reads off the paper
    assert signed_heads.shorten(signed[0].key) in text
    assert "heads" not in json.loads(client.get("/desk/periods/2025-11.json").text)


def test_what_comes_late_is_an_adjustment_in_plain_sight(season):
    client = season.client("OL")
    page = client.get("/desk/periods/2025-10/close").text
    data = {"csrf_token": token(client, "/desk/periods/2025-10/close"), "digest": digest_in(page), "sure": "yes"}
    assert client.post("/desk/periods/2025-10/close", data=data).status_code == 302
    late = season.log("sample", R2, OCTOBER + 1440, size=("100", "mL"), number=("1", "count"), purpose="analysis",
                      went="destroyed")
    october, november = client.get("/desk/periods/2025-10").text, client.get("/desk/periods/2025-11").text
    assert "As now known" in october and "27.93" in october and "28.00" in october
    assert "Adjustment of 2025-10: more samples" in november and f"/desk/entries/{late['id']}" in november
    assert "changed since" in client.get("/desk/periods").text
    (row,) = [row for row in rows_of(client, "2025-11") if row["adjustment_of"]]
    assert (row["row"], row["line"], row["lpa_ul"]) == ("out", "out:sample", "70000")


def test_one_warehouse_is_set_at_the_desk(season):
    client = season.client("OL")
    data = {"csrf_token": token(client, "/desk/settings"), "name": "Tarrowdene", "units": "metric", "decimal_mark": ".",
            "accounts": "warehouse", "height_m": "", "time_zone": "Europe/Paris"}
    assert client.post("/desk/settings", data=data).status_code == 302
    page = client.get("/desk/periods/2025-Q4").text
    assert "Excise warehouse" in page and "2020/262" in page and "Storage" not in page


def test_the_records_page_holds_every_record_with_its_links(house):
    page = house.client("NS").get("/desk/records").text
    for shown in ('id="US-1"', 'id="UK-4"', "27 CFR 19.585", "/desk/entries?kind=bottling_close", "from memory"):
        assert shown in page
    assert page.count('<tr id="') == 36
    assert "/desk/records" in house.client("NS").get("/desk/periods").text


def test_a_failed_instrument_lists_what_is_in_doubt(house, filled):
    registry.put_instrument(house.book, {"id": "TH-2", "sort": "thermometer", "unit": "degC"}, by="OL")
    doubtful = reading_with(house, "TH-2", 60)
    failed = house.log("instrument_check", "", 120, instrument="TH-2", against="ice", expected=("0", "plain"),
                       found=("0.9", "plain"), correction=("0", "plain"), result="failed", in_use="no")
    client = house.client("IM")
    page = client.get("/desk/instruments/TH-2").text
    for shown in ("out of use", "+0.9", f"/desk/entries/{doubtful}", f"/desk/entries/{failed['id']}",
                  "1 reading in doubt"):
        assert shown in page, shown
    # Shown 0.9 too high in ice, it would have shown 14.1 for 15.0: one tap amends it so.
    assert f"/desk/entries/{doubtful}/amend?" in page and "raw=14.1" in page and "15.0 →" in page
    assert "out of use" in client.get("/desk/instruments").text
    assert "0.9 too high in ice" in client.get(f"/desk/entries/{failed['id']}").text
    assert client.get("/desk/instruments/TH-2/edit").status_code == 200
    assert client.get("/desk/instruments/none-such").status_code == 404


def reading_with(house, instrument, minutes):
    """Hand in a ferment reading whose temperature was read with this instrument; return its id."""
    from webapp.book import intake

    house.seq += 1
    at = (START + timedelta(minutes=minutes)).isoformat()
    entry = {
        "id": "0193aaaa-0000-7000-8000-000000000001", "kind": "ferment_reading", "kind_version": 1, "mark": F1,
        "mark_by": "scanned", "read_at": at, "typed_at": at, "person": "NS", "device": house.device["id"],
        "seq": house.seq,
        "values": {"gravity": {"raw": "1.050", "unit": "SG"},
                   "temp": {"raw": "15.0", "unit": "degC", "instrument": instrument}},
    }
    batch = {"now": at, "device": house.device["id"], "entries": [entry]}
    return intake.hand_in(house.book, batch, via="phone", now=datetime.fromisoformat(at))["results"][0]["id"]


def test_hostile_names_stay_text(house):
    evil = '<script>alert("x")</script>'
    registry.set_site(house.book, {"name": evil, "accounts": "us"}, by="OL")
    registry.put_instrument(house.book, {"id": "TH-9", "sort": evil, "title": evil, "unit": evil}, by="OL")
    house.log("gauge", C1, 10, volume=("40", "L"), temp=("20", "degC"), strength=("70", "pct_vol"), purpose="opening")
    client = house.client("IM")
    for path in ("/desk/periods", "/desk/periods/2025-09", "/desk/instruments", "/desk/instruments/TH-9",
                 "/desk/records", "/desk/periods/2025-09/close"):
        answer = client.get(path)
        assert answer.status_code == 200 and "<script>alert" not in answer.text, path
    assert client.get("/desk/periods/2025-09.pdf").status_code == 200


def test_the_uncertainty_of_a_line_is_the_same_everywhere(season):
    client = season.client("NS")
    rows = [row for row in rows_of(client, "2025-10") if row["basis"] == "stated" and row["account"] == "production"]
    off = {row["row"]: row["lpa_l_off_by"] for row in rows}
    assert off["in"] == off["total_in"] != "" and off["opening"] == off["closing"] == ""
    assert 0.1 < float(off["in"]) < 3.0
    page = client.get("/desk/periods/2025-10/known").text
    assert f'28.00 <span class="quiet">± {off["in"]}</span>' in page and "twice the standard uncertainty" in page
    told = client.get("/desk/periods/2025-10.json").json
    found = {row["row"]: row["lpa_l_off_by"] for row in told["stated"][0]["rows"]}
    assert found["in"] == off["in"] and found["opening"] is None
    paper = pypdfium2.PdfDocument(client.get("/desk/periods/2025-10.pdf").data)
    assert off["in"] in paper[0].get_textpage().get_text_range()
    assert '/desk/periods/2025-10/known"' in client.get("/desk/periods/2025-10").text
