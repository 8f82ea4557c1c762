"""Still runs, as the fold has them."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.fold.states import load_newest_of
from webapp.book.record.store import Book
from webapp.kinds.key import run_key
from webapp.kinds.run_state import Run

LIST_MOST = 500


class KnownRun(Run):
    """A run with its id."""

    id: str


def run(book: Book, run_id: str) -> KnownRun | None:
    """Return a run's state with its `id`; its shape is that of docs/hand-in.md. None where there is no such run."""
    return runs_by_id(book, [run_id]).get(run_id)


def runs_by_id(book: Book, ids: Iterable[str]) -> dict[str, KnownRun]:
    """Return these runs as `run` does, by id, in one statement; one that is not in the book is left out."""
    wanted = list(ids)
    states = load_newest_of(book, (run_key(run_id) for run_id in wanted))
    return {run_id: {"id": run_id, **state} for run_id in wanted if (state := states.get(run_key(run_id)))}


def runs(book: Book, *, still: str | None = None, what: str | None = None, limit: int = 50) -> list[KnownRun]:
    """Return runs, newest first; of one still, of one fruit, where asked."""
    wanted = {"still": still, "what": what}
    tests = [f"{name} = :{name}" for name, value in wanted.items() if value is not None]
    where = f"WHERE {' AND '.join(tests)}" if tests else ""
    rows = book.query(
        f"SELECT id FROM runs {where} ORDER BY started_at DESC, id DESC LIMIT :most",  # noqa: S608
        wanted | {"most": max(1, min(limit, LIST_MOST))},
    )
    found = runs_by_id(book, (row["id"] for row in rows))
    return [found[row["id"]] for row in rows if row["id"] in found]
