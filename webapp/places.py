"""Where the files that ship with the program lie, in an installed wheel and in a checkout."""

from pathlib import Path

_PACKAGE_DIR = Path(__file__).resolve().parent


def _find_folder(name: str) -> Path:
    """Return the shipped folder: inside the package (wheel), else beside it (checkout)."""
    inside = _PACKAGE_DIR / name
    return inside if inside.is_dir() else _PACKAGE_DIR.parent / name


STATIC_DIR = _find_folder("static")
DEMO_DIR = _find_folder("demo_data")
