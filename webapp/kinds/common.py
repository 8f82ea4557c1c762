"""Fields and figures that several kinds share, so that one reading has one name everywhere."""

from __future__ import annotations

from dataclasses import replace

from webapp.kinds.spec import Field, Figure, Range, Rule

# Scales of one hydrometer: all of them say the gravity of the juice.
GRAVITY_UNITS = ("SG", "Bx_hydrometer", "degP", "degOe", "KMW")
# Those of a refractometer, which is made for juice without alcohol.
REFRACTOMETER_UNITS = ("Bx", "degP_refractometer", "degOe_refractometer", "KMW_refractometer")


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


def density() -> Field:
    """Return the reading of a density meter in the spirit, true density at its temperature. [kg/m3 or g/mL]."""
    return Field(
        "density",
        "or density, by meter",
        units=("kg_m3", "g_mL"),
        usual=(780.0, 1005.0),
        possible=(600.0, 1100.0),
        decimals=2,
        instrument="density meter",
        ghost=False,
        aside=True,
        help="As the meter shows it at that temperature, not corrected to another.",
        source="OIML R 22: ethanol at 40 degC 772, water 998 kg/m3; usual range common practice, no source",
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
# Counts where neither a strength nor a glass reading was typed: of two figures with one name the first that can be had.
BY_DENSITY = replace(TRUE_STRENGTH, sum="strength_by_density", inputs={"density": ("density",), "temp": ("temp",)})

GLASS_OR_STRENGTH = Rule(
    "some_strength",
    "any_of",
    "glass|density",
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
DENSITY_NEEDS_TEMP = Rule(
    "density_needs_temp",
    "needs",
    "density",
    "temp",
    "refuse",
    "A density needs the temperature at which the meter took it. Type it too.",
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


def weighed_volume(net: str, strengths: tuple[str, ...], fields: str, name: str = "volume_20",
                   label: str = "volume at 20 °C") -> tuple[Figure, Figure]:
    """Return litres at 20 degC of a net weight: pounds by 27 CFR 30.64, kilograms by OIML R 22 in air.

    `net` is the field or figure of the net weight, `fields` what may be typed, separated by `|`: the unit of the first
    that was typed says which.
    """
    inputs = {"net": (net,), "strength": strengths}
    return (Figure(name, label, "L", "volume_weighed_us", inputs, typed=(fields, "lb")),
            Figure(name, label, "L", "volume_weighed", inputs))


def weighed_lpa(net: str, strengths: tuple[str, ...], fields: str) -> Figure:
    """Return pure alcohol of a net weight in pounds, by Table 4 of 27 CFR 30.64; it stands before that by volume."""
    return Figure("lpa", "pure alcohol", "LPA", "lpa_weighed_us", {"net": (net,), "strength": strengths}, decimals=2,
                  big=True, typed=(fields, "lb"))


# Litres of a dip: by the strapping table of the vessel, or by its dimensions.
DIPPED = (
    Figure("dipped", "by its table", "L", "volume_of_dip", {"dips": ("@dips",), "dip": ("dip",), "temp": ("temp",)}),
    Figure("estimated", "by its dimensions, an estimate", "L", "volume_of_dip",
           {"dips": ("@cask_dips",), "dip": ("dip",), "temp": ("temp",)}),
)
VOLUME_OR_DIPPED = ("volume", *(one.name for one in DIPPED))
DIP_NEEDS_TEMP = replace(VOLUME_NEEDS_TEMP, left="volume|dip")
SOME_QUANTITY_OR_DIP = replace(SOME_QUANTITY, left="volume|dip", words="Type the volume, the dip or the net weight.")

PROOF_GALLONS = Figure("proof_gallons", "proof gallons", "proof_gal", "proof_gallons", {"lpa": ("lpa",)}, decimals=1)


def volume(label: str = "Volume", usual: Range = (0, 20000), required: bool = False, help: str = "") -> Field:
    """Return a dipped volume. [L or gal], 0 or more."""
    return Field(
        "volume", label, units=("L", "gal"), usual=usual, possible=(0, None), required=required, decimals=1,
        ghost=False,
        instrument="dip", help=help,
    )


def dip() -> Field:
    """Return the depth of what a vessel holds, or its ullage, as the registry has it. [cm or in]."""
    return Field(
        "dip", "or dip", units=("cm", "in"), usual=(0, 400), possible=(0, 3000), decimals=1, ghost=False,
        instrument="dip", help="Depth or ullage, as the table of the vessel has it; its litres follow.",
    )


def net_weight(label: str = "or net weight") -> Field:
    """Return a net weight. [kg or lb], 0 or more."""
    return Field(
        "net_weight", label, units=("kg", "lb"), usual=(0, 20000), possible=(0, None), decimals=1, ghost=False,
        instrument="scale",
    )


def quantity_figures(*, by_vessel: bool = False, by_dip: bool = False) -> tuple[Figure, ...]:
    """Return true strength, litres at 20 degC and pure alcohol of a volume or net weight.

    `by_vessel`: where no strength was read, that of what the vessel holds counts, and no temperature means 20 degC.
    `by_dip`: a volume may be dipped too, by what the registry says of the vessel.
    """
    typed = "volume|dip|net_weight" if by_dip else "volume|net_weight"
    volumes = VOLUME_OR_DIPPED if by_dip else ("volume",)
    held = ("@strength_pct",) if by_vessel else ()
    temp = ("temp", "=20") if by_vessel else ("temp",)
    return (
        TRUE_STRENGTH,
        BY_DENSITY,
        GLASS_TRUE,
        *(DIPPED if by_dip else ()),
        Figure("volume_20", "volume at 20 °C", "L", "volume_20",
               {"volume": volumes, "strength": ("true_strength", *held), "temp": temp}),
        *weighed_volume("net_weight", ("true_strength", *held), typed),
        weighed_lpa("net_weight", ("true_strength", *held), typed),
        LPA if by_vessel else PURE_ALCOHOL,
    )
