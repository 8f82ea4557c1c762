"""Two people read one book at the desk in two languages: each page is said in its reader's words, figures and days.

The second language is made of the English catalogue, so that no word of it has to be believed: each text of a message
stands in brackets. What of a page stands in none was not said by the catalogue.
"""

import html
import re

import pytest

from tests.words.invented import catalogues_of
from webapp.book.house import people
from webapp.words import desk

from .conftest import C1, F1

PAGES = [
    "/desk/", "/desk/queries", "/desk/entries", "/desk/vessels", f"/desk/vessels/{F1}", "/desk/cellar",
    "/desk/cellar/casks", f"/desk/cellar/casks/{C1}", "/desk/cellar/map", "/desk/cellar/ready", "/desk/cellar/house",
    "/desk/runs", "/desk/runs/yields", "/desk/blending", "/desk/blending/plan", "/desk/trace?q=F1", "/desk/periods",
    "/desk/seasons", "/desk/records", "/desk/labels", "/desk/settings", "/desk/people", "/desk/phones", "/desk/limits",
    "/desk/rules", "/desk/proof", "/desk/sheets", "/desk/search?q=pear", "/desk/tastings", "/desk/tastings/new",
    "/desk/you", "/desk/bottled", "/desk/certificates", "/desk/instruments", "/desk/vessels/new", "/desk/address",
]
_TAG = re.compile(r"<[^>]*>", re.DOTALL)
_HIDDEN = re.compile(r"<(script|style|code|kbd|option|time)\b.*?</\1>", re.DOTALL)


def bracketed(source):
    """Return a message with its text in brackets; what it chooses and its parameters stay what they are."""
    if "->" in source:
        return re.sub(r"(\[\w+\] )(?!\{ \$\w+ ->)(.*)", r"\1⟦\2⟧", source)
    return f"⟦{source}⟧"


@pytest.fixture
def czech(tmp_path_factory, monkeypatch):
    """Let Czech be English in brackets."""
    lines = [f"{id_} = {bracketed(source)}" for id_, source in desk.sources("en").items()]
    text = "### Only the desk reads what follows.\n" + "\n".join(lines)
    yield from catalogues_of({"cs": text}, tmp_path_factory.mktemp("words"), monkeypatch)


@pytest.mark.usefixtures("filled", "czech")
def test_each_reads_the_pages_in_their_own_language(house):
    people.set_language(house.book, "IM", "cs", by="OL")
    people.set_language(house.book, "OL", "en", by="OL")
    for code in ("IM", "OL"):
        people.put_person(house.book, {"code": code, "access": "office"}, by="OL")
    english, czech = house.client("OL"), house.client("IM")
    for path in PAGES:
        plain, other = (client.get(path, follow_redirects=True) for client in (english, czech))
        assert (plain.status_code, other.status_code) == (200, 200), path
        assert '<html lang="en-GB"' in plain.text and '<html lang="cs"' in other.text
        assert "⟦" not in plain.text, path
        assert other.text.count("⟦") > 15, path
        assert "{$" not in other.text and "{ $" not in other.text, path


@pytest.mark.usefixtures("filled", "czech")
def test_the_head_of_a_page_has_no_word_outside_the_brackets(house):
    people.set_language(house.book, "OL", "cs", by="OL")
    page = _HIDDEN.sub("", house.client("OL").get("/desk/you").text)
    outside, before = html.unescape(_TAG.sub("\n", page.partition("<body>")[2])), ""
    while outside != before:  # one in another
        before, outside = outside, re.sub(r"⟦[^⟦⟧]*⟧", "", outside)
    words = {line.strip() for line in outside.splitlines() if re.search(r"[^\W\d_]{3,}", line)}
    # The house, the browser of the test, and the languages by their own names.
    assert [word for word in words if not re.search("Tarrowdene|Werkzeug|[Bb]rowser|English|Čeština", word)] == []


@pytest.mark.usefixtures("czech")
def test_figures_are_written_as_the_language_writes_them(house):
    house.log("gauge", C1, 10, volume=("40", "L"), temp=("20", "degC"), strength=("70", "pct_vol"), purpose="opening")
    english = house.client("OL").get(f"/desk/vessels/{C1}").text
    people.set_language(house.book, "OL", "cs", by="OL")
    czech = house.client("OL").get(f"/desk/vessels/{C1}").text
    assert "28.00 L" in english
    assert "40,0 L" in czech and "70,0 % vol" in czech and "28,00 L" in czech and "28.00 L" not in czech
