"""Blind tastings in a book: codes and orders are drawn fairly, the key stays sealed, and what was found is counted."""

from __future__ import annotations

import itertools
import json
import random
from collections import Counter
from datetime import timedelta
from typing import Any

import pytest

from tests.book.conftest import C1, C2, NOW, entry, send, settled
from webapp.book import cards
from webapp.book.cellar import tasting_draw, tastings
from webapp.book.record.store import Book
from webapp.kinds.tasting_texts import glasses_text, read_glasses, read_samples, samples_text, seal_of
from webapp.trade.sensory import CHANCES

CREW = ("NS", "JK", "TB")


@pytest.mark.parametrize(("method", "samples"), [*((m, 2) for m in CHANCES), *(("ranking", n) for n in (3, 4, 5))])
def test_orders_are_used_equally_often_and_no_code_stands_on_two_glasses(method: str, samples: int) -> None:
    many = tasting_draw.count_orders(method, samples)
    drawn = Counter()
    for _ in range(3):
        servings, key = tasting_draw.draw_tasting(method, samples, [f"P{n}" for n in range(many)], 2)
        words = key.split()[:-1]
        assert set(Counter(words).values()) == {2}, "each order twice"
        codes = [code for one in servings for code in one["codes"]]
        assert len(set(codes)) == len(codes) and all(100 <= int(code) <= 999 for code in codes)
        assert {(one["person"], one["set_no"]) for one in servings} == {(f"P{n}", k) for n in range(many)
                                                                        for k in (1, 2)}
        drawn[key] += 1
    assert len(drawn) == 3, "drawn anew"


@pytest.mark.parametrize("samples", [3, 4, 5])
def test_in_rankings_each_sample_stands_in_each_place_and_after_each_other_equally_often(samples: int) -> None:
    """The property that Williams's squares are made for (Aust. J. Sci. Res. A 2, 1949, from memory)."""
    orders = tasting_draw.balanced_orders(samples)
    for place in range(samples):
        assert len(set(Counter(order[place] for order in orders).values())) == 1
    pairs = Counter(pair for order in orders for pair in itertools.pairwise(order))
    assert len(pairs) == samples * (samples - 1) and len(set(pairs.values())) == 1


def test_where_orders_do_not_come_out_even_none_is_used_twice_more_than_another() -> None:
    for n in range(1, 25):
        _, key = tasting_draw.draw_tasting("triangle", 2, [f"P{k}" for k in range(n)], 1)
        counts = Counter(key.split()[:-1])
        assert max(counts.values()) - (min(counts.values()) if len(counts) == 6 else 0) <= 1
    with pytest.raises(ValueError, match="73 sets"):
        tasting_draw.draw_tasting("pair", 2, [f"P{k}" for k in range(73)], 1)


def test_texts_of_an_entry_are_read_as_they_were_written() -> None:
    samples, odd = read_samples(f"A {C1}; B run PL-31, 64 to 60 % vol\nC batch MB-25-02")
    assert not odd and read_samples(samples_text(samples)) == (samples, [])
    servings, _ = tasting_draw.draw_tasting("triangle", 2, CREW, 3, random.Random(1))
    assert read_glasses(glasses_text(servings)) == (servings, [])


def hold(book: Book, method: str, samples: str, sets: int = 2, right: int | None = None) -> Any:
    """Hold a tasting in which so many answers are right; return what was handed in."""
    many = len(read_samples(samples)[0])
    servings, key = tasting_draw.draw_tasting(method, many, CREW, sets, random.Random(3))
    seal = tasting_draw.keep_key(book, key)
    texts = {"name": "T-1", "question": "Is it told apart?", "method": method, "alpha": "5", "samples": samples,
             "glasses": glasses_text(servings), "seal": seal}
    values = {name: {"raw": text} for name, text in texts.items()} | {"reduced_to": {"raw": "25", "unit": "pct_vol"}}
    told = [entry("tasting_session", values=values, read_at=NOW - timedelta(hours=9), person="TB")]
    for n, (serving, word) in enumerate(zip(servings, key.split(), strict=False)):
        behind = dict(zip(serving["codes"], word[-len(serving["codes"]) :], strict=True))
        wanted = {"duo_trio": word[0], "triangle": min(word, key=word.count)}.get(method, "A")
        hits = [code for code, letter in behind.items() if (letter == wanted) == (right is None or n < right)]
        said = {"order": " ".join(sorted(behind, key=lambda code: behind[code]))} if method == "ranking" else {
            "picked": hits[0]}
        given = {name: {"raw": text} for name, text in {"session": "t-1", **said}.items()}
        given |= {"set_no": {"raw": str(serving["set_no"]), "unit": "count"}}
        told.append(entry("tasting_answer", values=given, person=serving["person"], seq=n + 2,
                          read_at=NOW - timedelta(hours=8, minutes=-n)))
    return told, key, seal


