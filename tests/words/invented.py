"""Two languages of invented words, so that nothing of a real catalogue is in the way."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from webapp.words import catalogue, desk, language

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
    (tmp_path / "en.ftl").write_text((catalogue.FOLDER / "en.ftl").read_text("utf-8"), encoding="utf-8")
    (tmp_path / "de.ftl").write_text(GERMAN, encoding="utf-8")
    (tmp_path / "cs.ftl").write_text(CZECH, encoding="utf-8")
    monkeypatch.setattr(catalogue, "FOLDER", tmp_path)
    kept = (catalogue.has_catalogue, catalogue.bundle_of, desk.sources, desk._plain, desk._whole_text, desk._bundle)
    for one in kept:
        one.cache_clear()
    yield
    language.read_in("en")
    for one in kept:
        one.cache_clear()
