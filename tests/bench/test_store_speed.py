"""Hand-in beside a general replicating store: `python -m tests.bench test_store_speed.py`.

The same 2,000 entries of ferments, runs and casks, from one Chromium in one run, in turns: by the slate to this server,
checks and fold included; and by PouchDB to a server of express-pouchdb on LevelDB, which checks revisions only. Both
send batches of 200. PouchDB and its server (Apache-2.0) are fetched from npm by this bench alone.
"""

from __future__ import annotations

import json
import shutil
import statistics
import subprocess
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from itertools import islice
from pathlib import Path
from typing import Any

import pytest

from tests.bench.book_season import fill_house, plausible
from tests.bench.table import Measured
from tests.browser.offline_world import Phone
from tests.server_process import ServerProcess
from webapp.book.house import devices
from webapp.book.opening import open_book
from webapp.serving.server import find_free_port

pytestmark = [pytest.mark.bench, pytest.mark.timeout(1800)]
ENTRIES, BATCH, ROUNDS = 2000, 200, 3
TIMES_AT_LEAST = 1.5
STORE = ("pouchdb@9", "express@4", "express-pouchdb@4")
WHERE = f"{ENTRIES:,} entries from one browser, batches of {BATCH}"

_SERVER = """
const express = require("express"), PouchDB = require("pouchdb");
const [port, folder] = process.argv.slice(2);
const app = express();
app.get("/page", (_, answer) => answer.type("html").send(
  '<!doctype html><title>store</title><script src="/lib/pouchdb.min.js"></script>'));
app.use("/lib", express.static(require("path").join(__dirname, "node_modules/pouchdb/dist")));
app.use("/db", require("express-pouchdb")(PouchDB.defaults({ prefix: folder + "/" }),
  { mode: "minimumForPouchDB",
    configPath: folder + "/config.json", logPath: folder + "/log.txt" }));
app.listen(Number(port), "127.0.0.1", () => console.log("ready"));
"""
_GENERAL_FILL = """async ([name, entries]) => {
  const store = new PouchDB(name);
  for (let at = 0; at < entries.length; at += 200)
    await store.bulkDocs(entries.slice(at, at + 200).map((entry) => ({ ...entry, _id: entry.id })));
}"""
_GENERAL = """async (name) => {
  const begun = performance.now();
  const done = await new PouchDB(name).replicate.to(`${location.origin}/db/${name}`, { batch_size: 200 });
  return [performance.now() - begun, done.docs_written];
}"""
_OWN_FILL = """async (entries) => {
  const { write, ENTRIES, META } = await import("/static/slate/db.js");
  const { put, asKept } = await import("/static/slate/queue.js");
  for (let at = 0; at < entries.length; at += 200) await write([ENTRIES, META], async (tx) => {
    const { id: device } = await tx.objectStore(META).get("device");
    const seq = (await tx.objectStore(META).get(`seq:${device}`)) ?? 0;
    const some = entries.slice(at, at + 200).map((entry, n) => ({ ...entry, device, seq: seq + n + 1 }));
    await put(tx, some.map((entry) => ({ kept: asKept(entry) })));
    await tx.objectStore(META).put(seq + some.length, `seq:${device}`);
  });
}"""
_OWN = """async () => {
  const { handInNow } = await import("/static/slate/handin.js");
  const { waiting } = await import("/static/slate/queue.js");
  const begun = performance.now();
  await handInNow();
  return [performance.now() - begun, (await waiting()).length];
}"""


def test_hand_in_beside_a_general_store(
    tmp_path: Path, make_server: Callable[..., ServerProcess], make_phone: Callable[..., Phone], measured: Measured
) -> None:
    folder = tmp_path / "book"
    folder.mkdir()
    with open_book(folder / "book.sqlite") as book:
        marks, token = fill_house(book), devices.new_token(book, "JK", "PH-1")
    server = make_server(folder)
    phone = make_phone(server.url)
    phone.get_ready(token)
    began = datetime.now(UTC) - timedelta(days=4)
    stream = plausible(marks, began, 40)
    rates: dict[str, list[float]] = {"this program": [], "the general store": []}
    with _general_store(tmp_path / "store") as url:
        page = phone.context.new_page()
        page.goto(f"{url}/page")
        for turn in range(ROUNDS):
            some = list(islice(stream, ENTRIES))
            server.stop()
            phone.page.evaluate(_OWN_FILL, some)
            server.start()
            took_ms, left = phone.page.evaluate(_OWN)
            assert left == 0
            rates["this program"].append(ENTRIES / took_ms * 1000)
            page.evaluate(_GENERAL_FILL, [f"t{turn}", some])
            took_ms, written = page.evaluate(_GENERAL, f"t{turn}")
            assert written == ENTRIES
            rates["the general store"].append(ENTRIES / took_ms * 1000)
    middle = {name: statistics.median(each) for name, each in rates.items()}
    for name, rate in middle.items():
        measured.add(WHERE, name, rate, "entries/s")
    times = [ours / theirs for ours, theirs in zip(*rates.values(), strict=True)]
    ratio = measured.add(WHERE, "this program, times the general store", statistics.median(times), "",
                         at_least=TIMES_AT_LEAST)
    print(json.dumps(rates))
    assert ratio.holds


@contextmanager
def _general_store(folder: Path) -> Iterator[str]:
    """Fetch the general store and serve it from an own port; yields its address."""
    npm, node = shutil.which("npm"), shutil.which("node")
    if not npm or not node:
        pytest.skip("Node.js and npm are needed to fetch the general store.")
    (folder / "data").mkdir(parents=True)
    subprocess.run([npm, "install", "--no-audit", "--no-fund", "--prefix", str(folder), *STORE], check=True,
                   stdin=subprocess.DEVNULL, capture_output=True, timeout=600)
    (folder / "serve.js").write_text(_SERVER)
    port = find_free_port()
    command: list[Any] = [node, folder / "serve.js", str(port), folder / "data"]
    with subprocess.Popen(command, cwd=folder, stdout=subprocess.PIPE, stdin=subprocess.DEVNULL, text=True) as process:
        try:
            assert process.stdout is not None
            assert process.stdout.readline().strip() == "ready"
            yield f"http://127.0.0.1:{port}"
        finally:
            process.terminate()
