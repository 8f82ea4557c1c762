"""Would a slip explain it? For what may be so on purpose, and is asked about only where a likely slip leads to what is
expected.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from webapp.kinds.expected import Expected
from webapp.kinds.meant import offers
from webapp.kinds.read import Read
from webapp.kinds.state import figure_in
from webapp.kinds.view import View


class _Wanted(NamedTuple):
    code: str
    field: str
    weight: str
    expects: tuple[Expected, ...]


def is_slip(read: Read, field: str, expects: Iterable[Expected]) -> bool:
    """Return whether one slip of a figure of this entry brings what was expected."""
    return any(offers(read, [_Wanted("", field, "ask", tuple(expects))], lambda _: ())[0])


def is_copied(read: Read, view: View, name: str) -> bool:
    """Return whether a figure stands so, to its last digit, in the line before of its kind and vessel."""
    lines, now = view.recent(read.mark, read.kind.name)[-1:], read.number(name)
    return bool(lines and now is not None and figure_in(lines[0]["values"], name) == now)
