"""The wheel holds every file the program needs, and runs from there."""

import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from tests.server_process import ROOT_DIR

_PARTS = ("pyproject.toml", "README.md", "LICENSE", "webapp", "static", "demo_data")
# In the wheel each of these stands inside the package.
_INSIDE = {"webapp": "webapp", "static": "webapp/static", "demo_data": "webapp/demo_data"}


@pytest.fixture(scope="module")
def wheel_path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A wheel built from a copy, without the network: setuptools comes with the test extra."""
    source_dir, wheel_dir = tmp_path_factory.mktemp("source"), tmp_path_factory.mktemp("wheel")
    for part in _PARTS:
        if (ROOT_DIR / part).is_dir():
            shutil.copytree(ROOT_DIR / part, source_dir / part, ignore=shutil.ignore_patterns("__pycache__"))
        elif (ROOT_DIR / part).exists():
            shutil.copy(ROOT_DIR / part, source_dir / part)
    code = f"from setuptools import build_meta; build_meta.build_wheel({str(wheel_dir)!r})"
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=source_dir, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    (path,) = wheel_dir.glob("*.whl")
    return path


def test_wheel_holds_every_file_of_the_program(wheel_path: Path) -> None:
    with zipfile.ZipFile(wheel_path) as wheel:
        held = set(wheel.namelist())
    wanted = {
        f"{inside}/{path.relative_to(ROOT_DIR / part).as_posix()}"
        for part, inside in _INSIDE.items()
        for path in (ROOT_DIR / part).rglob("*")
        if path.is_file() and "__pycache__" not in path.parts
    }
    assert wanted - held == set()
    assert not [name for name in held if name.endswith(".pyc")]


def test_program_runs_from_the_wheel_alone(wheel_path: Path, tmp_path: Path) -> None:
    with zipfile.ZipFile(wheel_path) as wheel:
        wheel.extractall(tmp_path)
    code = (
        "import webapp, webapp.places as p;"
        "assert p.STATIC_DIR.is_dir(), p.STATIC_DIR; assert p.DEMO_DIR.is_dir(), p.DEMO_DIR;"
        "print(webapp.__file__); print(webapp.create_app('book'))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=tmp_path, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    # The wheel's own files ran, not the checkout's.
    assert done.stdout.startswith(str(tmp_path))
