"""What every message must be, whoever asks: with a sentence, with all its parameters, each figure in a known unit."""

from __future__ import annotations

import json
from pathlib import Path

from tests.words.catalogues import messages, params_of
from webapp.kinds.message import Figure, Message, Range, Several, message_from_json
from webapp.trade import units
from webapp.words.declared import rule_words

KNOWN = messages("en")
VECTORS = Path(__file__).parents[1] / "vectors" / "messages.json"


def check_said(said: Message) -> None:
    """Hold that a message has its sentence, with every parameter that it uses, and that each unit is a known one."""
    if rule_words(said.id) is None:
        assert said.id in KNOWN, said
        assert params_of(said.id, KNOWN) <= {name for name, _ in said.params}, said
    for name, param in said.params:
        for one in param.items if isinstance(param, Several) else (param,):
            if isinstance(one, Figure | Range):
                assert not one.unit or units.symbol(one.unit) is not None, one
                assert bool(one.unit) in WITH_UNIT.get((said.id, name), {False, True}), (said.id, name, one)
            if isinstance(one, Message) and one.id in KNOWN:
                check_said(one)


def _with_unit() -> dict[tuple[str, str], set[bool]]:
    """Return of each figure in the vectors of messages whether it has its unit."""
    found: dict[tuple[str, str], set[bool]] = {}
    waiting = [message_from_json(vector["message"]) for vector in json.loads(VECTORS.read_text("utf-8"))["messages"]]
    while waiting:
        said = waiting.pop()
        for name, param in said.params:
            if isinstance(param, Figure | Range):
                found.setdefault((said.id, name), set()).add(bool(param.unit))
            waiting += [param] if isinstance(param, Message) else []
    return found


WITH_UNIT = _with_unit()
