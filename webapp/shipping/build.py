"""Makes what built.py reads: in a checkout, where Node is there. Nobody who runs Cellarslate needs either."""

from __future__ import annotations

import hashlib
import json
import shutil
import subprocess
import tempfile
from collections.abc import Mapping

from webapp import create_app
from webapp.places import STATIC_DIR
from webapp.shipping import assets, built, joined, modules, pack

TOOLS = STATIC_DIR.parent / ".browser"
# What the packed texts follow from, beside their sources.
_MAKERS = ("pack.mjs", "package-lock.json")
# A form is what a phone starts with most often, and needs nearly all that pages share.
_START = "pages/log.js"
# Before the first paint: a module would come too late.
_CLASSICS = ("ui/theme-first.js",)


class CannotBuild(Exception):
    """The pack cannot be made here; the words say what is wanting."""


def write_pack() -> None:
    """Pack the scripts and sheets anew, and compress each part of the floor."""
    _fetch_tools()
    built.FOLDER.mkdir(exist_ok=True)
    _write(built.TEXTS, pack_texts())
    with tempfile.TemporaryDirectory() as data_dir:
        app = create_app(data_dir)
        with app.app_context():
            bodies = {name: part.body for name, part in pack.packs().items()}
        app.extensions["book"].close()
    _write(built.PACKS, {name: _compress(name, body) for name, body in bodies.items()})


def pack_texts() -> dict[str, object]:
    """Return the packed scripts and sheets with the digests of what they are made from."""
    sources = assets.sources()
    sheets = [name for name in sources if name.endswith(".css")]
    job = {
        "root": str(STATIC_DIR),
        "base": "/static/",
        "entry": modules.ENTRY,
        "start": [_START],
        "joined": joined.ADDRESS,
        # What comes minified from elsewhere stays as it is.
        "scripts": [name for name in sources if name.endswith(".js") and ".min." not in name],
        "classics": _CLASSICS,
        "styles": [name for name in sheets if assets.later_name(name) or f"/static/{name}" == joined.STYLE],
    }
    return {"makers": makers(), "sources": sources, **run_packer(job)}


def makers() -> dict[str, str]:
    """Return the SHA-256 of what the packed texts are made with, by name."""
    return {name: _sha256((TOOLS / name).read_bytes()) for name in _MAKERS}


def run_packer(job: Mapping[str, object]) -> dict[str, object]:
    """Return the results of .browser/pack.mjs for a job: the joined modules by name, and the texts by address."""
    made: dict[str, object] = json.loads(_run_tool("pack.mjs", json.dumps(job).encode()))
    return made


def _compress(name: str, body: bytes) -> dict[str, str]:
    """Write a part compressed, and return what tells whether it is the right one."""
    packed = _run_tool("brotli.mjs", body)
    (built.FOLDER / f"{name}.br").write_bytes(packed)
    return {"body": _sha256(body), "packed": _sha256(packed)}


def _write(name: str, content: dict[str, object]) -> None:
    text = json.dumps(content, indent=1, sort_keys=True) + "\n"
    (built.FOLDER / name).write_text(text, "utf-8", newline="\n")


def _fetch_tools() -> None:
    """Fetch what the packer needs, where it is not there yet, as its lock file says."""
    if not TOOLS.is_dir():
        raise CannotBuild("There is no folder .browser here: this is for a checkout of the source.")
    npm = shutil.which("npm")
    if npm is None:
        raise CannotBuild("There is no Node here. Install it from your system's packages; only packing needs it.")
    lock, fetched = TOOLS / "package-lock.json", TOOLS / "node_modules" / ".package-lock.json"
    if not fetched.exists() or fetched.stat().st_mtime < lock.stat().st_mtime:
        subprocess.run([npm, "ci", "--no-audit", "--no-fund"], cwd=TOOLS, check=True)  # noqa: S603


def _run_tool(name: str, given: bytes) -> bytes:
    node = shutil.which("node")
    if node is None:
        raise CannotBuild("There is no Node here. Install it from your system's packages; only packing needs it.")
    done = subprocess.run([node, name], cwd=TOOLS, input=given, capture_output=True, check=False)  # noqa: S603
    if done.returncode:
        raise CannotBuild(f"{name} ended with an error:\n{done.stderr.decode(errors='replace')}")
    return done.stdout


def _sha256(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()
