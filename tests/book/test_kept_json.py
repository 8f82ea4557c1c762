"""What the book has worked out, as it keeps it: read again as it was. Held to the JSON of Python itself."""

from __future__ import annotations

import json
import random
from typing import Any

import pytest

from webapp.book.record.kept_json import from_text, to_text


def anything(chance: random.Random, depth: int = 0) -> Any:
    """Return some JSON-able value: texts of many scripts, large and small figures, lists and mappings in each other."""
    made: list[Any] = [
        None, True, chance.randrange(-(2**63), 2**64), chance.uniform(-1, 1) * 10.0 ** chance.randrange(-300, 300), 0.1,
        -0.0, "".join(chr(chance.choice((7, 34, 92, 0xE4, 0x2028, 0x1F378, 0x7F))) for _ in range(5)),
    ]
    if depth < 3:
        made += [[anything(chance, depth + 1) for _ in range(3)]] * 3
        made += [{f"{n}ß": anything(chance, depth + 1) for n in range(3)}] * 3
    return chance.choice(made)


def test_it_is_read_as_it_was_and_as_python_reads_and_writes_it() -> None:
    chance = random.Random(8)
    for _ in range(2000):
        value = anything(chance)
        text = to_text(value)
        assert repr(from_text(text)) == repr(json.loads(text)) == repr(value)
        assert repr(from_text(json.dumps(value))) == repr(value)


@pytest.mark.parametrize("value", [2**70, {"a": [-(2**65), 0.5]}, {3: "a key that is no text"}, [("a", 1.5), (2,)]])
def test_what_the_quick_way_does_not_know_is_kept_too(value: Any) -> None:
    assert from_text(to_text(value)) == json.loads(json.dumps(value))


def test_what_an_older_program_wrote_is_read() -> None:
    assert from_text('{"a": Infinity, "b": 1e400}') == {"a": float("inf"), "b": float("inf")}
    with pytest.raises(ValueError, match="char 0"):
        from_text("no JSON")
