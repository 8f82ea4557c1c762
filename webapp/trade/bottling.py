"""Sums of the bottling line: fill by weight, what a bottle may be off by, average and spread, what a label may say.

``static/trade/bottling.js`` is the twin. Tolerances are figures from published rules, not legal advice.
"""

from collections.abc import Sequence
from math import sqrt

from webapp.trade.alcoholometry import litres_from_mass
from webapp.trade.errors import OutOfDomain, Shown
from webapp.trade.numeric import check_range

# 27 CFR 19.356: (from this size on [mL], percent either way).
US_FILL = ((1000.0, 1.5), (376.0, 2.0), (101.0, 3.0), (0.0, 4.5))
# Directive 76/211/EEC, Annex I, 2.4 (tolerable negative errors): (from this size on [mL], percent, or mL), from memory.
EU_FILL = (
    (1000.0, 1.5, None), (500.0, None, 15.0), (300.0, 3.0, None), (200.0, None, 9.0), (100.0, 4.5, None),
    (50.0, None, 4.5), (5.0, 9.0, None),
)
STRENGTH_ALLOWED_PCT = 0.3  # [% vol] Regulation (EU) 1169/2011, Annex XII; 27 CFR 19.356 (c)
COUNT_MOST = 10_000


def fill_from_weight_pct(gross_g: float, empty_g: float, strength_pct: float, size_ml: float) -> float:
    """Return how full a bottle is, by its weight full and empty with closure.

    Parameters
    ----------
    gross_g : float
        Full bottle as the scale shows it. [g], 0 to 1e6
    empty_g : float
        A like bottle empty, with its closure. [g], 0 to gross_g
    strength_pct : float
        True strength of what is in it. [% vol at 20 degC], 0 to 100
    size_ml : float
        What the label says. [mL], 5 to 100000

    Returns
    -------
    fill_pct : float
        Contents at 20 degC in percent of the label. [%], not rounded. Buoyancy of air is allowed for.

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    Density of OIML R 22 (1975) at 20 degC, at which EU labels hold. A US litre is one at 60 degF, at which spirit is
    0.3 to 0.4 % less.
    """
    check_range("full_bottle", float(gross_g), 0, 1e6, "g", "weigh_again")
    check_range("bottle_size", float(size_ml), 5, 100_000, "mL", "look_at_label")
    if not 0 <= empty_g <= gross_g:
        raise OutOfDomain("empty_bottle", empty_g, 0, gross_g, "empty_bottle_heavy")
    return litres_from_mass((gross_g - empty_g) / 1000.0, strength_pct, True) * 1000.0 / size_ml * 100.0


def us_fill_allowed_pct(size_ml: float) -> float:
    """Return by how much a bottle may be over or under its label in the US.

    Parameters
    ----------
    size_ml : float
        What the label says. [mL], 5 to 100000

    Returns
    -------
    allowed_pct : float
        Either way. [% of the label]. A lot should have about as many over as under.

    Raises
    ------
    OutOfDomain
        Outside this range.

    Source
    ------
    27 CFR 19.356: 1.5 % from 1 L, 2 % from 376 mL, 3 % from 101 mL, 4.5 % below.
    """
    check_range("bottle_size", float(size_ml), 5, 100_000, "mL", "look_at_label")
    return next(allowed for least, allowed in US_FILL if size_ml >= least)


def eu_fill_allowed_pct(size_ml: float) -> float:
    """Return by how much one bottle may be under its label in the EU; the average of a batch may not be under.

    Parameters
    ----------
    size_ml : float
        What the label says. [mL], 5 to 10000

    Returns
    -------
    allowed_pct : float
        Tolerable negative error. [% of the label]

    Raises
    ------
    OutOfDomain
        Outside this range.

    Source
    ------
    Directive 76/211/EEC, Annex I, 2.4, table, from memory. A bottle with twice this error may not be marketed.
    """
    check_range("bottle_size", float(size_ml), 5, 10_000, "mL", "look_at_label")
    _, pct, ml = next(line for line in EU_FILL if size_ml >= line[0])
    return pct if pct is not None else (ml or 0.0) / size_ml * 100.0


