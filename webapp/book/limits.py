"""Every limit of every check, gathered from the files that declare them, by what it is about.

A limit is declared at the head of the file whose check uses it (before/limits.py). It has to be named here too: a page
shows what stands here, and a test holds that nothing is left out.
"""

from __future__ import annotations

from webapp.book.before.limits import Limit
from webapp.book.checks import (
    blend,
    bottling,
    cask,
    cask_fill,
    cask_loss,
    clock,
    ferment,
    goods,
    harvest,
    moves,
    neat,
    run,
    run_balance,
    run_flow,
    short,
    strength,
    twice,
    vessel,
)
from webapp.book.periods import season
from webapp.book.vats import solve

# Every limit of a check, by what it is about, in the order of the pages that show them.
BY_SUBJECT: dict[str, tuple[Limit, ...]] = {
    "Time and people": (*clock.LIMITS, *twice.LIMITS, *neat.LIMITS),
    "Ferments": (*ferment.LIMITS, *harvest.LIMITS),
    "The still": (*strength.LIMITS, *run.LIMITS, *vessel.LIMITS),
    "Balance of a run": (*run_balance.LIMITS, *run_flow.LIMITS),
    "Moves, tanks and blending": (*moves.LIMITS, *short.LIMITS, *blend.LIMITS, *solve.LIMITS),
    "Casks": (*cask.LIMITS, *cask_loss.LIMITS, *cask_fill.LIMITS),
    "Bottles and goods": (*bottling.LIMITS, *goods.LIMITS),
    "A season": season.LIMITS,
}
ALL: dict[str, Limit] = {one.name: one for group in BY_SUBJECT.values() for one in group}
