"""A still's past runs as the forecast of the cut takes them, and what it learns from them for the still's card."""

from __future__ import annotations

import json
import logging
from concurrent.futures import Future, ThreadPoolExecutor
from datetime import datetime
from functools import cache, lru_cache

from webapp.book.house import registry
from webapp.book.record.store import Book
from webapp.book.still import runs
from webapp.kinds.state import Run
from webapp.trade.errors import OutOfDomain
from webapp.trade.runtrack import RunRead, StreamRead
from webapp.trade.stilllearn import learn_prior
from webapp.trade.stillprior import Learnt

_log = logging.getLogger("webapp")
PAST_MOST = 5  # each is fitted anew when one of them changes
LONGEST_S = 1.5
ALIKE_LEAST = 3  # fewer runs of one fruit teach less than all of the still's


def prior_for(book: Book, still: str, what: str | None) -> Learnt | None:
    """Return the prior that the last runs of a still give, from runs of the same fruit where there are enough; None
    without any.
    """
    over = [run for run in runs.runs(book, still=still, limit=3 * PAST_MOST) if run["ended_at"]]
    alike = [run for run in over if what and run["what"] == what]
    chosen = (alike if len(alike) >= ALIKE_LEAST else over)[:PAST_MOST]
    if not chosen:
        return None
    height_m = float(registry.site(book).get("height_m") or 0)
    return _learned(json.dumps([forecast_input(run, height_m) for run in reversed(chosen)]))


def _learned(past: str) -> Learnt | None:
    """Learnt once for the same runs, in a thread of its own: no phone's cards wait for it longer than LONGEST_S.

    Until it is there the card carries none, and the forecast begins with a still as it is first taken to be.
    """
    try:
        return _begun(past).result(timeout=LONGEST_S)
    except TimeoutError:
        return None


@lru_cache(maxsize=64)
def _begun(past: str) -> Future[Learnt | None]:
    return _learner().submit(_learn, past)


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
    """Return a run as the forecast takes it: minutes since the first drop, true strengths, flows, plates, height."""
    drop = next((cut["at"] for cut in reversed(run["cuts"]) if cut["event"] == "first_drop"), None)
    lines = {line["entry"]: line for line in [*run["cuts"], *run["readings"]]}
    strong = [(line, strength) for line in lines.values() if (strength := line.get("true_strength")) is not None]
    read = sorted(strong, key=lambda one: one[0]["at"])
    zero = datetime.fromisoformat(drop or (read[0][0]["at"] if read else run["started_at"]))
    readings: list[StreamRead] = [
        {"minutes": minutes, "strength_pct": strength, "flow_l_h": line.get("flow")}
        for line, strength in read
        if (minutes := (datetime.fromisoformat(line["at"]) - zero).total_seconds() / 60) >= 0
    ]
    plates = [line["plates"] for line, _ in read if line.get("plates") is not None]
    return {
        "charge": {"volume_l": run["charge"].get("volume_l"), "lpa_l": run["charge"].get("lpa_l")},
        "readings": readings, "collected": [],
        "still": {"plates": plates[-1] if plates else None, "height_m": height_m},
    }
