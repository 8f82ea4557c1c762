"""What a sum says to a figure that it cannot use: which figure, its unit, the range, and what to do next.

The ranges are those of each function's own docstring, with their sources there; both ends of a range are allowed. The
refusals that the phone gives too are held in tests/vectors/phone_sums.json.
"""

from collections.abc import Callable
from typing import Any

import pytest

from tests.trade.refusal_words import words_of
from webapp.trade import batch, caskloss, ferment, maturing, vle
from webapp.trade.errors import OutOfDomain

GAUGE = {"years": 0.0, "lpa": 100.0, "strength_pct": 60.0}
USUAL = {"middle": 3.0, "spread": 1.0}
SCALE = "Check the figure and which scale the instrument has."
AS_FRACTION = "Give it as a fraction of one, not in percent."

# The call, what it names, the whole sentence, and the figure with its range as a form shows them.
REFUSED: list[tuple[Callable[[], Any], str, str, tuple[Any, Any, Any]]] = [
    (lambda: batch.charge_pot(0.0005, 0.0001), "charge",
     "Charge 0.0005 L is outside 0.001 to 1000000 L. Check what was charged.", (0.0005, 0.001, 1e6)),
    (lambda: batch.charge_pot(1_000_001.0, 5.0), "charge",
     "Charge 1000001 L is outside 0.001 to 1000000 L. Check what was charged.", (1_000_001.0, 0.001, 1e6)),
    (lambda: batch.charge_pot(100.0, 101.0), "pure_alcohol_charged",
     "Pure alcohol charged 101 L is outside 0 to 100 L. Check the strength of the charge.", (101.0, 1e-6, 100.0)),
    (lambda: batch.charge_pot(100.0, 0.0), "pure_alcohol_charged",
     "Pure alcohol charged 0 L is outside 0 to 100 L. Check the strength of the charge.", (0.0, 1e-6, 100.0)),
    (lambda: batch.moles_in(1.0, 101.0), "strength",
     "Strength 101 % vol is outside 0 to 100 % vol. Check the figure and its unit.", (101.0, 0, 100.0)),
    (lambda: ferment.forecast_end([0.0, 1.0], [1.06], 1.0), "readings", "Give one gravity for each time.", (2, 1, 1)),
    (lambda: ferment.forecast_end([0.0], [0.97], 1.0), "gravity",
     f"Gravity 0.97 SG is outside 0.98 to 1.17874 SG. {SCALE}", (0.97, 0.98, 1.17874)),
    (lambda: ferment.forecast_end([0.0], [1.05], 1.2), "gravity",
     f"Gravity 1.2 SG is outside 0.98 to 1.17874 SG. {SCALE}", (1.2, 0.98, 1.17874)),
    (lambda: ferment.forecast_end([1.0, 0.5], [1.05, 1.04], 1.0), "time",
     "Time 0.5 days is outside 1 to 400 days. Put the readings in order of time.", (0.5, 1.0, 400.0)),
    (lambda: ferment.forecast_end([-2.0], [1.05], 1.0), "time",
     "Time -2 days is outside -1 to 400 days. Put the readings in order of time.", (-2.0, -1.0, 400.0)),
    (lambda: ferment.forecast_end([401.0], [1.05], 1.0), "time",
     "Time 401 days is outside -1 to 400 days. Put the readings in order of time.", (401.0, -1.0, 400.0)),
    (lambda: ferment.strength_by_two_instruments(41.0, 1.02), "refractometer",
     "Refractometer 41 °Bx is outside 0 to 40 °Bx. Check the figure and the instrument.", (41.0, 0, 40)),
    (lambda: ferment.strength_by_two_instruments(12.0, 0.99), "gravity",
     "Gravity 0.99 SG is outside 1 to 1.17874 SG. Below water there is no Baumé. "
     "Take the strength from the fall of the gravity.", (0.99, 1.0, 1.17874)),
    (lambda: ferment.strength_by_two_instruments(40.0, 1.0), "alcohol_by_both",
     "Alcohol by both 64.046 % vol is outside -25 to 25 % vol. The two do not go together. Read both again.",
     (pytest.approx(64.046), -25, 25)),
    (lambda: ferment.strength_by_attenuation_1880(1.2, 1.0), "original_gravity",
     f"Original gravity 1.2 SG is outside 0.98 to 1.17874 SG. {SCALE}", (1.2, 0.98, 1.17874)),
    (lambda: ferment.strength_by_attenuation_1880(1.06, 1.07), "gravity",
     "Gravity 1.07 SG is outside 0.98 to 1.06 SG. Gravity cannot have risen. Check both.", (1.07, 0.98, 1.06)),
    (lambda: caskloss.loss_rates([GAUGE, GAUGE | {"years": -1.0}]), "time",
     "Time -1 years is outside 0 to 3000 years. Put the gauges in order of time.", (-1.0, 0.0, 3000.0)),
    (lambda: caskloss.loss_rates([GAUGE | {"years": 3001.0}]), "time",
     "Time 3001 years is outside -3000 to 3000 years. Put the gauges in order of time.", (3001.0, -3000.0, 3000.0)),
    (lambda: caskloss.loss_rates([GAUGE | {"lpa": 0.0}]), "pure_alcohol",
     "Pure alcohol 0 L is outside 0 to 10000000 L. An empty cask loses nothing.", (0.0, 1e-6, 1e7)),
    (lambda: caskloss.loss_rates([GAUGE | {"strength_pct": 0.0}]), "strength",
     "Strength 0 % vol is outside 0.1 to 100 % vol. Check the glass.", (0.0, 0.1, 100)),
    (lambda: caskloss.loss_rates([GAUGE | {"strength_pct": 100.5}]), "strength",
     "Strength 100.5 % vol is outside 0.1 to 100 % vol. Check the glass.", (100.5, 0.1, 100)),
    (lambda: caskloss.usual_of([], 0.0), "size",
     "Size 0 L is outside 0.001 to 1000000 L. Put the cask's size into the book.", (0.0, 0.001, 1e6)),
    (lambda: caskloss.usual_of([[1e7]], 200.0), "loss",
     "Loss 10000000 % a year is outside -1000000 to 1000000 % a year. Check the gauges.", (1e7, -1e6, 1e6)),
    (lambda: caskloss.judge_loss(1.0, 1.0, 0.0, 5.0, 60.0, 60.0), "time",
     "Time 0 years is outside 0 to 3000 years. Two gauges at one time make no rate.", (0.0, 1e-6, 3000.0)),
    (lambda: maturing.forecast_cask([], USUAL, 1.0), "gauges", "Gauge the cask first.", (0.0, 1, 1000)),
    (lambda: maturing.forecast_cask([GAUGE], USUAL, 51.0), "time_ahead",
     "Time ahead 51 years is outside 0 to 50 years. Nobody knows a cask so far ahead.", (51.0, 0, 50)),
    (lambda: maturing.forecast_cask([GAUGE], USUAL, 1.0, drift_year=6.0), "usual_drift",
     "Usual drift 6 % vol a year is outside -5 to 5 % vol a year. Check the strengths.", (6.0, -5, 5)),
    (lambda: vle.vapour_mole_fraction(-0.1), "mole_fraction",
     f"Mole fraction -0.1 mol/mol is outside 0 to 1 mol/mol. {AS_FRACTION}", (-0.1, 0, 1)),
]

