"""Every public function of the trade says units, ranges and source, so that an auditor can read it."""

import inspect
import re
from pathlib import Path
from types import FunctionType

import pytest

import webapp.trade

# The pieces under the sums carry no quantity, marks have no unit, and the last are steps inside a forecast.
LEFT_OUT = {"numeric", "errors", "marks", "placenames", "matrices", "column", "runtrack", "runfit", "stillprior",
            "fermentfit"}
FOLDER = Path(webapp.trade.__file__).parent
MODULES = sorted(path.stem for path in FOLDER.glob("*.py") if path.stem not in {"__init__", *LEFT_OUT})
# Helpers shared between two modules of the room: checked by those who call them.
SHARED = {
    "check_liquid", "coefficients_at", "mass_fraction_at", "volume_share_at", "table1_tenths", "exponential",
    "logarithm", "foresee", "make_ready", "check_gauges", "log_kept", "check_gravity", "scale_share",
}
RANGE = re.compile(r"\d\S* (?:degC )?to|\bany\b|\babove\b|\bfrom\b|\beither\b|at most|rising|finite|range")


def public_functions() -> list[FunctionType]:
    found = []
    for name in MODULES:
        module = __import__(f"webapp.trade.{name}", fromlist=["_"])
        found += [
            member
            for key, member in inspect.getmembers(module)
            if inspect.isroutine(inspect.unwrap(member))
            and getattr(member, "__module__", "") == module.__name__
            and not key.startswith("_")
            and key not in SHARED
        ]
    return found


def sections(docstring: str) -> dict[str, str]:
    """The text below each underlined head."""
    parts = re.split(r"^(\w+)\n-{3,}\n", docstring, flags=re.MULTILINE)
    return dict(zip(parts[1::2], parts[2::2], strict=True))


def parameters(text: str) -> dict[str, str]:
    """Name to description, of a Parameters or Returns section."""
    parts = re.split(r"^(\w+) : .*\n", text, flags=re.MULTILINE)
    return dict(zip(parts[1::2], parts[2::2], strict=True))


FUNCTIONS = public_functions()


def test_the_functions_are_found() -> None:
    assert len(FUNCTIONS) > 45


@pytest.mark.parametrize("function", FUNCTIONS, ids=lambda f: f"{f.__module__.rsplit('.', 1)[-1]}.{f.__name__}")
def test_docstring_tells_units_ranges_and_source(function: FunctionType) -> None:
    docstring = inspect.getdoc(function)
    assert docstring, "no docstring"
    found = sections(docstring)
    assert len(found.get("Source", "").strip()) > 10, "no source"
    assert "Returns" in found, "does not say what it returns"
    wanted = list(inspect.signature(function).parameters)
    described = parameters(found.get("Parameters", ""))
    assert list(described) == wanted, "parameters and docstring differ"
    for name, text in described.items():
        assert re.search(r"\[[^\]]+\]", text), f"{name}: no unit in brackets"
        assert RANGE.search(text), f"{name}: no range"
    if function.__module__ != "webapp.trade.units":  # texts and codes come back there
        numbers = [text for text in parameters(found["Returns"]).values() if "Its name" not in text]
        assert all("[" in text or "JSON" in text for text in numbers), "the answer has no unit"
