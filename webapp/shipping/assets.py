"""What a phone keeps of this version: every file with its hash, and the version that follows from them."""

from __future__ import annotations

import hashlib
import json
import time
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from flask import current_app

from webapp.access import headers
from webapp.kinds.as_data import kinds_data, without_words
from webapp.places import STATIC_DIR
from webapp.shipping import built, joined
from webapp.shipping.built import NOTHING, Texts
from webapp.shipping.shells import PATTERNS, shell, shell_urls
from webapp.trade.datafiles import DATA_FOLDER
from webapp.trade.marks import make_mark
from webapp.words.catalogue import ENGLISH
from webapp.words.desk import say
from webapp.words.language import html_lang, offered, reading
from webapp.words.phone import LATER_KINDS, later_words, starting_words

Asset = tuple[str, str]  # (address, SHA-256 in hex)

VERSION_KEPT_S = 10
WORKER_BODY = "sw-body.js"
FLOOR = "floor"  # the part that every page needs
# The kinds and the tables that every page begins with, in one file: {name of the file: what stands in it}.
START = "start.json"
# The table of US proof, wanted at the first proof, and the instruments: they come with the jobs.
_LATER_DATA = {"table1.json": "jobs", "instruments.json": "jobs"}
# The parts of a language: its words and pages that every start needs; and those of the jobs, and of the questions of
# the book, which come with words of their own until then.
WORDS, LATER_WORDS = "words", "talk"
MANIFEST = "/manifest.webmanifest"
# Their words come later too.
_LATER_SHELLS = frozenset(f"/shell/log/{kind}" for kind in LATER_KINDS)
# The job that works with it carries its figures (static/trade/still/vle_data.js), so the start need not.
_CARRIED_DATA = ("vle.json",)
# Fetched right after the rest, into caches of their own: the reader of labels, wanted at the first scan; the drawer of
# curves, in whose place the table of figures stands until it is there; and the jobs that are more than one form, with
# what looks through the camera.
# [name of the part: how the names below static begin that travel in it], fetched in this order
_JOB_SUMS = ("trade/still/", "trade/bottling.js", "trade/ferment.js", "trade/caskloss.js", "trade/placenames.js",
             "trade/reducing.js", "trade/uncertainty.js", "trade/errorlimits.js",
             "kinds/uncertainty.js", "kinds/meant.js", "kinds/slips.js", "form/offby.js", "form/pinfirst.js",
             "slate/phonekey.js", "slate/file.js", "slate/enclos", "ui/unitlist.js")
# A page that is faster than it shows its bold words in a letter of the phone's own.
_BOLD = ("fonts/atkinson-hyperlegible-latin-700-normal.woff2",)
LATER_PARTS = {
    "curve": ("vendor/uplot/",), "jobs": ("jobs/", "scan/", *_JOB_SUMS, *_BOLD), "scan": ("vendor/zxing-wasm/",),
}
# What the run sheet opens with comes at the start.
_AT_START = ("jobs/run/panels.js", "jobs/run/paper.js", "jobs/run/state.js")
# What puts the parts together: phones that hold what another hand packed fetch it anew.
_MAKERS = ("pack.py", "joined.py", "modules.py")
_SERVED = {".js", ".css", ".svg", ".png", ".woff2", ".wasm", ".json", ".webp"}
# The desk and the doors need the server anyhow; the large icons are fetched by the system when the app is installed.
_LEFT_OUT = ("desk", "doors/", "screens/", "icons/app-", "icons/apple-touch", "vendor/vendor.json", WORKER_BODY)


def data_files() -> dict[str, bytes]:
    """Return the bytes of each file under /data by its name: the kinds, and the tables of the sums."""
    return dict(_data_files())


