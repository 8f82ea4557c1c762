"""Dips: a table's straight lines, a warm shell, and the wet part of a cask against SciPy's integral by slices."""

import json
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from tests.trade.properties import steady
from webapp.trade.dipping import STEEL_PER_C, dip_limits_cm, volume_of_cask, volume_of_dip
from webapp.trade.errors import OutOfDomain

# A tank of a cone of 20 cm and a cylinder of 10 L a centimetre, as a table of every 10 cm.
TABLE = {"points": [(0, 0), (10, 20), (20, 90), (30, 190), (40, 290)], "of": "dip", "shell_c": 20.0,
         "per_c": STEEL_PER_C, "tilt_cm": 0.0}
CASK = {"bung_cm": 69.0, "head_cm": 56.0, "length_cm": 89.0}


def table(**more: object) -> str:
    return json.dumps({**TABLE, **more})


def cask(*, lies: bool, of: str = "dip") -> str:
    return json.dumps({**CASK, "lies": lies, "of": of})


def test_a_dip_between_two_lines_lies_on_the_straight_line_between_them() -> None:
    assert volume_of_dip(table(), 20, 20) == 90
    assert volume_of_dip(table(), 33.5, 20) == pytest.approx(225)
    assert volume_of_dip(table(), 0, 20) == 0
    assert volume_of_dip(table(), 40, 20) == 290
    ullage = table(of="ullage", points=[(0, 290), (10, 190), (20, 90), (40, 0)])
    assert volume_of_dip(ullage, 5, 20) == pytest.approx(240)


def test_a_warm_shell_holds_more() -> None:
    # Czech decree 141/1997, annex 1: F = 1 + 0.000036 (t - 20) for steel; at 40 degC 1.00072, at -20 degC 0.99856.
    assert volume_of_dip(table(), 30, 40) == pytest.approx(190 * 1.00072, rel=1e-12)
    assert volume_of_dip(table(), 30, -20) == pytest.approx(190 * 0.99856, rel=1e-12)
    assert volume_of_dip(table(shell_c=15.0), 30, 15) == 190


def test_a_tilt_is_added_to_each_dip() -> None:
    assert volume_of_dip(table(tilt_cm=-1.5), 31.5, 20) == pytest.approx(190)
    with pytest.raises(OutOfDomain):
        volume_of_dip(table(tilt_cm=-1.5), 1.0, 20)


def radius(x: float, bung: float, head: float, length: float) -> float:
    return bung / 2 - (bung - head) / 2 * (2 * x / length) ** 2


def lying_by_slices(bung: float, head: float, length: float, depth: float) -> float:
    """Litres by horizontal slices: at each height the width of the cask, which is an integral along its length."""

    def slice_cm2(z: float) -> float:
        end = length / 2 if bung == head else min(
            length / 2, length / 2 * math.sqrt(max((bung / 2 - abs(z)) / ((bung - head) / 2), 0.0))
        )
        wide = quad(lambda x: math.sqrt(max(radius(x, bung, head, length) ** 2 - z * z, 0.0)), 0, end, limit=200)[0]
        return float(4 * wide)

    points = [z for z in (-head / 2, 0.0, head / 2) if -bung / 2 < z < depth - bung / 2]
    return float(quad(slice_cm2, -bung / 2, depth - bung / 2, limit=200, points=points or None)[0]) / 1000


@pytest.mark.parametrize("depth", [0.5, 3.0, 6.5, 20.0, 34.5, 50.0, 62.5, 66.0, 68.9])
def test_a_lying_cask_is_what_scipy_makes_of_horizontal_slices(depth: float) -> None:
    found = volume_of_cask(69.0, 56.0, 89.0, depth, lies=True)
    assert found == pytest.approx(lying_by_slices(69.0, 56.0, 89.0, depth), abs=1e-6)


