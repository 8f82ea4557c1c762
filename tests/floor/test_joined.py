"""The joined script: every module in it, each with all its names, none waiting for itself; the joined stylesheet."""

from __future__ import annotations

import re

import pytest
import tree_sitter_javascript
from tree_sitter import Language, Parser

from webapp.floor import joined
from webapp.floor.modules import imports_of
from webapp.floor.shorten import shorter_script
from webapp.places import STATIC_DIR

NAMES = joined.joined_names()
SCRIPT = joined.joined_script(NAMES)


def test_the_script_is_whole_and_of_one_byte_a_character() -> None:
    for text in (SCRIPT, shorter_script(SCRIPT)):
        assert not Parser(Language(tree_sitter_javascript.language())).parse(text.encode()).root_node.has_error
        assert max(map(ord, text)) < 256
        assert not re.search(r"^\s*(import|export) (?!function need)", text, re.MULTILINE)


def test_every_module_that_is_needed_is_there() -> None:
    assert set(re.findall(r'need\("([^"]+)"\)', SCRIPT)) <= set(NAMES)
    assert {"floor.js", "pages/log.js", "slate/queue.js"} <= set(NAMES)


def test_no_module_waits_for_itself() -> None:
    """Modules run when first needed: a circle would never end."""
    done: set[str] = set()

    def walk(name: str, path: tuple[str, ...]) -> None:
        assert name not in path, " -> ".join((*path, name))
        if name not in done:
            for target in imports_of(name):
                walk(target, (*path, name))
            done.add(name)

    for name in NAMES:
        walk(name, ())


@pytest.mark.parametrize("name", NAMES)
def test_a_stand_in_gives_every_name_of_its_module(name: str) -> None:
    text = (STATIC_DIR / name).read_text("utf-8")
    given = set(re.findall(r"^export (?:async )?(?:function|const|class) (\w+)", text, re.MULTILINE))
    for clause in re.findall(r"\bexport ?\{([^}]*)\}", text):
        given |= {part.split(" as ")[-1].strip() for part in clause.split(",")}
    found = re.search(r"export const \{ (.*) \} = need", joined.stand_in(name))
    assert set(found[1].split(", ") if found else ()) == given


def test_the_stylesheet_holds_every_sheet_in_its_layer() -> None:
    written = (STATIC_DIR / joined.STYLE).read_text("utf-8")
    whole = joined.joined_style()
    assert "@import" not in whole
    for name, layer in re.findall(r'@import url\("([^"]+)"\) layer\((\w+)\)', written):
        sheet = ((STATIC_DIR / joined.STYLE).parent / name).read_text("utf-8")
        assert f"@layer {layer} {{\n{sheet}\n}}" in whole, name
