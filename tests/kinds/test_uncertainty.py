"""Figures of entries with their uncertainty: by the prescribed class, by the registry, and alike on the phone."""

from __future__ import annotations

from math import isclose, sqrt
from typing import Any

import pytest

import webapp.kinds
from tests.kinds.cases import entries
from tests.kinds.test_read_agreement import page  # noqa: F401 a fixture
from webapp.kinds.entry import Accuracy
from webapp.kinds.read import Read, read_entry
from webapp.kinds.uncertainty import CARRIED, uncertain_figures
from webapp.trade.sums import SUMS
from webapp.trade.uncertainty import Uncertain

COUNT = 60
RELATIVE = 1e-9
HOUSE: dict[str, Accuracy] = {
    "TH-2": {"unit": "degF", "accuracy": "", "interval": 0.5, "doubtful": True},
    "AH-1": {"unit": "pct_glass", "accuracy": "I", "interval": None, "doubtful": False},
    "SC-9": {"unit": "lb", "accuracy": "IIII", "interval": 2.0, "doubtful": False},
}
FOLLOW_ALL = """async ([cases, house]) => {
  const { loadKinds, kindNamed } = await import("/static/kinds/kinds.js");
  const { readEntry } = await import("/static/kinds/read.js");
  const { uncertainFigures } = await import("/static/kinds/uncertainty.js");
  const { loadLater } = await import("/static/trade/datafiles.js");
  await loadKinds();
  await (await import("/static/words/catalogue.js")).loadLater();
  await Promise.all(["table1", "instruments"].map(loadLater));
  const follow = ([entry, context]) => uncertainFigures(readEntry(kindNamed(entry.kind), entry, context), 1000, house);
  return cases.map(follow);
}"""


def read(kind: str, context: dict[str, Any] | None = None, **values: str) -> Read:
    """An entry, each field as `figure unit` or `figure unit instrument`."""
    typed = {}
    for name, said in values.items():
        raw, unit, *instrument = said.split()
        typed[name] = {"raw": raw, "unit": unit, **({"instrument": instrument[0]} if instrument else {})}
    found = webapp.kinds.get(kind)
    assert found
    return read_entry(found, {"kind": kind, "mark": "C1-J", "values": typed}, context or {})  # type: ignore[typeddict-item]


def cask(**more: str) -> dict[str, Uncertain]:
    given = {"gross": "268.5 kg", "glass": "60.0 pct_glass", "temp": "14.0 degC", **more}
    return uncertain_figures(read("cask_regauge", {"tare_kg": 52.0}, **given), HOUSE)


def test_a_regauge_by_prescribed_classes() -> None:
    """Worked apart from this code: limits 0.15, 0.1 kg, 0.1 %, 0.2 degC give 0.20455 L; air and readings add to it."""
    found = cask()
    read_off = (0.1 / sqrt(12)) * sqrt(2 * 0.68628**2 + 2.73115**2 + 0.94378**2)  # intervals of 0.1 of all four
    assert found["lpa"].standard == pytest.approx(sqrt(0.20455**2 + read_off**2), rel=3e-3)
    assert found["lpa"].value == pytest.approx(148.7545, abs=2e-3)  # the same example, with buoyancy
    assert set(found) == {"true_strength", "glass_true", "net", "volume_20", "lpa"}


def test_named_instruments_share_their_errors_and_their_class_counts() -> None:
    named = cask(glass="60.0 pct_glass AH-1", temp="14.0 degC TH-2", gross="268.5 kg SC-2")
    assert set(named["lpa"].shared) == {"SC-2/gross", "AH-1/glass", "TH-2/temp", "C1-J/tare"}
    plain = cask()
    assert set(plain["lpa"].shared) == {"C1-J/tare"}
    # Class I glass has half the error; the thermometer in doubt, 0.28 degC fine, has 0.2 degC twice over.
    assert abs(named["lpa"].shared["AH-1/glass"]) == pytest.approx(2.73115 * 0.05 / sqrt(3), rel=5e-3)
    assert abs(named["lpa"].shared["TH-2/temp"]) == pytest.approx(0.94378 * 0.4 / sqrt(3), rel=5e-3)


def test_proof_by_table_and_pounds() -> None:
    found = uncertain_figures(
        read("gauge", volume="100 gal", glass="120.0 proof_glass", temp="70 degF", net_weight="800 lb"), {}
    )
    assert 0.05 < found["true_strength"].standard < 0.12  # 0.2 proof / sqrt 3, and 0.2 degC
    assert found["proof_gallons"].standard / found["proof_gallons"].value == pytest.approx(
        found["lpa"].standard / found["lpa"].value, rel=0.05
    )


def test_what_no_instrument_speaks_of_has_none() -> None:
    assert uncertain_figures(read("fruit_intake", gross="1680 kg", tare="60 kg", sugar="12 Bx"), {}).keys() <= {"net"}
    assert uncertain_figures(read("shift_note"), {}) == {}
    assert uncertain_figures(read("gauge", volume="100 L"), {}) == {}


def test_what_is_carried_are_sums() -> None:
    assert set(SUMS) >= CARRIED


@pytest.mark.parametrize("kind", [k for k in webapp.kinds.ALL if any(f.sum in CARRIED for f in k.figures)],
                         ids=lambda kind: kind.name)
def test_phone_and_book_agree(kind: Any, page: Any) -> None:  # noqa: F811 the fixture
    cases = entries(kind, COUNT)
    told = page.evaluate(FOLLOW_ALL, [cases, HOUSE])
    faults = []
    for (entry, context), phone in zip(cases, told, strict=True):
        book = uncertain_figures(read_entry(kind, entry, context), HOUSE, 1000)  # type: ignore[arg-type]
        assert book.keys() == phone.keys(), (entry, context)
        for name, figure in book.items():
            assert figure.shared.keys() == phone[name]["shared"].keys()
            pairs = [(figure.value, phone[name]["value"]), (figure.own, phone[name]["own"])]
            pairs += [(part, phone[name]["shared"][error]) for error, part in figure.shared.items()]
            faults += [(entry, name, pair) for pair in pairs if not isclose(*pair, rel_tol=RELATIVE, abs_tol=1e-9)]
    assert faults == []
