"""The cellar's pages: ferments, casks, the map and the ready list show what the book knows; rules are kept with who."""

from __future__ import annotations

from webapp.book.cellar import casks
from webapp.book.house import registry
from webapp.desk.cellar.warehouse import areas_of
from webapp.trade.marks import make_mark

from .conftest import C1, F1, START, token

EVIL = '<script>alert("x")</script>'
PAGES = ("/desk/cellar", "/desk/cellar/casks", "/desk/cellar/map", "/desk/cellar/ready", "/desk/cellar/house")


def filled_cask(house, gross="206.4", days=400):
    house.log("gauge", C1, -days * 1440, what="plum", net_weight=("168.0", "kg"), strength=("61.0", "pct_vol"),
              temp=("12", "degC"), purpose="opening")
    return house.log("cask_regauge", C1, 0, gross=(gross, "kg"), strength=("60.4", "pct_vol"), temp=("12", "degC"),
                     condition="tight")


def test_an_empty_house_has_every_page(house):
    for path in PAGES:
        answer = house.client("OL").get(path)
        assert answer.status_code == 200, path
        assert "<h1>" in answer.text


def test_ferments_show_gravity_and_the_day_they_end(house, filled):
    for day, gravity in enumerate(("1.052", "1.051", "1.048", "1.042", "1.035", "1.028")):
        house.log("ferment_reading", F1, day * 1440, temp=("15.0", "degC"), gravity=(gravity, "SG"))
    page = house.client("NS").get("/desk/cellar").text
    assert "1.028" in page and "about <strong>" in page
    fill = house.book.one("SELECT id FROM fills WHERE mark = ?", (F1,))["id"]
    one = house.client("NS").get(f"/desk/cellar/ferments/{fill}").text
    assert "by the fall of gravity" in one and "data-charts" in one and "1.0480" in one
    assert house.client("NS").get("/desk/cellar/ferments/nothing").status_code == 404


def test_a_cask_shows_loss_forecast_and_the_day_asked_for(house):
    filled_cask(house)
    client = house.client("NS")
    cask = next(one for one in casks.casks(house.book) if one.row["mark"] == C1)
    shown = f"{cask.rates['last']['lpa_pct_year']:.1f}"
    assert shown in client.get("/desk/cellar/casks").text
    page = client.get(f"/desk/cellar/casks/{C1}?on=2026-09-24").text
    ahead = cask.at(START.replace(year=2026, hour=0))
    assert f"{ahead['lpa']['at']:.1f}" in page and f"{ahead['strength_pct']['low']:.1f}" in page
    assert "That is no day" in client.get(f"/desk/cellar/casks/{C1}?on=monday").text
    assert "No forecast for a day before" in client.get(f"/desk/cellar/casks/{C1}?on=1999-01-01").text
    assert client.get("/desk/cellar/casks/C999").status_code == 404


def test_the_map_has_areas_rows_and_positions(house):
    for base, place in (("C002", "CELL-A2"), ("C003", "CELL-A10"), ("C004", "CELL-B1"), ("C005", "YARD")):
        registry.put_vessel(house.book, {"mark": make_mark(base), "sort": "cask", "place": place}, by="OL")
    registry.put_vessel(house.book, {"mark": make_mark("C006"), "sort": "cask", "place": EVIL}, by="OL")
    areas = areas_of(casks.casks(house.book), {"CELL": "Lower cellar"})
    cell = next(area for area in areas if area.id == "CELL")
    assert cell.name == "Lower cellar" and list(cell.rows) == ["A", "B"] and cell.positions[-1] == 10
    assert [cask.row["name"] for cask in cell.rows["A"][10]] == ["C003"]
    page = house.client("NS").get("/desk/cellar/map").text
    assert EVIL not in page and "C004" in page


def test_a_count_that_found_a_swap_stands_on_the_map(house):
    for base, place in (("C002", "CELL-A2"), ("C003", "CELL-A3")):
        registry.put_vessel(house.book, {"mark": make_mark(base), "sort": "cask", "place": place}, by="OL")
    house.log("stock_count", make_mark("C002"), 10, place="CELL-A3", found="here", signed="NS")
    house.log("stock_count", make_mark("C003"), 20, place="CELL-A2", found="here", signed="NS")
    page = house.client("NS").get("/desk/cellar/map").text
    assert "they have changed places, nothing is short" in page
    assert page.count("elsewhere?") == 2


def test_the_distiller_sets_when_a_cask_is_ready_and_it_is_kept_who(house):
    filled_cask(house, days=900)
    client = house.client("IM")
    data = {"csrf_token": token(client, "/desk/cellar/ready"), "what": "plum", "age_years": "2", "strength_low": "55"}
    assert client.post("/desk/cellar/ready", data=data).status_code == 302
    assert registry.site(house.book)["ready_rules"] == [{"what": "plum", "age_years": 2.0, "strength_low": 55.0}]
    page = client.get("/desk/cellar/ready").text
    assert 'Ready <span class="quiet">1</span>' in page and "Last set by IM" in page
    data |= {"csrf_token": token(client, "/desk/cellar/ready"), "score_low": "7"}
    client.post("/desk/cellar/ready", data=data)
    assert "not tasted" in client.get("/desk/cellar/ready").text
    changed = [one for one in registry.changes(house.book) if "ready_rules" in one["after"]]
    assert len(changed) == 2 and changed[0]["person"] == "IM" and changed[0]["before"]
    data = {"csrf_token": token(client, "/desk/cellar/ready"), "what": "Plum"}
    client.post("/desk/cellar/ready", data=data)
    assert registry.site(house.book)["ready_rules"] == []


def test_the_floor_hand_sets_no_rule_and_nonsense_is_said(house):
    hand = house.client("NS")
    data = {"csrf_token": token(house.client("IM"), "/desk/cellar/ready"), "age_years": "2"}
    assert hand.post("/desk/cellar/ready", data=data).status_code in (400, 403)
    assert not registry.site(house.book).get("ready_rules")
    client = house.client("IM")
    for bad in ("seven", "-3", "1e9"):
        data = {"csrf_token": token(client, "/desk/cellar/ready"), "age_years": bad}
        assert client.post("/desk/cellar/ready", data=data).status_code == 422
    assert hand.get("/desk/cellar/house").status_code == 403


def test_what_is_due_and_the_words_of_tasting_go_to_the_phones(house):
    client = house.client("IM")
    data = {"csrf_token": token(client, "/desk/cellar/house"), "ferment_h": "12", "regauge_months": "6",
            "sample_months": "0", "taste_months": "", "instrument_days": "14", "check_bottles": "500",
            "words": "plum stone\n\nvanilla\nvanilla", "scores": "fruit\ndepth"}
    assert client.post("/desk/cellar/house", data=data).status_code == 302
    site = registry.site(house.book)
    assert site["due"] == {"ferment_h": 12.0, "regauge_months": 6.0, "sample_months": 0.0, "instrument_days": 14.0,
                           "check_min": 30.0, "check_bottles": 500.0}
    assert site["tasting"] == {"words": ["plum stone", "vanilla"], "scores": ["fruit", "depth"]}
    assert "plum stone" in client.get("/desk/cellar/house").text


def test_setting_a_rule_asks_nothing_anew(house, rising):
    before = house.book.query("SELECT * FROM queries")
    registry.set_site(house.book, {"due": {"ferment_h": 6}, "ready_rules": []}, by="IM")
    assert house.book.memory.dirty_roots == set() and house.book.query("SELECT * FROM queries") == before
