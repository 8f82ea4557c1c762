"""All words of the desk, its doors and its papers stand in the catalogue, each is said, every language has them."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from fluent.syntax import FluentParser
from fluent.syntax import ast as ftl

from tests.words.outside import ROOMS, TEMPLATES, in_module, in_template
from webapp.words import catalogue, desk
from webapp.words.catalogue import ENGLISH, LOCALES

PAGES = ("desk", "access", "doors", "group", "trust")
MODULES = ("desk", "access", "doors", "labels")
# Of the group's server the pages alone are read by people; the rest talks to sites, or at the command line.
OF_GROUP = ("pages.py", "shown.py", "files.py", "tracing.py", "bottles.py")
# What stands outside, and why it may. It never grows: what is put right is taken out of it.
OUTSIDE = {
    # Values that the book keeps, and that a page names by a message.
    "out of use", "on the way",
    # Of a file that a machine reads.
    "every fill and run well mixed; alcohol of a ferment shared over its loads by mass", "Cellarslate labels",
    # Of the journal of who came in, which is kept in English.
    "nothing was asked", "not at a name of the house", "asked in a page of others", "by the passkey ",
    "made for somebody else", "its count was ",
    # Of the command line.
    "This book is not the demo's own, so it has no open doors. Serve it with `cellarslate serve`.",
    # To a phone, before it knows a language.
    "The demo's signal is cut for this browser.\n",
    # Of layouts, which are checked when the program starts.
    "Give 1 to 50 columns and 1 to 100 rows.", "Margins cannot be below 0, and a hole is at most 20 mm wide.",
    "The labels overlap ", "The labels need ", "Give page and label sizes in millimetres, above 0 and up to ",
    "Give the host alone, such as BOOK.EXAMPLE or BOOK.EXAMPLE:8443, without https:// or a path.",
}
# An id that is put together of a code: `f"desk-part-{part}"`, `"desk-weight-" ~ weight`.
_JOINED = re.compile(r"""['"]((?:desk|door|access|paper|group)-[\w-]*[-_])(?:\{|['"]\s*~)""")
_NAMED = re.compile(r"""['"]((?:desk|door|access|paper|group|floor)-[\w-]+)['"]""")
_IN_TEMPLATE = re.compile(r"""\bt\(\s*['"]([a-z][\w-]+)['"]""")


def _templates() -> Iterator[Path]:
    for room in PAGES:
        yield from sorted((TEMPLATES / room).rglob("*.html"))
    yield from (TEMPLATES / name for name in ("base.html", "_nav.html", "_icons.html"))


def _modules() -> Iterator[Path]:
    for room in MODULES:
        yield from sorted((ROOMS / room).rglob("*.py"))
    yield from (ROOMS / "group" / name for name in OF_GROUP)


def test_no_template_and_no_module_says_a_sentence_of_its_own() -> None:
    said = [(path.name, words) for path in _templates() for words in in_template(path)]
    said += [(path.name, words) for path in _modules() for words in in_module(path)]
    assert [one for one in said if one[1] not in OUTSIDE] == []
    assert sorted(OUTSIDE - {words for _, words in said}) == [], "put right: take it out of the list"


@pytest.mark.parametrize("page", [
    "<p>Look at it.</p>", '<a title="Look at it">x</a>', "{{ badge('ask', \"Look at it\") }}",
    '<input type="submit" value="Look">',
])
def test_a_sentence_in_a_page_is_found(tmp_path: Path, page: str) -> None:
    path = tmp_path / "page.html"
    path.write_text(page, encoding="utf-8")
    assert list(in_template(path))


def test_a_sentence_in_a_module_is_found(tmp_path: Path) -> None:
    path = tmp_path / "module.py"
    path.write_text('"""Say it."""\nflash("Kept as it is.")\nflash(say("desk-kept"))\n', encoding="utf-8")
    assert list(in_module(path)) == ["Kept as it is."]


