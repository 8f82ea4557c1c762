"""Spirit whose strength sugar or wood hides: what its distillate in the laboratory and its dry extract say of it."""

from webapp.trade.alcoholometry import scale_share, strength_from_density_meter, volume_at_20
from webapp.trade.density import density_from_strength
from webapp.trade.numeric import check_range

EXTRACT_KG_M3_PER_G_L = 0.385  # what a gram of sucrose in a litre adds to its density; see obscuration_of_extract
ALLOWED_PCT, ALLOWED_SHARE = 0.3, 0.2
_ROUNDS = 20  # each brings the strength at least ten times nearer


def strength_by_distillation(
    sample_l: float, sample_temp_c: float, distillate_l: float, distillate_temp_c: float, distillate_pct: float
) -> float:
    """Return the true strength of spirit, a measured volume of which was distilled.

    All alcohol of the sample is in the distillate, and nothing but water with it; it was made up to a volume.

    Parameters
    ----------
    sample_l : float
        Volume of the spirit that was distilled. [L at sample_temp_c], 0.01 to 10
    sample_temp_c : float
        Its temperature when it was measured. [degC], -20 to 40
    distillate_l : float
        Volume to which the distillate was made up. [L at distillate_temp_c], 0.01 to 10
    distillate_temp_c : float
        Its temperature when it was made up. [degC], -20 to 40
    distillate_pct : float
        Strength of the distillate, corrected. [% vol at 20 degC], 0 to 100

    Returns
    -------
    strength_pct : float
        [% vol at 20 degC]

    Raises
    ------
    OutOfDomain
        Outside these ranges, or where more alcohol was found than the sample had room for.

    Notes
    -----
    With equal volumes at one temperature, as the method has it, the strength is that of the distillate. The sample is
    taken to grow with warmth as a mixture of its true strength: of a liqueur measured 5 degC off 20, up to 0.1 % of
    the strength.

    Source
    ------
    Regulation (EC) No 2870/2000, Annex I, appendix I; its strength is litres of ethanol in 100 L of a mixture with the
    density of the distillate. Other volumes and temperatures by the same alcohol: OIML R 22 (1975), densities.
    """
    for volume in (sample_l, distillate_l):
        check_range("volume", float(volume), 0.01, 10, "L", "check_figure")
    alcohol = float(volume_at_20(distillate_l, distillate_pct, distillate_temp_c)) * distillate_pct
    strength = alcohol / sample_l
    for _ in range(_ROUNDS):
        strength = alcohol / float(volume_at_20(sample_l, min(strength, 100.0), sample_temp_c))
    check_range("strength", strength, 0, 100, "pct_vol", "check_figure")
    return strength


def obscuration(strength_pct: float, seen_pct: float) -> float:
    """Return how much of its strength a hydrometer or density meter does not see.

    Parameters
    ----------
    strength_pct : float
        True strength. [% vol at 20 degC], 0 to 100
    seen_pct : float
        What the undistilled spirit reads, corrected for its temperature. [% vol at 20 degC], 0 to 100

    Returns
    -------
    obscuration_pct : float
        [% vol]; below nothing where the readings are off

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    The definition: true less gross strength, Regulation (EC) No 2870/2000, Annex I.
    """
    for strength in (strength_pct, seen_pct):
        check_range("strength", float(strength), 0, 100, "pct_vol", "check_figure")
    return strength_pct - seen_pct


def obscuration_of_extract(strength_pct: float, extract_g_l: float) -> float:
    """Return how much strength a dry extract hides.

    Parameters
    ----------
    strength_pct : float
        True strength. [% vol at 20 degC], 0 to 100
    extract_g_l : float
        Total dry extract. [g/L], 0 to 600

    Returns
    -------
    obscuration_pct : float
        [% vol]

    Raises
    ------
    OutOfDomain
        Outside these ranges, and where it makes the spirit heavier than water: no strength is seen then.

    Notes
    -----
    A gram of extract in a litre adds 0.385 kg/m3, as sucrose in water does: NBS Circular 440 as brix_from_gravity has
    it, 0.386 at 5 and 0.381 at 30 Bx. At 50 % vol that hides 0.20 % vol a gram, at 40 % vol 0.24; 27 CFR 30.32(b) has
    0.2 from 40 to 50.

    Source
    ------
    As in the notes; densities OIML R 22 (1975).
    """
    check_range("extract", float(extract_g_l), 0, 600, "g_L", "check_figure")
    density = density_from_strength(strength_pct, 20.0) + EXTRACT_KG_M3_PER_G_L * extract_g_l
    return strength_pct - float(strength_from_density_meter(density, 20.0))


def obscuration_least(strength_pct: float, extract_g_l: float) -> float:
    """Return the least that a dry extract may hide.

    Parameters
    ----------
    strength_pct : float
        True strength. [% vol at 20 degC], 0 to 100
    extract_g_l : float
        Total dry extract. [g/L], 0 to 600

    Returns
    -------
    obscuration_pct : float
        [% vol]

    Raises
    ------
    OutOfDomain
        As obscuration_of_extract.

    Source
    ------
    obscuration_of_extract less a fifth of it, for other sugars, wood and acids, and 0.3 % vol for the two strengths:
    the house's own rule, no source.
    """
    return obscuration_of_extract(strength_pct, extract_g_l) * (1.0 - ALLOWED_SHARE) - ALLOWED_PCT


def obscuration_most(strength_pct: float, extract_g_l: float) -> float:
    """Return the most that a dry extract may hide.

    Parameters
    ----------
    strength_pct : float
        True strength. [% vol at 20 degC], 0 to 100
    extract_g_l : float
        Total dry extract. [g/L], 0 to 600

    Returns
    -------
    obscuration_pct : float
        [% vol]

    Raises
    ------
    OutOfDomain
        As obscuration_of_extract.

    Source
    ------
    As obscuration_least, the other way.
    """
    return obscuration_of_extract(strength_pct, extract_g_l) * (1.0 + ALLOWED_SHARE) + ALLOWED_PCT


def volume_of_dense(net_kg: float, density_kg_m3: float, temp_c: float, strength_pct: float) -> float:
    """Return the volume at 20 degC of a net weight of spirit whose density was read, whatever is dissolved in it.

    Parameters
    ----------
    net_kg : float
        What the scale showed, less the tare. [kg in air], 0 to 1e9
    density_kg_m3 : float
        True density of the spirit as it is. [kg/m3 at temp_c], 600 to 1400
    temp_c : float
        Temperature of the density. [degC], -20 to 40
    strength_pct : float
        True strength. [% vol at 20 degC], 0 to 100

    Returns
    -------
    volume_20_l : float
        [L at 20 degC]; it is taken to grow with warmth as a mixture of its strength

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    The definition of density; air by OIML R 22, table XII (scale_share).
    """
    check_range("net_weight", float(net_kg), 0, 1e9, "kg", "check_weights")
    check_range("density", float(density_kg_m3), 600, 1400, "kg_m3", "check_figure")
    litres = net_kg / (density_kg_m3 * float(scale_share(density_kg_m3))) * 1000.0
    return float(volume_at_20(litres, strength_pct, temp_c))
