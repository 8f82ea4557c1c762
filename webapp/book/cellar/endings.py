"""How the house's past ferments of a material ended: what the forecast of the next is weighed by."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import Final

from webapp.book.before.limits import is_grain
from webapp.kinds.fruit_intake import KIND
from webapp.kinds.goods_state import Falls
from webapp.kinds.key import FallKey, fall_key
from webapp.trade.errors import OutOfDomain
from webapp.trade.ferment import tell_shape, weigh_past

# By material: so few that a page reads them all in one statement with its vessels.
FALL_KEYS: Final[dict[str, FallKey]] = {
    name: fall_key(name) for spec in KIND.fields if spec.name == "material" for name, _ in spec.choices
}


Newest = Callable[[FallKey], Falls | None]  # the newest state of a key


def past_weights(newest: Newest, material: str) -> list[float] | None:
    """Return the weights of the shapes of a fall by the past of a material, or None where there is none.

    [1], together 1
    """
    state = newest(FALL_KEYS[material]) if material in FALL_KEYS else None
    told = [
        shares for one in (state["ended"] if state else [])
        if (shares := _told(tuple(one["days"]), tuple(one["gravities"]), is_grain(material)))
    ]
    return weigh_past(told) if told else None


@lru_cache(maxsize=512)  # a fit takes some milliseconds, and the past does not change
def _told(days: tuple[float, ...], gravities: tuple[float, ...], grain: bool) -> list[float] | None:
    try:
        return tell_shape(days, gravities, is_grain=grain)
    except OutOfDomain:
        return None  # a slip that no instrument shows: its ferment tells nothing
