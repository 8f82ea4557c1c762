"""The list of libraries against the schema of CycloneDX 1.6 (ECMA-424), known holes as pip-audit writes them, the lock.

tests/vendor/cyclonedx holds the schema as its makers publish it. The form of pip-audit's reports is from its
documentation ("Usage", JSON output), from memory.
"""

from __future__ import annotations

import importlib.metadata
import json
import re
import tomllib
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import jsonschema_rs
import pytest
from click.testing import CliRunner
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name
from packaging.version import Version

from webapp.book.opening import open_book
from webapp.book.record.errors import BookError
from webapp.cli import main
from webapp.doctor import libraries
from webapp.doctor.finding import Weight
from webapp.doctor.libraries import Library

ROOT = Path(__file__).parents[2]
SCHEMAS = ROOT / "tests" / "vendor" / "cyclonedx"
LOCK = (ROOT / "docs" / "run" / "locked.txt").read_text("utf-8")
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
NOW = datetime(2026, 3, 1, 6, 0, tzinfo=UTC)
HERE = [
    Library("flask", "3.1.0", "BSD-3-Clause", True, ("werkzeug",)),
    Library("pillow", "13.0.0", "MIT-CMU", True, ()),
    Library("reportlab", "5.1.0", "BSD license", False, ("pillow", "gone")),
    Library("werkzeug", "3.1.1", "", False, ()),
]


@pytest.fixture
def here(monkeypatch: pytest.MonkeyPatch) -> list[Library]:
    """An installation of four libraries."""
    monkeypatch.setattr(libraries, "installed", lambda: HERE)
    own = Library("cellarslate", "0", "MIT", True, ("flask", "reportlab"))
    monkeypatch.setattr(libraries, "_read", lambda _name: own)
    return HERE


def validator() -> Any:
    schemas = {path.name: json.loads(path.read_text("utf-8")) for path in SCHEMAS.glob("*.json")}
    root = schemas.pop("bom-1.6.SNAPSHOT.schema.json")
    there = [(f"http://cyclonedx.org/schema/{name}", schema) for name, schema in schemas.items()]
    return jsonschema_rs.Draft7Validator(root, registry=jsonschema_rs.Registry(there))


def test_the_list_holds_to_the_schema_and_names_each_part_once(here: list[Library]) -> None:
    made = libraries.bill_of_materials(NOW)
    assert [str(error) for error in validator().iter_errors(made)] == []
    components: Any = made["components"]
    refs = [one["bom-ref"] for one in components]
    assert len(refs) == len(set(refs))
    assert {"pkg:pypi/flask@3.1.0", "pkg:npm/lit-html@3.3.3", "sqlite", "python"} <= set(refs)
    vendored = json.loads((ROOT / "static" / "vendor" / "vendor.json").read_text("utf-8"))
    assert sum(ref.startswith("pkg:npm/") for ref in refs) == len(vendored)
    depends: Any = made["dependencies"]
    assert {one for row in depends for one in row["dependsOn"]} <= set(refs)


def test_the_schema_refuses_what_is_none(here: list[Library]) -> None:
    made = libraries.bill_of_materials(NOW)
    for wrong in ({"bomFormat": "other"}, {"serialNumber": "7"}, {"components": [{"name": "flask"}]}):
        assert not validator().is_valid({**made, **wrong})


def test_the_list_of_this_installation_has_all_that_the_project_names() -> None:
    try:
        importlib.metadata.distribution("cellarslate")
    except importlib.metadata.PackageNotFoundError:
        pytest.skip("it runs from a folder here, and is not installed")
    names = {one.name: one for one in libraries.installed()}
    for text in PROJECT["dependencies"]:
        assert canonicalize_name(Requirement(text).name) in names
    assert {"werkzeug", "jinja2", "pillow", "cffi"} <= names.keys(), "and what those bring"
    assert "pytest" not in names, "and nothing that tests alone want"
    assert [str(error) for error in validator().iter_errors(libraries.bill_of_materials(NOW))] == []


def test_the_command_writes_the_list_and_leaves_a_file_that_is_there(here: list[Library], tmp_path: Path) -> None:
    path = tmp_path / "parts.cdx.json"
    done = CliRunner().invoke(main, ["sbom", str(path)])
    assert done.exit_code == 0, done.output
    assert json.loads(path.read_text("utf-8"))["bomFormat"] == "CycloneDX"
    again = CliRunner().invoke(main, ["sbom", str(path)])
    assert again.exit_code == 2
    assert "exists already" in again.output


def report(tmp_path: Path, *rows: dict[str, Any]) -> Path:
    path = tmp_path / "report.json"
    path.write_text(json.dumps({"dependencies": list(rows), "fixes": []}), "utf-8")
    return path


def row(name: str, version: str, *holes: str, mended: tuple[str, ...] = ()) -> dict[str, Any]:
    vulns = [{"id": one, "fix_versions": list(mended), "aliases": [], "description": "of no matter"} for one in holes]
    return {"name": name, "version": version, "vulns": vulns}


ALL_WELL = [row("Flask", "3.1.0"), row("pillow", "13.0.0"), row("reportlab", "5.1.0"), row("Werkzeug", "3.1.1")]


