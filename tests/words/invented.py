"""Two languages of invented words, so that nothing of a real catalogue is in the way."""

from __future__ import annotations

import shutil
from collections.abc import Iterator, Mapping
from pathlib import Path

import pytest

from webapp.shipping import assets
from webapp.words import catalogue, desk, kindwords, language, phone

HEAD = "### Only the desk reads what follows.\n"
GERMAN = HEAD + """
desk-you-language = Zunge
plain-one = nur Text & <b>
plain-many = { $who } hat { $many } Fässer
plain-chosen = { PLURAL($many) ->
    [one] ein Fass
   *[other] { $many } Fässer
  } von { $who }
"""
CZECH = HEAD + """
plain-chosen = { PLURAL($many) ->
    [one] sud
    [few] { $many } sudy
   *[other] { $many } sudů
  }
"""


def two_more(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Let there be a German and a Czech catalogue beside the English one."""
    yield from catalogues_of({"de": GERMAN, "cs": CZECH}, tmp_path, monkeypatch)


def catalogues_of(texts: Mapping[str, str], folder: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Let there be these catalogues beside the English one, in a folder of their own, until the test is over."""
    shutil.copy(catalogue.FOLDER / "en.ftl", folder)
    for code, text in texts.items():
        (folder / f"{code}.ftl").write_text(text, encoding="utf-8")
    monkeypatch.setattr(catalogue, "FOLDER", folder)
    monkeypatch.setattr(kindwords, "_made", {})
    _forget()
    yield
    language.read_in("en")
    _forget()


def _forget() -> None:
    """Forget every word that was read of a catalogue."""
    for one in (
        catalogue.has_catalogue, catalogue.bundle_of, desk.sources, desk._plain, desk._whole_text, desk._bundle,
        kindwords.sayings, phone._said, assets.words_file,
    ):
        one.cache_clear()
