"""What effects and checks may see of the past: the fold as it stood just before their entry, and the registry.

The book gives them a view of its own (book/before/view.py), which notes what it was asked for. Nothing here can write.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol, TypeVar

from webapp.kinds.key import KeyOf
from webapp.kinds.rows import InstrumentRow, PersonRow, SiteSettings, VesselRow
from webapp.kinds.run_state import Run
from webapp.kinds.state import Line, State, Vessel

S = TypeVar("S", bound=State)
Scopes = tuple[tuple[str, str], ...]  # what a limit of the checks may be set for, narrowest first: (scope, key)


class View(Protocol):
    """The fold before one entry. All times are UTC texts of fixed width, `2025-09-24T06:05:00Z`, so they compare.

    `at` is when it was read and `typed_at` when it was logged, both corrected by the skew of the phone's clock;
    `received_at` when the book got it; `skew_s` phone minus book [s]. `root` is the id of the entry that began this
    chain of amendments: the lasting name of a run or a fill, whatever is amended later. `via` is how it came
    (book/record/way.py).
    """

    @property
    def at(self) -> str: ...
    @property
    def typed_at(self) -> str: ...
    @property
    def received_at(self) -> str: ...
    @property
    def skew_s(self) -> float: ...
    @property
    def via(self) -> str: ...
    @property
    def root(self) -> str: ...
    @property
    def scopes(self) -> Scopes: ...

    def get(self, key: KeyOf[S]) -> S | None:
        """Return the state of a key before this entry, or None. Never change it: it is shared."""
        ...

    def state(self, mark: str) -> Vessel:
        """Return the vessel's state before this entry, or an empty one."""
        ...

    def recent(self, mark: str, kind: str) -> Sequence[Line]:
        """Return the last entries of that kind on that vessel, oldest first."""
        ...

    def run_on(self, still: str) -> Run | None:
        """Return the run that is now on the still, or None."""
        ...

    def vessel(self, mark: str) -> VesselRow | None:
        """Return the vessel as the registry has it, or None."""
        ...

    def neighbours(self, mark: str, most: int = 12) -> Sequence[VesselRow]:
        """Return the rows of the casks most like this one: same size class; same area, wood and use first."""
        ...

    def instrument(self, instrument_id: str) -> InstrumentRow | None:
        """Return an instrument as the registry has it, or None."""
        ...

    def person(self, code: str) -> PersonRow | None:
        """Return a person, or None."""
        ...

    def site(self) -> SiteSettings:
        """Return the site's own settings."""
        ...
