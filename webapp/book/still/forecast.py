"""A still's past runs as the forecast of the cut takes them, and what it learns from them for the still's card."""

from __future__ import annotations

import json
import logging
import threading
from collections.abc import Callable, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from datetime import datetime
from functools import cache, lru_cache
from pathlib import Path
from typing import TypeVar

from webapp.book.fold.reader_tables import turn_cards
from webapp.book.house import registry
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.book.still import runs
from webapp.kinds.cut import CHANGES
from webapp.kinds.run_state import Run, RunLine
from webapp.trade.errors import OutOfDomain
from webapp.trade.runtrack import Change, RunRead, StreamRead
from webapp.trade.stilllearn import learn_prior
from webapp.trade.stillprior import Learnt

T = TypeVar("T")
_log = logging.getLogger("webapp")
PAST_MOST = 5  # each is fitted anew when one of them changes
LOOKED_AT = 3 * PAST_MOST  # the last runs of a still, for those of one fruit among them
LONGEST_S = 1.5
ALIKE_LEAST = 3  # fewer runs of one fruit teach less than all of the still's


def prior_for(book: Book, still: str, what: str | None) -> Learnt | None:
    """Return the prior that the last runs of a still give, from runs of the same fruit where there are enough; None
    without any.
    """
    past = teaching_text(runs.runs(book, still=still, limit=LOOKED_AT), what, registry.site(book).get("height_m"))
    return _learned(book, still, past) if past else None


def teaching_text(before: Sequence[Run], what: str | None, height_m: float | None) -> str:
    """Return the runs that a still learns from, out of its last ones (newest first), as JSON; empty where none is."""
    over = [run for run in before if run["ended_at"]]
    alike = [run for run in over if what and run["what"] == what]
    chosen = (alike if len(alike) >= ALIKE_LEAST else over)[:PAST_MOST]
    return json.dumps([forecast_input(run, float(height_m or 0)) for run in reversed(chosen)]) if chosen else ""


def _learned(book: Book, still: str, past: str) -> Learnt | None:
    """Learnt once for the same runs, in a thread of its own: no phone's cards wait for it longer than LONGEST_S.

    A card that leaves without it gets a new turn as soon as the learning has ended, so that every phone fetches it
    again: two phones at one run are to say the same.
    """
    lessons = learning(past)
    try:
        return lessons.result(timeout=LONGEST_S)
    except TimeoutError:
        with _owed_lock:
            is_new = (book.path, still, past) not in _owed
            _owed.add((book.path, still, past))
        if is_new:
            lessons.add_done_callback(lambda _: _turn(book, still, past))
        return None


_owed: set[tuple[Path, str, str]] = set()  # cards that left without the lessons of these runs
_owed_lock = threading.Lock()


def _turn(book: Book, still: str, past: str) -> None:
    with _owed_lock:
        _owed.discard((book.path, still, past))
    try:
        with book.write():
            turn_cards(book, {still})
    except BookError as error:  # closed meanwhile, or its disk is full: the still's next entry turns the card
        _log.warning("The card of %s keeps a forecast without its earlier runs for now: %s", still, error)


@lru_cache(maxsize=64)
def learning(past: str) -> Future[Learnt | None]:
    """Return the lessons of these runs (teaching_text): learnt in a thread of its own, once for the same runs."""
    return _learner().submit(_learn, past)


def in_turn(work: Callable[[], T]) -> Future[T]:
    """Have something worked out by the learner's one thread, after what it has been given before."""
    return _learner().submit(work)


@cache
def _learner() -> ThreadPoolExecutor:
    return ThreadPoolExecutor(max_workers=1, thread_name_prefix="learner")


def _learn(past: str) -> Learnt | None:
    try:
        return learn_prior(json.loads(past))
    except OutOfDomain:
        return None
    except Exception:  # the answer is kept: raised, it would keep every card of this still from the phones
        _log.exception("Nothing could be learnt of a still's last runs.")
        return None


def forecast_input(run: Run, height_m: float) -> RunRead:
    """Return a run as the forecast takes it: minutes since the first drop, true strengths, flows, changes, height."""
    drop = next((cut["at"] for cut in reversed(run["cuts"]) if cut["event"] == "first_drop"), None)
    lines = {line["entry"]: line for line in [*run["cuts"], *run["readings"]]}
    strong = [(line, strength) for line in lines.values() if (strength := line.get("true_strength")) is not None]
    read = sorted(strong, key=lambda one: one[0]["at"])
    zero = datetime.fromisoformat(drop or (read[0][0]["at"] if read else run["started_at"]))

    def since(line: RunLine) -> float:
        return (datetime.fromisoformat(line["at"]) - zero).total_seconds() / 60

    readings: list[StreamRead] = [
        {"minutes": minutes, "strength_pct": strength, "flow_l_h": line.get("flow")}
        for line, strength in read
        if (minutes := since(line)) >= 0
    ]
    said = [(since(line), plates) for line in lines.values() if (plates := line.get("plates")) is not None]
    turns = [(since(cut), CHANGES[cut["event"]]) for cut in run["cuts"] if cut["event"] in CHANGES]
    plates, changes = _plates(sorted(one for one in said if one[0] >= 0), sorted(one for one in turns if one[0] >= 0))
    return {
        "charge": {"volume_l": run["charge"].get("volume_l"), "lpa_l": run["charge"].get("lpa_l")},
        "readings": readings, "collected": [], "changes": changes,
        "still": {"plates": plates, "height_m": height_m},
    }


def _plates(
    said: Sequence[tuple[float, float]], turns: Sequence[tuple[float, int]]
) -> tuple[float | None, list[Change]]:
    """Return the plates in work at the first drop, and each change with the plates in work from then on.

    They are counted from the last reading that names them: (minute, plates) read, (minute, plates more or less) told.
    """
    now: float | None = None
    if said:
        at, plates = said[-1]
        now = plates - sum(turn for minute, turn in turns if minute <= at)
    first, changes = now, list[Change]()
    for minute, turn in turns:
        now = None if now is None else max(now + turn, 0.0)
        changes.append({"minutes": minute, "plates": now if turn else None})
    return first, changes
