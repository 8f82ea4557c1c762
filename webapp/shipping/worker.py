"""What the browser asks for itself: the worker, the manifest, the shells, and the data files of the sums."""

from __future__ import annotations

import hashlib
import json

from flask import Response, abort, current_app, request

from webapp.shipping import assets, bp, joined, pack, shells
from webapp.words.language import language, offered

# Asked again each time, but a phone that has it already gets no body.
REVALIDATE = "no-cache"


@bp.get("/sw.js")
def worker() -> Response:
    """The worker's script, this version's list of files before it."""
    version, script = worker_script()
    return _kept(script.encode(), "text/javascript", version)


def worker_script() -> tuple[str, str]:
    """Return (version, the worker's whole script). A change in any file changes both."""
    now = assets.version()
    parts = [_describe_part(name, part, now) for name, part in pack.packs().items()]
    constants = {"VERSION": now, "PARTS": parts, "SHELLS": shells.PATTERNS, "LANGUAGES": list(offered())}
    head = "".join(f"const {name} = {json.dumps(value)};\n" for name, value in constants.items())
    return now, head + assets.worker_body()


def _describe_part(name: str, part: pack.Pack, version: str) -> dict[str, object]:
    """Return the worker's description of a part. A large part outlives the versions in which nothing of it changed."""
    if name == assets.FLOOR:
        return part.describe_for_worker(f"{name}-{version}")
    lasting = hashlib.sha256(json.dumps([part.digest, part.beside]).encode()).hexdigest()[:16]
    spoken = assets.language_of(name)
    return part.describe_for_worker(f"{name}-{lasting}") | ({"language": spoken} if spoken else {})


@bp.get("/pack/<digest>")
def whole(digest: str) -> Response:
    """Send all text files of one part of this version in one answer, as well packed as the browser can take."""
    name = next((name for name, one in pack.packs().items() if one.digest == digest), None)
    if name is None:
        abort(404)
    answers = pack.encodings(name)
    encoding = request.accept_encodings.best_match([one for one in answers if one], default="") or ""
    response = Response(answers[encoding], mimetype="application/json")
    if encoding:
        response.headers["Content-Encoding"] = encoding
    response.headers["Cache-Control"] = REVALIDATE
    response.vary.add("Accept-Encoding")
    return response


@bp.get(joined.ADDRESS)
def script() -> Response:
    """The floor's modules in one; a phone has it from the pack, and asks here only for what it has lost."""
    packed = assets.packed_texts().texts
    if joined.ADDRESS not in packed:
        abort(404)
    return _kept(packed[joined.ADDRESS].encode(), "text/javascript")


@bp.get(joined.STYLE)
def style() -> Response:
    """The stylesheet with all that it imports, so that no page waits for one after the other."""
    packed = assets.packed_texts().texts
    if joined.STYLE not in packed:
        return current_app.send_static_file(joined.STYLE.removeprefix("/static/"))
    return _kept(packed[joined.STYLE].encode(), "text/css")


@bp.get("/manifest.webmanifest")
def manifest() -> Response:
    """What the phone's system shows of the installed app."""
    return _kept(assets.manifest(language()), "application/manifest+json")


@bp.get("/shell/<path:page>")
def shell(page: str) -> Response:
    """One page of the floor without user, token or data."""
    body = shells.shell(f"/shell/{page}", language())
    if body is None:
        abort(404)
    return _kept(body, "text/html")


@bp.get("/words/<name>.json")
def words(name: str) -> Response:
    """What the pages of a phone say in a language, or what its jobs and the questions of the book say."""
    body = assets.words_file(name)
    if body is None:
        abort(404)
    return _kept(body, "application/json")


@bp.get("/data/<name>")
def data(name: str) -> Response:
    """The declared kinds, or one table of the sums."""
    body = assets.data_files().get(name)
    if body is None:
        abort(404)
    return _kept(body, "application/json")


def _kept(body: bytes, mimetype: str, etag: str | None = None) -> Response:
    response = Response(body, mimetype=mimetype)
    response.headers["Cache-Control"] = REVALIDATE
    if etag:
        response.set_etag(etag)
    else:
        response.add_etag()
    response.make_conditional(request)  # changes the response in place
    return response
