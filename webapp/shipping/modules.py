"""Which modules a page needs: named in its head, a browser fetches them all at once and not one after the other."""

from __future__ import annotations

import posixpath
import re
from functools import lru_cache

from webapp.places import STATIC_DIR

ENTRY = "floor.js"
_STATIC_IMPORT = re.compile(r"""^\s*(?:import|export)\b(?!\s*\()[^;"']*?["'](\.{1,2}/[^"']+\.js)["']""", re.MULTILINE)


def modules_of(page: str) -> list[str]:
    """Return the modules that a page loads at its start, below static; what it imports later on is not among them."""
    found: dict[str, None] = {}
    todo = [ENTRY, f"pages/{page}.js"]
    while todo:
        name = todo.pop(0)
        if name in found or not (STATIC_DIR / name).is_file():
            continue
        found[name] = None
        todo += imports_of(name)
    return list(found)


def with_preloads(html: str, page: str) -> str:
    """Return the page with its modules named in the head."""
    lines = "".join(f'  <link rel="modulepreload" href="/static/{name}">\n' for name in modules_of(page))
    return html.replace("</head>", f"{lines}</head>", 1)


def imports_of(name: str) -> list[str]:
    """Return the modules that a module begins with, both by their names below static."""
    return _imports(name, (STATIC_DIR / name).stat().st_mtime_ns)


@lru_cache(maxsize=1024)  # every page asks for nearly all of them
def _imports(name: str, _mtime_ns: int) -> list[str]:
    targets = _STATIC_IMPORT.findall((STATIC_DIR / name).read_text(encoding="utf-8"))
    return [posixpath.normpath(posixpath.join(posixpath.dirname(name), target)) for target in targets]
