"""Certificates at the desk: on the page of their vessel, in the trace, in the list, and what is not tested."""

from __future__ import annotations

import pytest

from tests.desk.conftest import C1, House
from webapp.trade.marks import make_mark

PAPER = {"laboratory": "Laboratory One", "document": "26-0415", "taken_on": "2025-09-20"}
METHANOL = {"methanol": ("1150", "g_hL_pa")}


@pytest.fixture
def filled(house: House) -> None:
    """A cask with plum spirit in it since 15 August."""
    house.log("gauge", C1, -40 * 1440, what="plum", net_weight=("168.0", "kg"), strength=("61.0", "pct_vol"),
              temp=("12", "degC"), purpose="opening")


def test_a_vessel_says_what_is_not_tested_and_never_that_it_is_well(house: House, filled: None) -> None:
    page = house.client("NS").get(f"/desk/vessels/{C1}").text
    assert "Not tested: methanol, ethyl carbamate. A hydrometer sees none of it." in page
    assert f"/m/{C1}/log/lab_certificate" in page
    empty = house.client("NS").get(f"/desk/vessels/{make_mark('R2')}").text
    assert "Not tested" not in empty


def test_a_certificate_stands_with_its_vessel_its_trace_and_the_list(house: House, filled: None) -> None:
    house.log("lab_certificate", C1, 0, **PAPER, **METHANOL, methanol_plus_minus=("40", "g_hL_pa"),
              hydrocyanic_acid_below=("0.5", "g_hL_pa"), copper=("3", "mg_L"))
    client = house.client("NS")
    for path in (f"/desk/vessels/{C1}", f"/desk/trace/{C1}", "/desk/certificates", "/desk/certificates?which=open"):
        page = client.get(path).text
        assert "Laboratory One, 26-0415" in page, path
        assert "1150 g/hL p.a. ± 40 g/hL p.a." in page
        assert "not safely under" in page and "another laboratory may find as much as 1267" in page
        assert "none found, below 0.5 g/hL p.a." in page
        assert "no limit here" in page, "copper has none"
    assert "Not tested: ethyl carbamate." in client.get(f"/desk/vessels/{C1}").text
    assert client.get(f"/desk/trace/{C1}.pdf").status_code == 200


def test_it_is_about_what_stood_there_when_the_sample_was_taken(house: House, filled: None) -> None:
    house.log("lab_certificate", C1, 0, **{**PAPER, "taken_on": "2025-07-01"}, **METHANOL)
    client = house.client("NS")
    for path in (f"/desk/vessels/{C1}", f"/desk/trace/{C1}"):
        assert "26-0415" not in client.get(path).text.split("<h2>Entries")[0], path
    assert "26-0415" in client.get("/desk/certificates").text


def test_one_that_was_struck_is_not_shown(house: House, filled: None) -> None:
    entry = house.log("lab_certificate", C1, 0, **PAPER, **METHANOL)["id"]
    house.log("answer", "", 5, entry=entry, verdict="struck", reason="another cask")
    assert "26-0415" not in house.client("NS").get("/desk/certificates").text


def test_results_that_need_a_second_look_can_be_shown_alone(house: House, filled: None) -> None:
    house.log("lab_certificate", C1, 0, **PAPER, methanol=("700", "g_hL_pa"))
    client = house.client("NS")
    assert "26-0415" in client.get("/desk/certificates").text
    assert "No result is over a limit" in client.get("/desk/certificates?which=open").text


def test_of_bottles_it_is_known_by_batch_or_lot(house: House) -> None:
    from tests.desk.trace_world import tell

    told = tell(house)
    batch = house.book.one("SELECT batch FROM bottlings")["batch"]
    house.log("lab_certificate", "", 0, **PAPER, batch=batch.lower(), spirit="plum", **METHANOL)
    page = house.client("NS").get(f"/desk/trace/{told['bottled']}").text
    assert "Laboratory One, 26-0415" in page and "not safely under" in page
