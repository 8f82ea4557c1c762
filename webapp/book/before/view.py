"""What a check and an effect may see: the fold as it stood just before their entry, and the registry.

A view notes every key it was asked for. So the fold knows which entries to compute again when a key changes in the
past, and a check needs no declaration of what it reads. Nothing here can write.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Protocol

from webapp.kinds.message import Message
from webapp.kinds.read import Suggestion
from webapp.kinds.state import EMPTY_VESSEL
from webapp.words import sentence

State = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Query:
    """A question of the book to an entry. Weight: `stop` (moves no stock until answered), `ask` or `note`."""

    code: str
    weight: str
    field: str
    message: Message
    suggestions: tuple[Suggestion, ...] = ()

    @property
    def words(self) -> str:
        """The question in English, for whoever reads the program rather than the book."""
        return sentence(self.message)


class Registry(Protocol):
    """What the view needs to know of vessels, instruments, people and the site."""

    def vessel(self, mark: str) -> Mapping[str, Any] | None: ...
    def like(self, vessel: Mapping[str, Any], most: int) -> Sequence[Mapping[str, Any]]: ...
    def instrument(self, instrument_id: str) -> Mapping[str, Any] | None: ...
    def person(self, code: str) -> Mapping[str, Any] | None: ...
    def site(self) -> Mapping[str, Any]: ...


@dataclass(slots=True)
class View:
    """The fold before one entry. All times are UTC texts of fixed width, `2025-09-24T06:05:00Z`, so they compare.

    `at` is when it was read and `typed_at` when it was logged, both corrected by the skew of the phone's clock;
    `received_at` when the book got it; `skew_s` phone minus book [s]. `root` is the id of the entry that began this
    chain of amendments: the lasting name of a run or a fill, whatever is amended later. `answered` is for effects.
    """

    at: str
    typed_at: str
    received_at: str
    skew_s: float
    root: str
    registry: Registry
    look_up: Callable[[str], State | None]
    scopes: tuple[tuple[str, str], ...] = ()  # what a check's limit may be set for, narrowest first: limits.py
    answered: frozenset[str] = frozenset()  # codes of the questions to this entry that somebody has let stand
    reads: set[str] = field(default_factory=set)
    _seen: dict[str, State | None] = field(default_factory=dict)

    def get(self, key: str) -> State | None:
        """Return the state of `v:<mark>` or `r:<run>` before this entry, or None. Never change it: it is shared."""
        if key not in self._seen:
            self.reads.add(key)
            self._seen[key] = self.look_up(key)
        return self._seen[key]

    def state(self, mark: str) -> State:
        """Return the vessel's state before this entry, or an empty one; its shape is described in kinds/state.py."""
        return self.get(f"v:{mark}") or EMPTY_VESSEL

    def recent(self, mark: str, kind: str) -> Sequence[Mapping[str, Any]]:
        """Return the last entries of that kind on that vessel, oldest first: entry, at, person, values, figures."""
        lines: Sequence[Mapping[str, Any]] = self.state(mark)["recent"].get(kind, ())
        return lines

    def run_on(self, still: str) -> State | None:
        """Return the run that is now on the still, or None."""
        run_id = self.state(still)["run"]
        return self.get(f"r:{run_id}") if run_id else None

    def vessel(self, mark: str) -> Mapping[str, Any] | None:
        """Return the vessel as the registry has it (sort, capacity_l, working_l, tare_kg, ...), or None."""
        self.reads.add(f"v:{mark}")
        return self.registry.vessel(mark)

    def neighbours(self, mark: str, most: int = 12) -> Sequence[Mapping[str, Any]]:
        """Return the rows of the casks most like this one: same size class; same area, wood and use first.

        Dear: each state read of a neighbour ties this entry to it. For a check that has a reason already.
        """
        row = self.vessel(mark)
        if not row:
            return ()
        self.reads.add(f"n:{row['size_class']}")
        return self.registry.like(row, most)

    def instrument(self, instrument_id: str) -> Mapping[str, Any] | None:
        """Return an instrument (sort, low, high, unit, due_on, state), or None."""
        self.reads.add(f"i:{instrument_id}")
        return self.registry.instrument(instrument_id)

    def person(self, code: str) -> Mapping[str, Any] | None:
        """Return a person, or None."""
        found = self.registry.person(code)
        if found is None:  # Only an unknown one can change the answer later: people are never taken out.
            self.reads.add(f"p:{code}")
        return found

    def site(self) -> Mapping[str, Any]:
        """Return the site's own settings (units, height_m, time_zone, ...). Not noted: a change of them refolds all."""
        return self.registry.site()


def seconds_between(earlier: str, later: str) -> float:
    """Return the seconds from one UTC text to another, negative where the second comes first. [s], any."""
    return (datetime.fromisoformat(later) - datetime.fromisoformat(earlier)).total_seconds()
