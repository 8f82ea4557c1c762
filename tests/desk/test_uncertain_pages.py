"""± where a person decides: on an entry, on its vessel, on a cask's loss and on the balance of a run.

160 kg net by a scale of class III, e 0.1 kg (limit 0.15 kg at 2064 e: Directive 2014/31/EU), glass of class III.
"""

import re

from tests.desk.conftest import C1, F1, R2, S1, House, token
from webapp.book.house import registry


def weighed(house: House, minutes: int, gross: str, glass: str, unit: str = "kg") -> str:
    said = house.log("cask_regauge", C1, minutes, gross=(gross, unit), glass=(glass, "pct_glass"), temp=("20", "degC"),
                     condition="tight")
    return str(said["id"])


def test_an_entry_a_vessel_and_a_cask_say_how_far_they_may_be_off(house: House) -> None:
    weighed(house, 0, "206.4", "59.7")
    entry, client = weighed(house, 60, "206.0", "59.6"), house.client("IM")
    page = client.get(f"/desk/entries/{entry}").text
    assert "± is twice the standard uncertainty" in page
    assert '59.6 % vol <span class="quiet">± 0.2</span>' in page  # 2 x 0.065 % vol, rounded up
    assert 'LPA <span class="quiet">± 0.34</span>' in page
    vessel = client.get(f"/desk/vessels/{C1}").text
    assert 'title="Twice the standard uncertainty' in vessel and "± 0.34</span>" in vessel
    # 0.46 L in an hour are less than two gauges can tell apart.
    cask = client.get(f"/desk/cellar/casks/{C1}").text
    assert '0.46 L <span class="quiet">± 0.48</span> of pure alcohol went' in cask


def test_a_house_of_us_units_reads_it_in_its_own(house: House) -> None:
    entry = weighed(house, 0, "455", "59.7", "lb")
    registry.set_site(house.book, {"units": "us"}, by="OL")
    page = house.client("IM").get(f"/desk/entries/{entry}").text
    assert 'proof <span class="quiet">± 0.4</span>' in page  # of proof: twice that of % vol


def test_the_balance_of_a_run_says_how_well_it_is_known(house: House) -> None:
    run = house.log("charge", S1, 0, run_name="R-1", from_vessel=F1, wash=("482", "L"),
                    wash_strength=("5.1", "pct_vol"), hearts_to=R2)["id"]
    house.log("run_end", S1, 60, reason="strength")
    house.log("fraction_gauge", R2, 90, still=S1, fraction="hearts", remnant=("0", "L"),
              remnant_strength=("0", "pct_vol"), volume=("32.3", "L"), temp=("20", "degC"),
              strength=("70.5", "pct_vol"), goes_to="stays")
    page = house.client("IM").get(f"/desk/runs/{run}").text
    known = re.search(r"It is known to ± ([0-9.]+) L", page)
    # The wash: 482 L, 0.5 % vol at most, 2 x 1.39 L; and 32 L dipped in a receiver that could hold 2000.
    assert known and 2.79 < float(known[1]) < 4.2


def test_an_instrument_has_a_class_and_an_interval(house: House) -> None:
    client = house.client("IM")
    path = "/desk/instruments/new"
    sent = {"id": "AH-1", "sort": "alcoholmeter", "unit": "pct_glass", "accuracy": "I", "interval": "0.1",
            "state": "in use", "csrf_token": token(client, path)}
    assert client.post(path, data=sent).status_code == 302
    row = next(row for row in registry.instruments(house.book) if row["id"] == "AH-1")
    assert (row["accuracy"], row["interval"]) == ("I", 0.1)
    answer = client.post(path, data=sent | {"id": "AH-2", "interval": "-1"})
    assert answer.status_code == 422 and "above 0" in answer.text
