"""Fields and figures that several kinds share, so that one reading has one name everywhere."""

from __future__ import annotations

from dataclasses import replace

from webapp.kinds.spec import Field, Figure, Range, Rule


def glass(required: bool = True, usual: tuple[float, float] = (0.0, 90.0)) -> Field:
    """Return the raw hydrometer indication, as the glass shows it. [pct_glass or proof_glass], 0 to 100."""
    return Field(
        "glass",
        "Glass reading",
        units=("pct_glass", "proof_glass"),
        usual=usual,
        possible=(0.0, 100.0),
        required=required,
        instrument="alcoholmeter",
        decimals=1,
        help="As the glass shows it, not corrected.",
    )


def spirit_temp(required: bool = True, usual: tuple[float, float] = (8.0, 20.0)) -> Field:
    """Return the temperature of the spirit the glass floats in. [degC or degF], -20 to 40 degC."""
    return Field(
        "temp",
        "Spirit temperature",
        units=("degC", "degF"),
        usual=usual,
        possible=(-20.0, 40.0),
        required=required,
        instrument="thermometer",
        decimals=1,
        help="Read it at the same moment as the glass.",
        source="OIML R 22 formula limits; usual range common practice, no source",
    )


def strength(required: bool = False) -> Field:
    """Return a strength that is already corrected. [pct_vol at 20 degC or proof at 60 degF], 0 to 97.2."""
    return Field(
        "strength",
        "Strength, already corrected",
        units=("pct_vol", "proof"),
        usual=(0.0, 90.0),
        possible=(0.0, 97.2),
        required=required,
        instrument="density meter",
        decimals=1,
        help="Only if a density meter or the tables gave it. Leave empty for a glass.",
        source="ethanol-water azeotrope, 97.2 % vol",
    )


# What the glass says once corrected, even where a corrected strength was typed beside it.
GLASS_TRUE = Figure(
    "glass_true", "glass, corrected", "pct_vol", "true_strength", {"glass": ("glass",), "temp": ("temp",)}
)

TRUE_STRENGTH = Figure(
    "true_strength",
    "true at 20 °C",
    "pct_vol",
    "true_strength",
    {"glass": ("glass",), "temp": ("temp",)},
    given="strength",
    big=True,
)

GLASS_OR_STRENGTH = Rule(
    "some_strength",
    "any_of",
    "glass",
    "strength",
    "refuse",
    "Type the glass reading and its temperature, or a strength that is already corrected.",
)
GLASS_NEEDS_TEMP = Rule(
    "glass_needs_temp",
    "needs",
    "glass",
    "temp",
    "refuse",
    "A glass reading needs the temperature of the spirit. Type it too.",
)
RAW_IS_NOT_TRUE = Rule(
    "raw_equals_corrected",
    "differ_unless",
    "glass",
    "strength",
    "ask",
    "{glass} stands in both boxes at {temp}. That is what the glass shows; true would be {glass_true}.",
    near=("temp", 20.0, 0.5),
)

SOME_QUANTITY = Rule("some_quantity", "any_of", "volume", "net_weight", "refuse", "Type the volume or the net weight.")
VOLUME_NEEDS_TEMP = Rule(
    "volume_needs_temp", "needs", "volume", "temp", "refuse",
    "A volume needs the temperature of the spirit. Type it too.",
)
PURE_ALCOHOL = Figure(
    "lpa", "pure alcohol", "LPA", "lpa_volume",
    {"volume": ("volume_20",), "strength": ("true_strength",), "temp": ("=20",)}, decimals=2, big=True,
)
# Where no strength was read, that of what the vessel holds counts.
LPA = replace(PURE_ALCOHOL, inputs={**PURE_ALCOHOL.inputs, "strength": ("true_strength", "@strength_pct")})
PROOF_GALLONS = Figure("proof_gallons", "proof gallons", "proof_gal", "proof_gallons", {"lpa": ("lpa",)}, decimals=1)


def volume(label: str = "Volume", usual: Range = (0, 20000), required: bool = False, help: str = "") -> Field:
    """Return a dipped volume. [L or gal], 0 or more."""
    return Field(
        "volume", label, units=("L", "gal"), usual=usual, possible=(0, None), required=required, decimals=1,
        ghost=False,
        instrument="dip", help=help,
    )


def net_weight(label: str = "or net weight") -> Field:
    """Return a net weight. [kg or lb], 0 or more."""
    return Field(
        "net_weight", label, units=("kg", "lb"), usual=(0, 20000), possible=(0, None), decimals=1, ghost=False,
        instrument="scale",
    )


def quantity_figures(*, by_vessel: bool = False) -> tuple[Figure, ...]:
    """Return true strength, litres at 20 degC and pure alcohol of a volume or net weight.

    `by_vessel`: where no strength was read, that of what the vessel holds counts, and no temperature means 20 degC.
    """
    held = ("@strength_pct",) if by_vessel else ()
    temp = ("temp", "=20") if by_vessel else ("temp",)
    return (
        TRUE_STRENGTH,
        GLASS_TRUE,
        Figure("volume_20", "volume at 20 °C", "L", "volume_20",
               {"volume": ("volume",), "strength": ("true_strength", *held), "temp": temp}),
        Figure("volume_20", "volume at 20 °C", "L", "volume_from_mass",
               {"net": ("net_weight",), "strength": ("true_strength", *held)}),
        LPA if by_vessel else PURE_ALCOHOL,
    )
