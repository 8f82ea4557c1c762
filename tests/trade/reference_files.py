"""Read the published values beside this file."""

import csv
import json
from pathlib import Path
from typing import Any

FOLDER = Path(__file__).parent / "reference"


def read_csv(name: str) -> list[dict[str, str]]:
    with (FOLDER / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def read_json(name: str) -> Any:
    return json.loads((FOLDER / name).read_text(encoding="utf-8"))
