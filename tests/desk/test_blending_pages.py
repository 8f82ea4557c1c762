"""The planner and the page of a bottling, over a small house: what is shown agrees with what was entered."""

import re
from datetime import UTC, datetime, timedelta
from urllib.parse import urlencode

import pytest

from tests.desk.conftest import START, token
from webapp.book.before.vat_draws import read_draws
from webapp.book.house import registry
from webapp.trade.marks import make_mark

T1, T3 = make_mark("T1"), make_mark("T3")
CASKS = {"C001": ("205.7", "59.6"), "C009": ("231.5", "60.4"), "C012": ("90.0", "60.0")}
TARES = {"C001": 46.3, "C009": 49.8, "C012": 20.0}


@pytest.fixture
def cellar(house):
    """Three casks with plum in them, filled long ago, and two tanks."""
    for base, tare in TARES.items():
        registry.put_vessel(
            house.book,
            {"mark": make_mark(base), "name": base, "sort": "cask", "capacity_l": 225, "tare_kg": tare},
            by="OL",
        )
        gross, strength = CASKS[base]
        net = f"{float(gross) - tare:.1f}"
        house.log("gauge", make_mark(base), -2_000_000, net_weight=(net, "kg"), strength=(strength, "pct_vol"),
                  temp=("20", "degC"), purpose="opening", what="plum")
    for mark, litres in ((T1, 1000), (T3, 300)):
        registry.put_vessel(house.book, {"mark": mark, "name": mark[:2], "sort": "tank", "capacity_l": litres}, by="OL")
    return house


def asked(**more):
    wish = {"solve": "1", "what": "plum", "strength": "45", "strength_unit": "pct_vol", "within": "2", "youngest": "2",
            "soak": "5.5", "aim": "fewest", "use": [make_mark("C001"), make_mark("C009")]}
    return f"/desk/blending/plan?{urlencode(wish | more, doseq=True)}"


def text_of(answer):
    return re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", answer.text))


def test_the_planner_lists_what_stands_in_casks_with_its_age(cellar):
    page = cellar.client("IM").get("/desk/blending/plan?what=plum")
    assert page.status_code == 200
    assert page.text.count('name="use"') == 3
    years = (datetime.now(UTC) - START + timedelta(minutes=2_000_000)).days / 365.25
    assert text_of(page).count(f"at least {years:.1f}") == 3


def test_the_demo_years_vat_comes_out(cellar):
    # K-26-03: 329.9 kg and 124.9 kg of water; here the wood keeps 5.9 kg of each, so a few kilograms less.
    page = text_of(cellar.client("IM").get(asked()))
    assert re.search(r"48[0-9]\.\d L at 45\.0 % vol", page)
    assert re.search(r"12[0-9]\.\d kg of water", page)
    assert "no loss, its pure alcohol stays" in page
    assert "Fruit spirit in the EU is bottled at 37.5 % vol or more" in page
    assert "not legal advice" in page


def test_what_is_too_young_stays_out_unless_it_must_go_in(cellar):
    client = cellar.client("IM")
    assert "Nothing is left to choose from" in text_of(client.get(asked(youngest="10")))
    one = make_mark("C012")
    page = text_of(client.get(asked(youngest="10", always=[one])))
    assert "from 1 vessel " in page


def test_years_by_the_papers_count(cellar):
    mark = make_mark("C001")
    page = text_of(cellar.client("IM").get(asked(youngest="10", **{f"years-{mark}": "12,5"})))
    assert "Youngest 12.5 years in wood" in page


@pytest.mark.parametrize(
    ("box", "typed", "said"),
    [
        ("strength", "abc", "That is no plain number."),
        ("volume", "-3", "Between"),
        ("share", "1e999", "That is no plain number."),
        ("within", "400", "Between"),
    ],
)
def test_a_box_with_nonsense_says_what_to_do(cellar, box, typed, said):
    page = cellar.client("IM").get(asked(**{box: typed}))
    assert page.status_code == 200
    assert "field__error" in page.text
    assert said in page.text
    assert typed in page.text


def keep(client, address, **more):
    page = client.get(address)
    draws = page.text.split('name="draws" value="')[1].split('"')[0]
    sent = {"csrf_token": token(client, address), "draws": draws, "name": "K-26-03", "tank": T1, **more}
    return draws, client.post(address, data=sent)


