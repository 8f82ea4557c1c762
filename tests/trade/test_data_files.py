"""The product's own tables: unchanged, sourced, and read by code that needs no web framework."""

import gzip
import hashlib
import json
import subprocess
import sys
from pathlib import Path

from webapp.trade.datafiles import DATA_FOLDER, load_data

MANIFEST = json.loads((DATA_FOLDER / "manifest.json").read_text(encoding="utf-8"))


def test_manifest_names_every_file_with_its_hash_and_source() -> None:
    files = {path.name for path in DATA_FOLDER.glob("*.json")} - {"manifest.json"}
    assert set(MANIFEST) == files
    for name, entry in MANIFEST.items():
        assert hashlib.sha256((DATA_FOLDER / name).read_bytes()).hexdigest() == entry["sha256"], name
        assert len(entry["source"]) > 20


def test_the_phone_loads_little() -> None:
    sizes = {p.name: len(gzip.compress(p.read_bytes(), 9)) for p in DATA_FOLDER.glob("*.json")}
    assert sizes["table1.json"] < 4_000
    assert sum(sizes.values()) < 12_000


def test_table_1_has_207_rows() -> None:
    assert len(load_data("table1")["rows"]) == 207


def test_trade_needs_no_web_framework_and_no_database() -> None:
    modules = ", ".join(
        f"webapp.trade.{path.stem}" for path in DATA_FOLDER.parent.glob("*.py") if path.stem != "__init__"
    )
    code = f"import sys, {modules}; print(sorted({{'flask', 'sqlite3', 'sqlite_utils', 'wtforms'}} & set(sys.modules)))"
    root = Path(__file__).parents[2]
    done = subprocess.run([sys.executable, "-c", code], cwd=root, capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
