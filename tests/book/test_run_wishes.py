"""Cut plans, best runs, late cuts, yields and feints as the book has them; and one run kept on two phones.

Sums are written out by hand beside each. Flat rates: German customs list from 2023 (pear, quince), Brennereiordnung
section 122 (plum), Austrian order BGBl. 1995/39.
"""

from __future__ import annotations

import random
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import F1, NOW, R1, R2, R3, S1, charge, entry, fill_world, fruit, send
from webapp.book import cards
from webapp.book.fold import fold
from webapp.book.house import registry
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.book.still import feints, runs, wishes, yields
from webapp.book.still.run_account import balance_of

DAY = NOW - timedelta(hours=12)


def at(minutes: int) -> Any:
    return DAY + timedelta(minutes=minutes)


def strong(pct: float, minutes: int, **more: Any) -> dict[str, Any]:
    return entry("run_reading", S1, at(minutes), strength=f"{pct} pct_vol", **more)


def whole_run() -> list[dict[str, Any]]:
    """900 kg gross of plum less 60, 450 L of wash at 6 %: 27 L in; heads 1.1, hearts 20.3, tails 4.2 L come over."""
    def gauge(fraction: str, mark: str, litres: str, pct: str, minutes: int) -> dict[str, Any]:
        return entry("fraction_gauge", mark, at(minutes), still=S1, fraction=fraction, volume=f"{litres} L",
                     temp="20 degC", strength=f"{pct} pct_vol", goes_to="stays")

    return [
        fruit(F1, read_at=at(-2000)), charge(S1, F1, read_at=at(0), run_name="R-1"),
        entry("cut", S1, at(55), event="first_drop"), strong(79, 60, flow="8 L_h"),
        entry("cut", S1, at(70), event="heads_cut", receiver=R2, reason="nose", strength="78 pct_vol"),
        strong(70, 120, flow="12 L_h"),
        entry("cut", S1, at(200), event="hearts_cut", receiver=R3, reason="nose", strength="57 pct_vol"),
        entry("run_end", S1, at(260), reason="strength"),
        gauge("heads", R1, "1.4", "78.6", 280), gauge("hearts", R2, "29", "70", 284),
        gauge("tails", R3, "15", "28", 288),
    ]


@pytest.fixture
def house(tmp_path: Path) -> Any:
    with open_book(tmp_path / "book.db") as book:
        fill_world(book)
        yield book


def tell(book: Book, *entries: dict[str, Any]) -> None:
    for seq, one in enumerate(entries, 1):
        one["seq"] = seq
    answer = send(book, *entries)
    assert {result["settled"] for result in answer["results"]} <= {"entered", "queried"}, answer


def plan(minutes: int, hearts_to: float, mark: str = "", what: str = "plum") -> dict[str, Any]:
    to = {"raw": str(hearts_to), "unit": "pct_vol"}
    values = {"what": {"raw": what}, "hearts_to": to, "why": {"raw": "wet card"}}
    return entry("cut_plan", mark, at(minutes), values=values)


def test_the_last_plan_holds_and_the_stills_own_goes_before_one_for_all(house: Book) -> None:
    tell(house, plan(0, 58), plan(10, 57, S1), plan(20, 60, what=" PLUM  "), plan(5, 55, S1))
    card = cards.card(house, S1)
    assert card is not None
    assert card["still"]["plans"]["plum"]["hearts_to_pct"] == 57.0
    assert card["still"]["plans"]["plum"]["why"] == "wet card"
    assert card["still"]["plans"]["plum"]["person"] == "NS"
    wish = wishes.wishes(house)["plum"]
    assert wishes.plan_for(wish, "another still")["hearts_to_pct"] == 60.0


def test_a_plan_for_any_still_turns_the_stills_card(house: Book) -> None:
    before = cards.cards_since(house, 0)["cursor"]
    tell(house, plan(0, 58))
    assert S1 in {card["mark"] for card in cards.cards_since(house, before)["cards"]}


