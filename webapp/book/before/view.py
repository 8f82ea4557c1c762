"""What a check and an effect may see: the fold as it stood just before their entry, and the registry.

A view notes every key it was asked for. So the fold knows which entries to compute again when a key changes in the
past, and a check needs no declaration of what it reads. Nothing here can write.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from typing import Protocol, TypeVar, cast

from webapp.kinds.expected import Expected, Suggestion
from webapp.kinds.key import Key, KeyOf, instrument_key, neighbours_key, person_key, run_key, vessel_key
from webapp.kinds.message import Message
from webapp.kinds.rows import InstrumentRow, PersonRow, SiteSettings, VesselRow
from webapp.kinds.run_state import Run
from webapp.kinds.state import EMPTY_VESSEL, Line, State, Vessel
from webapp.kinds.view import Scopes
from webapp.words import sentence

S = TypeVar("S", bound=State)
T = TypeVar("T")
R = TypeVar("R")


@dataclass(frozen=True, slots=True)
class Query:
    """A question of the book to an entry. Weight: `stop` (moves no stock until answered), `ask` or `note`."""

    code: str
    weight: str
    field: str
    message: Message
    expects: tuple[Expected, ...] = ()
    suggestions: tuple[Suggestion, ...] = ()  # what follows from what was expected (kinds/meant.py)

    @property
    def words(self) -> str:
        """The question in English, for whoever reads the program rather than the book."""
        return sentence(self.message)


class Registry(Protocol):
    """What the view needs to know of vessels, instruments, people and the site."""

    def vessel(self, mark: str) -> VesselRow | None: ...
    def like(self, vessel: VesselRow, most: int) -> Sequence[VesselRow]: ...
    def instrument(self, instrument_id: str) -> InstrumentRow | None: ...
    def person(self, code: str) -> PersonRow | None: ...
    def site(self) -> SiteSettings: ...


@dataclass(slots=True)
class BookView:
    """The view of one entry (kinds/view.py), with `reads`: every key that was asked for."""

    at: str
    typed_at: str
    received_at: str
    skew_s: float
    root: str
    registry: Registry
    look_up: Callable[[Key], State | None]
    scopes: Scopes = ()
    via: str = ""
    reads: set[Key] = field(default_factory=set)
    _seen: dict[Key, State | None] = field(default_factory=dict)

    def get(self, key: KeyOf[S]) -> S | None:
        """Return the state of a key before this entry, or None. Never change it: it is shared."""
        if key not in self._seen:
            self.reads.add(key)
            self._seen[key] = self.look_up(key)
        return cast("S | None", self._seen[key])  # the key says which sort of state it is

    def within(self, scopes: Scopes) -> BookView:
        """Return this view for checks whose limits may be set for these scopes; what it reads is noted here too."""
        return replace(self, scopes=scopes) if scopes else self

    def state(self, mark: str) -> Vessel:
        """Return the vessel's state before this entry, or an empty one; its shape is described in kinds/state.py."""
        return self.get(vessel_key(mark)) or EMPTY_VESSEL

    def recent(self, mark: str, kind: str) -> Sequence[Line]:
        """Return the last entries of that kind on that vessel, oldest first: entry, at, person, values, figures."""
        return self.state(mark)["recent"].get(kind, ())

    def run_on(self, still: str) -> Run | None:
        """Return the run that is now on the still, or None."""
        run_id = self.state(still)["run"]
        return self.get(run_key(run_id)) if run_id else None

    def vessel(self, mark: str) -> VesselRow | None:
        """Return the vessel as the registry has it (sort, capacity_l, working_l, tare_kg, ...), or None."""
        self.reads.add(vessel_key(mark))
        return self.registry.vessel(mark)

    def neighbours(self, mark: str, most: int = 12) -> Sequence[VesselRow]:
        """Return the rows of the casks most like this one: same size class; same area, wood and use first.

        Dear: each state read of a neighbour ties this entry to it. For a check that has a reason already.
        """
        row = self.vessel(mark)
        if not row:
            return ()
        self.reads.add(neighbours_key(row["size_class"]))
        return self.registry.like(row, most)

    def instrument(self, instrument_id: str) -> InstrumentRow | None:
        """Return an instrument (sort, low, high, unit, due_on, state), or None."""
        self.reads.add(instrument_key(instrument_id))
        return self.registry.instrument(instrument_id)

    def person(self, code: str) -> PersonRow | None:
        """Return a person, or None."""
        found = self.registry.person(code)
        if found is None:  # Only an unknown one can change the answer later: people are never taken out.
            self.reads.add(person_key(code))
        return found

    def site(self) -> SiteSettings:
        """Return the site's own settings (units, height_m, time_zone, ...). Not noted: a change of them refolds all."""
        return self.registry.site()


def hours_before(at: str, hours: float) -> str:
    """Return the UTC text of so many hours before another; texts of times compare as their times do. [h], any."""
    return (datetime.fromisoformat(at) - timedelta(hours=hours)).isoformat(timespec="seconds").replace("+00:00", "Z")


def kept_once(work_out: Callable[[T], R]) -> Callable[[T], R]:
    """Keep the last answer of a function of one state. Never change the answer: it is shared.

    States are never changed, and the checks of one entry ask the same of one state one after the other.
    """
    last: list[tuple[T, R]] = []

    def answer(state: T) -> R:
        for held, kept in last:
            if held is state:
                return kept
        found = work_out(state)
        last[:] = [(state, found)]
        return found

    return answer


def seconds_between(earlier: str, later: str) -> float:
    """Return the seconds from one UTC text to another, negative where the second comes first. [s], any."""
    return (datetime.fromisoformat(later) - datetime.fromisoformat(earlier)).total_seconds()
