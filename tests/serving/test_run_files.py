"""The files for running it as a service or in a container, against systemd's own judgement and the program itself.

No container engine is needed: what can be looked at without one is looked at here, and the health check runs for real.
"""

import ast
import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.server_process import ServerProcess
from webapp.cli import main

RUN = Path(__file__).parents[2] / "docs" / "run"
UNIT = RUN / "cellarslate.service"
CONTAINER = (RUN / "Containerfile").read_text("utf-8")
EXPOSURE_MOST = 2.0  # of 10: the house's own bound on systemd's scale (systemd-analyze(1), "security")


def settings():
    """Return the settings of the unit, by name; of one that stands twice, all of it."""
    found = {}
    for line in UNIT.read_text("utf-8").splitlines():
        name, is_set, value = line.partition("=")
        if is_set and not line.startswith("#"):
            found.setdefault(name, []).append(value)
    return found


@pytest.mark.skipif(not shutil.which("systemd-analyze"), reason="systemd-analyze is not on this computer")
def test_systemd_finds_the_service_shut_in():
    command = ["systemd-analyze", "security", "--offline=true", "--no-pager", str(UNIT)]
    said = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    if "offline" in said.stderr:
        pytest.skip("this systemd-analyze is older than 250 and judges no files")
    level = re.search(r"Overall exposure level for .*: ([\d.]+)", said.stdout)
    assert level, said.stdout + said.stderr
    assert float(level[1]) < EXPOSURE_MOST, said.stdout


def test_the_unit_writes_only_where_its_command_does():
    unit = settings()
    program, command, *words = unit["ExecStart"][0].split()
    assert Path(program).name == "cellarslate"
    options = dict(zip(words[::2], words[1::2], strict=True))
    known = {option for part in main.commands[command].params for option in part.opts}
    assert set(options) <= known
    assert set(unit["ReadWritePaths"][0].split()) == {options["--data"], options["--backup-to"]}
    assert unit["User"] == ["cellar"]
    assert int(unit["TimeoutStopSec"][0].removesuffix("s")) > 15, "longer than requests under way are let end"


@pytest.mark.skipif(not shutil.which("systemd-analyze"), reason="systemd-analyze is not on this computer")
@pytest.mark.skipif(not shutil.which("strace"), reason="strace is not on this computer")
def test_the_server_makes_no_call_that_the_unit_forbids(tmp_path):
    """Started, asked and stopped under strace; its calls against the lists of systemd itself (systemd.exec(5))."""
    allowed = set()
    for line in settings()["SystemCallFilter"]:  # each adds to what stood before, or takes from it
        calls = {call for name in line.removeprefix("~").split() for call in calls_of(name)}
        allowed = allowed - calls if line.startswith("~") else allowed | calls
    log = tmp_path / "calls"
    server = ServerProcess(tmp_path / "book", under=("strace", "-f", "-qq", "-o", str(log)))
    server.start()
    server.close()
    made = set(re.findall(r"^\d+ +([a-z]\w+)\(", log.read_text("utf-8", "replace"), re.MULTILINE))
    assert len(made) > 30
    if os.geteuid() == 0:
        made -= {"fchown"}  # by root alone, SQLite gives the files beside a book its owner (os_unix.c, robustFchown)
    assert made - allowed == set()


def calls_of(group):
    """Return the system calls of a group, and of the groups in it, as systemd-analyze lists them; a call is itself."""
    if not group.startswith("@"):
        return {group}
    command = ["systemd-analyze", "--no-pager", "syscall-filter", group]
    lines = subprocess.run(command, capture_output=True, text=True, timeout=60, check=True).stdout.splitlines()
    names = [line.strip() for line in lines[1:] if line.startswith("    ") and not line.strip().startswith("#")]
    return {call for name in names for call in calls_of(name)}


def directives(name):
    """Return the arguments of each such line of the Containerfile, continued lines joined."""
    whole = CONTAINER.replace("\\\n", " ")
    return re.findall(rf"^{name} +(.*)$", whole, re.MULTILINE)


def test_the_container_runs_as_nobody_of_note_and_writes_to_its_volumes_alone():
    user, group = directives("USER")[-1].split(":")
    assert user.isdecimal()
    assert int(user) >= 1000, "by number: an engine can only so refuse root"
    assert group.isdecimal()
    assert json.loads(directives("VOLUME")[0]) == ["/data", "/backup"]
    assert "CELLARSLATE_DATA=/data" in directives("ENV")[0]
    command, *words = json.loads(directives("CMD")[-1])
    known = {option for part in main.commands[command].params for option in part.opts}
    assert {word for word in words if word.startswith("--")} <= known
    assert json.loads(directives("ENTRYPOINT")[0]) == ["cellarslate"]
    root = Path(__file__).parents[2]
    for line in directives("COPY"):
        sources = [] if line.startswith("--from") else line.split()[:-1]
        assert all((root / source).exists() for source in sources), line


def one_liner():
    """Return the program of the health check."""
    words = json.loads(directives("HEALTHCHECK")[0].partition(" CMD ")[2])
    assert words[:2] == ["python", "-c"]
    ast.parse(words[2])
    return words[2]


@pytest.mark.parametrize("is_up", [True, False])
def test_the_health_check_of_the_container_tells_up_from_down(tmp_path, is_up):
    server = ServerProcess(tmp_path / "book", arguments=("--tls",))
    server.start()
    if not is_up:
        server.stop()
    program = one_liner().replace("8443", str(server.port))
    said = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, timeout=60, check=False)
    server.close()
    assert (said.returncode == 0) is is_up, said.stderr


def test_commands_for_windows_work_in_the_shell_that_it_comes_with():
    """PowerShell 5.1 knows no && (about_Pipeline_Chain_Operators: from 7 on), so no line for Windows has one."""
    blocks = re.compile(r"^ *```(?:bat|powershell|ps1)\n(.*?)^ *```$", re.DOTALL | re.MULTILINE)
    for path in [RUN.parents[1] / "README.md", *RUN.parent.rglob("*.md")]:
        for block in blocks.findall(path.read_text("utf-8")):
            assert "&&" not in block, f"{path.name}: {block}"
