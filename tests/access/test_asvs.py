"""docs/asvs.md against the standard's own list, and what its lines name that no other test holds.

The numbers and levels are those of OWASP ASVS 5.0.0 (github.com/OWASP/ASVS, 5.0/docs_en, the CSV; CC BY-SA 4.0); of its
texts nothing is copied. It has 70 requirements of level 1 and 183 of level 2.
"""

from __future__ import annotations

import json
import re
import socket
import ssl
from pathlib import Path

import pytest
from flask.sessions import SecureCookieSessionInterface
from itsdangerous import URLSafeTimedSerializer

from tests.access.conftest import PASSWORD, csrf_of
from webapp.book.house import journal

ROOT = Path(__file__).parents[2]
PAGE = (ROOT / "docs" / "asvs.md").read_text("utf-8")
LEVELS = json.loads((ROOT / "tests" / "vectors" / "asvs_5_0_0.json").read_text("utf-8"))["levels"]
ROW = re.compile(r"^\| (\d+\.\d+\.\d+) \| ([12]) \| ([^|]+) \| (holds|fails|not here) \| ([^|]*) \|$", re.MULTILINE)
ROWS = {found[1]: found for found in ROW.finditer(PAGE)}
FILES = list((ROOT / "tests").rglob("test_*.py"))
TESTS = {
    name for path in FILES
    for name in re.findall(r"^ *(?:async )?def (test_\w+)", path.read_text("utf-8"), re.MULTILINE)
}


def test_every_requirement_of_levels_one_and_two_stands_once_with_its_level():
    assert sorted(LEVELS.values()) == [1] * 70 + [2] * 183
    assert {number: int(row[2]) for number, row in ROWS.items()} == LEVELS
    assert len(re.findall(r"^\| \d+\.\d+\.\d+ \|", PAGE, re.MULTILINE)) == len(LEVELS), "a line that is not read"


def test_what_holds_names_where_and_what_fails_says_why():
    for number, row in ROWS.items():
        if row[4] == "holds":
            assert "`" in row[5] or "](#" in row[5], f"{number} names neither a file nor a test nor a section"
        if row[4] == "fails":
            assert len(row[5].strip()) > 10, number


def test_the_failing_ones_are_named_at_the_head_and_counted():
    head = PAGE.partition("\n## V1")[0]
    failing = [number for number, row in ROWS.items() if row[4] == "fails"]
    assert re.findall(r"\b\d+\.\d+\.\d+\b", head.partition("**Failing:**")[2].partition("\n\n")[0]) == failing
    for level in (1, 2):
        states = [row[4] for row in ROWS.values() if int(row[2]) == level]
        counts = [str(states.count(state)) for state in ("holds", "fails", "not here")]
        assert f"| {level} | {' | '.join(counts)} |" in head


@pytest.mark.parametrize("name", sorted({name for row in ROWS.values() for name in re.findall(r"`([^`]+)`", row[5])}))
def test_what_the_lines_name_is_there(name):
    if re.fullmatch(r"test_\w+", name):
        assert name in TESTS
    elif re.fullmatch(r"test_\w+\.py", name):
        assert any(path.name == name for path in FILES)
    elif ("/" in name.strip("/") and not name.startswith("/")) or name.endswith((".md", ".toml")):
        assert (ROOT / name).exists()


def test_every_text_says_how_it_is_encoded(app, sign_in):
    """4.1.1: text of any sort carries a charset; JSON is UTF-8 by its own standard (RFC 8259, 8.1)."""
    client, seen = sign_in("OL"), set()
    for rule in app.url_map.iter_rules():
        if "GET" in rule.methods and not rule.arguments:
            answer = client.get(rule.rule, follow_redirects=True)
            sort = answer.headers.get("Content-Type", "")
            if answer.data and sort.startswith("text/"):
                seen.add(sort.partition(";")[0])
                assert "charset=utf-8" in sort.lower(), (rule.rule, sort)
            assert sort or not answer.data, rule.rule
    assert {"text/html", "text/csv"} <= seen


def test_nothing_of_the_source_is_served(app, sign_in):
    client = sign_in("OL")
    for path in ("/.git/config", "/static/", "/static/vendor", "/static/vendor/", "/static/../webapp/cli.py",
                 "/webapp/cli.py", "/static/%2e%2e/pyproject.toml", "/pyproject.toml", "/book.sqlite",
                 "/static/.git/HEAD"):
        answer = client.get(path)
        assert answer.status_code == 404, path
        assert "import" not in answer.text


