"""Behind another web server: believed on this computer alone, and only where that was asked for."""

import http.client
import json
import urllib.error
import urllib.request

import pytest

from tests.server_process import ServerProcess
from webapp import create_app
from webapp.book.house import people
from webapp.serving.behind import caller, is_public_address
from webapp.serving.server import CannotServe
from webapp.serving.site import choose_site

SAID = {"X-Forwarded-For": "203.0.113.9", "X-Forwarded-Proto": "https", "X-Forwarded-Host": "log.stillhouse.example"}
PASSWORD = "a long enough secret"


def csrf_of(page):
    return page.split('name="csrf_token"')[1].split('value="')[1].split('"')[0]


def made(tmp_path, **config):
    app = create_app(tmp_path, testing=True, **config)
    book = app.extensions["book"]
    people.put_person(book, {"code": "OL", "name": "Odette L.", "access": "office"}, by="OL")
    people.set_password(book, "OL", PASSWORD)
    return app


@pytest.fixture
def behind(tmp_path):
    app = made(tmp_path, TLS=True, BEHIND_PROXY=True)
    yield app
    app.extensions["book"].close()


def sign_in(client, headers, **more):
    base = {"base_url": "https://log.stillhouse.example/"}
    token = csrf_of(client.get("/sign-in", headers=headers, **base, **more).text)
    form = {"code": "OL", "password": PASSWORD, "csrf_token": token}
    headers = {**headers, "Origin": "https://log.stillhouse.example", "Sec-Fetch-Site": "same-origin"}
    return client.post("/sign-in", data=form, headers=headers, **base, **more)


def test_people_sign_in_through_the_server_in_front(behind):
    client = behind.test_client()
    answer = sign_in(client, SAID)
    assert answer.status_code == 302
    assert "Secure" in client.get("/sign-in", headers=SAID).headers.get("Set-Cookie", "Secure")
    assert client.get("/desk/", headers=SAID, base_url="https://log.stillhouse.example/").status_code == 200


@pytest.mark.parametrize(
    "changed",
    [{"X-Forwarded-For": ""}, {"X-Forwarded-Host": ""}, {"X-Forwarded-Proto": "http"}, {"X-Forwarded-Proto": ""},
     {"X-Forwarded-Proto": "https, http"}],
)
def test_what_did_not_come_over_it_by_https_is_refused_in_a_sentence(behind, changed):
    answer = behind.test_client().get("/sign-in", headers=SAID | changed)
    assert answer.status_code == 403
    assert "public address" in answer.text


def test_nobody_else_on_the_network_is_believed(behind):
    answer = behind.test_client().get("/sign-in", headers=SAID, environ_base={"REMOTE_ADDR": "10.0.0.7"})
    assert answer.status_code == 403


def test_limits_count_the_callers_apart(behind, monkeypatch):
    from webapp.access import pages
    from webapp.access.tries import Remembered, Tries

    for name, most in (("by_name_here", 5), ("by_address", 30), ("by_name", 40)):
        monkeypatch.setattr(pages, name, Tries(most=most, window_s=60))
    monkeypatch.setattr(pages, "used_here", Remembered())
    pages.by_name_here._most = 1
    base = {"base_url": "https://log.stillhouse.example/"}
    for address, codes in (("203.0.113.9", [401, 429]), ("203.0.113.10", [401, 429])):
        # What the caller itself puts in front of its address is not believed.
        headers = SAID | {"X-Forwarded-For": f"198.51.100.1, {address}"}
        client = behind.test_client()
        for code in codes:
            token = csrf_of(client.get("/sign-in", headers=headers, **base).text)
            form = {"code": "OL", "password": "guess", "csrf_token": token}
            assert client.post("/sign-in", data=form, headers=headers, **base).status_code == code


def test_without_the_option_forwarded_headers_are_air(tmp_path):
    """Defends: the limits of an address, and the check of origin, against whoever writes these headers."""
    app = made(tmp_path)
    seen = []
    app.before_request(lambda: seen.append(__import__("flask").request.remote_addr))
    client = app.test_client()
    token = csrf_of(client.get("/sign-in", headers=SAID).text)
    form = {"code": "OL", "password": PASSWORD, "csrf_token": token}
    headers = SAID | {"Origin": "https://log.stillhouse.example"}
    assert client.post("/sign-in", data=form, headers=headers).status_code == 403
    assert set(seen) <= {"127.0.0.1"}
    app.extensions["book"].close()


def test_the_gate_counts_the_caller_that_the_server_in_front_saw():
    assert caller("127.0.0.1", "10.9.9.9, 203.0.113.9") == "203.0.113.9"
    assert caller("127.0.0.1", None) == "127.0.0.1"
    assert caller("192.168.1.7", "203.0.113.9") == "192.168.1.7", "only this computer is believed"


@pytest.mark.parametrize("options", [{"host": "0.0.0.0"}, {"is_tls": True}, {"public_url": "http://log.example"}])
def test_the_option_goes_with_this_computer_alone(tmp_path, options):
    chosen = {"host": "127.0.0.1", "port": 0, "is_tls": None, "trust_port": 8081,
              "public_url": "https://log.stillhouse.example"} | options
    host, port = chosen.pop("host"), chosen.pop("port")
    with pytest.raises(CannotServe):
        choose_site(tmp_path, host, port, **chosen)


def test_public_addresses():
    assert is_public_address("https://log.stillhouse.example/")
    for wrong in ("log.stillhouse.example", "http://a.example", "https://", "https://a.example/path", "https://a/?q"):
        assert not is_public_address(wrong), wrong


def test_serve_behind_another_server(tmp_path):
    options = ("--behind-proxy", "https://log.stillhouse.example")
    server = ServerProcess(tmp_path / "book", arguments=options).start()
    try:
        with pytest.raises(urllib.error.HTTPError) as refused:
            urllib.request.urlopen(f"{server.url}/set-up", timeout=20)
        assert refused.value.code == 403
        refused.value.close()
        connection = http.client.HTTPConnection(server.host, server.port, timeout=20)
        connection.request("GET", "/api/session", headers=SAID)
        answer = connection.getresponse()
        assert json.loads(answer.read())["marker"] == "cellarslate"
        assert answer.getheader("Strict-Transport-Security")
        connection.close()
        assert "Open https://log.stillhouse.example/set-up" in server.log
    finally:
        server.close()
