"""The catalogue has a message for all that is asked, none besides, and uses every parameter that is given."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import pytest
from fluent.syntax import ast as ftl

import webapp.kinds
from tests.words.catalogues import (
    asked_for,
    messages,
    nodes,
    params_of,
    parts_of,
    refused_by_sums,
    texts_in_program,
)
from webapp.kinds.message import Figure, Message, Several, from_json, message_from_json, to_json
from webapp.trade.datafiles import load_data
from webapp.words import catalogue, sentence
from webapp.words.catalogue import ENGLISH, phone_parts
from webapp.words.declared import rule_words
from webapp.words.houseunits import US, text_in
from webapp.words.values import functions_of

# The words of the screens are looked at in test_screens.py.
KNOWN = {id_: one for id_, one in messages(ENGLISH).items() if not id_.startswith("floor-")}
VECTORS = json.loads(Path("tests/vectors/messages.json").read_text("utf-8"))["messages"]
IN_US = json.loads(Path("tests/vectors/messages_us.json").read_text("utf-8"))["messages"]
# Asked for by an id that is put together of a table's keys or another check's code.
PUT_TOGETHER = re.compile(r"(sort|span|law|fault)-.+|(run|strip)_balance-gain")
# Of the codes that the sums refuse a figure with.
OF_SUMS = re.compile(r"(reason|measured|measure|advice|number)-.+")
METRIC_WORDS = re.compile(r"% vol|°C|\bL\b|\bkg\b")
OF_LAW = re.compile(r"proof(?: or \w+)?, [\d.]+ % vol")  # a limit of the law, in both worlds
# Of these a part is what somebody typed, in the unit it was typed in.
TYPED_METRIC = {
    "soakage", "soakage-light", "two_people", "unusual", "impossible", "danger", "too_neat", "wash_strength",
    "slip-meant", "slip-unit", "slip-glass", "ferment_heat", "ferment_temp_sense", "ferment_temp_sense-cold",
    "distillate_warm", "cask_grew-gross", "glass_scale", "vapour_strength", "tare_off",
}
# These stand elsewhere in the sums, and come to the check of the range as a parameter.
HANDED_ON = {"measured-brix", "measured-plato", "measured-proof", "measured-hydrometer_correction",
             "measured-thermometer_correction"}


def test_every_message_that_the_program_asks_for_is_in_the_catalogue() -> None:
    asked = list(asked_for())
    assert len(asked) > 150
    missing = [(where, id_.pattern) for where, id_, _ in asked if not any(id_.fullmatch(name) for name in KNOWN)]
    assert [one for one in missing if "rule" not in one[1]] == []


def test_every_message_is_asked_for_by_the_program_or_by_another_message() -> None:
    inner = {part for name in KNOWN for part in parts_of(name, KNOWN)}
    texts = texts_in_program()
    by_code = [name for name in KNOWN if PUT_TOGETHER.fullmatch(name) or OF_SUMS.fullmatch(name)]
    assert [name for name in KNOWN if name not in inner | texts and name not in by_code] == []


def test_every_code_of_a_refused_figure_has_its_message_and_every_such_message_its_code() -> None:
    used = {f"{sort}-{code}" for sort, code in refused_by_sums() if code and code not in load_data("units")}
    assert len(used) > 100
    assert sorted(used - KNOWN.keys()) == []
    texts = texts_in_program("trade")
    assert [name for name in HANDED_ON if name.partition("-")[2] not in texts] == []
    made = used | HANDED_ON | {"reason-outside", "reason-outside_in_words"}
    assert [name for name in KNOWN if OF_SUMS.fullmatch(name) and name not in made] == []


def test_each_message_gets_the_parameters_it_uses_and_no_other() -> None:
    wrong = []
    for where, id_, given in asked_for():
        for name in (name for name in KNOWN if given is not None and id_.fullmatch(name)):
            if params_of(name, KNOWN) != given:
                wrong.append((where, name, sorted(params_of(name, KNOWN) ^ (given or set()))))
    assert wrong == []


def test_a_message_calls_only_functions_that_both_sides_have() -> None:
    called = {one.id.name for message in KNOWN.values() for one in nodes(message, ftl.FunctionReference)}
    known = functions_of(US)
    assert called <= known.keys()
    values = Path("static/words/values.js").read_text("utf-8")
    assert [name for name in known if f"{name}:" not in values] == []


def test_no_form_waits_for_the_part_that_comes_after_the_first_install() -> None:
    first, later = phone_parts(ENGLISH)
    assert "\nunusual =" in first and "\ncask_grew =" in later
    asked = "".join(Path(f"static/kinds/{name}.js").read_text("utf-8") for name in ("read", "slips", "reasons"))
    ids = [name for name in KNOWN if f'"{name}"' in asked]
    assert len(ids) >= 12
    assert [name for name in ids if f"\n{name} =" not in f"\n{first}"] == []
    inner = {part for name in ids for part in parts_of(name, KNOWN)}
    inner |= {name for name in KNOWN if OF_SUMS.fullmatch(name)}
    assert [name for name in inner if f"\n{name} =" not in f"\n{first}"] == []


def test_each_rule_of_a_kind_has_an_id_of_its_own_and_names_what_the_kind_has() -> None:
    for kind in webapp.kinds.ALL:
        codes = [rule.code for rule in kind.rules]
        assert len(set(codes)) == len(codes)
        known = {field.name for field in kind.fields} | {figure.name for figure in kind.figures}
        for rule in kind.rules:
            assert rule_words(f"rule-{kind.name}-{rule.code}") == rule.words
            assert set(re.findall(r"\{(\w+)\}", rule.words)) <= known


@pytest.mark.parametrize("vector", VECTORS, ids=lambda vector: vector["message"]["id"])
def test_a_message_makes_the_sentence_it_made_before(vector: dict[str, Any]) -> None:
    said = message_from_json(vector["message"])
    assert sentence(said) == vector["words"]
    assert to_json(said) == vector["message"]


def test_a_us_house_reads_what_was_worked_out_in_its_own_units_and_what_was_typed_as_it_was() -> None:
    made = [sentence(message_from_json(one["message"]), house=US) for one in IN_US]
    assert made == [one["words"] for one in IN_US]
    metric = {one["message"]["id"] for one in IN_US if METRIC_WORDS.search(OF_LAW.sub("", one["words"]))}
    assert metric <= TYPED_METRIC


def test_no_figure_that_was_turned_stands_beside_a_metric_word() -> None:
    wrong = []
    for vector in VECTORS:
        words = sentence(message_from_json(vector["message"]), house=US)
        figures = [one for one in _inside(message_from_json(vector["message"])) if isinstance(one, Figure)]
        for one in figures:
            texts = {text_in(one.text, one.unit, US, is_apart=is_apart) for is_apart in (True, False)} - {one.text}
            wrong += [(vector["message"]["id"], words) for text in texts
                      if re.search(rf"(?<![\d.]){re.escape(text)} (%|L\b|points)", words)]
    assert wrong == []


def test_no_message_says_a_metric_unit_to_a_us_house_by_itself() -> None:
    house = catalogue.settled(catalogue.catalogue_text(ENGLISH), US).partition("# In what")
    house = tuple(re.sub(r"(?m)^floor-.*\n(?: .*\n|\n)*", "", part) for part in house)
    lines = [line for part in house for line in part.splitlines() if METRIC_WORDS.search(line)]
    assert [line for line in lines if not line.startswith(("law-note-", "measure-")) and "[us] " not in line] == []


def test_the_vectors_hold_every_message_and_every_sort_of_parameter() -> None:
    reached, sorts = set(), set()
    for vector in VECTORS:
        for one in _inside(message_from_json(vector["message"])):
            sorts.add(type(one).__name__)
            if isinstance(one, Message) and one.id in KNOWN:
                assert {name for name, _ in one.params} == params_of(one.id, KNOWN), one.id
                reached |= {one.id, *parts_of(one.id, KNOWN)}
    assert sorted(KNOWN.keys() - reached - {"no_such_message"} - _by_renderer()) == []
    assert sorts == {"Message", "str", "int", "Figure", "Range", "Unit", "Time", "Day", "Month", "Span", "Declared",
                     "Several"}


def _by_renderer() -> set[str]:
    """Return the messages that a parameter is said by; the vectors' sentences hold them."""
    return {name for name in KNOWN if name.startswith(("range-", "span-", "time-"))}


def _inside(param: Any) -> list[Any]:
    inner: list[Any] = []
    if isinstance(param, Message):
        inner = [value for _, value in param.params]
    elif isinstance(param, Several):
        inner = list(param.items)
    return [param, *(deeper for one in inner for deeper in _inside(one))]


def test_a_message_of_a_newer_program_is_said_to_be_unknown() -> None:
    assert sentence(message_from_json({"id": "not_yet_thought_of", "params": {}})) == (
        "This program has no words for “not_yet_thought_of”. Update it, or ask at the desk."
    )


@pytest.mark.parametrize("bad", [None, 1.5, [], {"id": 3}, {"figures": "1"}])
def test_what_is_no_parameter_is_refused(bad: Any) -> None:
    with pytest.raises(ValueError, match=r"no (parameter|message)"):
        from_json(bad)
