"""`python -m tests` with no browser: what it tries, and what it says. System tools are stand-ins."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.server_process import ROOT_DIR

pytestmark = pytest.mark.skipif(os.name == "nt", reason="stand-ins are shell scripts")


def put_tool(folder: Path, name: str, script: str) -> None:
    path = folder / name
    path.write_text(f"#!/bin/sh\n{script}\n")
    path.chmod(0o755)


@pytest.fixture
def tool_dir(tmp_path: Path) -> Path:
    """A path with nothing but these stand-ins on it; its sudo asks no password."""
    folder = tmp_path / "tools"
    folder.mkdir()
    put_tool(folder, "sudo", 'shift; exec "$@"')
    put_tool(folder, "env", 'exec /usr/bin/env "$@"')
    # WebKit's driver is not what is asked here.
    put_tool(folder, "true", "exit 0")
    return folder


def run_tests(tool_dir: Path, **extra: str) -> subprocess.CompletedProcess[str]:
    environment = {key: value for key, value in os.environ.items() if key != "CELLARSLATE_CHROMIUM"}
    # Playwright's own download leads nowhere, so nothing is fetched here.
    environment |= {
        "PATH": str(tool_dir),
        "PLAYWRIGHT_BROWSERS_PATH": str(tool_dir / "none"),
        "PLAYWRIGHT_DOWNLOAD_HOST": "http://127.0.0.1:9",
        **extra,
    }
    command = [sys.executable, "-m", "tests", "--version"]
    return subprocess.run(
        command, env=environment, cwd=ROOT_DIR, capture_output=True, text=True, timeout=110, check=False
    )


def test_named_browser_is_taken_before_any_other(tool_dir: Path) -> None:
    put_tool(tool_dir, "chromium", "echo Chromium on the path")
    put_tool(tool_dir, "mine", "echo My own Chromium")
    done = run_tests(tool_dir, CELLARSLATE_CHROMIUM=str(tool_dir / "mine"))
    assert done.returncode == 0
    assert "My own Chromium" in done.stdout


def test_browser_on_the_path_is_taken_and_nothing_is_fetched(tool_dir: Path) -> None:
    put_tool(tool_dir, "chromium", "echo Chromium on the path")
    done = run_tests(tool_dir)
    assert done.returncode == 0
    assert "Chromium on the path" in done.stdout
    assert "playwright install" not in done.stdout


def test_browser_comes_by_apt_where_playwright_cannot_fetch_one(tool_dir: Path) -> None:
    installed = "#!/bin/sh\\necho Chromium by apt\\n"
    put_tool(
        tool_dir,
        "apt-get",
        'case "$*" in *chromium*) ;; *) exit 0;; esac\n'
        f'printf "{installed}" > {tool_dir}/chromium && /bin/chmod 755 {tool_dir}/chromium',
    )
    done = run_tests(tool_dir)
    assert done.returncode == 0, done.stdout + done.stderr
    assert "trying `playwright install chromium`" in done.stdout
    assert "Installing by apt-get: chromium" in done.stdout
    assert "Chromium by apt" in done.stdout


def test_without_any_way_to_a_browser_it_says_what_to_do(tool_dir: Path) -> None:
    done = run_tests(tool_dir)
    assert done.returncode == 2
    assert "Install Chromium or Google Chrome" in done.stderr
    assert "CELLARSLATE_CHROMIUM=" in done.stderr
    assert "Traceback" not in done.stderr
