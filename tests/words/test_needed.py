"""A catalogue with something missing, left over, lost or broken is told so by file, line and message."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from click.testing import CliRunner

from webapp.cli import main
from webapp.words import catalogue, needed
from webapp.words.catalogue import ENGLISH
from webapp.words.language import LANGUAGES, offered


@pytest.fixture
def german(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """Give the path of a German catalogue that stands alone beside the English one."""
    english = (catalogue.FOLDER / "en.ftl").read_text("utf-8")
    (tmp_path / "en.ftl").write_text(english, encoding="utf-8")
    for module in (catalogue, needed):
        monkeypatch.setattr(module, "FOLDER", tmp_path)
    catalogue.has_catalogue.cache_clear()
    yield tmp_path / "de.ftl"
    catalogue.has_catalogue.cache_clear()


def test_english_has_nothing_to_put_right() -> None:
    assert needed.look_at(ENGLISH) == []


def test_every_language_has_every_message_none_besides_and_all_parameters() -> None:
    assert [one.shown(language) for language in offered() for one in needed.look_at(language)] == []


def test_each_sort_of_error_is_found_at_its_line(german: Path) -> None:
    german.write_text(
        "span-s = { $many } s\nspan-h = Stunden\nnobody = niemand\nrange-up_to = bis { $high\n"
        "span-min = { $viele } min\nspan-s = { $many } Sek.\nlabel-cut-event = Ereignis\n", encoding="utf-8",
    )
    found = {(one.sort, one.id): one for one in needed.look_at("de") if one.sort != "missing"}
    assert set(found) == {
        ("broken", "range-up_to"), ("parameters", "span-h"), ("parameters", "span-min"), ("surplus", "nobody"),
        ("twice", "span-s"),
    }
    assert found["broken", "range-up_to"].line in (4, 5)
    assert f"{german.parent.name}/de.ftl:" in found["broken", "range-up_to"].shown("de")
    assert "brace" in found["broken", "range-up_to"].words
    assert found["parameters", "span-h"].words == "does not say $many"
    assert (found["twice", "span-s"].line, "$viele" in found["parameters", "span-min"].words) == (6, True)
    missing = {one.id: one.words for one in needed.look_at("de") if one.sort == "missing"}
    assert "label-cut-event" not in missing and missing["title-cut"]


def test_the_command_writes_what_is_missing_in_english(german: Path) -> None:
    german.write_text("span-s = { $many } s\n", encoding="utf-8")
    done = CliRunner().invoke(main, ["words", "de"])
    assert done.exit_code == 1
    assert "span-min = { $many } min\n" in done.stdout and "span-s =" not in done.stdout
    german.write_text("span-s = { $many } s\n" + done.stdout, encoding="utf-8")
    assert CliRunner().invoke(main, ["words", "de"]).exit_code == 0
    assert CliRunner().invoke(main, ["words", "xx"]).exit_code != 0


def test_every_declared_word_has_an_id_that_a_catalogue_can_hold(german: Path) -> None:
    written = CliRunner().invoke(main, ["words", "de", "--all"]).stdout
    german.write_text(written, encoding="utf-8")
    assert needed.look_at("de") == []
    german.write_text(written.replace(f"{catalogue.DESK}\n", ""), encoding="utf-8")
    assert {one.sort for one in needed.look_at("de")} == {"place"}


def test_a_message_with_a_brace_too_few_is_said_in_english_and_told(
    german: Path, caplog: pytest.LogCaptureFixture
) -> None:
    german.write_text("span-h = { $many } Std.\nspan-min = { $many Min.\n", encoding="utf-8")
    assert set(catalogue.sound_messages("de")) == {"span-h"}
    assert "de.ftl:2: span-min" in caplog.text


def test_the_six_languages_are_known_with_or_without_a_catalogue() -> None:
    assert set(LANGUAGES) >= {"en", "de", "fr", "es", "it", "cs"}
