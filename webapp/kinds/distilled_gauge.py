"""How much stands in a vessel, and how strong, where sugar or wood hides the strength: a sample of it was distilled."""

from dataclasses import replace

from webapp.kinds.common import (
    DENSITY_NEEDS_TEMP,
    DIP_NEEDS_TEMP,
    DIPPED,
    GLASS_NEEDS_TEMP,
    PROOF_GALLONS,
    PURE_ALCOHOL,
    SOME_QUANTITY_OR_DIP,
    VOLUME_OR_DIPPED,
    density,
    dip,
    glass,
    net_weight,
    spirit_temp,
    volume,
    weighed_volume,
)
from webapp.kinds.effects import gauge
from webapp.kinds.spec import Field, Figure, Kind, Rule

_METHOD = "Regulation (EC) No 2870/2000, Annex I: 200 mL at 20 degC; other sizes and ranges common practice, no source"


def _flask(name: str, label: str, help: str) -> Field:
    return Field(name, label, units=("L", "mL"), usual=(0.05, 1), possible=(0.01, 10), required=True, decimals=None,
                 ghost=False, typed_in="mL", help=help, source=_METHOD)


def _lab_temp(name: str, label: str) -> Field:
    return replace(spirit_temp(usual=(15.0, 25.0)), name=name, label=label, help="The same for both, 20 °C at best.")


_DISTILLATE = {"temp": ("distillate_temp",)}
_SEEN = Figure("seen_strength", "as the glass or the meter has it", "pct_vol", "true_strength",
               {"glass": ("glass",), "temp": ("temp",)}, only_shown=True)
_TRUE_BY_EXTRACT = {"strength": ("true_strength",), "extract": ("dry_extract",)}

KIND = Kind(
    name="distilled_gauge",
    version=1,
    title="Gauge by distillation",
    short="Distilled gauge",
    icon="glass",
    about="Volume or net weight of spirit whose strength sugar or wood hides, and the strength of its distillate.",
    vessels=("tank", "receiver", "cask", "can"),
    role="gauger",
    fields=(
        Field("what", "What it holds", "text", aside=True, help="Spirit and lot, as the house names it."),
        replace(volume(), ghost=True),
        dip(),
        net_weight(),
        replace(glass(required=False), label="Glass reading, undistilled",
                help="As the glass shows it, not corrected. Leave empty where sugar lifts it off its scale."),
        replace(density(), label="or density, undistilled", aside=False),
        spirit_temp(required=False, usual=(5.0, 25.0)),
        _flask("sample_volume", "Sample distilled", "What was measured for the flask, before any water."),
        _lab_temp("sample_temp", "Temperature of the sample"),
        _flask("distillate_volume", "Distillate, made up to", "With water, to the mark of the same flask."),
        _lab_temp("distillate_temp", "Temperature of the distillate"),
        replace(glass(required=False), name="distillate_glass", label="Glass reading of the distillate"),
        replace(density(), name="distillate_density", label="or its density, by meter", aside=False),
        Field("dry_extract", "Total dry extract", units=("g_L",), usual=(0, 350), possible=(0, 600), decimals=1,
              ghost=False, help="Residue of 25 mL dried at 105 °C, times 40.",
              source="Regulation (EC) No 2870/2000, Annex II; range common practice, no source"),
        Field("purpose", "Why", "choice", aside=True, choices=(
            ("stock", "stock"), ("move", "before a move"), ("opening", "opening stock"), ("other", "other"))),
    ),
    rules=(
        SOME_QUANTITY_OR_DIP, DIP_NEEDS_TEMP, GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP,
        Rule("distillate_is_read", "any_of", "distillate_glass", "distillate_density", "refuse",
             "Type what the glass or the density meter shows in the distillate."),
        Rule("weight_needs_density", "needs", "net_weight", "density|glass", "refuse",
             "Sugar makes spirit heavy. Beside a net weight, type the density or the glass reading of the undistilled "
             "spirit."),
        Rule("extract_hides_more", "le", "obscuration_least", "obscuration", "ask",
             "This extract hides {obscuration_least} at least, and {obscuration} is hidden by the figures. Look at the "
             "glass of the undistilled spirit; was all of the distillate in the flask, and made up to the mark?"),
        Rule("extract_hides_less", "le", "obscuration", "obscuration_most", "ask",
             "This extract hides {obscuration_most} at most, and {obscuration} is hidden by the figures. Look at the "
             "extract and at the glass of the undistilled spirit."),
    ),
    figures=(
        Figure("distillate_strength", "distillate at 20 °C", "pct_vol", "true_strength",
               {"glass": ("distillate_glass",), **_DISTILLATE}),
        Figure("distillate_strength", "distillate at 20 °C", "pct_vol", "strength_by_density",
               {"density": ("distillate_density",), **_DISTILLATE}),
        Figure("true_strength", "true at 20 °C", "pct_vol", "strength_by_distillation",
               {"sample_volume": ("sample_volume",), "sample_temp": ("sample_temp",),
                "distillate_volume": ("distillate_volume",), "distillate_temp": ("distillate_temp",),
                "strength": ("distillate_strength",)}, big=True),
        _SEEN,
        replace(_SEEN, sum="strength_by_density", inputs={"density": ("density",), "temp": ("temp",)}),
        Figure("obscuration", "hidden", "pct_vol", "obscuration",
               {"strength": ("true_strength",), "seen": ("seen_strength",)}, only_shown=True),
        Figure("obscuration_least", "the extract hides at least", "pct_vol", "obscuration_least", _TRUE_BY_EXTRACT,
               only_shown=True),
        Figure("obscuration_most", "the extract hides at most", "pct_vol", "obscuration_most", _TRUE_BY_EXTRACT,
               only_shown=True),
        *DIPPED,
        Figure("volume_20", "volume at 20 °C", "L", "volume_20",
               {"volume": VOLUME_OR_DIPPED, "strength": ("seen_strength", "true_strength"), "temp": ("temp",)}),
        Figure("volume_20", "volume at 20 °C", "L", "volume_of_dense",
               {"net": ("net_weight",), "density": ("density",), "temp": ("temp",), "strength": ("true_strength",)}),
        *weighed_volume("net_weight", ("seen_strength",), "volume|dip|net_weight"),
        PURE_ALCOHOL,
        PROOF_GALLONS,
    ),
    checks=("time_order", "clock", "late", "twice", "over_capacity", "strength_ceiling", "held_strength", "glass_scale",
            "two_people", "dip_sum", "emptied_vessel"),
    effect=gauge.gauge,
    summary="{volume_20} at {true_strength}, distilled",
    curve=("true_strength",),
    cautions=("fire_zone",),
    account="any",
    feeds=("gauge record", "stock", "obscuration"),
)
