"""Where the files that ship with the program lie, in an installed wheel and in a checkout."""

import os
import sys
from pathlib import Path

_PACKAGE_DIR = Path(__file__).resolve().parent


def _find_folder(name: str) -> Path:
    """Return the shipped folder: inside the package (wheel), else beside it (checkout)."""
    inside = _PACKAGE_DIR / name
    return inside if inside.is_dir() else _PACKAGE_DIR.parent / name


STATIC_DIR = _find_folder("static")
DEMO_DIR = _find_folder("demo_data")


def get_user_data_dir() -> Path:
    """Return where this person's programs keep their data on this system, in a folder of our own."""
    home = Path.home()
    if sys.platform == "win32":
        base = Path(os.environ.get("LOCALAPPDATA") or home / "AppData" / "Local")
    elif sys.platform == "darwin":
        base = home / "Library" / "Application Support"
    else:
        base = Path(os.environ.get("XDG_DATA_HOME") or home / ".local" / "share")
    return base / "cellarslate"
