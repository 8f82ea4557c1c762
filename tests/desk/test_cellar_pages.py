"""The cellar's pages: ferments, casks, the map and the ready list show what the book knows; rules are kept with who."""

from __future__ import annotations

from webapp.book.cellar import casks
from webapp.book.house import places, registry
from webapp.desk.cellar import pages
from webapp.desk.cellar.warehouse import rooms_of
from webapp.trade.marks import make_mark

from .conftest import C1, F1, START, token

EVIL = '<script>alert("x")</script>'
PAGES = ("/desk/cellar", "/desk/cellar/casks", "/desk/cellar/map", "/desk/cellar/ready", "/desk/cellar/house")


def filled_cask(house, gross="206.4", days=400):
    house.log("gauge", C1, -days * 1440, what="plum", net_weight=("168.0", "kg"), strength=("61.0", "pct_vol"),
              temp=("12", "degC"), purpose="opening")
    return house.log("cask_regauge", C1, 0, gross=(gross, "kg"), strength=("60.4", "pct_vol"), temp=("12", "degC"),
                     condition="tight")


def test_the_list_of_casks_shows_those_that_are_due(house):
    """A year after its last gauge a cask is to be regauged; the house samples none. Common practice, no source."""
    filled_cask(house)
    client = house.client("NS")
    assert f"/desk/cellar/casks/{C1}" in client.get("/desk/cellar/casks?due=regauge").text
    assert "No such cask." in client.get("/desk/cellar/casks?due=sample").text
    registry.set_site(house.book, {"due": {"regauge_months": 60}}, by="IM")
    assert "No such cask." in client.get("/desk/cellar/casks?due=regauge").text
    assert f"/desk/cellar/casks/{C1}" in client.get("/desk/cellar/casks?due=nonsense").text


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


def test_a_law_stands_beside_the_loss_of_a_cask_where_the_house_wants_it(house):
    """AlkStV 13: 4 % a year of the average stock. Czech annex 4: 0.35 % a month to 300 L, of the stock at its end."""
    filled_cask(house)
    client = house.client("IM")
    assert "the law allows" not in client.get(f"/desk/cellar/casks/{C1}").text
    path = "/desk/cellar/house"
    for law, share, words in (("de", "3.9", "4 % a year of the average stock"), ("cz", "4.1", "0.35 % a month")):
        kept = client.post(path, data={"csrf_token": token(client, path), "loss_allowance": law})
        assert kept.status_code == 302
        page = client.get(f"/desk/cellar/casks/{C1}").text
        row = page.split("the law allows")[1]
        assert row.split('class="number">')[1].startswith(share) and words in row and "no proof" in row
    assert client.post(path, data={"csrf_token": token(client, path), "loss_allowance": "xx"}).status_code == 422


def test_a_cask_shows_loss_forecast_and_the_day_asked_for(house):
    filled_cask(house)
    client = house.client("NS")
    cask = next(one for one in casks.casks(house.book) if one.row["mark"] == C1)
    shown = f"{cask.loss:.1f}"
    assert shown in client.get("/desk/cellar/casks").text
    page = client.get(f"/desk/cellar/casks/{C1}?on=2026-09-24").text
    ahead = cask.at(START.replace(year=2026, hour=0))
    assert f"{ahead['lpa']['at']:.1f}" in page and f"{ahead['strength_pct']['low']:.1f}" in page
    assert "That is no day" in client.get(f"/desk/cellar/casks/{C1}?on=monday").text
    assert "No forecast for a day before" in client.get(f"/desk/cellar/casks/{C1}?on=1999-01-01").text
    assert client.get("/desk/cellar/casks/C999").status_code == 404


def put(house, **places):
    """Put vessels into the registry, casks but for fermenters, each with its place."""
    for base, place in places.items():
        sort = "fermenter" if base.startswith("F") else "cask"
        registry.put_vessel(house.book, {"mark": make_mark(base), "sort": sort, "place": place}, by="OL")


def rooms(house, names=None):
    vessels = places.standing_vessels(house.book)
    return {room.name: room for room in rooms_of(vessels, places.known_places(house.book), {}, names or {})}


def names_at(room, row, position):
    return [one.row["name"] for one in room.places[row, position].standing]


