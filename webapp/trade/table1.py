"""US true proof by Table 1 of the Gauging Manual (27 CFR 30.61) with its own interpolation (30.23)."""

from functools import cache
from typing import TypeAlias, overload

import numpy as np
import numpy.typing as npt

from webapp.trade.datafiles import load_data
from webapp.trade.errors import OutOfDomain, Shown
from webapp.trade.numeric import N, Number, as_number, brief, check_range

Whole: TypeAlias = npt.NDArray[np.int64]
MOST_READING = 206
MOST_TEMP_F = 100
BLANK = -1
# Readings and temperatures are carried as whole millionths, proofs as tenths: decimal arithmetic, exactly.
MILLION = 1_000_000


def true_proof(
    hydrometer_proof: N,
    temp_f: N,
    hydrometer_correction: float = 0.0,
    thermometer_correction_f: float = 0.0,
) -> N:
    """Return true proof at 60 degF from a hydrometer reading by Table 1, rounded to a tenth.

    Parameters
    ----------
    hydrometer_proof : float or array
        What the hydrometer shows. [proof on the glass], 0 to 206 after its correction
    temp_f : float or array
        What the thermometer shows. [degF], 1 to 100 after its correction
    hydrometer_correction : float
        From the instrument's certificate, added to the reading. [proof], -5 to 5
    thermometer_correction_f : float
        From the instrument's certificate, added to the temperature. [degF], -5 to 5

    Returns
    -------
    proof : float or array
        True proof at 60 degF. [proof], to 0.1, hundredths of 5 and over going up

    Raises
    ------
    OutOfDomain
        Outside the table, or where a cell that is needed is blank.

    Source
    ------
    27 CFR 30.23 (corrections, interpolation, rounding), 30.61 (Table 1, a proofread copy: data/table1.json).
    """
    micro_tenths = _interpolate(hydrometer_proof, temp_f, hydrometer_correction, thermometer_correction_f)
    return (micro_tenths + MILLION // 2) // MILLION / 10


def true_proof_unrounded(
    hydrometer_proof: N,
    temp_f: N,
    hydrometer_correction: float = 0.0,
    thermometer_correction_f: float = 0.0,
) -> N:
    """Return true proof by Table 1 as interpolated, before the prescribed rounding.

    Parameters
    ----------
    hydrometer_proof : float or array
        What the hydrometer shows. [proof on the glass], 0 to 206 after its correction
    temp_f : float or array
        What the thermometer shows. [degF], 1 to 100 after its correction
    hydrometer_correction : float
        From the instrument's certificate, added to the reading. [proof], -5 to 5
    thermometer_correction_f : float
        From the instrument's certificate, added to the temperature. [degF], -5 to 5

    Returns
    -------
    proof : float or array
        True proof at 60 degF. [proof], not rounded; for checking a sum by hand, not for the record

    Raises
    ------
    OutOfDomain
        As true_proof.

    Source
    ------
    27 CFR 30.23 and 30.61.
    """
    return _interpolate(hydrometer_proof, temp_f, hydrometer_correction, thermometer_correction_f) / (10 * MILLION)


@cache
def table1_tenths() -> npt.NDArray[np.int64]:
    """Return Table 1 as [reading 0..206, temperature 0..100 degF] in tenths of proof; blanks are -1."""
    table = np.full((MOST_READING + 1, MOST_TEMP_F + 1), BLANK, dtype=np.int64)
    for reading, (first_f, tenths, steps) in enumerate(load_data("table1")["rows"]):
        changes = [ord("b") - ord(letter) for letter in steps]
        table[reading, first_f : first_f + len(steps) + 1] = tenths + np.cumsum([0, *changes])
    return table


@cache
def _rows() -> list[list[int]]:
    rows: list[list[int]] = table1_tenths().tolist()
    return rows


@overload
def _interpolate(
    hydrometer_proof: float, temp_f: float, hydrometer_correction: float, thermometer_f: float
) -> int: ...
@overload
def _interpolate(
    hydrometer_proof: Number, temp_f: Number, hydrometer_correction: float, thermometer_f: float
) -> int | Whole: ...
def _interpolate(
    hydrometer_proof: Number, temp_f: Number, hydrometer_correction: float, thermometer_f: float
) -> int | Whole:
    """True proof in millionths of a tenth, as whole numbers."""
    for what, correction in (("hydrometer_correction", hydrometer_correction),
                             ("thermometer_correction", thermometer_f)):
        check_range(what, float(correction), -5, 5, "", "see_certificate")
    reading = as_number(hydrometer_proof) + float(hydrometer_correction)
    temp = as_number(temp_f) + float(thermometer_f)
    check_range("proof_reading", reading, 0, MOST_READING, "proof", "table1_reading")
    check_range("temperature", temp, 1, MOST_TEMP_F, "degF", "table1_temp")
    if isinstance(reading, float) and isinstance(temp, float):
        return _interpolate_one(int(reading * MILLION + 0.5), int(temp * MILLION + 0.5))
    reading, temp = np.broadcast_arrays(reading, temp)
    return _interpolate_many((reading * MILLION + 0.5).astype(np.int64), (temp * MILLION + 0.5).astype(np.int64))


def _interpolate_one(micro_reading: int, micro_temp: int) -> int:
    table = _rows()
    reading, part_reading = divmod(micro_reading, MILLION)
    temp, part_temp = divmod(micro_temp, MILLION)
    here = table[reading][temp]
    # The next cell counts only where there is a fraction, so a whole reading on the table's edge still holds.
    above = table[reading + 1][temp] if part_reading else here
    warmer = table[reading][temp + 1] if part_temp else here
    if BLANK in (here, above, warmer):
        _refuse_blank(micro_reading / MILLION, micro_temp / MILLION)
    return here * MILLION + part_reading * (above - here) - part_temp * (here - warmer)


def _interpolate_many(micro_reading: Whole, micro_temp: Whole) -> Whole:
    table = table1_tenths()
    reading, part_reading = micro_reading // MILLION, micro_reading % MILLION
    temp, part_temp = micro_temp // MILLION, micro_temp % MILLION
    here = table[reading, temp]
    above = np.where(part_reading > 0, table[np.minimum(reading + 1, MOST_READING), temp], here)
    warmer = np.where(part_temp > 0, table[reading, np.minimum(temp + 1, MOST_TEMP_F)], here)
    blank = (here == BLANK) | (above == BLANK) | (warmer == BLANK)
    if blank.any():
        _refuse_blank(float(micro_reading[blank][0]) / MILLION, float(micro_temp[blank][0]) / MILLION)
    return here * MILLION + part_reading * (above - here) - part_temp * (here - warmer)


def _refuse_blank(reading: float, temp_f: float) -> None:
    raise OutOfDomain(
        "proof_reading",
        reading,
        None,
        None,
        "table1_blank",
        figures={"reading": Shown(brief(reading), "proof"), "temp": Shown(brief(temp_f), "degF")},
    )
