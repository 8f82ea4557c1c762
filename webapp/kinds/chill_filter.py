"""A tank is chilled and filtered."""

from webapp.kinds.effects import blend
from webapp.kinds.spec import Field, Figure, Kind


def _volume(name: str, label: str) -> Field:
    return Field(name, label, units=("L", "gal"), usual=(1, 20000), possible=(0, None), required=True, decimals=1,
                 ghost=False, instrument="dip")


def _strength(name: str, label: str) -> Field:
    return Field(name, label, units=("pct_vol", "proof"), usual=(30, 70), possible=(0, 97.2), required=True, decimals=1,
                 ghost=False, instrument="density meter")


def _temp(name: str, label: str) -> Field:
    return Field(name, label, units=("degC", "degF"), usual=(-6, 25), possible=(-20, 40), decimals=1, ghost=False,
                 help="Left empty: at 20 °C.", instrument="thermometer")


def _lpa(side: str) -> Figure:
    return Figure(f"lpa_{side}", f"pure alcohol {side}", "LPA", "lpa_volume",
                  {"volume": (f"volume_{side}_20",), "strength": (f"strength_{side}",), "temp": ("=20",)},
                  decimals=2)


def _volume_20(side: str) -> Figure:
    return Figure(f"volume_{side}_20", f"volume {side} at 20 °C", "L", "volume_20",
                  {"volume": (f"volume_{side}",), "strength": (f"strength_{side}",),
                   "temp": (f"temp_{side}", "=20")})


KIND = Kind(
    name="chill_filter",
    version=1,
    title="Chill or filter",
    short="Filter",
    icon="tank",
    about="Temperature, sheets, and volume and strength before and after.",
    vessels=("tank",),
    role="blender",
    fields=(
        Field("temp", "Chilled to", units=("degC", "degF"), usual=(-6, 10), possible=(-20, 25), required=True,
              decimals=1,
              instrument="thermometer"),
        Field("sheets", "Sheets or cartridge", "text", required=True, help="Grade and lot."),
        _volume("volume_before", "Volume before"),
        _strength("strength_before", "Strength before"),
        _temp("temp_before", "Temperature at the dip before"),
        _volume("volume_after", "Volume after"),
        _strength("strength_after", "Strength after"),
        _temp("temp_after", "Temperature at the dip after"),
        Field("to_vessel", "Into tank", "mark", vessels=("tank",), ghost=False, help="Leave empty if it came back."),
    ),
    figures=(
        _volume_20("before"), _volume_20("after"), _lpa("before"), _lpa("after"),
        Figure("lost", "kept by the filter", "LPA", "difference", {"a": ("lpa_before",), "b": ("lpa_after",)},
               decimals=2,
               big=True),
    ),
    checks=("time_order", "clock", "late", "twice", "vessel_empty", "filter_loss", "emptied_vessel",
            "source_strength", "moved_twice", "water_unread", "row_gap"),
    effect=blend.chill_filter,
    summary="{sheets} at {temp}: {lost} kept",
    cautions=("fire_zone",),
    account="processing",
    feeds=("filter loss",),
)