def test_a_struck_plan_gives_the_one_before_back(house: Book) -> None:
    first, second = plan(0, 58), plan(10, 50)
    tell(house, first, second)
    tell(house, entry("answer", values={"entry": {"raw": second["id"]}, "verdict": {"raw": "struck"},
                                        "reason": {"raw": "typed wrong"}}))
    assert cards.card(house, S1)["still"]["plans"]["plum"]["hearts_to_pct"] == 58.0


@pytest.mark.parametrize("named", ["R-1", "r-1", "id"])
def test_the_best_run_is_found_by_name_and_by_id(house: Book, named: str) -> None:
    told = whole_run()
    run_id = told[1]["id"]
    tell(house, *told, entry("best_run", S1, at(400), values={"run": {"raw": run_id if named == "id" else named}}))
    best = cards.card(house, S1)["still"]["best"]
    assert {fruit: line["run"] for fruit, line in best.items()} == {"plum": run_id}


def test_the_best_run_may_be_named_before_its_charge_arrives(house: Book) -> None:
    told = whole_run()
    tell(house, entry("best_run", S1, at(400), values={"run": {"raw": "R-1"}}))
    assert cards.card(house, S1)["still"]["best"] == {}
    tell(house, *told)
    assert cards.card(house, S1)["still"]["best"]["plum"]["run"] == told[1]["id"]


def test_a_late_cut_keeps_both_times_and_the_reason(house: Book) -> None:
    told = whole_run()
    told[6] |= {"typed_at": at(209).isoformat(), "remark": "hands full"}
    tell(house, *told)
    run = runs.run(house, told[1]["id"])
    late = next(cut for cut in run["cuts"] if cut["event"] == "hearts_cut")
    assert (late["at"][:16], late["typed_at"][:16]) == (f"{at(200):%Y-%m-%dT%H:%M}", f"{at(209):%Y-%m-%dT%H:%M}")
    assert late["late_why"] == "hands full"
    assert all("typed_at" not in cut for cut in run["cuts"] if cut is not late)


def test_the_balance_of_a_run(house: Book) -> None:
    """In 27.00. Out 1.10 + 20.30 + 4.20, and 450 - 45.4 L of stillage at 0.2 %: 0.81. Open 0.59, that is 2.2 %."""
    told = whole_run()
    tell(house, *told)
    balance = balance_of(runs.run(house, told[1]["id"]), registry.site(house))
    assert balance is not None
    assert [name for name, _ in balance.out] == ["heads", "hearts", "tails", "stillage"]
    assert balance.charged == pytest.approx(27.0, abs=1e-6)
    assert balance.came == pytest.approx(1.4 * 0.786 + 20.3 + 4.2 + 404.6 * 0.002, abs=1e-3)
    assert balance.open == pytest.approx(27.0 - balance.came)
    assert not balance.is_stillage_read


def test_yield_from_fruit_and_wash_beside_the_flat_rate(house: Book) -> None:
    """25.60 L from 840 kg is 3.05 from 100 kg; from 450 L of wash 5.69 from 100 L: 146 % of the 3.9 for other plums."""
    told = whole_run()
    tell(house, *told)
    (one,) = yields.batches(house)
    assert one["kg"] == pytest.approx(450.0)  # an open mash is charged as 1 kg a litre: 450 of 840 kg, the rest stands
    assert one["made_l"] == pytest.approx(25.6, abs=1e-3)
    assert one["per_100_l"] == pytest.approx(5.69, abs=0.01)
    assert one["beside"]["rate"]["name"] == "plum, other"
    assert one["beside"]["share_pct"] == pytest.approx(146, abs=0.5)
    assert one["beside"]["side"] == ""
    run_yield = yields.of_run(house, runs.run(house, told[1]["id"]))
    assert run_yield["per_100_kg"] == pytest.approx(one["per_100_kg"])
    assert yields.by_year(yields.batches(house))["plum"]["2025"][1] == 1