def test_a_plan_is_kept_as_an_entry_and_followed(cellar):
    client = cellar.client("IM")
    draws, answer = keep(client, asked())
    assert answer.status_code == 302
    page = text_of(client.get(answer.headers["Location"]))
    assert "Planned by IM" in page
    assert page.count("not yet") == 3
    kilograms, _ = read_draws(draws)
    assert len(kilograms) == 2
    assert "K-26-03" in text_of(client.get("/desk/blending"))
    assert "K-26-03" in text_of(client.get(f"/desk/vessels/{T1}"))
    card = client.get("/api/cards?since=0")
    if card.status_code == 200:
        assert any(one.get("planned", {}).get("name") == "K-26-03" for one in card.json["cards"])


def test_the_floor_may_look_but_not_keep(cellar):
    client = cellar.client("NS")
    page = client.get(asked())
    assert page.status_code == 200
    assert "Keep this plan" not in page.text
    sent = {"csrf_token": token(client, asked()), "draws": f"{make_mark('C001')} 1", "name": "x", "tank": T1}
    assert client.post(asked(), data=sent).status_code == 403


@pytest.mark.parametrize("draws", ["", "nothing", f"{make_mark('F3')} 4", "<script>1</script>"])
def test_draws_that_were_tampered_with_are_refused(cellar, draws):
    client = cellar.client("IM")
    answer = client.post(asked(), data={"csrf_token": token(client, asked()), "draws": draws, "name": "x", "tank": T1})
    assert answer.status_code == 400
    assert "work the vat out again" in answer.text


def test_an_unknown_plan_or_batch_is_said(cellar):
    client = cellar.client("IM")
    assert client.get("/desk/blending/plans/no-such").status_code == 404
    assert client.get("/desk/bottlings?batch=no-such").status_code == 404
    assert client.get("/desk/bottlings").status_code == 404


@pytest.fixture
def bottled(cellar):
    cellar.log("gauge", T3, 0, volume=("285", "L"), strength=("45.0", "pct_vol"), temp=("20", "degC"),
               purpose="opening", what="plum")
    cellar.log("bottling_gauge", T3, 5, batch="K-26-03", volume=("285", "L"), strength=("45.0", "pct_vol"),
               temp=("20", "degC"), label_strength=("45.0", "pct_vol"))
    for minutes, fill, strength in ((30, "100.2", "45.1"), (60, "99.8", "44.9"), (90, "100.0", "45.0")):
        cellar.log("bottle_check", T3, minutes, line="1", tested=("5", "count"), bottle_size=("0.5", "L"),
                   fill_found=(fill, "pct"), fill_least=("99.1", "pct"), strength_found=(strength, "pct_vol"),
                   labels_right="yes")
    return cellar


def test_a_batch_under_way_shows_its_checks_and_what_the_label_may_say(bottled):
    page = text_of(bottled.client("IM").get("/desk/bottlings?batch=K-26-03"))
    assert "A label may say 44.7 to 45.3 % vol" in page  # 0.3 either way: Regulation (EU) 1169/2011, Annex XII
    assert "Fill 100.00 % of the label on average of 3 checks, spread 0.20" in page
    assert "Strength 45.00 % vol on average, spread 0.10" in page
    assert "570 bottles of 0.5 L" in page
    assert "3.0 % under" in page  # 15 mL of 500: Directive 76/211/EEC, from memory
    assert "under way" in text_of(bottled.client("IM").get("/desk/blending"))


def test_a_closed_batch_accounts_for_its_pure_alcohol(bottled):
    bottled.log("bottling_close", T3, 300, filled=("569", "count"), broken=("1", "count"), library=("2", "count"),
                bottle_size=("0.5", "L"), per_case=("6", "count"), case_from="1", case_to="94", odd_case="95R",
                loss=("0.5", "L"), tank_empty="yes")
    page = text_of(bottled.client("IM").get("/desk/bottlings?batch=K-26-03"))
    assert "in bottles 284.0 127.80" in page  # 568 bottles of 0.5 L at 45 %
    assert "Gauged 128.25, bottled 127.80: 0.45 L pure alcohol (0.4 %) not in a bottle" in page
    assert "1 to 94 95R 569 1 2 568" in page