@steady
@given(st.floats(5, 400), st.floats(0.6, 1.0), st.floats(5, 600), st.floats(0.0, 1.0))
def test_a_standing_cask_is_what_scipy_integrates(bung: float, taper: float, length: float, share: float) -> None:
    head = max(5.0, bung * taper)
    head = min(head, bung)
    depth = length * share
    wanted = quad(lambda x: math.pi * radius(x, bung, head, length) ** 2, -length / 2, depth - length / 2)[0] / 1000
    assert volume_of_cask(bung, head, length, depth, lies=False) == pytest.approx(wanted, rel=1e-9, abs=1e-9)


def test_full_casks_hold_what_the_textbook_says() -> None:
    # A cask of parabolas: pi L (8 D^2 + 4 D d + 3 d^2) / 60. Both ways round, and half of it at half its height.
    full = math.pi * 89 * (8 * 69**2 + 4 * 69 * 56 + 3 * 56**2) / 60 / 1000
    assert volume_of_cask(69, 56, 89, 89, lies=False) == pytest.approx(full, rel=1e-12)
    assert volume_of_cask(69, 56, 89, 69, lies=True) == pytest.approx(full, rel=1e-9)
    assert volume_of_cask(69, 56, 89, 34.5, lies=True) == pytest.approx(full / 2, rel=1e-9)
    assert volume_of_cask(69, 56, 89, 44.5, lies=False) == pytest.approx(full / 2, rel=1e-12)
    # A cylinder is a cask too: a quarter of its height wets 0.195501 of a circle, acos(1/2)/pi - sqrt(3)/4pi.
    share = math.acos(0.5) / math.pi - math.sqrt(3) / (4 * math.pi)
    assert volume_of_cask(60, 60, 100, 15, lies=True) == pytest.approx(share * math.pi * 900 * 100 / 1000, rel=1e-7)


def test_ullage_is_what_is_missing_to_the_height() -> None:
    for lies, tall in ((True, 69.0), (False, 89.0)):
        dip = volume_of_dip(cask(lies=lies), 30, 12)
        assert volume_of_dip(cask(lies=lies, of="ullage"), tall - 30, 12) == pytest.approx(dip, rel=1e-12)


def test_the_limit_of_a_dip_is_worth_its_share_of_the_litres() -> None:
    # 190 L at 30 cm, 10 L a centimetre: 0.3 % is 0.57 L, 0.057 cm.
    assert dip_limits_cm(table(), 30.0, 20) == pytest.approx((0.057, 0.2))
    full = volume_of_cask(69, 56, 89, 69, lies=True)
    limit, surface = dip_limits_cm(cask(lies=True), 34.5, 20)
    slope = volume_of_cask(69, 56, 89, 35.0, lies=True) - volume_of_cask(69, 56, 89, 34.0, lies=True)
    assert (limit * slope, surface) == (pytest.approx(0.03 * full, rel=1e-3), 0.2)
    assert dip_limits_cm(table(), 40.0, 20)[0] == pytest.approx(0.087)
    assert dip_limits_cm(cask(lies=True), 0.0, 20)[0] > 1


@pytest.mark.parametrize(
    ("text", "dip", "temp"),
    [
        (table(), -0.1, 20), (table(), 40.1, 20), (table(), 30, 41), (table(), float("nan"), 20),
        (cask(lies=True), 69.1, 20), (cask(lies=False), 89.1, 20), (cask(lies=True), -1, 20),
    ],
)
def test_what_no_table_has_is_refused(text: str, dip: float, temp: float) -> None:
    with pytest.raises(OutOfDomain):
        volume_of_dip(text, dip, temp)


@pytest.mark.parametrize(
    "cask", [(4, 4, 50, 1), (60, 61, 80, 1), (60, 4, 80, 1), (60, 50, 601, 1), (60, 50, 80, 61), (401, 50, 80, 1)]
)
def test_what_no_cask_is_is_refused(cask: tuple[float, float, float, float]) -> None:
    with pytest.raises(OutOfDomain):
        volume_of_cask(*cask, lies=True)
