"""The desk's pages of runs: balance, yield, side by side, feints, plans; and questions of one entry together."""

import re

import pytest

from tests.desk.conftest import F1, R1, R2, R3, S1, token
from webapp.desk.runs.pages import first_part


@pytest.fixture
def told(house):
    """A plum run with a late plan: 27 L in, 25.6 L of heads, hearts and tails out."""
    log = house.log
    log("fruit_intake", F1, -2000, gross=("900", "kg"), tare=("60", "kg"), material="plum", grower_lot="G4",
        temp=("14", "degC"), rot=("1", "pct"), batch="B-25-01")
    log("charge", S1, 0, run_name="R-1", from_vessel=F1, wash=("450", "L"), wash_strength=("6", "pct_vol"),
        heads_to=R1, hearts_to=R2, tails_to=R3)
    log("cut", S1, 55, event="first_drop")
    log("cut", S1, 70, event="heads_cut", receiver=R2, reason="nose", strength=("78", "pct_vol"), flow=("9", "L_h"))
    log("run_reading", S1, 120, strength=("70", "pct_vol"), flow=("12", "L_h"))
    log("cut", S1, 200, event="hearts_cut", receiver=R3, reason="nose", strength=("57", "pct_vol"))
    log("run_end", S1, 260, reason="strength")
    for fraction, mark, litres, pct, minutes in (("heads", R1, "1.4", "78.6", 280), ("hearts", R2, "29", "70", 284),
                                                 ("tails", R3, "15", "28", 288)):
        log("fraction_gauge", mark, minutes, still=S1, fraction=fraction, volume=(litres, "L"), temp=("20", "degC"),
            strength=(pct, "pct_vol"), goes_to="stays")
    log("cut_plan", "", 300, what="plum", hearts_to=("57.5", "pct_vol"), why="wet card under it")
    run = house.book.query("SELECT id FROM runs")[0]["id"]
    return house, run


def test_a_run_shows_its_balance_yield_and_plan(told):
    house, run = told
    text = house.client("NS").get(f"/desk/runs/{run}").text
    assert "In 27.00, out 26.41: 0.59 L pure alcohol (2.2 %) not accounted for." in text
    assert "Stillage was not read: taken as 0.2 %." in text
    assert 'class="part--hearts"' in text
    assert "Flat rate for plum, other: 3.9 in Germany, 5.5 in Austria" in text
    assert "hearts to 57.5 %" in text
    assert "Mark as the best run" not in text, "the floor names no best run at the desk"


@pytest.mark.parametrize(("receivers", "cuts", "first"), [
    ({"heads": None, "hearts": R2, "tails": None}, ["first_drop"], "low wines"),
    ({"heads": None, "hearts": R2, "tails": None}, ["first_drop", "heads_cut"], "heads"),
    ({"heads": R1, "hearts": R2, "tails": R3}, ["first_drop"], "heads"),
])
def test_a_curve_begins_with_heads_but_for_a_stripping_run(receivers, cuts, first):
    lines = [{"entry": str(n), "at": f"2026-03-01T0{n}:00:00Z", "event": event} for n, event in enumerate(cuts)]
    assert first_part({"receivers": receivers, "cuts": lines}) == first


def test_the_distiller_marks_the_best_run_and_plans_show_who_and_why(told):
    house, run = told
    desk = house.client("IM")
    page = f"/desk/runs/{run}"
    answer = desk.post(f"{page}/best", data={"why": "almond to the end", "csrf_token": token(desk, page)})
    assert answer.status_code == 302
    assert "almond to the end" in desk.get(page).text
    plans = desk.get("/desk/runs/plans").text
    assert "wet card under it" in plans and "almond to the end" in plans
    assert ">any<" in plans
    entries = house.book.query("SELECT person FROM entries WHERE kind = 'best_run'")
    assert [row["person"] for row in entries] == ["IM"]
    assert house.client("NS").post(f"{page}/best", data={"csrf_token": token(desk, page)}).status_code in (400, 403)


def test_runs_side_by_side_are_those_that_were_ticked(told):
    house, run = told
    house.log("charge", S1, 900, run_name="R-2", from_vessel=F1, wash=("300", "L"), wash_strength=("6", "pct_vol"))
    other = next(row["id"] for row in house.book.query("SELECT id FROM runs") if row["id"] != run)
    desk = house.client("NS")
    assert f'value="{run}"' in desk.get("/desk/runs").text
    text = desk.get(f"/desk/runs/beside?run={run}&run={other}&run={run}&run=nonsense").text
    assert len(re.findall(r'<th scope="col"', text)) == 2
    assert "29.0 at 70.0" in text
    assert "Tick two to 4 runs" in desk.get(f"/desk/runs/beside?run={run}").text


def test_yields_and_feints(told):
    house, _ = told
    desk = house.client("OL")
    yields = desk.get("/desk/runs/yields").text
    assert "B-25-01" in yields and "146 %" in yields  # tests/book/test_run_wishes.py has the sum
    assert "BGBl. 1995/39" in yields
    feints = desk.get("/desk/runs/feints").text
    assert "4.20" in feints and "1.10" in feints


def test_nothing_says_that_composition_is_known(told):
    house, run = told
    desk = house.client("IM")
    for path in (f"/desk/runs/{run}", "/desk/runs/yields", "/desk/runs/feints", "/desk/runs/plans"):
        text = desk.get(path).text.lower()
        for word in ("safe to drink", "methanol free", "methanol ok", "heads removed", "pure spirit"):
            assert word not in text


def test_questions_to_one_entry_stand_together(house):
    """A warm, rising strength that its vapour speaks against: several questions, one row."""
    house.log("charge", S1, 0, run_name="R-1", from_vessel=F1, wash=("450", "L"), wash_strength=("6", "pct_vol"))
    house.log("cut", S1, 70, event="heads_cut", receiver=R2, strength=("70", "pct_vol"))
    odd = house.log("run_reading", S1, 120, glass=("85.2", "pct_glass"), temp=("26", "degC"),
                    vapour_temp=("93", "degC"))
    assert len(odd["queries"]) >= 3
    text = house.client("IM").get("/desk/queries").text
    rows = [row for row in text.split('<li class="list__item"') if "True strength" in row]
    assert len(rows) == 1
    assert rows[0].count("list__why") == len([q for q in odd["queries"] if q["weight"] != "note"])
    assert f"{rows[0].count('list__why')} questions" in rows[0]
    assert rows[0].count('value="stands"') == rows[0].count("list__why"), "each is answered for itself"
