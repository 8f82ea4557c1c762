"""What a phone keeps: shells without anybody's data, a worker that names every file by its hash."""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient

from webapp import create_app
from webapp.access.guard import sign_in
from webapp.book.house import people
from webapp.places import STATIC_DIR
from webapp.shipping import assets
from webapp.shipping.shells import PATTERNS, shell_urls


@pytest.fixture
def app(tmp_path: Path) -> Iterator[Flask]:
    made = create_app(tmp_path, testing=True)
    people.put_person(made.extensions["book"], {"code": "NS", "name": "Noor Secret", "access": "floor"}, by="NS")
    people.set_password(made.extensions["book"], "NS", "plum and pear and quince")
    yield made
    made.extensions["book"].close()


@pytest.fixture
def client(app: Flask) -> FlaskClient:
    return app.test_client()


def _constants(client: FlaskClient) -> dict[str, Any]:
    found = re.findall(r"^const ([A-Z]+) = (.*);$", client.get("/sw.js").text, re.MULTILINE)
    return {name: json.loads(value) for name, value in found if value[0] in '"[{'}


def _kept(client: FlaskClient, parts: int | None = None) -> set[str]:
    """Return the addresses that the worker keeps, of the first so many parts."""
    told: list[dict[str, list[Any]]] = _constants(client)["PARTS"][:parts]
    return {url for part in told for url in [*part["texts"], *(url for url, _ in part["files"])]}


def test_every_file_of_the_worker_is_served_with_the_hash_it_names(client: FlaskClient) -> None:
    with client.application.app_context():
        parts = assets.parts_of_floor()
    listed = [(name, *one) for name, files in parts.items() for one in files]
    assert {url for _, url, _ in listed} == _kept(client)
    for name, url, digest in listed:
        client.set_cookie("cellarslate_language", assets.language_of(name) or "en")
        answer = client.get(url, buffered=True)
        assert answer.status_code == 200, url
        assert hashlib.sha256(answer.data).hexdigest() == digest, url
        packed = client.get(url, headers={"Accept-Encoding": "gzip"}, buffered=True)
        assert packed.status_code == 200, url


def test_every_module_that_a_module_imports_is_kept_too(client: FlaskClient) -> None:
    listed = _kept(client)
    importing = re.compile(r"""(?:\bfrom\s*|\bimport\s*\(?\s*)["'](\.{1,2}/[^"']+)["']""")
    for url in sorted(listed):
        if not (url.startswith("/static/") and url.endswith(".js")):
            continue
        path = STATIC_DIR / url.removeprefix("/static/")
        for target in importing.findall(path.read_text("utf-8")):
            wanted = (path.parent / target).resolve().relative_to(STATIC_DIR.resolve()).as_posix()
            assert f"/static/{wanted}" in listed, f"{url} imports {target}"


def test_every_file_that_a_shell_names_is_kept_too(client: FlaskClient) -> None:
    listed = _kept(client, 1)
    bold = "/static/fonts/atkinson-hyperlegible-latin-700-normal.woff2"  # until it is there, letters of the phone's own
    spared = {"/static/icons/apple-touch-icon.png", bold}  # fetched by the system at the install; comes with the jobs
    assert bold in _kept(client)
    for url in shell_urls():
        named = set(re.findall(r'(?:src|href)="(/(?:static|data)/[^"#]+)', client.get(url).text))
        assert named - spared <= listed, url


def test_a_figure_of_one_unit_shows_it_beside_the_box(client: FlaskClient) -> None:
    page = client.get("/shell/log/fruit_intake").text
    for name, sign in (("ph", "pH"), ("rot", "%")):
        assert f'<span class="field__unit" id="{name}-unit">{sign}</span>' in page


def test_a_shell_is_the_same_for_everybody_and_carries_no_token(app: Flask) -> None:
    stranger, known = app.test_client(), app.test_client()
    with app.test_request_context():
        person = people.person(app.extensions["book"], "NS")
        assert person
        sign_in(person)
        from flask import session

        kept = dict(session)
    with known.session_transaction() as opened:
        opened.update(kept)
    assert known.get("/api/session").get_json()["person"]["code"] == "NS"
    for url in shell_urls():
        page = known.get(url).text
        assert page == stranger.get(url).text
        assert "csrf" not in page
        assert "Noor" not in page


@pytest.mark.parametrize(
    ("path", "shell"),
    [
        ("/", "/shell/today"), ("/today", "/shell/today"), ("/m/F3-8", "/shell/vessel"), ("/M/F3-8", "/shell/vessel"),
        ("/m/F3-8/", "/shell/vessel"), ("/m/F3-8/run", "/shell/run"), ("/M/S1-Y/run", "/shell/run"),
        ("/m/F3-8/log/ferment_reading", "/shell/log/ferment_reading"), ("/log/shift_note", "/shell/log/shift_note"),
        ("/enrol/abc-DEF_123", "/shell/enrol"), ("/start", "/shell/enrol"), ("/slate", "/shell/slate"),
        ("/desk/", None), ("/sign-in", None), ("/api/cards", None), ("/trust", None), ("/m/F3-8/else", None),
    ],
)
def test_addresses_and_their_shells(path: str, shell: str | None) -> None:
    found = [(re.match(pattern, path), target) for pattern, target in PATTERNS]
    answers = [target.replace("$1", (match[1] if match.re.groups else "")) for match, target in found if match]
    assert answers == ([shell] if shell else [])


def test_a_changed_file_changes_the_version(
    client: FlaskClient, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from webapp.shipping import assets

    before, script = assets_version(client)
    changed = tmp_path / "static" / "slate"
    changed.mkdir(parents=True)
    (changed / "db.js").write_text("// another\n", "utf-8")
    real = assets._static_files
    monkeypatch.setattr(
        assets, "_static_files", lambda: [(n, changed / "db.js" if n == "slate/db.js" else p) for n, p in real()]
    )
    after, new_script = assets_version(client)
    assert before != after
    assert script != new_script


def assets_version(client: FlaskClient) -> tuple[object, str]:
    return _constants(client)["VERSION"], client.get("/sw.js").text


def test_the_worker_and_its_shells_are_asked_for_anew(client: FlaskClient) -> None:
    for url in ("/sw.js", "/shell/today", "/data/kinds.json"):
        answer = client.get(url)
        assert answer.headers["Cache-Control"] == "no-cache"
        etag = answer.headers["ETag"]
        assert client.get(url, headers={"If-None-Match": etag}).status_code == 304


def test_the_manifest_names_icons_that_are_there(client: FlaskClient) -> None:
    manifest = client.get("/manifest.webmanifest").get_json(force=True)
    assert manifest["display"] == "standalone"
    sizes = {icon["sizes"] for icon in manifest["icons"] if icon["purpose"] == "maskable"}
    assert sizes == {"192x192", "512x512"}
    for icon in manifest["icons"]:
        assert client.get(icon["src"], buffered=True).status_code == 200


def test_a_shell_names_its_modules_in_its_head(client: FlaskClient) -> None:
    listed = _kept(client, 1)
    named = re.findall(r'<link rel="modulepreload" href="([^"]+)">', client.get("/shell/log/ferment_reading").text)
    assert {"/static/floor.js", "/static/pages/log.js", "/static/slate/db.js", "/static/kinds/read.js"} <= set(named)
    assert set(named) <= listed
    assert len(named) == len(set(named))
