"""A figure far from what stands there or was read last is asked about, by the book and by a phone before it is logged.

Limits: common practice, no source.
"""

from __future__ import annotations

import json
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

import webapp.kinds
from tests.book.checks.ledger import Ledger, codes, only
from tests.words.test_both_sides import phone
from webapp.kinds.as_data import kind_data

CASES = json.loads(Path("tests/vectors/jumps.json").read_text("utf-8"))["cases"]
NOW = datetime.fromisoformat("2025-10-02T10:00")
ON_PHONE = """async ({ cases, kinds }) => {
  const { jumps } = await import("/static/form/jumps.js");
  const { offers } = await import("/static/kinds/meant.js");
  const { readEntry } = await import("/static/kinds/read.js");
  const { say } = await import("/static/words/say.js");
  const { initTrade } = await import("/static/trade/index.js");
  const { loadKinds } = await import("/static/kinds/kinds.js");
  await initTrade(async (name) => (await fetch(`/data/${name}`)).json());
  await loadKinds();
  await (await import("/static/words/catalogue.js")).loadLater();
  const now = Date.now();
  return cases.map((one) => {
    const kind = kinds[one.kind];
    const units = Object.fromEntries(kind.fields.map((field) => [field.name, field.units[0]]));
    const typed = Object.entries(one.values).map(([name, raw]) => [name, { raw, unit: units[name] }]);
    const values = Object.fromEntries(typed);
    const at = one.last_gravity && new Date(now - one.minutes * 6e4).toISOString();
    const last = at ? { ferment_reading: { gravity: { value: one.last_gravity, at } } } : {};
    const card = { mark: "X", sort: "tank", recent: [], last, context: { strength_pct: one.held_pct ?? null } };
    const context = { last: one.last_gravity ? { gravity: one.last_gravity } : {} };
    const read = readEntry(kind, { kind: one.kind, mark: "X", values }, context);
    const found = jumps(kind, read, context, card, now);
    const waits = jumps(kind, read, context, { ...card, recent: [{ waiting: true }] }, now);
    const odd = (tried) => [...jumps(kind, tried, context, card, now), ...tried.problems];
    const judge = (entry) => odd(readEntry(kind, entry, context));
    const offered = offers(read, odd(read), judge).flat().map(({ raw }) => raw);
    const codes = (asked) => asked.map(({ code }) => code);
    return { asked: codes(found), waits: codes(waits), offered, words: found.map(say) };
  });
}"""


def _asked(case: dict[str, Any]) -> list[Any]:
    book = Ledger()
    if case["kind"] == "gauge":
        if case["held_pct"]:
            held = str(case["held_pct"])
            assert book.enter("gauge", "T1", "2025-10-01 10:00", volume="100", temp="20", strength=held) == []
        return book.enter("gauge", "T1", f"{NOW:%Y-%m-%d %H:%M}", **case["values"])
    then = NOW - timedelta(minutes=case["minutes"])
    book.enter("fruit_intake", "F1", "2025-09-25 09:20", gross="1731", tare="40", material="pear", grower_lot="D-2503",
               sugar="12.9", temp="17.2", rot="1")
    book.enter("ferment_reading", "F1", f"{then:%Y-%m-%d %H:%M}", gravity=str(case["last_gravity"]), temp="16")
    return book.enter("ferment_reading", "F1", f"{NOW:%Y-%m-%d %H:%M}", **case["values"])


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["why"])
def test_the_book_asks(case: dict[str, Any]) -> None:
    asked = _asked(case)
    assert [code.replace("ferment_gravity_rose", "rose") for code in codes(asked)] == case["asked"]
    assert {one.raw for query in asked for one in query.suggestions} >= set(case["offered"])


def test_the_phone_asks_the_same_before_it_is_logged(browser: Any) -> None:
    """But where an entry waits on this phone: then its card may be behind, and the book asks."""
    kinds = {name: kind_data(kind) for name in ("gauge", "ferment_reading") if (kind := webapp.kinds.get(name))}
    with phone(browser, "en-GB") as page:
        found = page.evaluate(ON_PHONE, {"cases": CASES, "kinds": kinds})
    for case, one in zip(CASES, found, strict=True):
        assert (one["asked"], set(case["offered"]) <= set(one["offered"])) == (case["asked"], True), case["why"]
        assert "held_strength" not in one["waits"]
    assert found[0]["words"] == [only(_asked(CASES[0]), "held_strength").words]


def test_what_wood_did_in_years_is_no_slip() -> None:
    """A cask may differ by 1.2 points a year more: 61.3 to 56.9 in two years, but not at once."""
    for years, is_asked in ((0, True), (2, False)):
        book = Ledger()
        book.enter("gauge", "C1", "2023-10-02 10:00", volume="200", temp="20", strength="61.3")
        asked = book.enter("gauge", "C1", f"{2023 + years}-10-02 11:00", volume="190", temp="20", strength="56.9")
        assert ("held_strength" in codes(asked)) is is_asked