# Both ends of each range, and the smallest that is not nothing.
ALLOWED: list[Callable[[], Any]] = [
    lambda: batch.charge_pot(0.001, 1e-6),
    lambda: batch.charge_pot(1e6, 1e6),
    lambda: ferment.forecast_end([-1.0, 400.0], [1.17874, 0.98], 0.98),
    lambda: ferment.forecast_end([0.0, 0.0], [0.98, 0.98], 1.17874),
    lambda: ferment.strength_by_two_instruments(0.0, 1.0),
    lambda: ferment.strength_by_two_instruments(16.0, 1.0),
    lambda: ferment.strength_by_attenuation_1880(1.17874, 0.98),
    lambda: ferment.strength_by_attenuation_1880(0.98, 0.98),
    lambda: caskloss.loss_rates([GAUGE | {"years": -3000.0}, GAUGE | {"years": 3000.0}]),
    lambda: caskloss.loss_rates([GAUGE | {"lpa": 1e-6}, GAUGE | {"lpa": 1e7}]),
    lambda: caskloss.loss_rates([GAUGE | {"strength_pct": 0.1}, GAUGE | {"strength_pct": 100.0}]),
    lambda: caskloss.usual_of([[-1e6, 1e6]], 0.001),
    lambda: caskloss.usual_of([], 1e6),
    lambda: caskloss.judge_loss(1.0, 1.0, 1e-6, 5.0, 60.0, 60.0),
    lambda: caskloss.judge_loss(1.0, 1.0, 3000.0, 5.0, 60.0, 60.0),
    lambda: maturing.forecast_cask([GAUGE], USUAL, 0.0, drift_year=-5.0),
    lambda: maturing.forecast_cask([GAUGE], USUAL, 50.0, drift_year=5.0),
]


@pytest.mark.parametrize(("call", "what", "sentence", "figures"), REFUSED, ids=[f"{n}" for n in range(len(REFUSED))])
def test_a_refusal_says_which_figure_and_what_to_do(
    call: Callable[[], Any], what: str, sentence: str, figures: tuple[Any, Any, Any]
) -> None:
    with pytest.raises(OutOfDomain) as refused:
        call()
    assert refused.value.what == what
    assert words_of(refused.value) == sentence
    assert (refused.value.value, refused.value.low, refused.value.high) == figures


@pytest.mark.parametrize("call", ALLOWED, ids=[f"{n}" for n in range(len(ALLOWED))])
def test_both_ends_of_a_range_are_allowed(call: Callable[[], Any]) -> None:
    assert call() is not None