def test_no_debug_mode_and_no_trace(app):
    assert not app.debug
    for path in ("/sign-in", "/desk", "/api/cards", "/health"):
        answer = app.test_client().open(path, method="TRACE", headers={"X-Told": "a secret"})
        assert answer.status_code in (400, 405), path
        assert "a secret" not in answer.text


def test_a_cookie_that_is_signed_otherwise_opens_nothing(app, sign_in):
    """By the key that Flask itself would take, and by its own algorithm with the right key: neither is believed."""
    client = sign_in("OL")
    assert client.get("/desk/you").status_code == 200
    cookie = client.get_cookie("cellarslate").value
    inside = app.session_interface.get_signing_serializer(app).loads(cookie)
    by_sha1 = SecureCookieSessionInterface().get_signing_serializer(app).dumps(inside)
    other_key = URLSafeTimedSerializer("guessed", salt="cookie-session", serializer=app.session_interface.serializer)
    forged = [by_sha1, other_key.dumps(inside), cookie.rpartition(".")[0] + ".", cookie[:-1] + "_", "e30.."]
    for one in forged:
        stranger = app.test_client()
        stranger.set_cookie("cellarslate", one)
        assert stranger.get("/desk/you").status_code == 302, one
    honest = app.test_client()
    honest.set_cookie("cellarslate", app.session_interface.get_signing_serializer(app).dumps(inside))
    assert honest.get("/desk/you").status_code == 200


def test_the_password_typed_again_begins_a_new_session_and_ends_the_old_one(app, sign_in):
    client = sign_in("OL")
    copied = app.test_client()
    copied.set_cookie("cellarslate", client.get_cookie("cellarslate").value)
    assert copied.get("/desk/you").status_code == 200
    page = client.get("/again").text
    open_form = csrf_of(client.get("/desk/people/new").text)
    answer = client.post("/again", data={"again_password": PASSWORD, "next": "/desk/you", "csrf_token": csrf_of(page)})
    assert answer.status_code == 302
    assert client.get("/desk/you").status_code == 200
    assert copied.get("/desk/you").status_code == 302, "the old session is over, for a copy too"
    form = {"code": "NN", "name": "N. N.", "access": "floor", "roles": "hand", "csrf_token": open_form}
    assert client.post("/desk/people/new", data=form).status_code == 302, "a form that was open stays good"


def test_the_new_session_ends_when_the_old_one_would_have(app, sign_in):
    client = sign_in("OL")
    with client.session_transaction() as inside:
        inside["began"] -= 23 * 3600
        began = inside["began"]
    page = client.get("/again").text
    client.post("/again", data={"again_password": PASSWORD, "next": "/desk/you", "csrf_token": csrf_of(page)})
    with client.session_transaction() as inside:
        assert inside["began"] == began


def test_what_is_refused_stands_in_the_journal(app, sign_in):
    client = sign_in("WK")
    assert client.get("/desk/people").status_code == 403
    assert client.post("/sign-out", data={}).status_code == 400
    told = [(line["sort"], line["who"], line["about"]) for line in journal.all_lines(app.config["DATA_DIR"])]
    assert ("not_shown", "WK", "/desk/people") in told
    assert any(sort == "refused" and "/sign-out" in about and "token" in about for sort, _who, about in told)


def test_only_tls_of_today_is_spoken(make_server):
    """12.1.1, 12.1.2: TLS 1.2 and 1.3 with ciphers that encrypt and authenticate at once and keep the past closed."""
    server = make_server(arguments=("--tls",))

    def shake(least: ssl.TLSVersion, most: ssl.TLSVersion, ciphers: str = "ALL:@SECLEVEL=0") -> tuple[str, str]:
        context = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
        context.check_hostname, context.verify_mode = False, ssl.CERT_NONE
        context.set_ciphers(ciphers)
        context.minimum_version, context.maximum_version = least, most
        with socket.create_connection((server.host, server.port), 10) as line, context.wrap_socket(line) as spoken:
            return str(spoken.version()), str(spoken.cipher()[0])

    of = ssl.TLSVersion
    assert shake(of.TLSv1_2, of.TLSv1_3)[0] == "TLSv1.3", "the newest first"
    version, cipher = shake(of.TLSv1_2, of.TLSv1_2)
    assert version == "TLSv1.2"
    assert cipher.startswith("ECDHE") and ("GCM" in cipher or "POLY1305" in cipher)
    for ciphers in ("AES256-SHA:@SECLEVEL=0", "AES128-GCM-SHA256", "ECDHE-ECDSA-AES256-SHA:@SECLEVEL=0"):
        with pytest.raises(OSError):
            shake(of.TLSv1_2, of.TLSv1_2, ciphers)