@lru_cache(maxsize=1)
def _data_files() -> tuple[tuple[str, bytes], ...]:
    tables = [(path.name, path.read_bytes()) for path in sorted(DATA_FOLDER.glob("*.json")) if path.stem != "manifest"]
    kinds = json.dumps(without_words(kinds_data()), ensure_ascii=False, separators=(",", ":")).encode()
    each = {"kinds.json": kinds, **dict(tables)}
    apart = {*_LATER_DATA, *_CARRIED_DATA}
    start = b",".join(b'"%s":%s' % (name.encode(), body) for name, body in each.items() if name not in apart)
    return ((START, b"{%s}" % start), *each.items())


@lru_cache(maxsize=64)
def words_file(name: str) -> bytes | None:
    """Return a file under /words: of a language what every page says (`de`), or what comes later (`de-later`)."""
    language, _, which = name.partition("-")
    if language not in offered() or which not in ("", "later"):
        return None
    made = later_words(language) if which else starting_words(language)
    return json.dumps(made, ensure_ascii=False, separators=(",", ":")).encode()


def sources() -> dict[str, str]:
    """Return the SHA-256 of each script and sheet that a phone keeps, by its name below static."""
    return {name: _hash_of(path) for name, path in _static_files() if path.suffix in (".js", ".css")}


def packed_texts() -> Texts:
    """Return the files that were packed before the program shipped; none of them while developing.

    That is where a source has changed since, and where the app's setting PLAIN_MODULES says so.
    """
    if current_app.config.get("PLAIN_MODULES"):
        return NOTHING
    found = built.texts()
    return found if found.sources == sources() else NOTHING


def assets() -> list[Asset]:
    """Return all that the floor needs without signal, by address."""
    texts = packed_texts().texts
    files = [(name, path) for name, path in _static_files() if not later_name(name)]
    if texts:
        files = [(name, path) for name, path in files if not name.endswith(".css")]
    static = [(f"/static/{name}", _hash_of(path)) for name, path in files]
    # What has no source of its own is served packed.
    static += [(url, _sha256(texts[url].encode())) for url in (joined.ADDRESS, joined.STYLE) if url in texts]
    data = [(f"/data/{START}", _sha256(data_files()[START]))]
    return sorted([*static, *data])


def words_parts(language: str) -> dict[str, list[Asset]]:
    """Return the files of a language that a phone keeps, by part: those of every start, and those that come later."""
    urls = {WORDS: [url for url in shell_urls() if url not in _LATER_SHELLS], LATER_WORDS: sorted(_LATER_SHELLS)}
    files = {WORDS: language, LATER_WORDS: f"{language}-later"}
    return {
        f"{part}-{language}": [
            *((url, _hash_of_shell(url, language)) for url in urls[part]),
            (f"/words/{files[part]}.json", _sha256(words_file(files[part]) or b"")),
            *([(MANIFEST, _sha256(manifest(language)))] if part == WORDS else []),
        ]
        for part in urls
    }


def later_parts() -> dict[str, list[Asset]]:
    """Return the large parts that are fetched after the rest, by the name of their cache."""
    parts: dict[str, list[Asset]] = {name: [] for name in LATER_PARTS}
    for name, cache in _LATER_DATA.items():
        parts[cache].append((f"/data/{name}", _sha256(data_files()[name])))
    for name, path in _static_files():
        if cache := later_name(name):
            parts[cache].append((f"/static/{name}", _hash_of(path)))
    return parts


def language_of(part: str) -> str:
    """Return the language that a part is in; nothing for what has no words."""
    name, _, language = part.partition("-")
    return language if name in (WORDS, LATER_WORDS) else ""


def parts_of_floor() -> dict[str, list[Asset]]:
    """Return all that a phone keeps by the name of the part: what every page needs, then what is fetched after it."""
    words = {name: part for language in offered() for name, part in words_parts(language).items()}
    return {FLOOR: assets(), **later_parts(), **words}


def version() -> str:
    """Return the version that follows from every file; asked often, so it makes no pack."""
    made = [_hash_of(Path(__file__).with_name(name)) for name in _MAKERS]
    made += [packed_texts().digest, json.dumps(headers.fixed_headers())]
    return _sha256(json.dumps([parts_of_floor(), PATTERNS, worker_body(), made]).encode())[:16]


