"""Signing in, staying in, being shut out."""

import pytest

from webapp.access import pages
from webapp.access.tries import Remembered, Tries
from webapp.book.house import people

from .conftest import PASSWORD, csrf_of


@pytest.fixture(autouse=True)
def fresh_tries(monkeypatch):
    monkeypatch.setattr(pages, "by_name_here", Tries(most=5, window_s=60))
    monkeypatch.setattr(pages, "by_name", Tries(most=40, window_s=60))
    monkeypatch.setattr(pages, "used_here", Remembered())
    monkeypatch.setattr(pages, "by_address", Tries(most=30, window_s=60))


def try_in(client, code, password, **headers):
    token = csrf_of(client.get("/sign-in").text)
    return client.post("/sign-in", data={"code": code, "password": password, "csrf_token": token}, headers=headers)


def test_the_right_words_let_in_and_wrong_ones_do_not(app):
    client = app.test_client()
    assert client.get("/desk/").headers["Location"].startswith("/sign-in")
    assert try_in(client, "OL", "wrong words here").status_code == 401
    assert client.get("/desk/").status_code == 302
    assert try_in(client, "ol", PASSWORD).status_code == 302
    assert client.get("/desk/").status_code == 200


def test_the_session_is_new_after_sign_in(app):
    client = app.test_client()
    with client.session_transaction() as session:
        session["planted"] = "by somebody else"
    try_in(client, "OL", PASSWORD)
    with client.session_transaction() as session:
        assert "planted" not in session
        assert session["person"] == "OL"


def test_guessing_is_slowed_down_for_the_name_and_the_wait_is_told(app):
    client = app.test_client()
    for _ in range(5):
        assert try_in(client, "OL", "guess").status_code == 401
    answer = try_in(client, "OL", PASSWORD)
    assert answer.status_code == 429
    assert int(answer.headers["Retry-After"]) > 0
    assert "Wait" in answer.text
    assert try_in(client, "IM", PASSWORD).status_code == 302, "others are not shut out by it"


def test_a_new_password_ends_old_sessions(app, sign_in):
    client = sign_in("IM")
    people.set_password(app.extensions["book"], "IM", "another long secret")
    assert client.get("/desk/").status_code == 302


def test_signing_out_needs_the_pages_own_token(app, sign_in):
    client = sign_in("IM")
    assert client.post("/sign-out").status_code == 400
    assert client.get("/desk/").status_code == 200
    token = csrf_of(client.get("/desk/").text)
    assert client.post("/sign-out", data={"csrf_token": token}).status_code == 302
    assert client.get("/desk/").status_code == 302


@pytest.mark.parametrize(
    "target", ["https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example", "desk"]
)
def test_after_sign_in_nobody_is_sent_to_another_site(app, target):
    client = app.test_client()
    token = csrf_of(client.get("/sign-in").text)
    answer = client.post("/sign-in", data={"code": "OL", "password": PASSWORD, "next": target, "csrf_token": token})
    assert answer.headers["Location"] == "/desk/"


def test_writes_from_other_sites_are_refused(app, sign_in):
    client = sign_in("OL")
    for headers in ({"Sec-Fetch-Site": "cross-site"}, {"Origin": "https://elsewhere.example"}, {"Origin": "null"}):
        assert client.post("/desk/settings", data={}, headers=headers).status_code == 403
        answer = client.post("/api/hand-in", json={}, headers=headers)
        assert answer.status_code == 403
        assert answer.json["ok"] is False


def test_the_first_run_wants_the_code_the_server_printed(tmp_path):
    from webapp import create_app

    app = create_app(tmp_path, testing=True)
    client = app.test_client()
    assert client.get("/sign-in").headers["Location"] == "/set-up"
    code = pages.setup_code(app)
    filled = {
        "site": "The House",
        "units": "metric",
        "code": "OL",
        "name": "Odette L.",
        "password": PASSWORD,
        "again": PASSWORD,
    }
    token = csrf_of(client.get("/set-up").text)
    wrong = client.post("/set-up", data={**filled, "setup_code": "no-no-no", "csrf_token": token})
    assert wrong.status_code == 422
    assert "not the code" in wrong.text
    right = client.post("/set-up", data={**filled, "setup_code": code, "csrf_token": token})
    assert right.status_code == 302
    assert client.get("/desk/").status_code == 200
    assert app.test_client().get("/set-up").headers["Location"] == "/sign-in", "set-up is shut once there is somebody"
    app.extensions["book"].close()


def test_headers_stand_on_every_answer(app, sign_in):
    for client, path in ((app.test_client(), "/sign-in"), (app.test_client(), "/no-such"), (sign_in("OL"), "/desk/")):
        answer = client.get(path)
        policy = answer.headers["Content-Security-Policy"]
        assert "script-src 'self' 'wasm-unsafe-eval'" in policy
        assert "unsafe-inline" not in policy
        assert answer.headers["X-Content-Type-Options"] == "nosniff"
        assert "frame-ancestors 'none'" in policy
        assert "no-store" in answer.headers["Cache-Control"]
        assert "Strict-Transport-Security" not in answer.headers, "only under TLS"


def test_under_tls_cookies_are_secure_and_the_browser_is_told_to_stay(tmp_path):
    from webapp import create_app

    app = create_app(tmp_path, testing=True, TLS=True)
    answer = app.test_client().get("/set-up", base_url="https://house.local/")
    assert "max-age=" in answer.headers["Strict-Transport-Security"]
    cookie = answer.headers.get("Set-Cookie", "")
    assert "Secure" in cookie
    assert "HttpOnly" in cookie
    assert "SameSite=Lax" in cookie
    app.extensions["book"].close()
