"""What is printed and drawn: markup, script and marks of direction in typed texts stay letters; nothing is fetched."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any
from xml.etree import ElementTree

import pypdfium2
import pypdfium2.raw as pdfium
import pytest

from tests.desk.conftest import R2, House
from tests.desk.trace_world import C1, F1, S1, T2, tell
from webapp.book.house import registry
from webapp.book.periods.ledger import Closed
from webapp.book.periods.periods import Account, Period, Shown
from webapp.book.periods.warnings import Notice
from webapp.desk.periods.paper import paper
from webapp.labels import LAYOUTS, LabelItem, render_labels

MARKUP = "<font size=40>big</font><a href='https://evil.invalid/'>x</a><img src='file:///etc/passwd'/>&lt;<b"
PDF = ") Tj ET << /S /JavaScript /JS (app.alert(1)) /URI (https://evil.invalid) >> \\n <link destination='x'>"
CONTROL = "a\x00b\x07c\x1b[31md\x0be\x85f\u2028g\ufeffh\ud83c"
TURNED = "\u202egnp.exe \u2066\u05d0\u05d1 \u200fend"
LONG = "W" * 20_000
LINES = "x\n" * 9_000
HOSTILE = {"markup": MARKUP, "pdf": PDF, "control": CONTROL, "turned": TURNED, "long": LONG, "lines": LINES}
TYPED = ("grower_lot", "batch", "run_name", "serial", "lot", "lot_mark", "place", "manner")
# The picture cuts names short: the worst comes first.
SVG = (
    "]]></title><b x=\"'&</title></svg><script>alert(1)</script>-->"
    '<image href=x onerror=alert(2) xlink:href="file:///etc/passwd"/>'
)
DRAWN = {"svg", "path", "rect", "title", "text"}
SAID = {"class", "viewBox", "role", "aria-label", "d", "stroke-width", "x", "y", "width", "height", "rx"}


def letters_of(body: bytes) -> str:
    """Return what a PDF says, having looked that it does nothing: no link, picture, script, file or form in it."""
    document = pypdfium2.PdfDocument(body)
    assert pdfium.FPDFDoc_GetJavaScriptActionCount(document) == 0
    assert document.count_attachments() == 0
    assert document.get_formtype() == pdfium.FORMTYPE_NONE
    assert list(document.get_toc()) == []
    words = []
    for page in document:
        assert pdfium.FPDFPage_GetAnnotCount(page) == 0
        assert {one.type for one in page.get_objects()} <= {pdfium.FPDF_PAGEOBJ_TEXT, pdfium.FPDF_PAGEOBJ_PATH}
        words.append(page.get_textpage().get_text_range())
    # A catalogue may act when the file is opened. Its dictionary lies open, outside of texts and packed streams.
    bare = re.sub(rb"stream.*?endstream|\((?:\\.|[^()\\])*\)", b"", body, flags=re.DOTALL)
    assert not re.search(rb"/(OpenAction|AA|JavaScript|JS|Launch|URI|GoToR|SubmitForm|EmbeddedFile)\b", bare)
    assert len(document) < 10, "a text without end fills no pages"
    return " ".join(" ".join(words).split())


def period_of(text: str) -> Period:
    """A closed month with the text wherever the book would let it through, if something before it failed."""
    line = Shown("in", f"out:{text}", text, text, 5)
    account = Account("production", 1_000_000, (line,), (replace(line, side="out"),), 1_000_000)
    signed = Closed("2025-10", text, text, text, text, {}, {}, {}, {})
    return Period("2025-10", ("2025-10",), "", "", "UTC", (account,), (account, account), (signed,))


@pytest.mark.parametrize("name", HOSTILE)
def test_a_periods_paper_shows_hostile_texts_as_letters(name: str) -> None:
    text = HOSTILE[name]
    said = letters_of(paper(period_of(text), text, "2025-11-02 08:00", [Notice("x", "ask", text)]))
    shown = {"markup": MARKUP, "pdf": PDF, "control": "a?b?c?[31md", "turned": "?gnp.exe ???", "long": "W" * 30,
             "lines": "x x x x"}[name]
    bare = said.replace(" ", "")
    assert bare.count(shown.replace(" ", "")) >= 4, "in the head, the foot, the lines and the notice"
    # The figures and the caution stand, whatever the texts are.
    assert "On hand at the end" in said and "not legal advice" in said and "Signature" in said
    assert all(char.isprintable() for char in said)
    assert "page 1" in said


def test_the_months_paper_of_a_hostile_house_is_only_letters(house: House) -> None:
    registry.set_site(house.book, {"name": MARKUP, "accounts": "us"}, by="OL")
    warm = {"temp": ("20", "degC"), "strength": ("70", "pct_vol")}
    house.log("gauge", R2, 0, volume=("40", "L"), **warm, purpose="opening", what=MARKUP)
    house.log("destruction", R2, 30, what="heads", volume=("5", "L"), **warm, place=PDF, manner=MARKUP, withdrawn="no",
              watched_by="IM")
    answer = house.client("NS").get("/desk/periods/2025-09.pdf")
    assert answer.mimetype == "application/pdf"
    said = letters_of(answer.data)
    assert "<a href='https://evil.invalid/'>" in said and "24.50" in said


@pytest.mark.parametrize("name", HOSTILE)
def test_labels_show_hostile_texts_as_letters(name: str) -> None:
    text = HOSTILE[name]
    items = [LabelItem(mark=F1, name=text, place=text), LabelItem(mark=C1, name=text, curved=True)]
    said = letters_of(render_labels(items, next(iter(LAYOUTS.values())), host=None))
    assert F1 in said and C1 in said.replace(" ", "")
    assert all(char.isprintable() for char in said)


class Teller:
    """The house, with script added to every name that the small year gives."""

    def __init__(self, house: House) -> None:
        self.house, self.book = house, house.book

    def log(self, kind: str, mark: str, minutes: int, /, **values: Any) -> Any:
        """Log as the house does."""
        hostile = {name: f"{SVG} {value}" for name, value in values.items() if name in TYPED and kind != "cask_fill"}
        return self.house.log(kind, mark, minutes, **values | hostile)


def test_the_trace_draws_hostile_names_as_letters(house: House) -> None:
    """Defends: whoever looks at a trace, or saves its picture, against names of loads, runs, lots, batches, vessels."""
    told = tell(Teller(house))
    for row in registry.vessels(house.book):
        registry.put_vessel(house.book, {"mark": row["mark"], "name": f"{SVG} {row['name']}", "title": SVG}, by="OL")
    client = house.client("NS")
    seen = 0
    for key in (told["bottled"], f"load-{told['one']}", told["run2"], F1, C1, T2, S1):
        page = client.get(f"/desk/trace/{key}").text
        assert "<script>alert" not in page and "<image" not in page
        for drawing in re.findall(r'<svg class="lineage.*?</svg>', page, re.DOTALL):
            tree = ElementTree.fromstring(drawing)
            assert {node.tag for node in tree.iter()} <= DRAWN
            assert {name for node in tree.iter() for name in node.attrib} <= SAID
            assert all(len(node) == 0 for node in tree.iter() if node.tag in ("text", "title"))
            seen += sum("]]></title><" in (node.text or "") for node in tree.iter("title"))
    assert seen > 20, "the names were there, as letters"


def test_the_runs_of_hostile_names_draw_letters_only(house: House) -> None:
    told = tell(Teller(house))
    page = house.client("NS").get(f"/desk/runs/{told['run2']}").text
    assert "alert(1)" in page and "<script>alert" not in page and "<image" not in page
    drawings = re.findall(r'<svg class="(?:balance|icon)".*?</svg>', page, re.DOTALL)
    assert drawings
    for drawing in drawings:
        tree = ElementTree.fromstring(drawing)
        assert {node.tag for node in tree.iter()} <= {"svg", "rect", "use"}
        links = {value for node in tree.iter() for name, value in node.attrib.items() if name.endswith("href")}
        assert all(link.startswith("/static/icons/") for link in links)
