"""The offline scene in WebKit: open, log, stop the server, open a deep link again, hand in."""

from __future__ import annotations

from typing import Any

from tests.browser.offline_world import FERMENTER, World, reading
from tests.browser.webkit_session import open_webkit

READY = """await navigator.serviceWorker.ready;
  for (let i = 0; i < 200 && !navigator.serviceWorker.controller; i += 1) await new Promise((go) => setTimeout(go, 50));
  return Boolean(navigator.serviceWorker.controller);"""
ENROL = """const { enrol } = await import("/static/slate/device.js");
  await enrol(args[0], "PH-7");
  await (await import("/static/slate/cards.js")).refresh();
  await (await import("/static/slate/who.js")).choose("NS");"""
LOG = """return (await import("/static/slate/queue.js")).log(args[0]);"""
ALL = """return (await import("/static/slate/queue.js")).all();"""
HAND_IN = """return (await import("/static/slate/handin.js")).handInNow();"""


def run(driver: Any, body: str, *arguments: Any) -> Any:
    """Run the body of an async function in the page and return what it returns; `args` holds the arguments."""
    script = f"""const done = arguments[arguments.length - 1], args = [...arguments].slice(0, -1);
      (async () => {{ {body} }})().then((value) => done({{ value }}), (error) => done({{ error: String(error) }}));"""
    answer = driver.execute_async_script(script, *arguments)
    assert "error" not in answer, answer["error"]
    return answer.get("value")


def test_open_log_stop_the_server_reopen_hand_in(webkit_parts: Any, world: World) -> None:
    with open_webkit(webkit_parts) as driver:
        driver.set_script_timeout(60)
        driver.get(world.server.url + "/today")
        assert run(driver, READY), "the worker controls the page"
        run(driver, ENROL, world.token("PH-7"))
        online = run(driver, LOG, reading(remark="with signal"))

        world.server.stop()
        driver.get(f"{world.server.url}/M/{FERMENTER}?from=label")
        assert driver.find_element("css selector", "html").get_attribute("data-page") == "vessel"
        offline = run(driver, LOG, reading(remark="without signal"))
        driver.get(f"{world.server.url}/m/{FERMENTER}/log/ferment_reading?again=1")
        states = {one["id"]: one["state"] for one in run(driver, ALL)}
        assert states[offline["id"]] == "waiting"
        assert set(states) == {online["id"], offline["id"]}

        world.server.start()
        driver.get(world.server.url + "/slate")
        assert run(driver, HAND_IN)["standing"] == "idle"
        assert all(one["state"] in ("entered", "queried", "known") for one in run(driver, ALL))
    assert {entry["id"] for entry in world.entries()} == {online["id"], offline["id"]}


def test_a_page_left_in_the_midst_of_its_work_does_not_hold_the_slate(webkit_parts: Any, world: World) -> None:
    """WebKit keeps a page that was left for the way back, and its transactions with it."""
    with open_webkit(webkit_parts) as driver:
        driver.set_script_timeout(30)
        driver.get(world.server.url + "/today")
        assert run(driver, READY)
        kept = run(driver, LOG, reading(remark="before"))
        busy = """const { write, ENTRIES } = await import("/static/slate/db.js");
          return new Promise((begun) => write([ENTRIES], async (tx) => {
            for (;;) { await tx.objectStore(ENTRIES).count(); begun(true); }
          }).catch(() => {}));"""
        assert run(driver, busy)
        driver.get(world.server.url + "/slate")
        assert [one["id"] for one in run(driver, ALL)] == [kept["id"]]
