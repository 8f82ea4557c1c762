"""Which modules a page needs: named in its head, a browser fetches them all at once and not one after the other."""

from __future__ import annotations

import re
from pathlib import Path

from webapp.places import STATIC_DIR

ENTRY = "floor.js"
_STATIC_IMPORT = re.compile(r"""^\s*(?:import|export)\b(?!\s*\()[^;"']*?["'](\.{1,2}/[^"']+\.js)["']""", re.MULTILINE)


def modules_of(page: str) -> list[str]:
    """Return the modules that a page loads at its start, below static; what it imports later on is not among them."""
    found: dict[str, None] = {}
    todo = [ENTRY, f"pages/{page}.js"]
    while todo:
        name = todo.pop(0)
        path = STATIC_DIR / name
        if name in found or not path.is_file():
            continue
        found[name] = None
        todo += _imports(path)
    return list(found)


def with_preloads(html: str, page: str) -> str:
    """Return the page with its modules named in the head."""
    lines = "".join(f'  <link rel="modulepreload" href="/static/{name}">\n' for name in modules_of(page))
    return html.replace("</head>", f"{lines}</head>", 1)


def _imports(path: Path) -> list[str]:
    targets = _STATIC_IMPORT.findall(path.read_text(encoding="utf-8"))
    return [(path.parent / target).resolve().relative_to(STATIC_DIR.resolve()).as_posix() for target in targets]
