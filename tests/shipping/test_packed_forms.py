"""Every form that a module may take comes out of the packer as it went in: opened packed and plain, with one result."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from tests.shipping.node_tools import needs_tools
from webapp.shipping import build

pytestmark = [
    pytest.mark.browser,
    needs_tools,
]

FOLDER = Path(__file__).with_name("forms")
SITE = "http://localhost:9"  # nothing answers there: the test gives each file
JOINED = "/joined/floor.js"
PAGE = '<!doctype html><script type="module" src="/static/floor.js"></script>'
# By the language's own rules: ECMA-262, sections 16.2.2 (imports) and 16.2.3 (exports).
NAMES = ["Shape", "box", "count", "counted", "deep", "default", "first", "own", "rest", "steps"]
DESTRUCTURED = [1, {"second": 2, "third": 3}, "deep", "by default"]
FOUND = {
    "page": {
        "import * as": NAMES,
        "the default, and names beside it": ["default a", "default b"],
        "export let, changed": [0, 1, 1],
        "destructured": DESTRUCTURED,
        "handed on": ["all", "all", "all"],
        "a circle of functions": [False, True],
        "awaited at the top": "late",
        "wide letters in templates": ["a\u2009–\u20091", "–\u2009"],
        "effects alone": 1,
    },
    "job": {
        "import * as": NAMES,
        "import * as, of what is handed on": ["all", "default", "ns", "renamed"],
        "the default": ["default c", "an expression", "an expression", "near"],
        "export let, changed": [1, 2, 2, 2],
        "destructured": DESTRUCTURED,
        "a class and a generator": ["shape 1", "shape 2", [1, 2]],
        "handed on": ["all", "all", "all"],
        "effects alone": 1,
    },
    "one and the same by either way": True,
}


def _job(**changes: Any) -> dict[str, Any]:
    names = sorted(path.name for path in FOLDER.glob("*.js"))
    return {
        "root": str(FOLDER), "base": "/static/", "entry": "floor.js", "start": ["page.js"], "joined": JOINED,
        "scripts": names, "classics": [], "styles": [], **changes,
    }


def _open(browser: Any, texts: dict[str, str]) -> Any:
    """Return what the modules of these addresses find, in a page of their own."""
    context = browser.new_context()
    try:
        page, failed = context.new_page(), []
        page.on("pageerror", lambda error: failed.append(str(error)))

        def answer(route: Any) -> None:
            path = route.request.url.removeprefix(SITE)
            if path == "/":
                route.fulfill(body=PAGE, content_type="text/html")
            elif path in texts:
                route.fulfill(body=texts[path], content_type="text/javascript")
            else:
                route.fulfill(status=404)

        page.route("**/*", answer)
        page.goto(f"{SITE}/")
        page.wait_for_function("globalThis.found !== undefined", timeout=10_000)
        assert failed == []
        return json.loads(page.evaluate("JSON.stringify(globalThis.found)"))
    finally:
        context.close()


def test_every_form_is_the_same_packed_and_plain(browser: Any) -> None:
    plain = {f"/static/{path.name}": path.read_text("utf-8") for path in FOLDER.glob("*.js")}
    packed = build.run_packer(_job())
    assert set(packed["joined"]) == {path.name for path in FOLDER.glob("*.js")} - {"floor.js", "job.js", "beside.js"}
    assert set(packed["texts"]) == {*plain, JOINED}
    assert _open(browser, plain) == FOUND
    assert _open(browser, packed["texts"]) == FOUND


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("export const here = import.meta.url;\n", "uses import.meta"),
        ("export const later = (name) => import(name);\n", "Spell it out"),
        ("export const raw = String.raw`\\u2013`;\n", "String.raw"),
        ("export const broken = ;\n", "Unexpected"),
        ('export { nothing } from "./source.js";\n', "nothing"),
        ('import "./not_there.js";\n', "not_there"),
    ],
)
def test_what_would_break_is_refused_aloud(tmp_path: Path, words: str, told: str) -> None:
    for path in FOLDER.glob("*.js"):
        (tmp_path / path.name).write_bytes(path.read_bytes())
    with (tmp_path / "page.js").open("a", encoding="utf-8") as page:
        page.write(words)
    with pytest.raises(build.CannotBuild, match=told):
        build.run_packer(_job(root=str(tmp_path)))
