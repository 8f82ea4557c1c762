"""The still's model on the phone against the book's, in a real browser: the same figures, refusals and words."""

import json
import math
from typing import Any

import pytest

from tests.trade.book_answers import answer_still
from tests.trade.still_runs import demo_runs, generated_run, seen_until
from tests.trade.test_browser_agreement import AGREEMENT, page  # noqa: F401
from webapp.trade import stilllearn
from webapp.trade.datafiles import load_data

pytestmark = pytest.mark.browser

IN_PAGE = """async (cases) => {
  const trade = await import("/static/trade/index.js");
  const { reasonOf } = await import("/static/kinds/reasons.js");
  await trade.initTrade(async (name) => (await fetch(`/data/${name}`)).json());
  const parts = await Promise.all(["vle", "batch", "cutdue"].map((name) => import(`/static/trade/still/${name}.js`)));
  const still = Object.assign({}, ...parts);
  return JSON.stringify(JSON.parse(cases).map(([name, ...given]) => {
    try {
      return still[name](...given);
    } catch (reason) {
      if (reason instanceof trade.OutOfDomain) return { refused: reason.what, reason: reasonOf(reason) };
      return { broken: String(reason) };
    }
  }));
}"""

def cases() -> list[list[Any]]:
    found: list[list[Any]] = []
    for i in range(-2, 43):
        found += [["vapourMoleFraction", i / 40], ["moleFractionFromStrength", 2.5 * i]]
    for i in range(42):
        found += [["molesIn", 3.5, i * 2.5], ["streamMoles", 1.5, i * 2.5]]
    return found


def forecasts() -> list[list[Any]]:
    """Runs with and without what the still's past says, slips, dips, no flow, changes told or not, nothing at all."""
    found: list[list[Any]] = []
    past: dict[str, list[Any]] = {}
    for _, still, run, cut_pct, cut_min, _ in demo_runs()[:4]:
        known = stilllearn.learn_prior(past[still]) if still in past else None
        for share in (0.1, 0.5, 0.8, 1.05):
            found.append(["forecastCut", seen_until(run, cut_min * share), known, cut_pct])
        past.setdefault(still, []).append(run)
        found.append(["forecastCut", run, known, 20.0])
    known = stilllearn.learn_prior(past["S1"])
    for seed in range(3):
        run, cut_min, litres = generated_run(seed, seed)
        seen = seen_until(run, 0.8 * cut_min)
        found += [["forecastCut", seen, None, 60.0], ["forecastCut", seen | {"receiver_since": 20}, known, 55]]
        for k in range(1, len(seen["readings"])):
            slipped = [dict(reading) for reading in seen["readings"]]
            slipped[k]["strength_pct"] = (45.2, 92.5)[k % 2]
            found.append(["forecastCut", seen | {"readings": slipped}, None, 60.0])
        for by, what in ((14, None), (5, known)):
            raised = [
                r | {"strength_pct": min(r["strength_pct"] + by * (i > 2), 96)} for i, r in enumerate(seen["readings"])
            ]
            found.append(["forecastCut", seen | {"readings": raised}, what, 60.0])
        last = seen["readings"][-1]["minutes"]
        for told in (
            [(0.4 * last, None)], [(0.3 * last, 4), (0.7 * last, 3)], [(last + 1, 0)], [(last, None), (last + 2, None)]
        ):
            changes = [{"minutes": minute, "plates": plates} for minute, plates in told]
            found += [["forecastCut", seen | {"changes": changes}, what, 60.0] for what in (None, known)]
        flowless = [reading | {"flow_l_h": None} for reading in seen["readings"]]
        dips = [
            {"minutes": 0.4 * cut_min, "volume_l": 0.42 * litres},
            {"minutes": 0.7 * cut_min, "volume_l": 0.7 * litres},
        ]
        for readings in (flowless, seen["readings"]):
            for collected in ([], dips[:1], dips, [*dips, {"minutes": 0.75 * cut_min, "volume_l": 1.0}]):
                for what in (None, known):
                    given = seen | {"readings": readings, "collected": collected}
                    found.append(["forecastCut", given, what, 60.0])
        found.append(["forecastCut", seen | {"still": {"plates": None, "height_m": None}}, None, 60.0])
        found.append(["forecastCut", seen | {"still": {"plates": 0, "height_m": 400}}, None, 45.0])
        found += [
            ["forecastCut", seen | {"charge": charge}, None, 60.0] for charge in (None, {"volume_l": 5, "lpa_l": 9})
        ]
        found += [["forecastCut", seen | {"readings": []}, None, 60.0], ["forecastCut", seen, None, 96.0]]
    return found


def apart(book: Any, phone: Any, where: str = "") -> list[str]:
    """Where the two answers differ."""
    if isinstance(book, dict) and isinstance(phone, dict):
        if set(book) != set(phone):
            return [f"{where}: {book} against {phone}"]
        return [line for key in book for line in apart(book[key], phone[key], f"{where}.{key}")]
    if isinstance(book, list | tuple) and isinstance(phone, list):
        if len(book) != len(phone):
            return [f"{where}: {len(book)} against {len(phone)}"]
        return [line for i, (b, p) in enumerate(zip(book, phone, strict=True)) for line in apart(b, p, f"{where}[{i}]")]
    if isinstance(book, float) and isinstance(phone, int | float):
        same = math.isclose(book, phone, rel_tol=AGREEMENT, abs_tol=1e-12)
        return [] if same else [f"{where}: {book} against {phone}"]
    return [] if book == phone else [f"{where}: {book} against {phone}"]


@pytest.mark.parametrize("make", [cases, forecasts], ids=["figures", "forecasts"])
def test_phone_and_book_agree(page: Any, make: Any) -> None:  # noqa: F811
    asked = make()
    phone = json.loads(page.evaluate(IN_PAGE, json.dumps(asked)))
    book = [answer_still(case) for case in asked]
    differ = [
        (case[0], case[1:], lines) for case, b, p in zip(asked, book, phone, strict=True) if (lines := apart(b, p))
    ]
    assert not differ, f"{len(differ)} of {len(asked)} differ, such as {differ[0][0]}: {differ[0][2][:3]}"
    same_bits = sum(json.loads(json.dumps(b)) == p for b, p in zip(book, phone, strict=True))
    print(f"{len(asked)} compared, {same_bits} the same to the last bit")
    if make is forecasts:
        states = {b["state"] + b.get("why", "") for b in book}
        assert {"due", "past", "too_littleno_charge", "too_littlefew_readings", "too_littleno_flow",
                "too_littleout_of_range", "too_littlewide"} <= states
        assert any(b.get("left_out") for b in book) and any(b.get("changed_at") for b in book)


def test_the_phone_carries_the_books_coefficients(page: Any) -> None:  # noqa: F811
    carried = page.evaluate("async () => (await import('/static/trade/still/vle_data.js')).VLE")
    book = {key: value for key, value in load_data("vle").items() if key != "source"}
    assert carried == book
