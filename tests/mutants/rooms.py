"""The rooms whose tests are tried by mutants, and which test files answer for which module."""

from __future__ import annotations

from pathlib import Path
from typing import NamedTuple

TOP = Path(__file__).resolve().parents[2]


class Room(NamedTuple):
    """A part of the program: its modules, and the test files that answer for each, in the order they are asked."""

    name: str
    tests_of: dict[str, tuple[str, ...]]

    def list_sources(self) -> list[Path]:
        """Return the room's modules, in order of their names."""
        return [TOP / module for module in sorted(self.tests_of)]

    def list_tests(self, source: Path) -> tuple[str, ...]:
        """Return the test files that answer for one module."""
        return self.tests_of[source.relative_to(TOP).as_posix()]


_RECORD = "tests/trade/test_phone_record.py::test_the_book_answers_as_the_phone_did"


# A book made by an earlier version, with the histories of all tests of the checks told into it: what it asks in which
# words, what its stock is, and that it folds anew to the same.
_FROZEN = "tests/frozen/test_frozen_books.py"

# Whatever the fold is asked by the tests of hand-ins, corrections and answers, all of which read what it made.
_FOLDED = (
    _FROZEN,
    *(f"tests/book/test_{name}.py" for name in ("hand_in", "amend_and_answer", "corrections", "posting")),
)


def _of_checks(names: str) -> tuple[str, ...]:
    """Return a check's own tests first, then those of the other checks: a history brings up more than one."""
    own = [f"tests/book/checks/test_{name}.py" for name in names.split()]
    others = sorted(path.relative_to(TOP).as_posix() for path in (TOP / "tests/book/checks").glob("test_*.py"))
    return (*own, *(one for one in others if one not in own and "never_fails" not in one))


# What else is told of the checks: limits, their page, the messages, goods and answers in a whole book.
_CHECKED = (
    "tests/book/test_limits.py",
    "tests/book/test_checks_page.py",
    "tests/words/test_catalogue.py",
    _FROZEN,
    "tests/book/test_goods.py",
    "tests/book/test_amend_and_answer.py",
)


def _trade(**tests_of: str) -> dict[str, tuple[str, ...]]:
    """Return the modules of the trade with their test files; "phone_..." is what the phone answered."""
    return {
        f"webapp/trade/{module}.py": tuple(
            f"{_RECORD}[{name}.json]" if name.startswith("phone_") else f"tests/{name}.py" for name in names.split()
        )
        for module, names in tests_of.items()
    }


