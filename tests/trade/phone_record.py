"""What the phone's sums answer, written down: the book is held against it without a browser.

The phone's modules are a second program for the same sums, so their answers are a check from outside the book's. The
record is made in a real browser by `python -m pytest tests/trade/test_phone_answers.py --record`, and the test there
holds it against what the browser answers today.
"""

from __future__ import annotations

import json
import math
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

FOLDER = Path(__file__).parents[1] / "vectors"
# How near the two must be, by share. A fit ends where its cost no longer falls: rounding may stop it a step apart.
RECORDS = {"phone_sums.json": 1e-9, "phone_still.json": 1e-9, "phone_cellar.json": 1e-6}
LISTED = "phone_list_of_sums.json"
Case = list[Any]


def write_record(name: str, asked: Iterable[Case], answers: Iterable[Any]) -> None:
    """Write questions and answers, one pair a line."""
    lines = [json.dumps([case, answer], ensure_ascii=False, separators=(",", ":"))
             for case, answer in zip(asked, answers, strict=True)]
    (FOLDER / name).write_text("[\n" + ",\n".join(lines) + "\n]\n", encoding="utf-8")


def read_record(name: str) -> list[tuple[Case, Any]]:
    """Return questions with the phone's answers."""
    return [(_revive(case), answer) for case, answer in json.loads((FOLDER / name).read_text(encoding="utf-8"))]


def _revive(value: Any) -> Any:
    """Return a question as it was asked: figures that JSON cannot name travel by name."""
    if isinstance(value, dict):
        return float(value["odd"]) if "odd" in value else {key: _revive(one) for key, one in value.items()}
    return [_revive(one) for one in value] if isinstance(value, list) else value


def list_differences(book: Any, phone: Any, rel: float, where: str = "") -> Iterator[str]:
    """Yield where two answers differ by more than a share, or in anything but a figure."""
    if isinstance(book, dict) and isinstance(phone, dict) and set(book) == set(phone):
        for key in book:
            yield from list_differences(book[key], phone[key], rel, f"{where}.{key}")
    elif isinstance(book, list | tuple) and isinstance(phone, list) and len(book) == len(phone):
        for i, (one, other) in enumerate(zip(book, phone, strict=True)):
            yield from list_differences(one, other, rel, f"{where}[{i}]")
    elif isinstance(book, int | float) and isinstance(phone, int | float):
        if not math.isclose(book, phone, rel_tol=rel, abs_tol=min(rel, 1e-9)):
            yield f"{where}: {book} against {phone}"
    elif book != phone:
        yield f"{where}: {book} against {phone}"
