"""The libraries that this installation runs on: their list for others (CycloneDX), and known holes in them (pip-audit).

Nothing is asked of a network: the list is what is installed here, and known holes come as a file made elsewhere.
"""

from __future__ import annotations

import importlib.metadata
import json
import platform
import sqlite3
import uuid
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TypedDict, cast

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.doctor.finding import Finding, bad, look, well
from webapp.places import STATIC_DIR
from webapp.version import VERSION

OURS = "cellarslate"
SPEC_VERSION = "1.6"  # ECMA-424, 1st edition
_EXTRAS = ("", "group")  # what an installation may have besides; "" is the program itself
_SHOWN_MOST = 5
_REPORT_BYTES_MOST = 64 * 1024**2


@dataclass(frozen=True)
class Library:
    """A package that is installed and that the program needs, itself or by another. `needs`: names of others."""

    name: str
    version: str
    licence: str
    is_expression: bool  # whether the licence is an SPDX expression
    needs: tuple[str, ...]


class _Vendored(TypedDict):
    name: str
    version: str
    licence: str


@dataclass(frozen=True)
class Hole:
    """A known hole of a package, as a report names it. `mended`: the versions without it."""

    package: str
    version: str
    name: str
    mended: tuple[str, ...]


def installed() -> list[Library]:
    """Return the packages that the program needs here, by name, each once; BookError where it is not installed."""
    try:
        importlib.metadata.distribution(OURS)
    except importlib.metadata.PackageNotFoundError:
        raise BookError("Cellarslate runs from a folder and is not installed here. Install it first.") from None
    found: dict[str, Library] = {}
    waiting = [OURS]
    while waiting:
        name = waiting.pop()
        if name in found:
            continue
        try:
            found[name] = _read(name)
        except importlib.metadata.PackageNotFoundError:
            continue  # of an extra that is not installed, or for another system
        waiting += found[name].needs
    del found[OURS]
    return [found[name] for name in sorted(found)]


def bill_of_materials(now: datetime) -> dict[str, object]:
    """Return the list of what the program consists of, as CycloneDX JSON. `now` is aware."""
    own = {"type": "application", "name": OURS, "version": VERSION, "bom-ref": OURS,
           "licenses": [{"license": {"id": "MIT"}}]}
    libraries = installed()
    vendored = cast("list[_Vendored]", json.loads((STATIC_DIR / "vendor" / "vendor.json").read_text("utf-8")))  # ours
    components: list[dict[str, object]] = [_component(one) for one in libraries]
    components += [
        {"type": "library", "name": one["name"], "version": one["version"], "bom-ref": _npm(one), "purl": _npm(one),
         "licenses": [{"expression": one["licence"]}]}
        for one in vendored
    ]
    components += [
        {"type": "platform", "name": "python", "version": platform.python_version(), "bom-ref": "python"},
        {"type": "library", "name": "sqlite", "version": sqlite3.sqlite_version, "bom-ref": "sqlite"},
    ]
    there = {one.name: one for one in libraries}
    direct = [_pypi(there[name]) for name in _read(OURS).needs if name in there]
    depends = [{"ref": OURS, "dependsOn": [*direct, *map(_npm, vendored), "python", "sqlite"]}]
    depends += [
        {"ref": _pypi(one), "dependsOn": [_pypi(there[name]) for name in one.needs if name in there]}
        for one in libraries
    ]
    return {
        "bomFormat": "CycloneDX", "specVersion": SPEC_VERSION, "serialNumber": f"urn:uuid:{uuid.uuid4()}", "version": 1,
        "metadata": {"timestamp": utc_text(now), "component": own,
                     "tools": {"components": [{"type": "application", "name": OURS, "version": VERSION}]}},
        "components": components, "dependencies": depends,
    }


