"""A Firefox of its own, spoken to directly by WebDriver BiDi (W3C): no driver program stands between.

Firefox opens a socket itself (`--remote-debugging-port`); what goes over it is JSON. Only the few commands that the
scenes need are here.
"""

from __future__ import annotations

import base64
import itertools
import json
import re
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from tests.browser.hands import STAND_STILL, PageGone

_WAIT_S = 60
_LISTENING = re.compile(r"WebDriver BiDi listening on (ws://\S+)")
_NOWHERE = {"proxy": "127.0.0.1", "port": 9}  # the discard port: nobody answers
# Without a screen no window is in front, and Firefox tells no page of the focus: the keypad is told here.
_FOCUS = """const one = document.querySelector(args[0]);
  one.focus();
  if (!document.hasFocus()) one.dispatchEvent(new FocusEvent("focusin", { bubbles: true }));"""
# A fresh profile asks nobody anything, and reaches nothing but this computer.
_PREFERENCES = {
    "app.normandy.enabled": False,
    "browser.aboutwelcome.enabled": False,
    "browser.safebrowsing.malware.enabled": False,
    "browser.safebrowsing.phishing.enabled": False,
    "browser.shell.checkDefaultBrowser": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "intl.accept_languages": "en-GB, en",
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "network.proxy.type": 1,
    "network.proxy.http": _NOWHERE["proxy"],
    "network.proxy.http_port": _NOWHERE["port"],
    "network.proxy.ssl": _NOWHERE["proxy"],
    "network.proxy.ssl_port": _NOWHERE["port"],
    "network.proxy.no_proxies_on": "localhost, 127.0.0.1",
    "services.settings.server": "http://127.0.0.1:9",
    "toolkit.telemetry.enabled": False,
}


@contextmanager
def open_firefox(path: Path, profile: Path, width: int = 390, height: int = 844) -> Iterator[Firefox]:
    """Give a page of a new Firefox for as long as the block runs; a profile of its own, no private window."""
    profile.mkdir(parents=True)
    lines = [f"user_pref({json.dumps(name)}, {json.dumps(value)});" for name, value in _PREFERENCES.items()]
    (profile / "user.js").write_text("\n".join(lines), encoding="utf-8")
    said = profile / "said.txt"
    command = [path, "--headless", "--no-remote", "--profile", profile, "--remote-debugging-port", "0", "about:blank"]
    with said.open("w") as out:
        process = subprocess.Popen(command, stdout=out, stderr=out)
    firefox = None
    try:
        firefox = Firefox(_read_address(said, process))
        firefox.ask("browsingContext.setViewport", context=firefox.page, viewport={"width": width, "height": height})
        yield firefox
    finally:
        if firefox is not None:
            firefox.close()
        process.terminate()
        try:
            process.wait(20)
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait(10)


def _read_address(said: Path, process: subprocess.Popen[bytes]) -> str:
    """Return the address of the socket, once Firefox has said it."""
    deadline = time.monotonic() + _WAIT_S
    while not (found := _LISTENING.search(said.read_text(errors="replace"))):
        assert process.poll() is None and time.monotonic() < deadline, f"Firefox did not start: {said.read_text()}"
        time.sleep(0.05)
    return found[1]


class Refused(Exception):
    """Firefox does not do what it was asked."""


class Firefox:
    """One page of a Firefox."""

    def __init__(self, address: str) -> None:
        import websocket

        self._socket = websocket.create_connection(f"{address}/session", timeout=_WAIT_S, suppress_origin=True)
        self._ids = itertools.count(1)
        self.ask("session.new", capabilities={})
        self.page: str = self.ask("browsingContext.getTree")["contexts"][0]["context"]

    def ask(self, method: str, **parameters: Any) -> dict[str, Any]:
        """Send one command and return its result."""
        own = next(self._ids)
        self._socket.send(json.dumps({"id": own, "method": method, "params": parameters}))
        answer: dict[str, Any] = {}
        while answer.get("id") != own:  # events come in between
            answer = json.loads(self._socket.recv())
        if answer["type"] != "success":
            raise Refused(f"{method}: {answer.get('error')}: {answer.get('message')}")
        result: dict[str, Any] = answer["result"]
        return result

    def open(self, url: str) -> None:
        """Go to an address, and wait until the page has loaded."""
        self.ask("browsingContext.navigate", context=self.page, url=url, wait="complete")

    def run(self, body: str, *arguments: Any) -> Any:
        """Run the body of an async function in the page and return what it returns; `args` holds the arguments."""
        # As JSON both ways: the protocol's own forms of values are rich, and nothing here needs them.
        source = f"""async (text) => {{ const args = JSON.parse(text);
          return JSON.stringify((await (async () => {{ {body} }})()) ?? null); }}"""
        call = {"functionDeclaration": source, "arguments": [{"type": "string", "value": json.dumps(arguments)}]}
        try:
            answer = self.ask("script.callFunction", target={"context": self.page}, awaitPromise=True, **call)
        except Refused as error:  # what the body itself throws comes as an answer
            raise PageGone from error
        assert answer["type"] == "success", answer["exceptionDetails"]["text"]
        return json.loads(answer["result"]["value"])

    def tap(self, css: str) -> None:
        """Press and let go in the middle of an element, as a finger would: what lies over it gets the tap."""
        x, y = self.run(STAND_STILL, css)
        press = [{"type": f"pointer{way}", "button": 0} for way in ("Down", "Up")]
        actions = [{"type": "pointerMove", "x": x, "y": y}, *press]
        self._act(type="pointer", parameters={"pointerType": "touch"}, actions=actions)

    def write(self, css: str, text: str) -> None:
        """Type into a field, key by key."""
        self.run(_FOCUS, css)
        keys = [{"type": f"key{way}", "value": key} for key in text for way in ("Down", "Up")]
        self._act(type="key", actions=keys)

    def _act(self, **source: Any) -> None:
        self.ask("input.performActions", context=self.page, actions=[{"id": source["type"], **source}])

    def picture(self) -> bytes:
        """Return a PNG of what is seen."""
        return base64.b64decode(self.ask("browsingContext.captureScreenshot", context=self.page)["data"])

    def close(self) -> None:
        """Let go of the socket."""
        self._socket.close()
