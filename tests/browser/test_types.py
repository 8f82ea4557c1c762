"""The browser side is checked: the types in its comments are read by the compiler, in every module."""

import subprocess

import pytest

from tests.server_process import ROOT_DIR
from webapp.places import STATIC_DIR

COMPILER = ROOT_DIR / ".browser" / "node_modules" / ".bin" / "tsc"
# The worker is a classic script in a world of its own: its constants stand before it only once it is served.
_NOT_CHECKED = ("vendor/", "sw-body.js")


def test_every_module_asks_to_be_checked() -> None:
    names = {path.relative_to(STATIC_DIR).as_posix(): path for path in STATIC_DIR.rglob("*.js")}
    ours = {name: path for name, path in names.items() if not name.startswith(_NOT_CHECKED)}
    assert len(ours) > 100
    assert [name for name, path in ours.items() if "// @ts-check" not in path.read_text("utf-8").splitlines()[:2]] == []


@pytest.mark.skipif(not COMPILER.exists(), reason="needs Node's tools: npm ci --prefix .browser")
def test_the_compiler_finds_nothing() -> None:
    done = subprocess.run([COMPILER, "-p", ROOT_DIR / ".browser"], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout
