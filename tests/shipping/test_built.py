"""The pack in the repository: made of these sources, whole, with every name of every module, and what Node makes."""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import brotli
import pytest
from flask import Flask

from tests.shipping.node_tools import needs_tools
from webapp import create_app
from webapp.places import STATIC_DIR
from webapp.shipping import assets, build, built, joined, pack
from webapp.shipping.modules import imports_of

ANEW = "A source has changed and the pack has not: run `cellarslate write-pack`."
KEPT: dict[str, Any] = json.loads((built.FOLDER / built.TEXTS).read_text("utf-8"))


@pytest.fixture(scope="module")
def app(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Flask]:
    made = create_app(tmp_path_factory.mktemp("book"), testing=True)
    with made.app_context():
        yield made
    made.extensions["book"].close()


@pytest.fixture
def current(app: Flask) -> Flask:
    if not assets.packed_texts().texts:
        pytest.skip("the sources are newer than the pack, and are served as they are")
    return app


def test_the_pack_is_made_of_these_sources_by_these_tools() -> None:
    assert assets.sources() == KEPT["sources"], ANEW
    assert build.makers() == KEPT["makers"], ANEW


def test_the_compressed_answers_hold_what_the_program_answers(current: Flask) -> None:
    """What shells and tables come to is worked out anew: a changed kind, table or template changes it as well."""
    for name, part in pack.packs().items():
        packed = pack.encodings(name).get("br")
        assert packed is not None, f"{name}: {ANEW}"
        assert brotli.decompress(packed) == part.body


def test_what_the_settings_say_changes_nothing_of_it(current: Flask, tmp_path: Path) -> None:
    other = create_app(tmp_path, TLS=True, PUBLIC_HOST="house.example")
    with other.app_context():
        theirs = {name: part.digest for name, part in pack.packs().items()}
    other.extensions["book"].close()
    assert theirs == {name: part.digest for name, part in pack.packs().items()}


@needs_tools
def test_node_makes_the_same_pack_byte_for_byte(current: Flask) -> None:
    assert build.pack_texts() == KEPT


def test_a_compressed_answer_of_another_version_is_not_used(
    current: Flask, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A merge can leave one file of this side and one of the other."""
    for path in built.FOLDER.iterdir():
        (tmp_path / path.name).write_bytes(path.read_bytes())
    monkeypatch.setattr(built, "FOLDER", tmp_path)
    digest = pack.pack("scan").digest
    assert built.compressed("scan", digest) is not None
    assert built.compressed("scan", "0" * 64) is None
    (tmp_path / "jobs.br").write_bytes((tmp_path / "scan.br").read_bytes())
    assert built.compressed("jobs", pack.pack("jobs").digest) is None


def test_every_module_is_packed_and_gives_its_names() -> None:
    """The names as a browser reads them from the source, by what is written there."""
    texts = KEPT["texts"]
    assert {"pages/log.js", "slate/queue.js"} <= set(KEPT["joined"]) and "floor.js" not in KEPT["joined"]
    for name in KEPT["joined"]:
        source = (STATIC_DIR / name).read_text("utf-8")
        given = set(re.findall(r"^export (?:async )?(?:function|const|class) (\w+)", source, re.MULTILINE))
        for clause in re.findall(r"\bexport ?\{([^}]*)\}", source):
            given |= {part.split(" as ")[-1].strip() for part in clause.split(",")}
        found = re.fullmatch(r'export\{(.*)\}from"/joined/floor\.js";\n', texts[f"/static/{name}"])
        assert {part.split(" as ")[1] for part in found[1].split(",")} == given if found else given == set(), name


def test_the_joined_script_is_of_one_byte_a_character() -> None:
    """A browser keeps, and reads, twice as much for a single dash or thin space."""
    assert max(map(ord, KEPT["texts"][joined.ADDRESS])) < 256


def test_no_module_waits_for_itself() -> None:
    """A circle of modules is an order of evaluation that nobody can read."""
    done: set[str] = set()

    def walk(name: str, path: tuple[str, ...]) -> None:
        assert name not in path, " -> ".join((*path, name))
        if name not in done:
            for target in imports_of(name):
                walk(target, (*path, name))
            done.add(name)

    for name in KEPT["joined"]:
        walk(name, ())


def test_the_stylesheet_holds_every_sheet_in_its_layer() -> None:
    written = (STATIC_DIR.parent / joined.STYLE.lstrip("/")).read_text("utf-8")
    whole = KEPT["texts"][joined.STYLE]
    assert "@import" not in whole
    assert {layer for _, layer in re.findall(r'@import url\("([^"]+)"\) layer\((\w+)\)', written)} == set(
        re.findall(r"@layer (\w+)\{", whole)
    )


def test_a_changed_source_is_served_as_it_is(
    app: Flask, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    changed = tmp_path / "db.js"
    changed.write_text("// another\nexport const one = 1;\n", "utf-8")
    real = assets._static_files
    monkeypatch.setattr(
        assets, "_static_files", lambda: [(n, changed if n == "slate/db.js" else p) for n, p in real()]
    )
    assert assets.packed_texts().texts == {}
    floor = json.loads(pack.pack().body)
    texts = {url: text for url, _, text in floor["parts"]}
    assert joined.ADDRESS not in texts
    assert texts["/static/pages/log.js"] == (STATIC_DIR / "pages/log.js").read_text("utf-8")
    assert "/static/style/button.css" in texts
    shells = {url: text for url, _, text in json.loads(pack.pack("words-en").body)["parts"]}
    assert joined.ADDRESS not in shells["/shell/log/ferment_reading"]
    assert "br" not in pack.encodings("floor")
    assert hashlib.sha256(pack.encodings("floor")[""]).hexdigest() == pack.pack().digest
    client = app.test_client()
    assert client.get(joined.ADDRESS).status_code == 404
    with client.get(joined.STYLE) as style:
        assert "@import" in style.text


def test_the_setting_for_plain_modules_leaves_the_pack_aside(current: Flask, tmp_path: Path) -> None:
    other = create_app(tmp_path, testing=True, PLAIN_MODULES=True)
    with other.app_context():
        assert assets.packed_texts().texts == {}
        theirs = assets.version()
    other.extensions["book"].close()
    assert theirs != assets.version()
