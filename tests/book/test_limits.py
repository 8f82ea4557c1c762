"""A limit is one declaration: its name once, beside its user, gathered, used, and as it was before it stood there."""

import ast
import json
import re
from pathlib import Path

import pytest

import webapp
from webapp.book.before.limits import COMMON_PRACTICE, LIMITS, Limit, declare, held_limit, site_limit
from webapp.book.limits import ALL, BY_SUBJECT

WEBAPP = Path(webapp.__file__).parent
# The table of version 0.1.0, written out by that version.
OF_VERSION_0_1_0 = json.loads((Path(__file__).parents[1] / "vectors" / "limits-0.1.0.json").read_text("utf-8"))


def _texts(tree: ast.AST) -> set[str]:
    """Return the texts that stand in a file outside of the declarations of limits."""
    declared = {
        id(part) for node in ast.walk(tree) if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Limit"
        for part in ast.walk(node)
    }
    return {
        node.value for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in declared
    }


def test_every_declared_limit_is_gathered_once():
    names = [one.name for group in BY_SUBJECT.values() for one in group]
    assert sorted(names) == sorted(LIMITS) and len(set(names)) == len(names)
    assert ALL == LIMITS


def test_a_name_declared_twice_is_refused():
    with pytest.raises(ValueError, match="gravity_rise is declared twice"):
        declare(Limit("gravity_rise", 1.0, "", "Something else"))
    assert LIMITS["gravity_rise"].default == 0.001


def test_every_limit_is_used():
    """A limit that no line asks for by its name is a promise that nothing keeps."""
    used: set[str] = set()
    for path in WEBAPP.rglob("*.py"):
        used |= _texts(ast.parse(path.read_text(encoding="utf-8")))
    assert set(ALL) <= used


def test_every_limit_has_words_and_a_source():
    for one in ALL.values():
        assert one.words, one.name
        told = re.search(r"CFR|Regulation|Act \d|azeotrope|rule of the house", one.source)
        assert one.source == COMMON_PRACTICE or told, one.name


def test_no_default_has_moved_since_version_0_1_0():
    """A moved default asks other questions of every book; whoever moves or adds one says so here."""
    added = {"opening_off_pct": 1.0, "opening_years": 60, "fall_min": 20, "fall_pct": 12.0, "held_off_pct": 2.0}
    added |= {"stands_days": 30, "bottling_days": 3, "run_open_h": 24, "near_end_days": 1.5, "phone_silent_h": 36,
              "disk_free_gb": 2}
    # A figure against what stands beside it.
    added |= {"jump_mash_c": 6.0, "jump_mash_h": 36, "sugar_over": 0.006, "sugar_under": 0.014, "sugar_h": 48,
              "close_gravity": 0.004, "close_volume_pct": 20, "source_off_pct": 1.0, "source_wash_pct": 0.5,
              "fraction_off_pct": 3.0, "remnant_pct": 3.0, "remnant_least_l": 1.0, "remnant_off_pct": 2.0,
              "ungauged_pct": 3.0, "water_off_pct": 0.5, "moved_twice_h": 24, "late_ask_h": 36,
              "received_note_h": 72, "received_ask_h": 744}
    # A cask against casks like it, and an instrument against its own check.
    added |= {"alike_spread": 3.5, "alike_casks": 4, "fill_look_pct": 90, "fill_low_pct": 50, "opened_look_pct": 75,
              "opened_low_pct": 40, "level_spread_pct": 3, "drift_look_pct": 0.8, "drift_spread_pct": 0.3,
              "check_left": 0.3, "check_left_pct": 1.0}
    # An entry against how its vessel was written of before, its run, the load before, its laboratory.
    added |= {"glass_habit_pct": 0.3, "vapour_spread_c": 0.25, "flow_spread_pct": 6, "distilled_off_pct": 1.0,
              "lab_off_pct": 0.5, "tare_share_pct": 30, "tare_times": 3, "sugar_apart": 4}
    # What is left out of a row, forgotten, or otherwise than planned.
    added |= {"mash_spread_c": 0.8, "halt_fall": 0.006, "halt_share_pct": 20,
              "again_fall": 0.004, "cask_weak_pct": 37.5, "cask_weak_us_pct": 40.0, "row_lines": 2, "row_times": 2.5,
              "row_more_pct": 1.0, "row_noise_pct": 0.5, "row_vapour_c": 0.45, "still_low_pct": 20,
              "wash_unlike_pct": 12, "rest_pct": 3, "plan_cut_pct": 3.0, "plan_draw_pct": 10, "plan_vat_pct": 0.3,
              "fraction_about_pct": 8.0, "stillage_most_pct": 2.0,
              "plan_days": 90, "yeast_days": 4, "recask_left_l": 0.5}
    assert {name: one.default for name, one in ALL.items()} == OF_VERSION_0_1_0 | added


def test_where_a_limit_comes_from():
    narrower = {"vessel": {"S2-K": {"dip_pct": 4}}, "sort": {"tank": {"dip_pct": 3}}}
    site = {"checks": {"dip_pct": 2}, "check_limits": narrower}
    scopes = (("vessel", "S2-K"), ("sort", "tank"))
    assert held_limit("dip_pct", site, scopes) == (4.0, "vessel", "S2-K")
    assert held_limit("dip_pct", site, scopes[1:]) == (3.0, "sort", "tank")
    assert held_limit("dip_pct", site, (("sort", "cask"),)) == (2.0, "site", "")
    assert held_limit("blend_pct", site, scopes) == (0.3, "", "")
    assert site_limit("dip_pct", site) == 2.0
    with pytest.raises(KeyError):
        site_limit("no_such", site)