def _sources() -> Iterator[str]:
    for path in [*TEMPLATES.rglob("*.html"), *ROOMS.rglob("*.py")]:
        yield path.read_text("utf-8")


def test_every_message_of_the_desk_is_said_somewhere_and_every_one_said_is_there() -> None:
    known = {id_ for id_ in desk.sources(ENGLISH) if not id_.startswith("floor-")}
    assert len(known) > 2000
    texts = list(_sources())
    named = {id_ for text in texts for id_ in _NAMED.findall(text)}
    joined = tuple({start for text in texts for start in _JOINED.findall(text)})
    assert sorted(id_ for id_ in known if id_ not in named and not id_.startswith(joined)) == []
    said = {id_ for text in texts for id_ in _IN_TEMPLATE.findall(text)}
    said |= {id_ for _, id_, _ in _said_in_modules()}
    assert sorted(id_ for id_ in said - desk.sources(ENGLISH).keys() if id_[-1] not in "-_") == []


def _said_in_modules() -> Iterator[tuple[str, str, set[str] | None]]:
    """Yield (where, id, names of the parameters, if they all stand there) of each message that a module says."""
    for path in sorted(ROOMS.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ("say", "Later", "t"):
                first = node.args[0] if node.args else None
                if isinstance(first, ast.Constant) and isinstance(first.value, str):
                    names = {str(one.arg) for one in node.keywords}
                    where = f"{path.relative_to(ROOMS)}:{node.lineno}"
                    yield where, first.value, None if any(one.arg is None for one in node.keywords) else names


def _params(source: str) -> set[str]:
    return set(re.findall(r"\$(\w+)", source))


def test_each_message_of_the_desk_gets_the_parameters_it_uses_and_no_other() -> None:
    known = desk.sources(ENGLISH)
    wrong = [(where, id_) for where, id_, given in _said_in_modules()
             if id_ in known and given is not None and given != _params(known[id_])]
    assert wrong == []


def test_a_page_gives_each_message_the_parameters_it_uses() -> None:
    """By the calls of Jinja's own parser, so that no text is taken for one."""
    from jinja2 import Environment, nodes

    known, wrong, many = desk.sources(ENGLISH), [], 0
    for path in TEMPLATES.rglob("*.html"):
        tree = Environment().parse(path.read_text("utf-8"))
        for call in tree.find_all(nodes.Call):
            if isinstance(call.node, nodes.Name) and call.node.name == "t" and isinstance(call.args[0], nodes.Const):
                many += 1
                id_, given = call.args[0].value, {one.key for one in call.kwargs}
                if id_ in known and given != _params(known[id_]):
                    wrong.append((path.name, id_, given ^ _params(known[id_])))
    assert many > 1000
    assert wrong == []


def test_no_message_of_the_desk_marks_up_a_page() -> None:
    assert [id_ for id_, text in desk.sources(ENGLISH).items() if re.search(r"</?[a-z]|&\w+;", text)] == []


OTHERS = [code for code in LOCALES if code != ENGLISH and catalogue.has_catalogue(code)]


@pytest.mark.parametrize("code", [ENGLISH, *OTHERS])
def test_the_desks_part_of_a_catalogue_is_whole(code: str) -> None:
    """No junk by the parser of the reference, no id twice; nothing missing or more; no parameter lost."""
    body = FluentParser().parse(catalogue.desk_text(code)).body
    assert [entry.content for entry in body if isinstance(entry, ftl.Junk)] == []
    ids = [entry.id.name for entry in body if isinstance(entry, ftl.Message)]
    assert len(set(ids)) == len(ids)
    english, own = desk.sources(ENGLISH), desk.sources(code)
    assert sorted(english.keys() ^ own.keys()) == []
    assert [id_ for id_ in english if _params(english[id_]) != _params(own[id_])] == []


def test_a_brace_that_is_missing_is_found() -> None:
    body = FluentParser().parse("desk-one = { $many casks\n").body
    assert any(isinstance(entry, ftl.Junk) for entry in body)
