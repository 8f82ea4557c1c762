"""Names of what the fold keeps: a letter for the sort, a colon, and the name itself, as the book stores them.

Each sort has a function of its own that makes its keys, and a type that says what state lies under them: so whoever
asks for the state of a vessel's key gets a `Vessel` (state.py), and a key of one sort cannot stand where another is
wanted. At run time a key is its text and nothing more.

Vessels, runs, bottlings and the world outside are the accounts that flows go between (spec.py); outside has no state.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Generic, TypeGuard, TypeVar

if TYPE_CHECKING:
    from webapp.kinds import goods_state, run_state, state, tasting_state

    StateT = TypeVar("StateT", bound=state.State, covariant=True)

    class KeyOf(str, Generic[StateT]):
        """The key of a state of that sort."""

    Key = KeyOf[state.State]
    VesselKey = KeyOf[state.Vessel]
    FillKey = KeyOf[state.PastFill]
    RunKey = KeyOf[run_state.Run]
    WishKey = KeyOf[run_state.Wish]
    InstrumentKey = KeyOf[state.Instrument]
    RoundKey = KeyOf[state.Round]
    PhoneKey = KeyOf[state.PhoneClock]
    BottlingKey = KeyOf[goods_state.Bottling]
    NameKey = KeyOf[goods_state.Named]
    RemovalKey = KeyOf[goods_state.Removal]
    YieldKey = KeyOf[goods_state.Yields]
    FallKey = KeyOf[goods_state.Falls]
    PlaceKey = KeyOf[state.Finding]
    TastingKey = KeyOf[tasting_state.Tasting]
else:
    KeyOf = Key = VesselKey = FillKey = RunKey = WishKey = InstrumentKey = RoundKey = PhoneKey = str
    BottlingKey = NameKey = RemovalKey = YieldKey = FallKey = PlaceKey = TastingKey = str

NAME_MOST = 80
PERSON_MOST = 40
OUT = "out:"


def vessel_key(mark: str) -> VesselKey:
    """Return the key of a vessel."""
    return KeyOf(f"v:{mark}")


def fill_key(fill: str) -> FillKey:
    """Return the key of what is known of a fill for good."""
    return KeyOf(f"f:{fill}")


def run_key(run_id: str) -> RunKey:
    """Return the key of a run of a still."""
    return KeyOf(f"r:{run_id}")


def wish_key(fruit: str) -> WishKey:
    """Return the key of what the distiller wants of a fruit."""
    return KeyOf(f"c:{fruit}")


def instrument_key(instrument_id: str) -> InstrumentKey:
    """Return the key of an instrument."""
    return KeyOf(f"i:{instrument_id}")


def round_key(person: str) -> RoundKey:
    """Return the key of the round that a person is on."""
    return KeyOf(f"h:{person[:PERSON_MOST]}")


def phone_key(device: str) -> PhoneKey:
    """Return the key of a phone's clock."""
    return KeyOf(f"d:{device}")


def bottling_key(root: str) -> BottlingKey:
    """Return the key of a bottling."""
    return KeyOf(f"b:{root}")


def name_key(name: str | None) -> NameKey:
    """Return the key of a batch or lot mark, as it is found again."""
    return KeyOf(f"l:{(name or '').strip().casefold()[:NAME_MOST]}")


def removal_key(root: str) -> RemovalKey:
    """Return the key of one removal of bottles."""
    return KeyOf(f"o:{root}")


def yield_key(material: str) -> YieldKey:
    """Return the key of what a material has given in this house."""
    return KeyOf(f"y:{material.strip().lower()[:NAME_MOST]}")


def fall_key(material: str) -> FallKey:
    """Return the key of how a material has fermented in this house."""
    return KeyOf(f"e:{material.strip().lower()[:NAME_MOST]}")


def place_key(place: str) -> PlaceKey:
    """Return the key of a place in the house."""
    return KeyOf(f"p:{place}")


def tasting_key(name: str | None) -> TastingKey:
    """Return the key of a blind tasting, by its name as it is found again."""
    return KeyOf(f"t:{(name or '').strip().casefold()[:NAME_MOST]}")


def person_key(code: str) -> Key:
    """Return the key under which an entry waits for a person that the registry does not know yet. It has no state."""
    return KeyOf(f"p:{code}")


def neighbours_key(size_class: str) -> Key:
    """Return the key under which an entry waits for a change among the casks of a size class. It has no state."""
    return KeyOf(f"n:{size_class}")


def outside(name: str) -> Key:
    """Return the account of a part of the world outside. It has no state."""
    return KeyOf(f"{OUT}{name}")


def stored_key(text: str) -> Key:
    """Return a key as the book has stored it."""
    return KeyOf(text)


def is_vessel(key: Key) -> TypeGuard[VesselKey]:
    """Return whether a key is that of a vessel."""
    return key[:2] == "v:"


def is_fill(key: Key) -> TypeGuard[FillKey]:
    """Return whether a key is that of a fill."""
    return key[:2] == "f:"


def is_run(key: Key) -> TypeGuard[RunKey]:
    """Return whether a key is that of a run."""
    return key[:2] == "r:"


def is_bottling(key: Key) -> TypeGuard[BottlingKey]:
    """Return whether a key is that of a bottling."""
    return key[:2] == "b:"


def is_wish(key: Key) -> TypeGuard[WishKey]:
    """Return whether a key is that of a fruit."""
    return key[:2] == "c:"


def is_removal(key: Key) -> TypeGuard[RemovalKey]:
    """Return whether a key is that of a removal."""
    return key[:2] == "o:"


def is_outside(key: Key) -> bool:
    """Return whether an account is a part of the world outside."""
    return key[:2] == "ou"


def name_in(key: Key) -> str:
    """Return the name that stands in the key of a state: the mark of a vessel, the id of a run, a fruit."""
    return key[2:]


NOT_ACCOUNTED = outside("not_accounted")
GAUGE_DIFFERENCE = outside("gauge_difference")
OVERAGE = outside("overage")
SHORTAGE = outside("shortage")
OPENING = outside("opening")
GROWER = outside("grower")
FERMENTED = outside("fermented")
STILLAGE = outside("stillage")
WATER = outside("water")
SOAKAGE = outside("soakage")
EVAPORATION = outside("evaporation")
FILTER_LOSS = outside("filter_loss")
LEAK = outside("leak")
SPILL = outside("spill")
MISSING = outside("missing")
SAMPLE = outside("sample")
DESTROYED = outside("destroyed")
RECEIVED = outside("received")
TRANSIT = outside("transit")
REMOVED = outside("removed")
RETURNED = outside("returned")