def version_lately() -> str:
    """Return the version as it stood at most ten seconds ago, for answers that every phone asks for."""
    return _version_within(int(time.monotonic() / VERSION_KEPT_S))


@lru_cache(maxsize=1)
def _version_within(_span: int) -> str:
    return version()


def worker_body() -> str:
    """Return the worker's script as it is written, without the constants of a version."""
    return (STATIC_DIR / WORKER_BODY).read_text(encoding="utf-8")


@dataclass(frozen=True)
class Screenshot:
    """A picture of the floor that stores and install prompts show: made from the demo by tests/screens.py."""

    name: str  # of its file in static/screens
    path: str  # of the page
    label: str  # id of the message
    width: int
    height: int  # [px]

    def describe(self) -> dict[str, str]:
        """Return it as the manifest has it."""
        form = "narrow" if self.width < self.height else "wide"
        size = f"{self.width}x{self.height}"
        return {"src": f"/static/screens/{self.name}", "sizes": size, "type": "image/png", "form_factor": form,
                "label": say(self.label)}


SCREENSHOTS = (
    Screenshot("today.png", "/today", "floor-manifest-shot_today", 390, 844),
    Screenshot("run.png", f"/m/{make_mark('S1')}/run", "floor-manifest-shot_run", 390, 844),
    Screenshot("wide.png", f"/m/{make_mark('S1')}/run", "floor-manifest-shot_wide", 1280, 800),
)
# [address, id of the words] held under a long press of the app's icon; each opens without signal
_SHORTCUTS = (
    ("/scan", "floor-manifest-scan"), ("/today", "floor-manifest-due"), ("/job/ferments", "floor-manifest-round"),
    ("/slate", "floor-manifest-slate"),
)


def manifest(language: str = ENGLISH) -> bytes:
    """Return the web app manifest in a language."""
    with reading(language):
        return _manifest()


def _manifest() -> bytes:
    icons = [
        {"src": f"/static/icons/app-{kind}{px}.png", "sizes": f"{px}x{px}", "type": "image/png", "purpose": purpose}
        for px in (192, 512)
        for kind, purpose in (("", "any"), ("maskable-", "maskable"))
    ]
    content = {
        "id": "/", "name": "Cellarslate", "short_name": "Cellarslate", "lang": html_lang(),
        "description": say("floor-manifest-description"), "start_url": "/today", "scope": "/",
        "display": "standalone", "background_color": "#12181b", "theme_color": "#12181b", "icons": icons,
        "screenshots": [shot.describe() for shot in SCREENSHOTS],
        "shortcuts": [{"name": say(words), "url": url, "icons": icons[:1]} for url, words in _SHORTCUTS],
    }
    return json.dumps(content, ensure_ascii=False, indent=1).encode()


def _static_files() -> list[tuple[str, Path]]:
    # By name: systems order paths otherwise, and what is sent is to be the same from every computer.
    found = sorted((path.relative_to(STATIC_DIR).as_posix(), path) for path in STATIC_DIR.rglob("*"))
    return [(name, path) for name, path in found if path.suffix in _SERVED and not name.startswith(_LEFT_OUT)]


def later_name(name: str) -> str:
    """Return the name of the part in which a file below static is fetched after the rest; nothing for the others."""
    if name in _AT_START:
        return ""
    return next((part for part, beginnings in LATER_PARTS.items() if name.startswith(beginnings)), "")


def _hash_of(path: Path) -> str:
    # Keyed by time and size: a changed file gives a new version without a restart.
    stat = path.stat()
    return _hash_file(path, stat.st_mtime_ns, stat.st_size)


@lru_cache(maxsize=2048)
def _hash_file(path: Path, _mtime_ns: int, _size: int) -> str:
    return _sha256(path.read_bytes())


def _hash_of_shell(url: str, language: str) -> str:
    return _sha256(shell(url, language) or b"")


def _sha256(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()
