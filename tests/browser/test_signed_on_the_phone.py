"""The phone's own key: made at letting in, used when an entry is logged, held equal with the book's way of it."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

from tests.browser.offline_world import Phone, World, reading
from webapp.book.house import phone_keys
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.way import read_way

VECTORS = json.loads((Path(__file__).parents[1] / "vectors" / "signed_entries.json").read_text("utf-8"))
# The phone's form of each entry, and whether the browser's own library finds the signatures of the vectors good.
_LIKE_THE_BOOK = """async ({ key, cases }) => {
  const { signedBytes } = await import("/static/slate/signing.js");
  const jwk = { kty: "EC", crv: "P-256", x: key.x, y: key.y };
  const known = await crypto.subtle.importKey("jwk", jwk, { name: "ECDSA", namedCurve: "P-256" }, false, ["verify"]);
  const bytes = (text) => Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), (c) => c.charCodeAt(0));
  return Promise.all(cases.map(async ({ entry, signed, signature }) => {
    const made = signedBytes(entry);
    const raw = bytes(signature.split(".")[1]);
    const holds = await crypto.subtle.verify({ name: "ECDSA", hash: "SHA-256" }, known, raw, made);
    return [new TextDecoder().decode(made) === signed, holds];
  }));
}"""
_AT_ONCE = """async (draft) => {
  const { log } = await import("/static/slate/queue.js");
  return Promise.all([1, 2, 3].map((at) => log({ ...draft, remark: `at once ${at}` })));
}"""
_TAKE_KEY_OUT = """async () => {
  const { getMeta } = await import("/static/slate/db.js");
  const key = await getMeta("signing_key");
  const takeOut = (form) => crypto.subtle.exportKey(form, key).then(() => true, () => false);
  const tried = await Promise.all(["jwk", "pkcs8", "raw"].map(takeOut));
  return [key.type, key.extractable, tried.some(Boolean)];
}"""
_WITHOUT = "Object.defineProperty(crypto, 'subtle', { value: undefined, configurable: true })"


def test_entries_are_signed_by_a_key_that_stays_on_the_phone(world: World, make_phone: Callable[..., Phone]) -> None:
    phone = make_phone(world.server.url)
    page: Any = phone.get_ready(world.token("PH-2"))
    assert page.evaluate(_LIKE_THE_BOOK, VECTORS) == [[True, True]] * len(VECTORS["cases"])
    assert page.evaluate(_TAKE_KEY_OUT) == ["private", False, False]
    world.server.stop()
    second = phone.context.new_page()
    second.goto(phone.url + "/more")
    for number in range(2):  # two tabs in turns: each finds that the other has gone on counting
        phone.log(reading(remark=f"first tab {number}"))
        phone.log(reading(remark=f"second tab {number}"), second)
    page.evaluate(_AT_ONCE, reading())
    world.server.start()
    phone.hand_in()
    phone.page.evaluate(f"() => {{ {_WITHOUT} }}")
    phone.log(reading(remark="without the browser's keys"))
    phone.hand_in()
    with open_book(world.book_path) as book:
        rows = sorted(log.find_entries(book), key=lambda row: row["seq"])
        assert [row["seq"] for row in rows] == list(range(1, 9))
        assert [read_way(row["via"]).findings for row in rows] == ["s"] * 7 + ["u"]
        signers = {(phone_keys.signer_of(book, row["entry"]) or {}).get("device") for row in rows[:7]}
        assert signers == {rows[0]["device"]}
        assert phone_keys.signer_of(book, rows[7]["entry"]) is None


def test_a_browser_without_keys_logs_and_hands_in_as_before(world: World, make_phone: Callable[..., Phone]) -> None:
    phone = make_phone(world.server.url)
    phone.open("/today")
    phone.context.add_init_script(_WITHOUT)  # as on a plain http address in the local network
    phone.open("/today")
    phone.get_ready(world.token("PH-3"))
    phone.log(reading())
    phone.hand_in()
    with open_book(world.book_path) as book:
        (row,) = log.find_entries(book)
        assert read_way(row["via"]) == ("phone", row["device"], "")
        assert "signature" not in row["entry"]
        assert phone_keys.all_keys(book) == []
