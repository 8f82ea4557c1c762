"""Script in every text of every kind, seen on every page that shows it: nothing runs, and the policy is never asked."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Error

import webapp.kinds
from tests.browser.offline_world import FERMENTER, RECEIVER, STILL, Phone, World, reading
from tests.desk import trace_world
from webapp import create_app
from webapp.book import intake
from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.kinds.spec import Field, Kind
from webapp.trade.marks import make_mark

EVIL = "\"'><img src=x onerror=alert(1)><script>alert(2)</script><svg onload=alert(3)>"
SHORT = "<img src=x onerror=alert(4)>"
CASK, TANK = make_mark("C031"), make_mark("T1")
VESSELS = (FERMENTER, STILL, RECEIVER, CASK, TANK)
PASSWORD = "plum and pear and quince"
_LISTEN = """addEventListener("securitypolicyviolation",
  (event) => console.error(`BREACH ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}`));"""
_EVIL_PARTS = """() => document.querySelectorAll("img[src='x'], svg[onload], [onerror], script:not([src])").length"""


class Watch:
    """Listens to a browser for anything that ran, or that the policy had to stop."""

    def __init__(self, context: Any) -> None:
        self.heard: list[str] = []
        self.pages = 0
        context.add_init_script(_LISTEN)
        for page in context.pages:
            self.listen(page)
        context.on("page", self.listen)

    def listen(self, page: Any) -> None:
        """Listen to one page."""
        page.on("dialog", lambda dialog: (self.heard.append(f"ran: {dialog.message}"), dialog.dismiss()))
        page.on("pageerror", lambda error: self.heard.append(f"error: {error}"))
        page.on("console", lambda said: self.heard.append(said.text) if _is_breach(said.text) else None)

    def look(self, page: Any) -> None:
        """Look at the page as it stands now."""
        assert page.evaluate(_EVIL_PARTS) == 0, page.url
        assert self.heard == [], (page.url, self.heard)
        self.pages += 1


def _is_breach(text: str) -> bool:
    return text.startswith("BREACH") or "Content Security Policy" in text


def _raw(spec: Field) -> str:
    if spec.sort == "number":
        low, high = (0.0 if end is None else end for end in spec.usual)
        return f"{(low + high) / 2:.1f}" if high > low else f"{low:g}"
    if spec.sort == "choice":
        return spec.choices[0][0]
    if spec.sort == "mark":
        wanted = {"still": STILL, "fermenter": FERMENTER, "receiver": RECEIVER, "cask": CASK}
        return next((wanted[sort] for sort in spec.vessels if sort in wanted), TANK)
    fixed = {"yes_no": "yes", "date": "2026-03-01", "time": "08:30"}
    return fixed.get(spec.sort, EVIL)


def _hostile(kind: Kind, seq: int, now: str) -> dict[str, Any]:
    values = {}
    for spec in kind.fields:
        values[spec.name] = {"raw": _raw(spec)} | ({"unit": spec.units[0]} if spec.units else {})
        if spec.instrument:
            values[spec.name]["instrument"] = SHORT
    mark = {"still": STILL, "receiver": RECEIVER, "cask": CASK, "tank": TANK}.get((kind.vessels or ("",))[0], FERMENTER)
    return {
        "id": f"0193{seq:04x}-0000-7000-8000-{seq:012x}", "kind": kind.name, "kind_version": kind.version,
        "mark": mark if kind.needs_mark else "", "mark_by": "typed" if kind.needs_mark else "", "read_at": now,
        "typed_at": now, "person": "NS", "role": SHORT, "seen_by": SHORT, "device": SHORT, "seq": seq, "values": values,
        "as_read": [], "looked_again": [], "remark": EVIL, "amends": None, "reason": EVIL,
    }


def _fill(book: Book) -> list[str]:
    """Put script into everything that people type; return the ids of the entries that got in."""
    registry.set_site(book, {"name": EVIL, "time_zone": "Europe/Vienna"}, by="MD")
    sorts = {FERMENTER: "fermenter", STILL: "still", RECEIVER: "receiver", CASK: "cask", TANK: "tank"}
    for mark, sort in sorts.items():
        row = {"mark": mark, "sort": sort, "title": EVIL, "place": EVIL, "note": EVIL, "wood": EVIL, "toast": EVIL,
               "size_class": EVIL, "capacity_l": 2000, "tare_kg": 46}
        registry.put_vessel(book, row, by="MD")
    registry.put_instrument(book, {"id": "TH-1", "sort": EVIL, "title": EVIL, "unit": SHORT}, by="MD")
    people.put_person(book, {"code": "NS", "name": EVIL, "roles": [EVIL], "access": "floor"}, by=EVIL)
    now = datetime.now(UTC)
    made = [_hostile(kind, n, now.isoformat()) for n, kind in enumerate(webapp.kinds.ALL, 1) if kind.name != "answer"]
    answer = intake.hand_in(book, {"now": now.isoformat(), "device": "", "entries": made}, via="phone", now=now)
    wrong = [(one, kind) for one, kind in zip(answer["results"], made, strict=True) if one["settled"] == "refused"]
    assert len(wrong) < len(made) / 4, [(kind["kind"], one["problems"]) for one, kind in wrong]
    return [one["id"] for one in answer["results"] if one["settled"] != "refused"]


class _Past:
    """What the jobs work on, with script in its names: runs that are over, and fruit, spirit and casks that stand."""

    def __init__(self, book: Book) -> None:
        self.book, self.seq = book, 0
        self.start = datetime.now(UTC).replace(microsecond=0) - timedelta(days=400)

    def tell(self) -> None:
        """Log a small year, then what stands now."""
        for mark in (trace_world.F1, trace_world.R1, trace_world.R3, trace_world.C1):
            sort, holds_l = {"F": ("fermenter", 2000), "R": ("receiver", 2000), "C": ("cask", 200)}[mark[0]]
            registry.put_vessel(self.book, {"mark": mark, "sort": sort, "capacity_l": holds_l, "tare_kg": 46.3}, "MD")
        told = trace_world.tell(self)
        registry.set_site(self.book, {"tasting": {"words": [SHORT], "scores": [SHORT]}}, by="MD")
        year = 399 * 1440
        self.log("fruit_intake", trace_world.F2, year, gross=("900", "kg"), tare=("60", "kg"), material="plum",
                 grower_lot="", batch="", temp=("14", "degC"), rot=("1", "pct"))
        spirit = {"temp": ("20", "degC"), "strength": ("60", "pct_vol"), "volume": ("150", "L")}
        self.log("gauge", trace_world.T2, year, **spirit, purpose="opening", what="")
        self.log("bottling_gauge", trace_world.T2, year + 9, batch="", label_strength=("60", "pct_vol"), **spirit)
        self.log("best_run", trace_world.S1, year, run=told["run2"], why="")
        for mark in (trace_world.F2, trace_world.T2):
            registry.put_vessel(self.book, {"mark": mark, "name": SHORT, "title": EVIL, "place": SHORT}, by="MD")

    def log(self, kind: str, mark: str, minutes: int, /, **values: Any) -> dict[str, Any]:
        """Hand in one entry of some minutes after the beginning; names that people give begin with script."""
        self.seq += 1
        at = (self.start + timedelta(minutes=minutes)).isoformat()
        pairs = {name: value if isinstance(value, tuple) else (value,) for name, value in values.items()}
        made = {name: dict(zip(("raw", "unit"), pair, strict=False)) for name, pair in pairs.items()}
        for name in ("grower_lot", "batch", "run_name", "lot_mark", "what", "why"):
            if name in made and kind != "cask_fill":
                made[name]["raw"] = f"{SHORT} {made[name]['raw']}"
        entry = {
            "id": f"0192{self.seq:04x}-0000-7000-8000-{self.seq:012x}", "kind": kind, "kind_version": 1, "mark": mark,
            "read_at": at, "typed_at": at, "person": "NS", "device": "d-told", "seq": self.seq, "values": made,
        }
        batch = {"now": at, "device": "d-told", "entries": [entry]}
        answer = intake.hand_in(self.book, batch, via="phone", now=datetime.fromisoformat(at))
        result: dict[str, Any] = answer["results"][0]
        assert result["settled"] != "refused", result
        return result


def _desk_paths(folder: Path, ids: list[str]) -> Iterator[str]:
    app = create_app(folder)
    values = {"entry_id": ids, "mark": VESSELS, "code": ["NS"], "instrument_id": ["TH-1"]}
    adapter = app.url_map.bind("localhost")
    for rule in app.url_map.iter_rules():
        if not rule.endpoint.startswith("desk.") or "GET" not in rule.methods or rule.rule.endswith((".csv", ".json")):
            continue
        first = next(iter(rule.arguments), "")
        for value in values.get(first, ["none-such"]) if first else [""]:
            given = {name: value if name == first else "none-such" for name in rule.arguments}
            yield adapter.build(rule.endpoint, given)
    app.extensions["book"].close()


def _open(page: Any, path: str) -> bool:
    """Open a page; say False where it is a PDF or another file that the browser would save."""
    try:
        page.goto(path, wait_until="load")
    except Error as error:
        if "Download" in str(error) or "ERR_ABORTED" in str(error):
            return False
        raise
    return True


@pytest.mark.browser
@pytest.mark.timeout(600)
def test_the_desk_shows_script_as_letters_everywhere(world: World, browser: Any, tmp_path: Path) -> None:
    with open_book(world.book_path) as book:
        ids = _fill(book)
    context = browser.new_context(base_url=world.server.url, accept_downloads=False)
    watch = Watch(context)
    page = context.new_page()
    page.goto("/sign-in")
    page.fill("input[name=code]", "MD")
    page.fill("input[name=password]", PASSWORD)
    page.locator("form button[type=submit]").first.click()
    page.wait_for_url("**/desk/**")
    shown = 0
    for path in _desk_paths(tmp_path / "map", ids):
        if not _open(page, path):
            continue
        watch.look(page)
        shown += "onerror=alert" in page.locator("body").inner_text()
    context.close()
    assert watch.pages > len(ids) + 20
    assert shown > len(ids), "the texts were there, as letters"


@pytest.mark.browser
@pytest.mark.timeout(600)
def test_the_floor_shows_script_as_letters_everywhere(world: World, make_phone: Any) -> None:
    with open_book(world.book_path) as book:
        _Past(book).tell()
        _fill(book)
    phone: Phone = make_phone(world.server.url)
    phone.get_ready(world.token(EVIL[:40]))
    watch = Watch(phone.context)
    paths = ["/today", "/scan", "/slate", "/more", "/who", "/start", "/log/shift_note", f"/m/{STILL}/run"]
    paths += [f"/m/{mark}" for mark in VESSELS]
    paths += [f"/m/{FERMENTER}/log/{kind.name}" for kind in webapp.kinds.ALL if "fermenter" in kind.vessels][:4]
    jobs = ["/job/ferments", "/job/casks", f"/job/run?still={STILL}"]
    jobs += [f"/job/{name}{asked}" for name in ("reduce", "bottling") for asked in ("", f"?mark={trace_world.T2}")]
    paths += jobs
    has_shown: dict[str, bool] = {}
    for is_served in (True, False):
        if not is_served:
            world.server.stop()
            phone.open("/today")
            kept = phone.log(reading(remark=EVIL, reason=EVIL, role=SHORT))
            note = {"kind": "shift_note", "mark": FERMENTER, "person": "NS", "values": {"text": {"raw": EVIL}}}
            phone.log(note | {"remark": EVIL})
        for path in paths:
            page = phone.open(path)
            page.wait_for_selector("html[data-started]", state="attached")
            page.wait_for_timeout(150)
            watch.look(page)
            has_shown[path] = "onerror=alert" in page.locator("body").inner_text()
    text = phone.page.evaluate("""async () => (await (await import("/static/slate/file.js")).saveSlate()).text()""")
    assert kept["id"] in {one["entry"]["id"] for one in json.loads(text)["entries"]}
    assert json.dumps(EVIL)[1:-1] in text, "the file holds what was typed, to the letter"
    assert sum(has_shown.values()) > len(VESSELS) + len(jobs)
    assert [path for path in jobs if not has_shown[path]] == [], "each job had hostile texts to show"
