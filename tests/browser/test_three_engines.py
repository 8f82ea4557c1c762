"""The floor's three scenes with the server stopped, in each of the engines that phones have: Chromium, WebKit, Firefox.

A label is scanned and a reading logged; a still run is kept through its cuts; after work everything is handed in. One
browser serves all scenes of an engine, and one server all engines; each slate goes with its phone from scene to scene.
"""

from __future__ import annotations

import base64
from collections.abc import Iterator
from contextlib import ExitStack
from typing import Any

import cv2
import pytest

from tests.browser import hands
from tests.browser.firefox_session import open_firefox
from tests.browser.floor_house import FERMENTER, HEADS, HEARTS, STILL, TAILS, furnish
from tests.browser.hands import Hand, tap_words, wait_at, wait_for
from tests.browser.offline_world import Phone, World
from tests.browser.webkit_session import open_webkit
from tests.find_browsers import find_firefox, find_webkit
from tests.labels.camera_feed import picture_of_mark
from tests.server_process import ServerProcess

_MISSING = {
    "webkit": "WebKitGTK's driver is not installed (Debian: webkit2gtk-driver and xvfb).",
    "firefox": "Firefox is not installed (Debian: firefox-esr).",
}
_ENGINES = ["chromium", *(pytest.param(name, marks=getattr(pytest.mark, name)) for name in _MISSING)]
_ENROL = """await (await import("/static/slate/device.js")).enrol(args[0], args[1]);
  await (await import("/static/slate/cards.js")).refresh();
  await (await import("/static/slate/who.js")).choose("NS");"""
_ALL = """return (await import("/static/slate/queue.js")).all();"""
_WAITING = """(await (await import("/static/slate/queue.js")).waiting()).length"""
# The label stands before the camera: a picture of it, as a stream of one canvas.
_LOOK = """const label = new Image();
  label.src = args[0];
  await label.decode();
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [label.width, label.height];
  const draw = () => canvas.getContext("2d").drawImage(label, 0, 0);
  draw();
  setInterval(draw, 40);
  Object.defineProperty(navigator, "mediaDevices", { value: { getUserMedia: async () => canvas.captureStream() } });
  await (await import("/static/pages/scan.js")).start();"""

_BUSY = """const { write, ENTRIES } = await import("/static/slate/db.js");
  return new Promise((begun) => write([ENTRIES], async (tx) => {
    for (;;) { await tx.objectStore(ENTRIES).count(); begun(true); }
  }).catch(() => {}));"""


class Scene:
    """One engine's page, with the house that it works in."""

    def __init__(self, hand: Hand, world: World) -> None:
        self.hand, self.world = hand, world

    def get_ready(self, name: str) -> None:
        """Let the phone in, and wait until all parts are on it."""
        self.open("/today")
        wait_for(self.hand, "navigator.serviceWorker.controller")
        self.hand.run(_ENROL, self.world.token(name), name)
        wait_for(self.hand, """!(await (await import("/static/slate/worker.js")).missingParts()).length""")

    def open(self, path: str) -> None:
        """Open a page of the floor, and wait until its module has done its work."""
        self.hand.open(self.world.server.url + path)
        wait_for(self.hand, """"started" in (document.documentElement?.dataset ?? {})""")

    def slate(self) -> list[dict[str, Any]]:
        """Return the entries on this phone's slate, oldest first."""
        found: list[dict[str, Any]] = self.hand.run(_ALL)
        return found[::-1]


@pytest.fixture(scope="module")
def house(
    playwright: Any, browser_options: dict[str, Any], tmp_path_factory: pytest.TempPathFactory
) -> Iterator[dict[str, Scene]]:
    """A phone of each engine that is there, let in and with all parts; then their server is stopped."""
    folder = tmp_path_factory.mktemp("engines")
    with ExitStack() as stack:
        world = World(folder, lambda data_dir: ServerProcess(data_dir).start())
        stack.callback(world.server.close)
        furnish(world)
        phone = Phone(playwright, browser_options, folder / "chromium", "")
        stack.callback(phone.close)
        opened: dict[str, Hand] = {"chromium": hands.Chromium(phone.open("about:blank"))}
        if webkit := find_webkit():
            opened["webkit"] = hands.WebKit(stack.enter_context(open_webkit(webkit)))
        if firefox := find_firefox():
            opened["firefox"] = stack.enter_context(open_firefox(firefox, folder / "firefox"))
        scenes = {name: Scene(hand, world) for name, hand in opened.items()}
        for name, scene in scenes.items():
            scene.get_ready(name)
        world.server.stop()
        yield scenes


@pytest.fixture(params=_ENGINES)
def scene(request: pytest.FixtureRequest, house: dict[str, Scene]) -> Scene:
    """The phone of one engine; skips where the engine is missing."""
    if request.param not in house:
        pytest.skip(_MISSING[request.param])
    return house[request.param]


