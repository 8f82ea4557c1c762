"""Shells: the floor's pages without a user, a token or any data. A phone keeps them and fills them in itself."""

from __future__ import annotations

from flask import current_app, render_template

import webapp.kinds
from webapp.kinds.as_form import form_class
from webapp.kinds.spec import Kind
from webapp.shipping.modules import with_preloads
from webapp.words.catalogue import ENGLISH
from webapp.words.kindwords import form_words, kind_in
from webapp.words.language import reading

PAGES = ("today", "scan", "vessel", "run", "job", "slate", "more", "who", "enrol", "away")
# Which shell answers which address: (pattern of the path, shell). `$1` is the first group. Read by the worker.
PATTERNS = (
    (r"^/(?:today/?)?$", "/shell/today"),
    (r"^/scan/?$", "/shell/scan"),
    (r"^/[mM]/[^/]+/?$", "/shell/vessel"),
    (r"^/[mM]/[^/]+/log/([a-z0-9_]+)/?$", "/shell/log/$1"),
    (r"^/[mM]/[^/]+/run/?$", "/shell/run"),
    (r"^/log/([a-z0-9_]+)/?$", "/shell/log/$1"),
    (r"^/job/[a-z]+/?$", "/shell/job"),
    (r"^/slate/?$", "/shell/slate"),
    (r"^/more/?$", "/shell/more"),
    (r"^/who/?$", "/shell/who"),
    (r"^/(?:enrol/[^/]+|start)/?$", "/shell/enrol"),
)


# What a template looks at to leave out tokens and data.
_EMPTY = {"shell": True}


def floor_kinds() -> list[Kind]:
    """Return the kinds that are logged on the floor, in the registry's order."""
    return [kind for kind in webapp.kinds.ALL if kind.floor]


def shell_urls() -> list[str]:
    """Return the addresses of all shells."""
    return [f"/shell/{page}" for page in PAGES] + [f"/shell/log/{kind.name}" for kind in floor_kinds()]


def shell(url: str, language: str = ENGLISH) -> bytes | None:
    """Return the bytes of a shell in a language, or None where there is none. Rendered once: it keeps its hash."""
    made: dict[tuple[str, str], bytes] = current_app.extensions.setdefault("shells", {})
    if (url, language) not in made:
        if url not in shell_urls():
            return None
        with reading(language):
            made[url, language] = _render(url, language).encode()
    return made[url, language]


def _render(url: str, language: str) -> str:
    page = url.removeprefix("/shell/")
    if not page.startswith("log/"):
        return with_preloads(render_template(f"floor/{page}.html", **_EMPTY), page)
    declared = webapp.kinds.get(page.removeprefix("log/"))
    assert declared is not None
    kind = kind_in(declared, language)
    # Without a token: a token belongs to one session and one day, a shell to every phone of this version.
    form: object = form_class(kind, form_words())(formdata=None, meta={"csrf": False})
    return with_preloads(render_template("floor/log.html", **_EMPTY, kind=kind, form=form), "log")
