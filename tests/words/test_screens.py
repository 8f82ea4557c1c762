"""Every word on a phone's screen comes out of the catalogue, and the catalogue has no word besides.

The texts of the browser's side are found by a parser of JavaScript (acorn, .browser/sentences.mjs), those of the pages
by Python's own reader of HTML.
"""

from __future__ import annotations

import html.parser
import json
import re
import shutil
import subprocess
from functools import cache
from pathlib import Path

import pytest

from tests.shipping.node_tools import needs_tools
from tests.words.catalogues import ROOMS
from webapp.places import STATIC_DIR
from webapp.shipping import build
from webapp.shipping.assets import later_name
from webapp.words.catalogue import ENGLISH, desk_text, messages_in, phone_parts

FIRST, LATER = (messages_in(part) for part in phone_parts(ENGLISH))
DESK = messages_in(desk_text(ENGLISH))
# What looks like words and is none, by rooms whose texts nobody sees: errors of programmers, names of errors, twins of
# sentences that the catalogue says (marks, forecasts), figures as they are spoken in English.
UNSEEN = (
    "trade/",
    "desk.js",
    "desk/",
    "doors/",
    "sw-body.js",
    "scan/decoder.js",
    "jobs/helps/spoken.js",
    "jobs/draw/level.js",
)
# Selectors, questions to the browser about itself, names of errors and of keys, classes.
MACHINE = re.compile(
    r"[^\w]*[:.\[(#][^ ]*[\w\])]?.*|[A-Z][a-z]+[A-Z]\w+|Home|End|Enter|Delete|Backspace|Escape|Notification|"
    r"(input|slate-keypad|button)[:, ].*|[\w-]+ [\w-]+--[\w-]*\x01?|13px \x01|Retry-After|Content-Encoding|"
    r"stack dials|undo ring|key key--side"
)
UNITS = re.compile(r"\x01? ?(min|h|L|s)")
ALLOWED = {
    ("floor.js", "The words of this page did not come. Open it once more with signal. The slate is safe."): "no words",
    ("floor.js", "Try again"): "no words",
    ("kinds/kinds.js", "The words of this version are not on the phone. Open the app once with signal."): "no words",
    ("kinds/kinds.js", "The \x01 of this version is not on the phone. Open the app once with signal."): "no words",
    ("kinds/kinds.js", "The sentences are read before the kinds are loaded."): "an error of ours",
    ("shell/language.js", "\x01=\x01; Path=/; Max-Age=\x01; SameSite=Lax\x01"): "a cookie",
    ("slate/worker.js", "This page works only with signal:"): "for the console",
    ("slate/enclosehandin.js", "bytes \x01-\x01/\x01"): "a header",
    ("slate/signing.js", "cellarslate entry 1\n"): "what is signed",
    ("slate/file.js", "from a file"): "a reason that the book keeps",
    ("form/fix.js", "put right"): "a reason that the book keeps",
    ("form/extras.js", "in use"): "a state of an instrument",
    ("jobs/cellar/due.js", "in use"): "a state of an instrument",
    ("kinds/uncertainty.js", "density meter"): "a sort of instrument",
    ("pages/more.js", "Cellarslate \x01. "): "our name",
}


@cache
def found() -> dict[str, list[list[object]]]:
    """Return the report of .browser/sentences.mjs: the texts in the phone's code, and the messages that it asks for."""
    node = shutil.which("node")
    assert node
    done = subprocess.run(
        [node, "sentences.mjs", str(STATIC_DIR)], cwd=build.TOOLS, capture_output=True, check=True, text=True
    )
    read: dict[str, list[list[object]]] = json.loads(done.stdout)
    return read


@needs_tools
def test_no_sentence_stands_in_the_code_of_the_phone() -> None:
    wrong = [
        (name, line, text)
        for name, line, text in found()["texts"]
        if not str(name).startswith(UNSEEN)
        and (name, text) not in ALLOWED
        and not MACHINE.fullmatch(str(text))
        and not UNITS.fullmatch(str(text))
    ]
    assert wrong == []