def mean_of(values: Sequence[float]) -> float:
    """Return the average of some checks.

    Parameters
    ----------
    values : sequence of float
        Figures of one sort. [any one unit], 1 to 10000 of them, each finite

    Returns
    -------
    mean : float
        [the same unit], not rounded

    Raises
    ------
    OutOfDomain
        With no figure, or one that is none.

    Source
    ------
    The arithmetic mean.
    """
    _check_values(values, 1)
    total = 0.0
    for value in values:
        total += float(value)
    return total / len(values)


def spread_of(values: Sequence[float]) -> float:
    """Return the spread of some checks about their average: the standard deviation of a sample.

    Parameters
    ----------
    values : sequence of float
        Figures of one sort. [any one unit], 2 to 10000 of them, each finite

    Returns
    -------
    spread : float
        [the same unit], not rounded, 0 or more

    Raises
    ------
    OutOfDomain
        With fewer than two figures, or one that is none.

    Source
    ------
    ISO 3534-1, sample standard deviation (n - 1), from memory.
    """
    _check_values(values, 2)
    mean = mean_of(values)
    total = 0.0
    for value in values:
        total += (float(value) - mean) * (float(value) - mean)
    return sqrt(total / (len(values) - 1))


def label_low_pct(strength_pct: float) -> float:
    """Return the lowest label strength, to a tenth, that a gauge is still within tolerance of.

    Parameters
    ----------
    strength_pct : float
        Tank gauge. [% vol at 20 degC], 1 to 97.2

    Returns
    -------
    label_pct : float
        [% vol], a whole number of tenths

    Raises
    ------
    OutOfDomain
        Outside this range.

    Notes
    -----
    The gauge's own uncertainty has to be found inside this; labels carry at most one decimal in the EU.

    Source
    ------
    0.3 % vol either way: Regulation (EU) No 1169/2011, Annex XII; 27 CFR 19.356 (c).
    """
    check_range("strength", float(strength_pct), 1, 97.2, "pct_vol", "gauge_again")
    return -((-(strength_pct - STRENGTH_ALLOWED_PCT) * 10.0 + 1e-6) // 1.0) / 10.0


def label_high_pct(strength_pct: float) -> float:
    """Return the highest label strength, to a tenth, that a gauge is still within tolerance of.

    Parameters
    ----------
    strength_pct : float
        Tank gauge. [% vol at 20 degC], 1 to 97.2

    Returns
    -------
    label_pct : float
        [% vol], a whole number of tenths

    Raises
    ------
    OutOfDomain
        Outside this range.

    Source
    ------
    As label_low_pct.
    """
    check_range("strength", float(strength_pct), 1, 97.2, "pct_vol", "gauge_again")
    return ((strength_pct + STRENGTH_ALLOWED_PCT) * 10.0 + 1e-6) // 1.0 / 10.0


def bottles_of(volume_20_l: float, size_ml: float) -> float:
    """Return how many bottles a volume fills, the last one full.

    Parameters
    ----------
    volume_20_l : float
        What is in the tank less what stays in it. [L at 20 degC], 0 to 1e9
    size_ml : float
        What the label says. [mL], 5 to 100000

    Returns
    -------
    count : float
        Whole bottles. [count]

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    Division; a millilitre short of a bottle is not called short.
    """
    check_range("volume", float(volume_20_l), 0, 1e9, "L", "check_dip")
    check_range("bottle_size", float(size_ml), 5, 100_000, "mL", "look_at_label")
    return (volume_20_l * 1000.0 + 1.0) / size_ml // 1.0


def _check_values(values: Sequence[float], least: int) -> None:
    if not least <= len(values) <= COUNT_MOST:
        figures = {"least": Shown(str(least))}
        raise OutOfDomain("number_of_checks", float(len(values)), least, COUNT_MOST, "few_checks", figures=figures)
    for value in values:
        check_range("check", float(value), -1e9, 1e9, "", "look_again")
