"""The draws of a planned vat as they stand in an entry: marks and kilograms, legible as they are."""

from __future__ import annotations

import re

from webapp.book.record.upcast import stored_mark

_DRAW = re.compile(r"^\s*([A-Za-z0-9-]{3,16})\s+(\d{1,7}(?:[.,]\d{1,3})?)\s*(?:kg)?\s*$")


def read_draws(text: str) -> tuple[dict[str, float], list[str]]:
    """Return kilograms by mark, and the parts that nobody can read."""
    found: dict[str, float] = {}
    odd = []
    for part in re.split(r"[;\n]", text):
        if not part.strip():
            continue
        match = _DRAW.match(part)
        mark = stored_mark(match[1]) if match else None
        if match and mark:
            found[mark] = found.get(mark, 0.0) + float(match[2].replace(",", "."))
        else:
            odd.append(part.strip()[:40])
    return found, odd