@needs_tools
def test_a_sentence_in_the_code_would_be_found(tmp_path: Path) -> None:
    (tmp_path / "one.js").write_text(
        'const a = html`<p title="Of the still">Heads ${x} off</p>`;\nsay("Nose first.");\nmark(`Read at ${y}`);\n',
        encoding="utf-8",
    )
    node = shutil.which("node")
    assert node
    done = subprocess.run(
        [node, "sentences.mjs", str(tmp_path)], cwd=build.TOOLS, capture_output=True, check=True, text=True
    )
    assert [text for _, _, text in json.loads(done.stdout)["texts"]] == [
        "Of the still",
        "Heads \x01 off",
        "Nose first.",
        "Read at \x01",
    ]


@needs_tools
def test_every_message_that_a_screen_asks_for_is_there_with_the_parameters_it_gets() -> None:
    wrong = []
    for name, line, pattern, params in found()["asked"]:
        ids = [id_ for id_ in (*FIRST, *LATER) if re.fullmatch(str(pattern), id_)]
        if not ids:
            wrong.append((name, line, pattern, "no such message"))
        for id_ in ids:
            wanted = set(re.findall(r"\$(\w+)", {**LATER, **FIRST}[id_]))
            if isinstance(params, list) and ".+" not in str(pattern) and wanted != set(params):
                wrong.append((name, line, id_, str(wanted ^ set(params))))
    assert wrong == []


@needs_tools
def test_every_word_of_a_screen_is_said_by_some_page_and_travels_with_it() -> None:
    used: dict[str, set[str]] = {}
    for name, _, pattern, _ in found()["asked"]:
        for id_ in (*FIRST, *LATER):
            if re.fullmatch(str(pattern), id_):
                used.setdefault(id_, set()).add(str(name))
    screens = [id_ for id_ in (*FIRST, *LATER) if id_.startswith("floor-")]
    assert [id_ for id_ in screens if id_ not in used] == []
    assert [id_ for id_ in screens if id_ in FIRST and all(later_name(name) for name in used[id_])] == [], "later"
    assert [id_ for id_ in screens if id_ in LATER and not all(later_name(name) for name in used[id_])] == [], "first"
    for name in {each for names in used.values() for each in names}:
        takes = re.search(r'from "(?:\.\.?/)+words/(t|later)\.js"', (STATIC_DIR / name).read_text("utf-8"))
        assert takes and (takes[1] == "later") == bool(later_name(name)), name


class _Words(html.parser.HTMLParser):
    """Collects what somebody sees or hears of a page: text, and attributes that are shown or read out."""

    def __init__(self) -> None:
        super().__init__()
        self.texts: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.texts += [value or "" for name, value in attrs if name in ("aria-label", "title", "placeholder", "alt")]

    def handle_data(self, data: str) -> None:
        self.texts.append(data)


# Our name; a mark and a phone's name as examples; what a macro calls the sorts of boxes.
NO_WORDS = {"Cellarslate", "F3-8", "PH-2", "figure choice select yes_no when words"}
FLOOR_PAGES = [
    *sorted((ROOMS / "templates" / "floor").glob("*.html")),
    *(ROOMS / "templates" / name for name in ("base.html", "_nav.html", "_fields.html")),
]


@pytest.mark.parametrize("path", FLOOR_PAGES, ids=lambda path: path.name)
def test_no_sentence_stands_in_a_page_of_the_phone(path: Path) -> None:
    source = path.read_text("utf-8")
    said = re.sub(r"\{#.*?#\}", "", source, flags=re.DOTALL)
    strings = re.findall(r'"([A-Z][a-z]+ [^"]*|[a-z]+ [a-z]+ [a-z]+[^"]*)"', said)
    reader = _Words()
    reader.feed(re.sub(r"\{#.*?#\}|\{%.*?%\}|\{\{.*?\}\}", "", source, flags=re.DOTALL))
    words = {" ".join(text.split()) for text in reader.texts if re.search(r"[^\W\d_]{2}", text)}
    assert words - NO_WORDS == set()
    assert [text for text in strings if "--" not in text and "_" not in text] == []


def test_every_word_of_a_page_is_there_and_is_said() -> None:
    pages = "".join(path.read_text("utf-8") for path in (ROOMS / "templates").rglob("*.html"))
    pages += "".join(path.read_text("utf-8") for path in ROOMS.rglob("*.py"))
    asked = set(re.findall(r"""["'](floor-[\w-]+)["']""", pages))
    ready = {id_ for id_ in DESK if id_.startswith("floor-")}
    assert asked - ready - {"floor-form-"} == set()
    assert {id_ for id_ in ready - asked if not id_.startswith("floor-form-")} == set()
