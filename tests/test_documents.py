"""What the documents name is there: their links, and every command and option of `cellarslate`."""

import re
import shlex
from functools import cache
from pathlib import Path

import pytest

from webapp.cli import main

ROOT = Path(__file__).parents[1]
DOCUMENTS = sorted([ROOT / "README.md", ROOT / "DEVELOPERS.md", *(ROOT / "docs").rglob("*.md")])
_COMMAND = re.compile(r"(?:^|[\s`/\\=])cellarslate ((?:[a-z-]+)(?: [^`\n#]*)?)", re.MULTILINE)


@cache
def anchors(path):
    """Return the anchors of a document's headings, as Git forges make them."""
    heads = re.findall(r"^#+ (.*)$", path.read_text("utf-8"), re.MULTILINE)
    return {re.sub(r"[^\w\- ]", "", head.lower()).strip().replace(" ", "-") for head in heads}


def code_of(text):
    """Return the lines of code blocks and what stands between backticks in a line."""
    blocks = re.findall(r"^ *```\w*\n(.*?)^ *```$", text, re.DOTALL | re.MULTILINE)
    rest = re.sub(r"^ *```\w*\n.*?^ *```$", "", text, flags=re.DOTALL | re.MULTILINE)
    return "\n".join([*blocks, *re.findall(r"`([^`]+)`", rest)])


@pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.relative_to(ROOT).as_posix())
def test_every_link_leads_somewhere(path):
    for link in re.findall(r"\]\(([^)\s]+)\)", path.read_text("utf-8")):
        if "://" in link:
            continue
        name, _, anchor = link.partition("#")
        target = (path.parent / name).resolve() if name else path
        assert target.exists(), f"{path.name}: {link}"
        assert not anchor or anchor in anchors(target), f"{path.name}: no heading for {link}"


def test_every_command_and_option_exists():
    found = set()
    for path in DOCUMENTS:
        for line in _COMMAND.findall(code_of(path.read_text("utf-8"))):
            name, *words = shlex.split(line.split("&&")[0].split(";")[0])
            assert name in main.commands, f"{path.name}: cellarslate {name}"
            options = {option for part in main.commands[name].params for option in (*part.opts, *part.secondary_opts)}
            for word in words:
                assert not word.startswith("--") or word.split("=")[0] in options, f"{path.name}: {name} {word}"
            found.add(name)
    assert found >= {"set-up", "serve", "backup", "restore", "rehearse", "export", "import", "verify", "demo"}


def test_every_option_named_alone_is_one_of_ours():
    options = {option for command in main.commands.values() for part in command.params for option in part.opts}
    for word in re.findall(r"`(--[a-z-]+)", (ROOT / "docs" / "operate.md").read_text("utf-8")):
        assert word in options | {"--help"}, word
