"""Limits of error: how far an instrument of a class may be off, as laws print it.

``static/trade/errorlimits.js`` is its twin.
"""

from webapp.trade.datafiles import load_data

STEPS_1_2_5 = (1.0, 2.0, 5.0)


def glass_limit_pct(accuracy: str, interval_pct: float | None) -> float:
    """Return the limit of error of a glass alcoholometer in % vol.

    Parameters
    ----------
    accuracy : str
        Class, I, II or III; III where it is none of them. [text], any
    interval_pct : float or None
        Interval of its scale; 0.1 where it is not known. [% vol], above 0

    Returns
    -------
    limit : float
        [% vol]; of a glass whose interval is not that of a class, one interval (the house's own rule, no source)

    Source
    ------
    Directive 76/765/EEC as amended by 82/624/EEC, as in Czech decree 31/2002, annex, 4.5 to 9.
    """
    facts = load_data("instruments")["alcoholometer"]
    if interval_pct is not None and interval_pct != facts["interval_pct"]:
        return interval_pct
    classes = facts["limit_intervals"]
    return classes.get(accuracy, classes[facts["usual"]]) * facts["interval_pct"]


def proof_limit(interval_proof: float | None) -> float:
    """Return the limit of error of a proof hydrometer: one subdivision.

    Parameters
    ----------
    interval_proof : float or None
        Subdivision; 0.2 where it is not known. [proof], above 0

    Returns
    -------
    limit : float
        [proof]

    Source
    ------
    27 CFR 19.188 (its old number 19.277 read): in error by more than one subdivision, it is not used. Subdivisions of
    0.2 proof: 27 CFR 30.22, from memory.
    """
    return load_data("instruments")["proof_hydrometer"]["interval_proof"] if interval_proof is None else interval_proof


def thermometer_limit_c(interval_c: float | None) -> float:
    """Return the limit of error of a thermometer read beside an alcoholometer.

    Parameters
    ----------
    interval_c : float or None
        Interval of its scale; 0.5 where it is not known. [degC], above 0

    Returns
    -------
    limit : float
        [degC]; of a coarser scale one interval (the house's own rule, no source)

    Source
    ------
    Czech decree 31/2002, annex, 9.1.4 and 9.2 (Directive 76/765/EEC).
    """
    facts = load_data("instruments")["thermometer"]
    interval = facts["interval_c"] if interval_c is None else interval_c
    known = zip(facts["intervals_c"], facts["limits_c"], strict=True)
    return next((limit for step, limit in known if interval <= step), interval)


def scale_interval_kg(load_kg: float) -> float:
    """Return the verification interval of a scale that was not named, for its load.

    Parameters
    ----------
    load_kg : float
        What it showed. [kg], 0 or above

    Returns
    -------
    interval : float
        The finest of 1, 2 or 5 times a power of ten with which 3000 intervals reach the load; 0.1 at least. [kg]

    Source
    ------
    Class III has 3000 intervals as a rule (common practice, no source); casks to 0.1 kg: Czech decree 150/2008, 14 (4).
    """
    facts = load_data("instruments")["scale"]
    interval, decade, n = float(facts["least_interval_kg"]), float(facts["least_interval_kg"]), 0
    while interval * facts["most_intervals"] < load_kg and decade < 1e6:
        n += 1
        if n == len(STEPS_1_2_5):
            n, decade = 0, decade * 10.0
        interval = STEPS_1_2_5[n] * decade
    return interval


def scale_limit_kg(load_kg: float, interval_kg: float, accuracy: str) -> float:
    """Return the limit of error of a scale at a load, as at its verification.

    Parameters
    ----------
    load_kg : float
        What it showed. [kg], 0 or above
    interval_kg : float
        Verification interval e. [kg], above 0
    accuracy : str
        Class, I, II, III or IIII; III where it is none of them. [text], any

    Returns
    -------
    limit : float
        0.5, 1 or 1.5 e. [kg]

    Source
    ------
    Directive 2014/31/EU, annex I (UK S.I. 1995/1907, schedule 2, table 3): the limits of OIML R 76.
    """
    facts = load_data("instruments")["scale"]
    loads = facts["loads_intervals"].get(accuracy, facts["loads_intervals"][facts["usual"]])
    many = load_kg / interval_kg
    n = sum(many > most + 1e-9 for most in loads)
    return facts["limits_intervals"][n] * interval_kg


def dip_limits_l(volume_l: float, capacity_l: float | None) -> tuple[float, float]:
    """Return the limits of error of a volume that was dipped: of the tank's table, and of the surface as it is read.

    Parameters
    ----------
    volume_l : float
        As dipped. [L], 0 or above
    capacity_l : float or None
        What the vessel holds; the volume itself where that is not known or less. [L], 0 or above

    Returns
    -------
    limits : tuple
        0.3 % of the volume, and 2 mm of a vessel as wide as a cube of its capacity. [L], [L]

    Source
    ------
    Tables of storage tanks for alcohol, 0.3 %: French order of 18 December 1996, article 18. Surface and cube: the
    house's own rule, no source.
    """
    facts = load_data("instruments")["tank"]
    holds = max(volume_l, capacity_l or 0.0)
    side_m = _cube_root(holds / 1000.0)
    return facts["table_share"] * volume_l, side_m * side_m * facts["surface_m"] * 1000.0


def _cube_root(value: float) -> float:
    """Newton's steps: powers are not the same to the last bit everywhere."""
    if value <= 0:
        return 0.0
    root = max(value, 1.0)
    for _ in range(200):
        better = root - (root * root * root - value) / (3.0 * root * root)
        if not better < root:
            return root
        root = better
    return root
