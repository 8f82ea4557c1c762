"""The search at the desk: the box on every page, what is found under it, and nothing of what one may not see."""

from html.parser import HTMLParser

import pytest

from tests.desk.conftest import C1, F1
from webapp.book.house import parties, registry
from webapp.book.search import keeping


class Options(HTMLParser):
    """The options of a listbox by their address."""

    def __init__(self, page):
        super().__init__()
        self.addresses = []
        self.feed(page)

    def handle_starttag(self, tag, attrs):
        said = dict(attrs)
        if said.get("role") == "option":
            self.addresses.append(said["href"])


@pytest.mark.parametrize("path", ["/desk/", "/desk/entries", "/desk/vessels", "/desk/runs", "/desk/search"])
def test_every_page_of_the_desk_has_the_box(house, path):
    page = house.client("NS").get(path).text
    assert 'placeholder="mark, lot, person, paper no."' in page
    assert page.count('role="search" aria-label="The whole book"') == 1


def test_the_mark_of_a_vessel_leads_straight_to_it(house):
    client = house.client("NS")
    for typed in (C1, "c 1", "C001"):
        assert client.get("/desk/search", query_string={"q": typed}).headers["Location"] == f"/desk/vessels/{C1}"
    assert client.get("/desk/search", query_string={"q": "c 1", "all": 1}).status_code == 200
    assert client.get("/desk/search?q=c").status_code == 200


@pytest.mark.usefixtures("filled")
def test_what_is_found_leads_to_its_page(house):
    note = house.log("shift_note", F1, 5, text="wasps at the hatch & <b>cap</b> sinking")["id"]
    client = house.client("NS")
    page = client.get("/desk/search?q=wasp").text
    assert f'href="/desk/entries/{note}"' in page
    assert "<mark>wasps</mark> at the hatch" in page
    assert "<b>" not in page
    loads = client.get("/desk/search?q=ostrey").text
    address = loads.split('class="found__name" href="')[1].split('"')[0]
    assert "Trace of" in client.get(address).text


def test_everything_that_is_found_leads_to_a_page_that_opens(house, filled):
    house.log("shift_note", F1, 5, text="ostrey wasps")
    registry.put_instrument(house.book, {"id": "TH-9", "sort": "thermometer", "title": "ostrey probe"}, by="OL")
    parties.put_party(house.book, {"name": "Ostrey Farm", "role": "supplier"}, by="OL")
    for code in ("NS", "IM", "OL"):
        client = house.client(code)
        addresses = Options(client.get("/desk/search/hits?q=ostrey").text).addresses
        addresses += Options(client.get("/desk/search/hits?q=n").text).addresses
        assert len(addresses) > 4
        for address in addresses:
            assert client.get(address).status_code == 200, (code, address)


def test_customers_and_growers_are_for_the_office_alone(house):
    parties.put_party(house.book, {"name": "Lowfold Orchard", "role": "supplier", "number": "S-88"}, by="OL")
    for code, is_shown in (("NS", False), ("IM", False), ("OL", True)):
        client = house.client(code)
        for path in ("/desk/search?q=S-88", "/desk/search?q=S-88&in=party", "/desk/search/hits?q=S-88"):
            assert ("Lowfold" in client.get(path).text) is is_shown, (code, path)


@pytest.mark.usefixtures("filled")
def test_one_sort_can_be_asked_for_by_itself(house):
    for n in range(12):
        house.log("shift_note", F1, n, text=f"wasps again, {n}")
    client = house.client("IM")
    page = client.get("/desk/search?q=wasps").text
    assert "More of these" in page
    assert page.count('class="found__line') == 8
    alone = client.get("/desk/search?q=wasps&in=entry").text
    assert alone.count('class="found__line') == 12
    assert client.get("/desk/search?q=wasps&in=nonsense").text.count('class="found__line') == 8


def test_an_empty_answer_says_what_to_try(house):
    house.log("shift_note", F1, 1, text="hydrometer cracked")
    client = house.client("NS")
    page = client.get("/desk/search?q=hydromter").text
    assert "Nothing answers to “hydromter”." in page
    assert 'href="/desk/search?q=hydrometer"' in page
    assert "Type the beginning of a mark" in client.get("/desk/search").text
    assert "Nothing answers" in client.get("/desk/search/hits?q=zzzz").text


def test_a_struck_entry_says_so(house):
    entry = house.log("shift_note", F1, 1, text="wasps at the hatch")["id"]
    house.log("answer", "", 2, entry=entry, verdict="struck", reason="a mistake")
    assert "<strong>struck</strong>" in house.client("NS").get("/desk/search?q=wasps").text


@pytest.mark.usefixtures("filled")
def test_an_index_that_is_still_being_made_is_told(house):
    with house.book.write():
        keeping.begin_anew(house.book)
    client = house.client("NS")
    assert "still being made" in client.get("/desk/search?q=zzzz").text
    keeping.index_all(house.book)
    assert "still being made" not in client.get("/desk/search?q=zzzz").text
