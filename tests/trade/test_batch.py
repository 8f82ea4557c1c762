"""What is in a pot: its litres and its alcohol, and what is refused."""

import pytest

from tests.trade.still_runs import ETHANOL_KG_L, MOLAR
from webapp.trade import batch
from webapp.trade.density import density_from_strength
from webapp.trade.errors import OutOfDomain


def test_a_charge_keeps_its_litres_and_its_alcohol() -> None:
    pot = batch.charge_pot(100.0, 7.0)
    grams = pot.ethanol_mol * MOLAR[0] + pot.water_mol * MOLAR[1]
    assert grams / 1000 == pytest.approx(100.0 * float(density_from_strength(7.0, 20.0)) / 1000, rel=1e-9)
    assert pot.ethanol_mol * MOLAR[0] / 1000 == pytest.approx(7.0 * ETHANOL_KG_L, rel=1e-4)
    for strength in (0.0, 11.3, 47.7, 96.9):
        assert batch.stream_moles(2.0, strength) == pytest.approx(batch.moles_in(2.0, strength), rel=3e-4)


def test_what_lies_outside_is_refused() -> None:
    for volume_l, lpa in ((0, 0), (10, 11), (10, -1), (2e6, 5), (float("nan"), 1)):
        with pytest.raises(OutOfDomain):
            batch.charge_pot(volume_l, lpa)