def test_a_report_without_holes_is_well(here: list[Library], tmp_path: Path) -> None:
    (only,) = libraries.look_at_libraries(report(tmp_path, *ALL_WELL))
    assert only.weight is Weight.WELL


def test_installed_libraries_with_known_holes_are_named_with_the_step(here: list[Library], tmp_path: Path) -> None:
    holes = row("Werkzeug", "3.1.1", "PYSEC-2026-7", "GHSA-xxxx-yyyy-zzzz", mended=("3.1.2",))
    unmended = row("pillow", "13.0.0", "PYSEC-2026-9")
    findings = libraries.look_at_libraries(report(tmp_path, ALL_WELL[0], ALL_WELL[2], unmended, holes))
    assert [one.weight for one in findings] == [Weight.BAD, Weight.BAD]
    assert "pillow 13.0.0" in findings[0].words and "No version" in findings[0].step
    assert "werkzeug 3.1.1" in findings[1].words and "PYSEC-2026-7" in findings[1].words
    assert "3.1.2" in findings[1].step


def test_a_report_of_another_installation_is_not_taken_for_this_one(here: list[Library], tmp_path: Path) -> None:
    other = row("werkzeug", "2.0.0", "PYSEC-2023-1", mended=("2.3.8",))
    skipped = {"name": "pillow", "skip_reason": "not found on PyPI"}
    strange = row("strange", "1", "PYSEC-1")
    findings = libraries.look_at_libraries(report(tmp_path, other, skipped, strange, ALL_WELL[0]))
    assert [one.weight for one in findings] == [Weight.LOOK, Weight.LOOK]
    assert "here is 3.1.1" in findings[0].words
    assert "pillow, reportlab" in findings[1].words


@pytest.mark.parametrize("text", ["", "[1", "{}", '{"dependencies": 3}', '[{"name": "flask"}]', '"x"', "[" * 9000])
def test_a_file_that_is_no_report_is_said(tmp_path: Path, text: str) -> None:
    path = tmp_path / "report.json"
    path.write_text(text, "utf-8")
    with pytest.raises(BookError, match="no report of pip-audit"):
        libraries.read_audit(path)


def test_the_check_up_reads_the_report_and_ends_with_one(here: list[Library], tmp_path: Path) -> None:
    with open_book(tmp_path / "book" / "book.sqlite"):
        pass
    path = report(tmp_path, *ALL_WELL[:3], row("werkzeug", "3.1.1", "PYSEC-2026-7", mended=("3.1.2",)))
    done = CliRunner().invoke(main, ["doctor", "--data", str(tmp_path / "book"), "--audit", str(path)])
    assert done.exit_code == 1
    assert "werkzeug 3.1.1 has known holes: PYSEC-2026-7" in done.output
    missing = CliRunner().invoke(main, ["doctor", "--data", str(tmp_path / "book"), "--audit", str(tmp_path / "none")])
    assert missing.exit_code == 2
    assert "cannot be read" in missing.output


def locked() -> list[tuple[Requirement, list[str]]]:
    """Return each locked requirement with its hashes."""
    found = []
    for block in re.split(r"\n(?=[a-z])", re.sub(r"^#.*\n", "", LOCK, flags=re.MULTILINE).strip()):
        text, *hashes = [part.strip() for part in block.replace("\\\n", "\n").splitlines()]
        found.append((Requirement(text), hashes))
    return found


def test_the_lock_covers_what_the_program_needs_within_its_bounds() -> None:
    versions: dict[str, list[Version]] = {}
    for wanted, hashes in locked():
        assert len(hashes) >= 1, wanted
        assert all(re.fullmatch(r"--hash=sha256:[0-9a-f]{64}", one) for one in hashes), wanted
        (pin,) = wanted.specifier
        assert pin.operator == "==", wanted
        versions.setdefault(canonicalize_name(wanted.name), []).append(Version(pin.version))
    builds = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["build-system"]["requires"]
    for text in (*PROJECT["dependencies"], *PROJECT["optional-dependencies"]["group"], *builds):
        wanted = Requirement(text)
        found = versions.get(canonicalize_name(wanted.name))
        assert found, f"{wanted.name} is not in docs/run/locked.txt: make it anew"
        assert all(wanted.specifier.contains(one) for one in found), text


def test_the_lock_covers_what_those_need_in_turn() -> None:
    """By what the packages that are installed here say; of one whose version is another, its own may differ."""
    names = {canonicalize_name(wanted.name) for wanted, _ in locked()}
    looked_at = 0
    for wanted, _ in locked():
        try:
            distribution = importlib.metadata.distribution(wanted.name)
        except importlib.metadata.PackageNotFoundError:
            continue
        if not wanted.specifier.contains(distribution.version):
            continue
        looked_at += 1
        for text in distribution.requires or ():
            needed = Requirement(text)
            if needed.marker is None or needed.marker.evaluate({"extra": ""}):
                assert canonicalize_name(needed.name) in names, f"{wanted.name} needs {needed.name}"
    assert looked_at > 5


def test_the_lock_names_no_place_that_packages_come_from() -> None:
    assert "://" not in LOCK
    assert "index-url" not in LOCK