ROOMS = {
    room.name: room
    for room in (
        Room(
            "trade",
            _trade(
                analysis="trade/test_analysis",
                alcoholometry="phone_sums trade/test_alcoholometry",
                batch="trade/test_refusals trade/test_batch phone_still",
                bottling="phone_sums trade/test_bottling_sums",
                caskloss="trade/test_refusals phone_cellar trade/test_maturing",
                column="trade/test_column phone_still",
                cutdue="phone_still trade/test_cutdue",
                datafiles="trade/test_data_files",
                density="phone_sums trade/test_density",
                dipping="phone_sums trade/test_dipping",
                error_limits="trade/test_error_limits",
                errors="trade/test_refusals trade/test_units phone_sums",
                fermentfit="phone_cellar trade/test_ferment",
                ferment="trade/test_refusals phone_cellar phone_sums trade/test_ferment",
                gauging="phone_sums trade/test_gauging",
                marks="labels/test_marks",
                matrices="trade/test_matrices phone_still",
                maturing="trade/test_refusals trade/test_maturing",
                numeric="phone_sums trade/test_numeric trade/test_units trade/test_density trade/test_alcoholometry",
                obscured="phone_sums trade/test_obscured",
                placenames="trade/test_placenames",
                proof="phone_sums trade/test_gauging",
                ranking="trade/test_sensory",
                reducing="phone_sums trade/test_reducing",
                runfit="phone_still trade/test_cutdue",
                runtrack="trade/test_runtrack phone_still",
                scales="phone_sums trade/test_scales",
                sensory="trade/test_sensory",
                still="phone_sums trade/test_still",
                stilllearn="trade/test_stilllearn trade/test_cutdue",
                stillprior="trade/test_stilllearn phone_still trade/test_cutdue",
                sugar="phone_sums trade/test_sugar",
                sums="trade/test_sums trade/test_phone_record",
                table1="phone_sums trade/test_gauging",
                uncertainty="trade/test_uncertainty",
                units="phone_sums trade/test_units",
                vle="trade/test_refusals phone_still trade/test_vle",
            ),
        ),
        Room(
            "fold",
            {
                f"webapp/book/fold/{module}.py": (*(f"tests/book/{name}.py" for name in own.split()), *_FOLDED)
                for module, own in {
                    "differences": "fold/test_differences test_rules",
                    "evaluate": "fold/test_evaluate",
                    "families": "fold/test_families",
                    "fold": "test_parts test_rules",
                    "heading": "fold/test_differences",
                    "judgings": "fold/test_differences test_rules",
                    "month_sums": "test_month_sums test_periods",
                    "queries": "fold/test_queries test_lists",
                    "reader_tables": "fold/test_reader_tables test_goods test_rules",
                    "registry_rows": "fold/test_registry_rows test_registry",
                    "replay": "test_unjudged test_rules",
                    "row_reader": "test_lists",
                    "rules": "test_rules",
                    "states": "fold/test_versions test_parts",
                    "supposing": "test_supposing",
                    "unjudged": "test_unjudged test_rules",
                }.items()
            },
        ),
        Room(
            "intake",
            {
                "webapp/book/intake.py": (
                    "tests/book/test_intake_edges.py",
                    "tests/book/test_hand_in.py",
                    "tests/access/test_attacks_hand_in.py",
                    "tests/words/test_catalogue.py",
                    _FROZEN,
                )
            },
        ),
        Room(
            "checks",
            {
                f"webapp/book/checks/{module}.py": (*_of_checks(names), *_CHECKED)
                for module, names in {
                    "__init__": "time moves",
                    "alike": "alike",
                    "blend": "blend",
                    "bottling": "bottling",
                    "cask": "cask alike",
                    "cask_fill": "cask_fill cask",
                    "cask_loss": "cask",
                    "charged": "charged",
                    "clock": "time",
                    "ferment": "ferment",
                    "ferment_jump": "beside",
                    "forgotten": "forgotten",
                    "fraction": "beside",
                    "goods": "goods",
                    "habit": "habit beside",
                    "hand": "hand",
                    "harvest": "harvest",
                    "instrument": "instrument",
                    "instruments": "moves cask blend run_balance",
                    "laboratory": "laboratory",
                    "likely": "charged moves",
                    "moves": "moves",
                    "neat": "neat",
                    "opening": "opening",
                    "place": "place moves cask",
                    "planned": "planned",
                    "product": "product",
                    "product_limits": "product",
                    "row": "row",
                    "run": "run",
                    "run_balance": "run_balance",
                    "run_flow": "run",
                    "short": "short",
                    "source": "beside",
                    "strength": "run cask bottling",
                    "twice": "time",
                    "tasting": "tasting",
                    "vat": "vat",
                    "vessel": "vessel moves run",
                    "words": "time run",
                }.items()
            },
        ),
        Room("own_limits", {"webapp/book/fold/own_limits.py": ("tests/desk/test_own_limits.py",)}),
        Room(
            "meant",
            {
                f"webapp/kinds/{module}.py": (
                    "tests/kinds/test_meant.py",
                    *(f"tests/book/checks/test_{name}.py" for name in ("jumps", "beside", "cask", "moves", "alike")),
                    _FROZEN,
                )
                for module in ("expected", "meant", "slips")
            },
        ),
        Room(
            "goods",
            {
                "webapp/book/goods/bottlings.py": ("tests/book/test_bottlings.py",),
                "webapp/book/goods/goods.py": ("tests/book/test_bottlings.py", "tests/book/test_goods.py"),
                "webapp/kinds/effects/bottle.py": ("tests/kinds/test_bottled_goods.py",),
                "webapp/kinds/effects/goods.py": (
                    "tests/kinds/test_bottled_goods.py", "tests/book/checks/test_goods.py",
                ),
            },
        ),
        Room("tries", {"webapp/access/tries.py": ("tests/access/test_tries.py",)}),
    )
}