def test_the_map_has_rooms_rows_and_positions(house):
    put(house, C002="CELL-A2", C003="CELL-A10", C004="cell b1", C005="YARD", C006=EVIL, F7="CELL-A2")
    found = rooms(house, {"CELL": "Lower cellar"})
    cell = found["Lower cellar"]
    assert (cell.rows, cell.positions) == (["A", "B"], ["1", "2", "10"])
    assert names_at(cell, "A", "2") == ["C002", "F7"] and names_at(cell, "B", "1") == ["C004"]
    assert ("A", "1") not in cell.places, "nobody has named it"
    assert [one.row["name"] for one in found["YARD"].standing] == ["C005"] and not found["YARD"].places
    page = house.client("NS").get("/desk/cellar/map").text
    assert EVIL not in page and "C004" in page


def test_rows_and_tiers_come_from_any_pattern(house):
    put(house, C002="Rickhouse B row 12 tier 3", C003="Rickhouse B row 2 tier 1", C004="A/3/2", C005="Loft 4")
    put(house, C007="Loft 12")
    found = rooms(house)
    rick = found["Rickhouse B"]
    assert rick.is_upright and rick.rows == ["3", "1"], "the first tier at the foot"
    assert rick.positions == ["2", "12"] and rick.row_title("3") == "tier 3" and rick.position_title("12") == "row 12"
    assert names_at(found["A"], "3", "2") == ["C004"]
    assert found["Loft"].rows == [""] and found["Loft"].positions == ["4", "12"]


def test_a_place_that_was_left_is_drawn_hollow_and_the_vessel_stands_where_an_entry_put_it(house):
    put(house, C002="CELL-A2", C003="CELL-A3")
    mark = make_mark("C002")
    house.log("cask_move", mark, 10, from_place="CELL-A2", to_place="CELL-B1")
    house.log("cask_move", mark, 20, from_place="CELL-B1", to_place="LOFT-K1")
    found = rooms(house)
    assert found["CELL"].places["B", "1"].standing == [] and found["CELL"].free == 2
    assert names_at(found["LOFT"], "K", "1") == ["C002"]
    client = house.client("NS")
    page = client.get("/desk/cellar/map").text
    assert page.count("place--free") == 2 and ">CELL-B1<" in page
    for path in ("vessels?q=loft", "labels?room=LOFT", f"vessels/{mark}", f"cellar/casks/{mark}"):
        said = client.get(f"/desk/{path}").text
        assert "LOFT-K1" in said and mark.split("-")[0] in said, path
    assert mark not in client.get("/desk/vessels?q=cell-a2").text, "it stands there no longer"
    assert "put it at <strong>LOFT-K1" in house.client("OL").get(f"/desk/vessels/{mark}/edit").text


def test_a_move_that_is_struck_puts_nothing_anywhere(house):
    put(house, C002="CELL-A2")
    mark = make_mark("C002")
    moved = house.log("cask_move", mark, 10, from_place="CELL-A2", to_place="CELL-X9")
    assert places.stands_at(house.book, [mark]) == {mark: "CELL-X9"}
    house.log("answer", mark, 20, entry=moved["id"], query="", verdict="struck", reason="another cask")
    assert places.stands_at(house.book, [mark]) == {mark: "CELL-A2"}
    assert "CELL-X9" not in places.known_places(house.book)


def test_boxes_for_a_place_offer_those_that_exist_in_their_order(house):
    put(house, C002="CELL-A10", C003="CELL-A9")
    moved = house.log("cask_move", make_mark("C002"), 10, from_place="CELL-A10", to_place="LOFT-K1")
    offered = '<datalist id="places"><option value="CELL-A9"></option><option value="CELL-A10"></option>' + (
        '<option value="LOFT-K1"></option></datalist>')
    client = house.client("OL")
    for path in ("/desk/vessels/new", f"/desk/vessels/{C1}/edit", f"/desk/entries/{moved['id']}/amend"):
        page = client.get(path).text
        assert offered in page and 'list="places"' in page, path


def test_a_large_house_is_drawn_a_room_at_a_time(house, monkeypatch):
    monkeypatch.setattr(pages, "PLACES_MOST", 2)
    put(house, C002="CELL-A2", C003="CELL-A3", C004="LOFT-K1")
    client = house.client("NS")
    page = client.get("/desk/cellar/map").text
    assert "CELL-A3" in page and "LOFT-K1" not in page
    assert "LOFT-K1" in client.get("/desk/cellar/map?room=loft").text


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