def opening(key: str, seq: int = 90) -> dict[str, Any]:
    return entry("tasting_result", values={"session": {"raw": "T-1"}, "key": {"raw": key}}, seq=seq, person="TB",
                 read_at=NOW - timedelta(hours=5))


def test_before_the_opening_neither_log_nor_card_nor_state_says_what_a_code_holds(book: Book) -> None:
    told, key, seal = hold(book, "triangle", f"A {C1}; B {C2}")
    assert set(settled(send(book, *told))) == {"entered"}
    given = cards.cards_since(book, 0)
    (one,) = given["tastings"]
    assert set(one) == {"name", "question", "method", "sets", "answered"} and len(one["answered"]) == 6
    log = json.dumps(book.query("SELECT body FROM entries")) + json.dumps(book.query("SELECT body FROM states"))
    for hidden in (key, *(word for word in set(key.split()[:-1])), key.split()[-1]):
        assert f'"{hidden}' not in log and f" {hidden}" not in log and hidden not in json.dumps(given)
    assert seal == seal_of(key) and tasting_draw.load_key(book, seal) == key
    assert tasting_draw.load_key(book, "0" * 64) is None
    assert tastings.tell(tastings.load_tasting(book, "T-1")) is None
    send(book, opening(key))
    assert cards.cards_since(book, 0)["tastings"] == []


@pytest.mark.parametrize(("method", "right", "p", "needed", "found"), [
    ("triangle", 5, 13 / 729, 5, True), ("triangle", 4, 73 / 729, 5, False),
    ("duo_trio", 6, 1 / 64, 6, True), ("duo_trio", 5, 7 / 64, 6, False),
    ("pair", 6, 1 / 64, 6, True), ("pair_two_sided", 0, 1 / 32, 6, True), ("pair_two_sided", 3, 1.0, 6, False),
])
def test_what_was_found_is_counted(book: Book, method: str, right: int, p: float, needed: int, found: bool) -> None:
    """Six answers. The chances are counted by hand: of 729 and of 64 equally likely outcomes."""
    told, key, _ = hold(book, method, f"A {C1}; B {C2}", right=right)
    send(book, *told, opening(key))
    result = tastings.tell(tastings.load_tasting(book, "T-1"))
    assert result and (result.answers, result.people) == (6, 3)
    assert result.p == pytest.approx(p, rel=1e-12) and result.needed == needed and result.is_found == found
    assert result.right == (6 - right if method == "pair_two_sided" and right < 3 else right)
    assert result.named == {"pair": "A", "pair_two_sided": "B" if right == 0 else "A"}.get(method, "")


def test_a_ranking_in_which_all_agree(book: Book) -> None:
    told, key, _ = hold(book, "ranking", f"A {C1}; B {C2}; C run R-1", sets=1)
    send(book, *told, opening(key))
    result = tastings.tell(tastings.load_tasting(book, "T-1"))
    assert result and result.ranking and result.ranking.sums == (3.0, 6.0, 9.0)
    # Three of three in one order of six: (1/6)^2 by hand, 0.028 in Friedman's table of 1937 (from memory).
    assert result.p == pytest.approx(1 / 36) and result.is_found and result.apart == (("A", "C"),)


def test_an_answer_logged_before_the_opening_counts_whenever_it_comes_and_one_after_it_does_not(book: Book) -> None:
    told, key, _ = hold(book, "triangle", f"A {C1}; B {C2}")
    *first, last = told
    send(book, *first, opening(key))
    before = tastings.tell(tastings.load_tasting(book, "T-1"))
    assert before and before.answers == 5
    late = {**last, "read_at": (NOW - timedelta(hours=4)).isoformat(), "id": last["id"][:-1] + "f", "seq": 95}
    given = send(book, late)
    assert [query["code"] for query in given["results"][0]["queries"]] == ["tasting_after"]
    send(book, last)
    after = tastings.tell(tastings.load_tasting(book, "T-1"))
    assert after and after.answers == 6


def test_vessels_and_runs_know_their_tastings(book: Book) -> None:
    told, _, _ = hold(book, "triangle", f"A {C1}; B run R-7, from 64 %")
    send(book, told[0])
    from webapp.book.fold import fold

    assert tastings.names_of(fold.load_state(book, f"v:{C1}")) == ["T-1"]
    assert [one["name"] for one in tastings.of_run(book, "r-7")] == ["T-1"] and tastings.of_run(book, "") == []
