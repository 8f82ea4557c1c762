"""`python -m tests.mutants [room ...]`: put small faults into the program, and see which of them the tests notice."""

from __future__ import annotations

import argparse
import os
import random
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator, Sequence
from math import sqrt
from pathlib import Path

from tests.mutants.equivalents import read_equivalents
from tests.mutants.mutations import Mutant, list_mutants
from tests.mutants.rooms import ROOMS, TOP, Room
from tests.mutants.trial import Outcome, Usual, add_up, load_libraries, measure, start, wait

SAMPLE = 400
_TWO_SIDED_95 = 1.959964  # of a normal distribution


def main(arguments: Sequence[str]) -> int:
    """Try the rooms asked for, print each survivor and a table."""
    asked = _read_arguments(arguments)
    os.chdir(TOP)
    kept = tempfile.TemporaryDirectory(prefix="mutants-")
    os.environ["HYPOTHESIS_STORAGE_DIRECTORY"] = kept.name
    # Compiled tests are kept for the next trial, beside nobody's own.
    sys.pycache_prefix, sys.dont_write_bytecode = kept.name, False
    rows = []
    with kept:
        for name in asked.room or list(ROOMS):
            rows.append(_try_room(ROOMS[name], asked))
    print("\n| room | mutants | tried | the same | killed | share | 95 % interval |\n|---|---|---|---|---|---|---|")
    print("\n".join(rows))
    return 0


def _read_arguments(arguments: Sequence[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m tests.mutants", description=__doc__)
    parser.add_argument("room", nargs="*", choices=[[], *ROOMS], help=f"of {', '.join(ROOMS)}; all if none is named")
    parser.add_argument("--sample", type=int, default=SAMPLE, help=f"how many of a room's mutants ({SAMPLE})")
    parser.add_argument("--all", action="store_true", help="every mutant")
    parser.add_argument("--seed", type=int, default=1, help="which sample (1)")
    parser.add_argument("--module", action="append", help="only modules whose path holds this")
    parser.add_argument("--minutes", type=float, default=0.0, help="stop a room after so long; it is a sample still")
    parser.add_argument("--processes", type=int, default=2, help="trials at once (2)")
    return parser.parse_args(arguments)


def _try_room(room: Room, asked: argparse.Namespace) -> str:
    mutants = [
        mutant
        for source in room.list_sources()
        if not asked.module or any(part in str(source) for part in asked.module)
        for mutant in list_mutants(source)
    ]
    chosen = _choose(mutants, len(mutants) if asked.all else asked.sample, asked.seed)
    print(f"\n{room.name}: {len(mutants)} mutants, {len(chosen)} tried", flush=True)
    same = {(one.path, one.was, one.becomes) for one in read_equivalents()}
    left = [mutant for mutant in chosen if (mutant.path, *mutant.change[1:]) not in same]
    tests = {mutant.source: room.list_tests(mutant.source) for mutant in left}
    load_libraries(sorted({test for files in tests.values() for test in files}))
    of_file = {file: measure(file) for file in sorted({file for files in tests.values() for file in files})}
    usual = {files: add_up(of_file[file] for file in files) for files in tests.values()}
    print(f"  the tests alone: {sum(one.cpu_s for one in of_file.values()):.0f} s", flush=True)
    tally, by_module = Counter[str](), {}
    began = time.monotonic()
    for tried, (mutant, outcome) in enumerate(_run(left, tests, usual, asked), 1):
        tally[outcome.word] += 1
        by_module.setdefault(mutant.path, Counter())[outcome.word] += 1
        if outcome.word == "survived":
            print(f"survived  {mutant}", flush=True)
        if tried % 50 == 0:
            print(f"  {tried} tried, {tried - tally['survived']} killed, {time.monotonic() - began:.0f} s", flush=True)
    print(f"{room.name}: {time.monotonic() - began:.0f} s; too long counts as killed: {tally['too long']}")
    for path, counts in sorted(by_module.items()):
        total = counts.total()
        print(f"  {path}: {total - counts['survived']} of {total}")
    return _row(room.name, len(mutants), tally.total(), len(chosen) - len(left), tally)


def _choose(mutants: list[Mutant], most: int, seed: int) -> list[Mutant]:
    """Return a sample without those that are no programs, in its own order: the same for the same seed and sources.

    Whoever stops half way has tried a sample too.
    """
    order = list(range(len(mutants)))
    random.Random(seed).shuffle(order)
    chosen: list[int] = []
    for place in order:
        if len(chosen) >= most:
            break
        if mutants[place].is_program():
            chosen.append(place)
    return [mutants[place] for place in chosen]


def _run(
    mutants: list[Mutant], tests: dict[Path, tuple[str, ...]], usual: dict[tuple[str, ...], Usual],
    asked: argparse.Namespace,
) -> Iterator[tuple[Mutant, Outcome]]:
    running: list[tuple[Mutant, int, float]] = []
    ends = time.monotonic() + asked.minutes * 60 if asked.minutes else float("inf")
    for mutant in mutants:
        if time.monotonic() > ends:
            break
        files = tests[mutant.source]
        running.append((mutant, start(mutant.source, mutant.code, files, usual[files]), usual[files].cpu_s))
        if len(running) >= asked.processes:
            first, process, cpu_s = running.pop(0)
            yield first, wait(process, cpu_s)
    for mutant, process, cpu_s in running:
        yield mutant, wait(process, cpu_s)


def _row(name: str, mutants: int, tried: int, same: int, tally: Counter[str]) -> str:
    total, survived = tally.total(), tally["survived"]
    low, high = _interval(total - survived, total)
    share = (total - survived) / total if total else 1.0
    return f"| {name} | {mutants} | {tried} | {same} | {total - survived} | {share:.1%} | {low:.1%} to {high:.1%} |"


def _interval(hits: int, total: int) -> tuple[float, float]:
    """Return Wilson's interval of a share (E. B. Wilson, J. Am. Stat. Assoc. 22, 1927, from memory)."""
    if not total:
        return 0.0, 1.0
    share, z2 = hits / total, _TWO_SIDED_95**2
    middle = (share + z2 / (2 * total)) / (1 + z2 / total)
    half = _TWO_SIDED_95 * sqrt(share * (1 - share) / total + z2 / (4 * total * total)) / (1 + z2 / total)
    return middle - half, middle + half


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
