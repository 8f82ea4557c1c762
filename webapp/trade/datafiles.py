"""The published coefficients and tables in ``trade/data``; the phone reads the same files."""

import json
from functools import cache
from pathlib import Path
from typing import Any

DATA_FOLDER = Path(__file__).parent / "data"


@cache
def load_data(name: str) -> Any:
    """Return the parsed data file of that name, read once.

    Parameters
    ----------
    name : str
        File name without its ending. [text], any name listed in data/manifest.json

    Returns
    -------
    content : dict
        What the JSON file holds. Treat it as read-only.

    Source
    ------
    Each file names its own; data/manifest.json lists them with SHA-256.
    """
    return json.loads((DATA_FOLDER / f"{name}.json").read_text(encoding="utf-8"))
