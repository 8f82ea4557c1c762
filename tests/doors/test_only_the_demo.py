"""The doors stand in the demo alone: another command, a real house, or a request from the network gets none of them."""

from __future__ import annotations

import subprocess
import sys
import urllib.error
import urllib.request
from collections.abc import Callable
from pathlib import Path

import pytest
from flask import Flask

from tests.server_process import ROOT_DIR, ServerProcess
from webapp import create_app, demo
from webapp.backups import BOOK_NAME
from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.book.record.errors import BookError
from webapp.demo import own

METHODS = ("GET", "POST", "PUT", "PATCH", "DELETE")


def house_of_somebody(folder: Path) -> Path:
    """A book that was set up by a house of its own."""
    folder.mkdir()
    with open_book(folder / BOOK_NAME) as book:
        registry.set_site(book, {"name": "Obsthof Test", "units": "metric"}, by="MD")
        people.put_person(book, {"code": "IM", "name": "Irma M.", "roles": [], "access": "office"}, by="MD")
        people.set_password(book, "IM", "plum and pear and quince")
    return folder


def door_paths(app: Flask) -> list[str]:
    """Every address of the doors, from the app that has them."""
    rules = [rule for rule in app.url_map.iter_rules() if rule.endpoint.startswith("doors.")]
    assert len(rules) >= 8
    with app.test_request_context():
        urls = app.url_map.bind("localhost")
        return [urls.build(rule.endpoint, dict.fromkeys(rule.arguments, "question")) for rule in rules]


def run_demo(folder: Path, *more: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "webapp", "demo", "--data", str(folder), "--port", "0", *more]
    return subprocess.run(command, capture_output=True, text=True, timeout=90, cwd=ROOT_DIR, check=False)


@pytest.mark.parametrize("whose", ["a house's", "the demo's own"])
def test_an_app_that_was_not_asked_for_doors_has_no_address_of_them(
    app: Flask, demo_dir: Path, tmp_path: Path, whose: str
) -> None:
    paths = door_paths(app)
    folder = demo_dir if whose == "the demo's own" else house_of_somebody(tmp_path / "house")
    plain = create_app(folder, testing=True)
    try:
        assert not [rule for rule in plain.url_map.iter_rules() if rule.rule.startswith("/demo")]
        client = plain.test_client()
        for path in paths:
            for method in METHODS:
                answer = client.open(path, method=method)
                # A form without its token is refused before its address is looked for.
                assert answer.status_code in ((404,) if method == "GET" else (400, 404)), (method, path)
        assert client.get("/").status_code == 200, "a stranger is led nowhere"
    finally:
        plain.extensions["book"].close()


def test_a_house_has_no_doors_even_where_they_are_asked_for(tmp_path: Path) -> None:
    folder = house_of_somebody(tmp_path / "house")
    with pytest.raises(BookError, match="not the demo's own"):
        create_app(folder, testing=True, DEMO=True)


@pytest.mark.parametrize("value", [True, 1, "1", "yes", {"whole": True}])
def test_no_value_of_the_flag_opens_an_empty_book(tmp_path: Path, value: object) -> None:
    with pytest.raises(BookError, match="not the demo's own"):
        create_app(tmp_path / "new", testing=True, DEMO=value)


def test_serve_opens_none_whatever_the_environment_says(
    demo_dir: Path, make_server: Callable[..., ServerProcess]
) -> None:
    """The demo's own folder, served by the command of a real house."""
    wanted = dict.fromkeys(("DEMO", "FLASK_DEMO", "CELLARSLATE_DEMO", "FLASK_DEBUG"), "1")
    server = make_server(demo_dir, environment=wanted)
    for path in ("/demo", "/demo/", "/demo/join", "/demo/labels", "/demo/desk?DEMO=1"):
        asked = urllib.request.Request(server.url + path, headers={"X-Demo": "1", "Cookie": "DEMO=1"})
        with pytest.raises(urllib.error.HTTPError) as refused:
            urllib.request.urlopen(asked, timeout=30)
        assert refused.value.code == 404, path
        refused.value.close()


@pytest.mark.parametrize("more", [(), ("--fresh",)])
def test_the_command_leaves_a_book_of_somebodys_own_as_it_is(tmp_path: Path, more: tuple[str, ...]) -> None:
    folder = house_of_somebody(tmp_path / "house")
    with open_book(folder / BOOK_NAME) as book:
        before = book.query("SELECT * FROM settings ORDER BY name")
    done = run_demo(folder, *more)
    assert done.returncode == 2
    assert "holds a book of your own" in done.stderr
    with open_book(folder / BOOK_NAME) as book:
        assert book.query("SELECT * FROM settings ORDER BY name") == before
        assert [one["code"] for one in people.people(book)] == ["IM"]


@pytest.mark.parametrize("has", ["a name", "a person"])
def test_the_demo_is_laid_only_where_nothing_of_anybody_stands(tmp_path: Path, has: str) -> None:
    with open_book(tmp_path / BOOK_NAME) as book:
        if has == "a name":
            registry.set_site(book, {"name": "Obsthof Test", "units": "metric"}, by="MD")
        else:
            people.put_person(book, {"code": "MD", "name": "M. D.", "roles": [], "access": "office"}, by="MD")
    with pytest.raises(BookError, match="holds a book of your own"):
        demo.load(tmp_path)
    with open_book(tmp_path / BOOK_NAME) as book:
        assert not own.is_whole(book)


def test_settings_of_a_house_never_make_a_book_the_demos(tmp_path: Path) -> None:
    """Whatever the page of the settings is sent, it writes no mark of the demo."""
    folder = house_of_somebody(tmp_path / "house")
    with open_book(folder / BOOK_NAME) as book:
        registry.set_site(book, {"name": "Obsthof Test", "units": "metric", "demo": "whole"}, by="IM")
        assert not own.is_whole(book)


def test_fresh_lays_the_demo_anew_in_its_own_folder_only(demo_dir: Path) -> None:
    (demo_dir / "tls").mkdir(exist_ok=True)
    (demo_dir / "tls" / "authority.key").write_text("kept")
    own.clear(demo_dir)
    assert not (demo_dir / BOOK_NAME).exists()
    assert (demo_dir / "tls" / "authority.key").read_text() == "kept", "phones trust it already"
    demo.load(demo_dir)
    with open_book(demo_dir / BOOK_NAME) as book:
        assert own.is_whole(book)


def test_the_demos_cookies_are_not_those_of_a_book_on_the_same_computer(app: Flask, tmp_path: Path) -> None:
    """Browsers share cookies between the ports of a computer: a look at the demo must not sign anybody out."""
    plain = create_app(tmp_path / "house", testing=True)
    assert app.config["SESSION_COOKIE_NAME"] != plain.config["SESSION_COOKIE_NAME"]
    plain.extensions["book"].close()