def read_audit(path: Path) -> tuple[set[str], list[Hole]]:
    """Return the packages that a report of pip-audit (`--format json`) looked at, and the holes that it names.

    BookError with a sentence where the file cannot be read or is no such report.
    """
    try:
        if path.stat().st_size > _REPORT_BYTES_MOST:
            raise BookError(f"{path} is too large for a report of pip-audit. Name the file that it wrote.")
        told = json.loads(path.read_text("utf-8"))
        rows = told["dependencies"] if isinstance(told, dict) else told  # a bare list until pip-audit 2.0
        looked_at: set[str] = set()
        holes: list[Hole] = []
        for row in rows:
            name = canonicalize_name(str(row["name"]))
            if "skip_reason" in row:
                continue
            looked_at.add(name)
            holes += [
                Hole(name, str(row["version"]), str(hole["id"]), tuple(map(str, hole["fix_versions"])))
                for hole in row["vulns"]
            ]
    except OSError as error:
        raise BookError(f"{path} cannot be read: {error.strerror}. Name the file that pip-audit wrote.") from error
    except (ValueError, KeyError, TypeError, RecursionError) as error:
        raise BookError(f"{path} is no report of pip-audit. Make it so: pip-audit --format json -o FILE.") from error
    return looked_at, holes


def look_at_libraries(path: Path) -> list[Finding]:
    """Judge the installed libraries by a report of pip-audit: which have known holes, which it did not look at."""
    looked_at, holes = read_audit(path)
    here = {one.name: one.version for one in installed()}
    found = []
    for name in sorted({hole.package for hole in holes} & here.keys()):
        of_it = [hole for hole in holes if hole.package == name]
        known = ", ".join(sorted({hole.name for hole in of_it})[:_SHOWN_MOST])
        mended = sorted({version for hole in of_it for version in hole.mended})
        step = f"Install {name} {' or '.join(mended)}, or a newer Cellarslate." if mended else (
            "No version without it was known then. Read what is said of it, and look again soon."
        )
        if of_it[0].version != here[name]:
            words = f"The report found {known} in {name} {of_it[0].version}; here is {here[name]}."
            found.append(look("libraries", words, "Make the report anew for this installation."))
        else:
            found.append(bad("libraries", f"{name} {here[name]} has known holes: {known}.", step))
    if left := sorted(here.keys() - looked_at):
        words = f"The report says nothing of {len(left)} that run here: {', '.join(left[:_SHOWN_MOST])}."
        found.append(look("libraries", words, "Make the report for this installation: docs/operate.md, Libraries."))
    return found or [well("libraries", f"{len(here)} looked at, no known hole in the report.")]


def _read(name: str) -> Library:
    distribution = importlib.metadata.distribution(name)
    needs: list[str] = []
    for text in distribution.requires or ():
        wanted = Requirement(text)
        extras = _EXTRAS if name == OURS else ("",)
        if wanted.marker is None or any(wanted.marker.evaluate({"extra": extra}) for extra in extras):
            needs.append(canonicalize_name(wanted.name))
            needs += _of_extras(wanted)
    said = distribution.metadata
    expression, plain = _one_of(said, "License-Expression"), _one_of(said, "License").strip()
    licence = expression or (plain if "\n" not in plain else "") or _classified(said.get_all("Classifier") or [])
    return Library(
        canonicalize_name(name), distribution.version, licence, bool(expression), tuple(dict.fromkeys(needs))
    )


def _one_of(said: importlib.metadata.PackageMetadata, field: str) -> str:
    return str((said.get_all(field) or [""])[0])


def _of_extras(wanted: Requirement) -> list[str]:
    """Return what the extras of a requirement bring along, such as the pictures of `qrcode[pil]`."""
    try:
        texts = importlib.metadata.distribution(wanted.name).requires or ()
    except importlib.metadata.PackageNotFoundError:
        return []
    every = [Requirement(text) for text in texts]
    return [
        canonicalize_name(one.name) for one in every
        if one.marker and any(one.marker.evaluate({"extra": extra}) for extra in wanted.extras)
    ]


def _classified(classifiers: list[str]) -> str:
    return next((one.rpartition(" :: ")[2] for one in classifiers if one.startswith("License :: OSI Approved ::")), "")


def _component(one: Library) -> dict[str, object]:
    made: dict[str, object] = {
        "type": "library", "name": one.name, "version": one.version, "bom-ref": _pypi(one), "purl": _pypi(one),
    }
    if one.licence:
        said = {"expression": one.licence} if one.is_expression else {"license": {"name": one.licence}}
        made["licenses"] = [said]
    return made


def _pypi(one: Library) -> str:
    """Return the package URL of a package of PyPI. [purl-spec, type pypi]"""
    return f"pkg:pypi/{one.name}@{one.version}"


def _npm(one: _Vendored) -> str:
    """Return the package URL of a package of npm; the @ of a scope is written %40. [purl-spec, type npm]"""
    return f"pkg:npm/{one['name'].replace('@', '%40')}@{one['version']}"
