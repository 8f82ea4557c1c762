"""One script and one stylesheet for a start: what is written in a hundred small files is asked for at once.

A phone pays for each file it opens, far more than for what stands in it. In the pack the floor's modules therefore lie
together, and each module's own address leads there. Where no worker stands between, a browser loads the modules as they
are written.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from webapp.places import STATIC_DIR
from webapp.shipping.modules import ENTRY

ADDRESS = "/joined/floor.js"
STYLE = "/static/style/app.css"
_PRELOAD = re.compile(r'\n *<link rel="modulepreload" href="([^"]+)">')
_HEAD_LINES = (
    f'  <link rel="modulepreload" href="{ADDRESS}">\n'
    '  <link rel="preload" href="/data/start.json" as="fetch" crossorigin>\n'
    '  <link rel="preload" href="/words/%s.json" as="fetch" crossorigin>\n'
)
# Icons drawn from another file cost a document each; icons.js looks for this one.
SPRITE = "/static/icons/sprite.svg"
_SILENT = '<svg data-part="sprite" hidden aria-hidden="true"'


def with_joined(shell: str, modules: Iterable[str], language: str) -> str:
    """Return a shell that names the joined script of these modules, data and words in its head, its icons in itself."""
    inside = {f"/static/{name}" for name in modules} - {f"/static/{ENTRY}"}
    shell = _PRELOAD.sub(lambda found: "" if found[1] in inside else found[0], shell)
    shell = shell.replace("</head>", _HEAD_LINES % language + "</head>", 1).replace(f"{SPRITE}#", "#icon-")
    sprite = (STATIC_DIR / SPRITE.removeprefix("/static/")).read_text("utf-8")
    sprite = sprite.replace("<svg", _SILENT, 1).replace(' id="', ' id="icon-')
    return shell.replace("<body>", f"<body>\n{sprite}", 1)
