"""Words that are longer by two fifths, with accents, break no button and push no page sideways on the smallest phone.

The language is made up on the phone itself, out of the English that it keeps. Longer by 40 % is what translators of
screens reckon with for texts of this length (from memory: 30 to 100 %, the shorter the more).
"""

from __future__ import annotations

from typing import Any

import pytest

from tests.browser.floor_house import FERMENTER, HEARTS, STILL, Floor, far_floor, floor
from tests.browser.test_pages_axe import _WORK as WORK

__all__ = ["far_floor", "floor"]
SMALLEST = {"width": 320, "height": 568}
# Lengthens what the phone keeps: the words as they came, and what its pages say before their script.
MAKE = """async () => {
  const accents = { a: "á", e: "ê", i: "ï", o: "ø", u: "ů", n: "ñ", c: "ç", s: "š" };
  const accented = (text) => text.replace(/[aeioucns]/g, (one) => accents[one]);
  const word = (text) => accented(text) + "ě".repeat(Math.ceil(text.length * 0.4));
  const longer = (text) => {
    let [depth, made] = [0, ""];
    for (const part of text.split(/([{}]|\\p{L}{2,})/u)) {
      if (part === "{") depth += 1;
      if (part === "}") depth -= 1;
      made += depth === 0 && /^\\p{L}{2,}$/u.test(part) ? word(part) : part;
    }
    return made;
  };
  const all = (value) => Array.isArray(value) ? value.map(all) : longer(value);
  for (const name of (await caches.keys()).filter((one) => /^cellarslate-(words|talk)-en-/.test(one))) {
    const cache = await caches.open(name);
    for (const request of await cache.keys()) {
      const answer = await cache.match(request);
      const headers = answer.headers;
      let text = await answer.text();
      if (new URL(request.url).pathname.startsWith("/words/")) {
        const words = JSON.parse(text);
        for (const id of Object.keys(words.said)) words.said[id] = longer(words.said[id]);
        if (Array.isArray(words.kinds)) {
          words.kinds = words.kinds.map(([title, short, line, ...rest]) => (
            [longer(title), longer(short), line, ...all(rest)]));
        } else {
          for (const [name, parts] of Object.entries(words.kinds)) words.kinds[name] = all(parts);
        }
        text = JSON.stringify(words);
      } else if (headers.get("Content-Type").startsWith("text/html")) {
        const at = text.indexOf("<header");
        const said = text.slice(at).replace(/>([^<>{}]+)</g, (whole, words) => `>${longer(words)}<`);
        text = text.slice(0, at) + said;
      }
      await cache.put(request, new Response(text, { headers }));
    }
  }
}"""
# What is wider than the screen, and each control whose words stand outside of it.
BROKEN = """() => {
  const found = [];
  const wide = document.documentElement.scrollWidth;
  if (wide > innerWidth) found.push(`the page: ${wide}`);
  const controls = "button, .button, .chip__face, .tile, .foot a, .pill, .glance__one, summary, .cut, label, h1, h2";
  for (const el of document.querySelectorAll(controls)) {
    if (!el.checkVisibility() || el.closest(".hidden-text")) continue;
    const box = el.getBoundingClientRect();
    if (!box.width) continue;
    const text = document.createTreeWalker(el, NodeFilter.SHOW_TEXT);
    while (text.nextNode()) {
      if (!text.currentNode.data.trim() || text.currentNode.parentElement.closest(".hidden-text, svg")) continue;
      const range = document.createRange();
      range.selectNodeContents(text.currentNode);
      for (const rect of range.getClientRects()) {
        const isOut = rect.left < box.left - 1.5 || rect.right > box.right + 1.5 || rect.bottom > box.bottom + 3;
        if (rect.width && (isOut || rect.top < box.top - 3)) {
          found.push(`${el.className || el.tagName}: ${text.currentNode.data.trim()}`);
          break;
        }
      }
    }
  }
  return found;
}"""


@pytest.fixture
def spoken(floor: Floor) -> Floor:
    """Return a phone that speaks the made-up language, on the smallest screen."""
    floor.open("/more").evaluate(MAKE)
    floor.page.set_viewport_size(SMALLEST)
    return floor


def test_no_page_of_the_three_scenes_breaks_by_longer_words(spoken: Floor) -> None:
    broken: dict[str, Any] = {}
    spoken.open("/today").evaluate(WORK, [FERMENTER, STILL, HEARTS])
    for path in (
        "/today",
        f"/m/{FERMENTER}",
        f"/m/{FERMENTER}/log/ferment_reading",
        "/job/ferments",
        f"/m/{STILL}",
        f"/m/{STILL}/run",
        f"/m/{STILL}/log/cut",
        "/log/goods_receipt",
        "/job/casks",
        "/slate",
        "/more",
        "/who",
        "/scan",
    ):
        page = spoken.open(path)
        page.wait_for_timeout(400)
        assert "ěě" in page.inner_text("body"), path
        if found := page.evaluate(BROKEN):
            broken[path] = found
    assert broken == {}
