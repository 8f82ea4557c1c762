"""Every limit of every check, gathered from the files that declare them, by what it is about.

A limit is declared at the head of the file whose check uses it (before/limits.py). It has to be named here too: a page
shows what stands here, and a test holds that nothing is left out.
"""

from __future__ import annotations

from types import ModuleType

from webapp.book.before.limits import Limit
from webapp.book.checks import (
    alike,
    blend,
    bottling,
    cask,
    cask_fill,
    cask_loss,
    charged,
    clock,
    ferment,
    ferment_jump,
    forgotten,
    fraction,
    goods,
    habit,
    hand,
    harvest,
    instrument,
    laboratory,
    moves,
    neat,
    opening,
    place,
    planned,
    product,
    row,
    run,
    run_balance,
    run_flow,
    short,
    source,
    strength,
    tasting,
    twice,
    vat,
    vessel,
)
from webapp.book.periods import season
from webapp.book.today import due
from webapp.book.vats import solve

# The files of the checks, and of the others that have limits, by what they are about: the order of every page.
SUBJECTS: dict[str, tuple[ModuleType, ...]] = {
    "Time and people": (clock, hand, twice, neat, habit),
    "Instruments": (instrument,),
    "Ferments": (ferment, ferment_jump, harvest),
    "The still": (strength, run, row, charged),
    "Balance of a run": (run_balance, run_flow, fraction),
    "Vessels, moves and blending": (vessel, opening, moves, source, short, blend, vat, planned, forgotten, solve),
    "Casks": (cask, cask_loss, cask_fill, alike),
    "Counts and places": (place,),
    "Bottles and goods": (product, bottling, goods),
    "Laboratory results": (laboratory,),
    "Tastings": (tasting,),
    "A season": (season,),
    "What is due today": (due,),
}
BY_SUBJECT: dict[str, tuple[Limit, ...]] = {
    subject: tuple(one for file in files for one in getattr(file, "LIMITS", ())) for subject, files in SUBJECTS.items()
}
ALL: dict[str, Limit] = {one.name: one for group in BY_SUBJECT.values() for one in group}
