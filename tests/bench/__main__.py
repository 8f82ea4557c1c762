"""`python -m tests.bench`: every measurement in one run, one table, and a JSON file to compare the next run with."""

from __future__ import annotations

import argparse
import os
from pathlib import Path

from tests.__main__ import main as run_tests
from tests.bench.table import AGAINST_VARIABLE, JSON_VARIABLE

SIZES = {"quick": "1000,10000", "usual": "1000,10000,100000", "whole": "1000,10000,100000,1000000"}


def main() -> int:
    """Read the arguments, run the measurements, return pytest's exit code."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench", description=__doc__)
    parser.add_argument(
        "--size", choices=SIZES, default="usual", help="how large the books grow; whole: a million entries"
    )
    parser.add_argument("--json", type=Path, default=Path("bench.json"), help="where the figures go")
    parser.add_argument("--against", type=Path, help="figures of an earlier run, shown beside these")
    parser.add_argument("only", nargs="*", help="files below tests/bench; all where none is named")
    given = parser.parse_args()
    os.environ[JSON_VARIABLE] = str(given.json.resolve())
    if given.against:
        os.environ[AGAINST_VARIABLE] = str(given.against.resolve())
    sizes = SIZES[given.size]
    os.environ.setdefault("BOOK_SIZES", sizes)
    os.environ.setdefault("TRACE_SIZES", sizes)
    folder = Path(__file__).parent
    wanted = [str(folder / name) for name in given.only] or [str(folder)]
    return run_tests(["--bench", "-s", "-q", *wanted])


if __name__ == "__main__":
    raise SystemExit(main())
