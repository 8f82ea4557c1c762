"""The vendored reader is the one that vendor.json names, byte for byte, with its licences."""

import hashlib
import json

from tests.labels.browser import ROOT

FOLDER = "static/vendor/zxing-wasm/"


def test_the_vendored_reader_has_the_hashes_on_record():
    rows = json.loads((ROOT / "static" / "vendor" / "vendor.json").read_text())
    (row,) = [row for row in rows if row["name"] == "zxing-wasm"]
    for file in row["files"]:
        assert hashlib.sha256((ROOT / file["path"]).read_bytes()).hexdigest() == file["sha256"], file["path"]
    on_record = {file["path"] for file in row["files"]}
    on_disk = {str(path.relative_to(ROOT)) for path in (ROOT / FOLDER).rglob("*") if path.is_file()}
    assert on_record == on_disk
    assert {FOLDER + "LICENSE", FOLDER + "LICENSE-Apache-2.0"} <= on_record
