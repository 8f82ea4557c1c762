"""The checks as a detector, on houses that nobody made by hand: a slice of it in every run, all of it as a bench.

Floors stand below what was measured, with room: whoever takes a power away from the checks falls below them. The
figures themselves stand in docs/checks.md. What a plausible season is: common practice, no source (house.py).
"""

from __future__ import annotations

import os
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

import pytest

from tests.slips import report
from tests.slips.judge import Clean, Found, measure
from tests.slips.season import season
from webapp.book.as_docs import BEGIN, END, checks_page

PAGE = Path(__file__).parents[2] / "docs" / "checks.md"
TUNED, UNSEEN = 1001, 40001  # first seeds of what the checks were bettered by, and of what nobody looked at
SLICE = ((901, 16), (902, 16))
AT_ONCE, WORTH, OFFERED, FALSE_ASKS = 75.0, 90.0, 40.0, 0.3  # floors and ceiling [%, %, %, for each 100 entries]


def test_the_same_seed_tells_the_same_season_and_another_seed_another() -> None:
    one, again, other = (season(seed) for seed in (7, 7, 8))
    assert [said.entry for said in one.said] == [said.entry for said in again.said]
    assert {row["capacity_l"] for row in one.vessels.values()} != {row["capacity_l"] for row in other.vessels.values()}
    kinds = {said.entry["kind"] for said in one.said}
    assert {"fruit_intake", "charge", "fraction_gauge", "cask_fill", "dump", "bottling_close", "dispatch"} <= kinds


@pytest.fixture(scope="module")
def measured() -> tuple[list[Found], list[Clean]]:
    """A few tens of slips in two seasons."""
    return _measured([(seed, slips, 0) for seed, slips in SLICE], workers=1)


def test_a_slice_of_slips_is_asked_about(measured: tuple[list[Found], list[Clean]]) -> None:
    found, _ = measured
    assert len(report.told(found)) == sum(slips for _, slips in SLICE)
    assert report.share(report.visible(found), report.at_once) >= AT_ONCE
    assert report.share(report.worth(found), report.by_gauge) >= WORTH
    assert report.share(report.with_right_figure(found), lambda one: one.is_offered) >= OFFERED


def test_clean_seasons_are_hardly_asked(measured: tuple[list[Found], list[Clean]]) -> None:
    assert report.false_asks(measured[1]) <= FALSE_ASKS



@pytest.mark.bench
@pytest.mark.timeout(7200)
def test_thousands_of_slips_and_the_page_of_what_was_found() -> None:
    """SLIPS_SEASONS, SLIPS_EACH and SLIPS_STEPS set other numbers; SLIPS_WRITE=0 leaves the page as it is."""
    seasons, each, steps = (int(os.environ.get(f"SLIPS_{name}", much)) for name, much in (
        ("SEASONS", 40), ("EACH", 50), ("STEPS", 60)))
    tuned = _measured([(TUNED + n, each, steps) for n in range(seasons)])
    unseen = _measured([(UNSEEN + n, each, 0) for n in range(seasons // 2)])
    text = report.page(*tuned, f"seeds {TUNED} to {TUNED + seasons - 1}, by which the checks were bettered")
    text += "\n" + report.short(*unseen, f"seeds from {UNSEEN}, kept unseen until the end")
    print(f"\n{text}")
    if os.environ.get("SLIPS_WRITE") != "0":
        before = PAGE.read_text("utf-8")
        PAGE.write_text(checks_page(f"{BEGIN}\n{text}\n{END}"), "utf-8", newline="\n")
        assert PAGE.read_text("utf-8").partition(BEGIN)[0] == before.partition(BEGIN)[0], "run: cellarslate write-docs"


def _measured(wanted: list[tuple[int, int, int]], workers: int | None = None) -> tuple[list[Found], list[Clean]]:
    if workers == 1:
        came = [measure(*one) for one in wanted]
    else:
        with ProcessPoolExecutor(workers) as pool:
            came = list(pool.map(measure, *zip(*wanted, strict=True)))
    return [one for found, _ in came for one in found], [clean for _, clean in came]
