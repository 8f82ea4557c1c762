"""What JSON can say, for what is written and read without looking inside."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TypeAlias

Json: TypeAlias = "bool | int | float | str | Sequence[Json] | Mapping[str, Json] | None"
