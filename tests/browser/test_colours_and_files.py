"""The look's files: contrast of every pair of colours, vendored modules, icons, templates without style or script.

Contrast follows WCAG 2.2 (w3.org/TR/WCAG22, success criteria 1.4.3 and 1.4.11; relative luminance as defined there).
"""

import hashlib
import json
import re
from pathlib import Path
from xml.etree import ElementTree

import pytest

ROOT = Path(__file__).parents[2]
STATIC = ROOT / "static"
GROUNDS = ("ground", "sheet", "raised")
INKS = ("chalk", "dust", "copper", "stop", "ask", "note", "well", "heads", "tails")


def read_themes() -> dict[str, list[dict[str, str]]]:
    css = (STATIC / "style" / "tokens.css").read_text()
    blocks = re.findall(r"color-scheme: (light|dark);(.*?)\}", css, re.S)
    themes: dict[str, list[dict[str, str]]] = {"light": [], "dark": []}
    for name, body in blocks:
        themes[name].append(dict(re.findall(r"--([\w-]+): (#[0-9a-f]{6});", body)))
    return themes


def compute_contrast(one: str, other: str) -> float:
    def luminance(colour: str) -> float:
        parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
        red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue

    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def test_contrast_formula_gives_the_known_ratios() -> None:
    # Black on white is 21:1 by definition; #767676 on white is the lightest grey that passes 4.5 (4.54, from memory).
    assert compute_contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert compute_contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.005)


def test_dark_theme_is_the_same_by_system_and_by_choice() -> None:
    themes = read_themes()
    assert len(themes["light"]) == 1
    assert len(themes["dark"]) == 2
    assert themes["dark"][0] == themes["dark"][1]
    assert themes["dark"][0].keys() == themes["light"][0].keys()


@pytest.mark.parametrize("theme", ["dark", "light"])
def test_every_text_pair_is_legible(theme: str) -> None:
    tokens = read_themes()[theme][0]
    pairs = [(ink, ground) for ink in INKS for ground in GROUNDS] + [("on-copper", "copper")]
    poor = {pair: compute_contrast(tokens[pair[0]], tokens[pair[1]]) for pair in pairs}
    assert {pair: ratio for pair, ratio in poor.items() if ratio < 4.5} == {}


@pytest.mark.parametrize("theme", ["dark", "light"])
def test_edges_of_controls_can_be_found(theme: str) -> None:
    tokens = read_themes()[theme][0]
    assert min(compute_contrast(tokens["edge"], tokens[ground]) for ground in GROUNDS) >= 3.0


def test_vendored_files_are_the_ones_listed() -> None:
    rows = json.loads((STATIC / "vendor" / "vendor.json").read_text())
    listed = {file["path"]: file["sha256"] for row in rows for file in row["files"]}
    assert all(row["version"] and row["licence"] and row["source"] for row in rows)
    wrong = [
        path for path, digest in listed.items() if hashlib.sha256((ROOT / path).read_bytes()).hexdigest() != digest
    ]
    assert wrong == []
    present = {str(path.relative_to(ROOT)) for path in (STATIC / "vendor").glob("*/*") if path.is_file()}
    assert present - listed.keys() == set()


def test_templates_and_modules_ask_only_for_icons_that_exist() -> None:
    symbols = {symbol.get("id") for symbol in ElementTree.parse(STATIC / "icons" / "sprite.svg").getroot()}
    sources = [*(ROOT / "webapp").rglob("*.html"), *(STATIC / "ui").glob("*.js"), *(STATIC / "pages").glob("*.js")]
    asked = {name for path in sources for name in re.findall(r"\bicon(?:Element)?\(\"([\w-]+)\"", path.read_text())}
    assert asked
    assert asked - symbols == set()


def test_no_style_or_script_stands_inside_a_template() -> None:
    inline = re.compile(r"<style|\sstyle=|\son[a-z]+=\"|<script(?![^>]*\ssrc=)", re.I)
    assert [path.name for path in (ROOT / "webapp").rglob("*.html") if inline.search(path.read_text())] == []
