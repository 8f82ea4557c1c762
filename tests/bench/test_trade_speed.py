"""How long one strength correction takes: the phone's JavaScript, the book one at a time, the book in arrays."""

import time
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest

from tests.bench.table import Measured
from tests.trade.test_browser_agreement import page  # noqa: F401
from webapp.trade.alcoholometry import litres_from_mass, true_strength_from_glass
from webapp.trade.density import density_from_strength
from webapp.trade.proof import strength_from_proof
from webapp.trade.table1 import true_proof

pytestmark = [pytest.mark.bench, pytest.mark.browser]
MANY = 100_000

IN_PAGE = """async () => {
  const t = await import("/static/trade/index.js");
  await t.initTrade(async (name) => (await fetch(`/data/${name}`)).json());
  await t.loadTable1();
  const value = (low, span, i) => low + span * ((i * 7919) % 10007) / 10007;
  const sums = {
    true_strength_from_glass: (i) => t.trueStrengthFromGlass(value(30, 60, i), value(0, 30, i + 17)),
    density_from_strength: (i) => t.densityFromStrength(value(0, 100, i), value(0, 30, i + 17)),
    litres_from_mass: (i) => t.litresFromMass(200, value(0, 100, i)),
    true_proof: (i) => t.trueProof(value(80, 100, i), value(40, 59, i + 17)),
    strength_from_proof: (i) => t.strengthFromProof(value(0, 200, i)),
  };
  const found = {};
  for (const [name, sum] of Object.entries(sums)) {
    const began = performance.now();
    for (let i = 0; i < 20; i++) sum(i);
    const first = (performance.now() - began) * 1000 / 20;
    let total = 0, best = Infinity;
    for (let round = 0; round < 5; round++) {
      const start = performance.now();
      for (let i = 0; i < 100000; i++) total += sum(i);
      best = Math.min(best, (performance.now() - start) * 1000 / 100000);
    }
    if (!(total > 0)) throw new Error(`${name}: ${total}`);
    found[name] = [first, best];
  }
  return found;
}"""


def best_of(run: Callable[[], Any], count: int) -> float:
    """Microseconds for one of count, best of three."""
    best = float("inf")
    for _ in range(3):
        began = time.perf_counter()
        run()
        best = min(best, time.perf_counter() - began)
    return best * 1e6 / count


def test_table_of_microseconds(page: Any, measured: Measured) -> None:  # noqa: F811
    phone = page.evaluate(IN_PAGE)
    dice = np.random.default_rng(1)
    strength, temp = dice.uniform(30, 90, MANY), dice.uniform(0, 30, MANY)
    proofs, temp_f = dice.uniform(80, 180, MANY).round(1), dice.uniform(40, 99, MANY).round(1)
    calls: dict[str, tuple[Callable[..., Any], tuple[Any, ...]]] = {
        "true_strength_from_glass": (true_strength_from_glass, (strength, temp)),
        "density_from_strength": (density_from_strength, (strength, temp)),
        "litres_from_mass": (litres_from_mass, (temp, strength)),
        "true_proof": (true_proof, (proofs, temp_f)),
        "strength_from_proof": (strength_from_proof, (proofs,)),
    }
    print(f"\n{'microseconds for one':<28}{'phone, first':>14}{'phone':>8}{'book, one':>11}{'book, array':>13}")
    for name, (run, columns) in calls.items():
        rows = list(zip(*(column[:2000].tolist() for column in columns), strict=True))
        one = best_of(lambda run=run, rows=rows: [run(*row) for row in rows], len(rows))  # type: ignore[misc]
        many = best_of(lambda run=run, columns=columns: run(*columns), MANY)  # type: ignore[misc]
        first, settled = phone[name]
        print(f"{name:<28}{first:>14.2f}{settled:>8.2f}{one:>11.1f}{many:>13.2f}")
        if name == "true_strength_from_glass":
            assert measured.add("strength correction", "phone's JavaScript", settled, "us", at_most=5).holds
            measured.add("strength correction", "book, in arrays", many, "us")
        assert run(*rows[0]) == run(*columns)[0]