def test_a_label_is_scanned_and_a_reading_logged(scene: Scene) -> None:
    hand = scene.hand
    scene.open("/scan")
    _, png = cv2.imencode(".png", picture_of_mark(FERMENTER))
    hand.run(_LOOK, "data:image/png;base64," + base64.b64encode(png.tobytes()).decode())
    wait_at(hand, f"/m/{FERMENTER}")
    tap_words(hand, "Reading", "main a")
    wait_at(hand, f"/m/{FERMENTER}/log/ferment_reading")
    hand.write("[name=temp]", "14,6")
    hand.write("[name=gravity]", "1,031")
    hand.tap("[data-part=log]")
    wait_at(hand, f"/m/{FERMENTER}")
    (kept,) = (one for one in scene.slate() if one["entry"]["kind"] == "ferment_reading")
    assert (kept["state"], kept["entry"]["mark_by"]) == ("waiting", "scanned")
    raws = {name: value["raw"] for name, value in kept["entry"]["values"].items()}
    assert raws == {"temp": "14,6", "gravity": "1,031"}


def test_a_run_is_kept_through_its_cuts(scene: Scene) -> None:
    hand, sheet = scene.hand, f"/m/{STILL}/run"
    scene.open(f"/m/{STILL}/log/charge")
    wait_for(hand, """document.querySelector("form[data-ready]")""")
    tap_words(hand, "F3", "[data-field=from_vessel] .pick")
    hand.write("[name=wash]", "482")
    hand.write("[name=wash_strength]", "5,2")
    for part, code in (("heads", "R1"), ("hearts", "R2"), ("tails", "R3")):
        tap_words(hand, code, f"[data-field={part}_to] .pick")
        # A question that comes in between may scroll the page: whoever sees nothing picked taps again.
        if not hand.run(f"""return document.querySelector("[name={part}_to]").value"""):
            tap_words(hand, code, f"[data-field={part}_to] .pick")
        wait_for(hand, f"""document.querySelector("[name={part}_to]").value.startsWith("{code}")""")
    tap_words(hand, "Log it")
    wait_at(hand, sheet)
    _read(hand, "78,6", "16,2")
    # OIML R 22 (tests/trade holds it to the printed tables): a soda-lime glass showing 78.6 at 16.2 °C is 79.7 true.
    wait_for(hand, """/^79[.,][67]/.test(document.querySelector("[data-figure=now]")?.textContent)""")
    _cut(hand, "Cut to hearts")
    wait_for(hand, """document.querySelector(".receiver--open")?.textContent.includes("R2")""")
    scene.open(sheet)  # the phone died; another page, the same sheet
    _read(hand, "78,2", "16,2")  # a run falls slowly: less would be asked about
    _cut(hand, "Cut to tails")
    wait_for(hand, """document.querySelector(".receiver--open")?.textContent.includes("R3")""")
    wait_for(hand, """document.querySelector("[data-part=chart] canvas")?.getClientRects().length""")
    _cut(hand, "End the run", "Log it")
    wait_for(hand, """document.querySelector(".head__about").textContent.includes("ended")""")
    entries = [one["entry"] for one in scene.slate() if one["entry"]["mark"] == STILL]
    assert [one["kind"] for one in entries] == ["charge", "run_reading", "cut", "run_reading", "cut", "run_end"]
    assert [entries[0]["values"][name]["raw"] for name in ("from_vessel", "heads_to")] == [FERMENTER, HEADS]
    assert [entries[at]["values"]["receiver"]["raw"] for at in (2, 4)] == [HEARTS, TAILS]


def _read(hand: Hand, glass: str, temp: str) -> None:
    tap_words(hand, "Reading")
    wait_for(hand, """document.querySelector(".panel [name=glass]")""")
    hand.write(".panel [name=glass]", glass)
    hand.write(".panel [name=temp]", temp)
    tap_words(hand, "Log it")
    wait_for(hand, """!document.querySelector(".panel")""")


def _cut(hand: Hand, words: str, log: str = "Log the cut") -> None:
    tap_words(hand, words, ".cuts button")
    tap_words(hand, "nose", ".panel .chip")
    tap_words(hand, log)
    wait_for(hand, """!document.querySelector(".panel")""")


def test_a_page_left_in_the_midst_of_its_work_does_not_hold_the_slate(scene: Scene) -> None:
    """WebKit keeps a page that was left for the way back, and its transactions with it."""
    scene.open("/today")
    before = scene.slate()
    assert scene.hand.run(_BUSY)
    scene.open("/slate")
    assert scene.slate() == before


def test_after_work_everything_is_handed_in_once(scene: Scene) -> None:
    before = [one["id"] for one in scene.slate()]
    assert before
    if scene.world.server.process is None:
        scene.world.server.start()
    scene.open("/slate")  # coming up from the cellar and looking at the phone is enough
    wait_for(scene.hand, f"{_WAITING} === 0")
    scene.open("/slate")
    own = scene.slate()[0]["device"]
    entered = [one for one in scene.world.entries(limit=1000) if one["device"] == own]
    assert [one["id"] for one in sorted(entered, key=lambda entry: entry["seq"])] == before
    assert {one["state"] for one in scene.slate()} <= {"entered", "queried", "known"}