def test_flat_rates_are_those_of_the_orders() -> None:
    rate = yields.rate_for
    assert (rate("plum", "small blue plum")["de_l"], rate("plum", "small blue plum")["at_l"]) == (4.6, 5.5)
    assert rate("plum", "greengage")["de_l"] == 3.9
    assert (rate("pear", "perry pear")["de_l"], rate("pear", "perry pear")["at_l"]) == (3.6, 3.0)
    assert (rate("quince", "")["de_l"], rate("quince", "")["at_l"]) == (3.6, 2.0)
    assert rate("cherry", "sour cherry")["de_l"] == 3.5
    assert rate("other", "rowan") is None


@pytest.mark.parametrize(("per_100_l", "side"), [(2.15, "low"), (2.17, ""), (5.39, ""), (5.41, "high")])
def test_a_yield_is_worth_a_look_below_three_fifths_and_above_one_and_a_half(per_100_l: float, side: str) -> None:
    """Of 3.6 L: 2.16 and 5.4. Common practice, no source."""
    assert yields.judge_yield("pear", "pear", 1.0, per_100_l)["side"] == side


def test_feints_by_fruit(house: Book) -> None:
    told = whole_run()
    again = charge(S1, F1, read_at=at(600), run_name="R-2")
    again["values"] |= {"feints": {"raw": "10", "unit": "L"}, "feints_strength": {"raw": "28", "unit": "pct_vol"},
                        "feints_from": {"raw": R3}}
    tell(house, *told, again)
    (line,) = [line for line in feints.account(house) if line["fruit"] == "plum"]
    assert line["heads"] == pytest.approx(1.1, abs=0.01)
    assert line["tails"] == pytest.approx(4.2, abs=0.01)
    assert line["used"] == pytest.approx(2.8, abs=0.01)
    assert line["standing"] == pytest.approx(1.1 + 4.2 - 2.8, abs=0.05)  # R1 and what is left in R3


def test_one_run_on_two_phones_is_one_run_however_it_arrives(tmp_path: Path) -> None:
    """BT reads, IM cuts; both phones hand in after the run, twice, in any batches: one run, nothing doubled."""
    told = whole_run()
    for n, one in enumerate(told):
        one["device"] = "d-one" if n % 2 else "d-two"
        one["seq"] = n // 2 + 1
    dumps = set()
    for seed in range(5):
        with open_book(tmp_path / f"{seed}.db") as book:
            fill_world(book)
            order = [*told, *told]
            random.Random(seed).shuffle(order)
            for device in ("d-one", "d-two"):
                mine = [one for one in order if one["device"] == device]
                for one in mine:
                    send(book, one, device=device)
            (run,) = runs.runs(book)
            assert [cut["event"] for cut in run["cuts"]] == ["first_drop", "heads_cut", "hearts_cut"]
            assert len(run["readings"]) == 4  # two readings, and the strengths of two cuts
            assert len(run["fractions"]) == 3
            dumps.add(fold.dump(book))
    assert len(dumps) == 1


def test_two_stills_run_at_once_without_meddling(house: Book) -> None:
    from webapp.trade.marks import make_mark

    other = make_mark("S2")
    registry.put_vessel(house, {"mark": other, "sort": "still", "capacity_l": 600}, "JK")
    told = whole_run()
    beside = [
        charge(other, F1, read_at=at(3), run_name="R-9"),
        entry("run_reading", other, at(65), strength="60 pct_vol"),
        entry("run_reading", other, at(125), strength="30 pct_vol"),
    ]
    tell(house, *[one for pair in zip(told[:8], [*beside, *([None] * 5)], strict=True) for one in pair if one])
    one, two = (runs.runs(house, still=still)[0] for still in (S1, other))
    assert [line["true_strength"] for line in two["readings"]] == [60.0, 30.0]
    assert 60.0 not in [line["true_strength"] for line in one["readings"]]
    assert cards.card(house, other)["run"]["name"] == "R-9"
    assert cards.card(house, S1)["run"] is None


def test_the_curve_of_a_still_is_of_its_last_run_alone() -> None:
    before, now = [[0.0, 78.0], [1800.0, 71.0]], [[90_000.0, 77.8], [93_600.0, 76.0]]
    assert cards._last_run([*now, *before]) == now
    assert cards._last_run(before) == before
    assert cards._last_run([]) == []
