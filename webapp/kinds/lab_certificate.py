"""What a laboratory found in a sample, as its certificate prints it. The paper decides; this book only compares."""

from collections.abc import Iterator

from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Kind, Rule

PURE = ("g_hL_pa", "mg_100mL_pa", "mg_L", "mg_kg")
BY_LITRE = ("mg_L", "ug_L", "mg_kg", "ug_kg")
# Every substance: its name, what is on its box, the units a certificate prints it in, whether it is always asked for.
SUBSTANCES: tuple[tuple[str, str, tuple[str, ...], bool], ...] = (
    ("methanol", "Methanol", (*PURE, "pct_methanol"), True),
    ("volatile_substances", "Volatile substances", PURE, True),
    ("hydrocyanic_acid", "Hydrocyanic acid", PURE, True),
    ("ethyl_carbamate", "Ethyl carbamate", BY_LITRE, True),
    ("acetaldehyde", "Acetaldehyde, total", PURE, False),
    ("ethyl_acetate", "Ethyl acetate", PURE, False),
    ("higher_alcohols", "Higher alcohols, sum", PURE, False),
    ("volatile_acidity", "Volatile acidity, as acetic acid", PURE, False),
    ("copper", "Copper", BY_LITRE, False),
    ("lead", "Lead", BY_LITRE, False),
    ("sulphur_dioxide", "Sulphur dioxide", BY_LITRE, False),
    ("dry_extract", "Dry extract", ("g_L",), False),
    ("sugar", "Sugar, as invert sugar", ("g_L",), False),
)
NAMES = tuple(name for name, *_ in SUBSTANCES)
STANDARD = "laboratory units; no range of ours: the certificate decides"


def _result(name: str, label: str, units: tuple[str, ...], *, aside: bool) -> Field:
    return Field(name, label, units=units, possible=(0, None), decimals=None, ghost=False, aside=aside, source=STANDARD)


def _beside() -> Iterator[Field]:
    """Yield of each substance how sure the laboratory is, and from where on its method finds it."""
    for name, label, units, _ in SUBSTANCES:
        short = label.split(",")[0]
        yield _result(f"{name}_plus_minus", f"± of {short[0].lower()}{short[1:]}", (*units, "pct"), aside=True)
        yield _result(f"{name}_below", f"{short}: none found, below", units, aside=True)


KIND = Kind(
    name="lab_certificate",
    version=1,
    title="Laboratory certificate",
    short="Laboratory",
    icon="glass",
    about="What a laboratory found in a sample: each result with unit, ± and from where on the method finds it.",
    vessels=("cask", "tank", "receiver", "can"),
    needs_mark=False,
    role="distiller",
    fields=(
        Field("laboratory", "Laboratory", "text", required=True),
        Field("document", "Number of the certificate", "text", required=True, ghost=False),
        Field("taken_on", "Sample taken on", "date", required=True, ghost=False),
        Field("batch", "Batch or lot", "text", ghost=False, help="For spirit that is in bottles already."),
        Field("spirit", "Sold as", "text", help="Such as Williams pear spirit: the limits go by it. Left empty: "
              "what the vessel holds."),
        Field("strength", "True strength, distilled", units=("pct_vol", "proof"), usual=(15, 90), possible=(1, 100),
              decimals=2, ghost=False, help="Needed where a result is by litre of the drink."),
        *(_result(name, label, units, aside=not asked) for name, label, units, asked in SUBSTANCES),
        Field("sample_no", "Number of the sample", "text", ghost=False, aside=True),
        Field("accreditation", "Accreditation of the laboratory", "text", aside=True, help="Its number."),
        Field("method", "Method", "text", aside=True, help="As printed, such as Regulation (EC) 2870/2000, III.2."),
        Field("reported_on", "Date of the certificate", "date", ghost=False, aside=True),
        Field("coverage", "What ± means", "choice", aside=True, choices=(
            ("two", "twice the standard uncertainty, k = 2"), ("one", "the standard uncertainty"),
            ("unsaid", "it does not say"))),
        Field("strength_plus_minus", "± of strength", units=("pct_vol",), possible=(0, 10), decimals=2, ghost=False,
              aside=True),
        *_beside(),
    ),
    rules=(
        Rule("some_result", "any_of", "|".join(NAMES), "|".join((*(f"{name}_below" for name in NAMES), "strength")),
             "refuse", "Type at least one result, or from where on the method would have found it."),
        Rule("reported_before_taken", "le", "taken_on", "reported_on", "ask",
             "The certificate is older than its sample. Look at both days."),
    ),
    checks=("clock", "twice", "lab_result", "row_gap"),
    effect=other.remembered,
    summary="{laboratory}, {document}: methanol {methanol}",
    cautions=("methanol",),
    account="any",
    feeds=("laboratory record",),
)
