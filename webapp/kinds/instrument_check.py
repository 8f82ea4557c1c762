"""An instrument is held against something that is known."""

from webapp.kinds.effects import gauge
from webapp.kinds.spec import Field, Kind


def _figure(name: str, label: str, required: bool, help: str = "") -> Field:
    return Field(name, label, units=("plain",), required=required, decimals=None, ghost=False, help=help)


KIND = Kind(
    name="instrument_check",
    version=1,
    title="Instrument check",
    short="Check instrument",
    icon="thermometer",
    about="Found against known. One division off is too much: it is out of use until it is put right.",
    needs_mark=False,
    role="gauger",
    fields=(
        Field("instrument", "Instrument", "text", required=True, ghost=False, help="Its id, such as TH-2."),
        Field("against", "Against", "choice", required=True, ghost=False, choices=(
            ("ice", "ice"), ("boiling", "boiling water"), ("liquid", "reference liquid"), ("weight", "weight"),
            ("second", "second instrument"))),
        _figure("expected", "Should show", True, "In the instrument's own unit."),
        _figure("found", "Shows", True),
        _figure("correction", "Correction from now on", True, "To be added to what it shows. 0 if none."),
        Field("result", "Good?", "choice", required=True, ghost=False, choices=(
            ("good", "good"), ("failed", "not good"))),
        Field("in_use", "In use?", "choice", required=True, ghost=False, choices=(
            ("yes", "yes"), ("no", "no"), ("until", "until a day"))),
        Field("until", "Until", "date", ghost=False),
    ),
    checks=("clock", "late", "instrument_checked"),
    effect=gauge.instrument_check,
    summary="{instrument}: {found} for {expected}, {result}",
    feeds=("instrument record",),
)
