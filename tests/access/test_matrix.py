"""Every address against everybody: a new one that says nothing about access fails here until it is listed."""

import pytest

from webapp.book.house import devices, registry
from webapp.trade.marks import make_mark

# What stands open, by name: nothing is open by belonging to a room. How one comes in, and public certificates.
OPEN = {
    "static", "access.sign_in", "access.sign_out", "access.set_up", "access.trust", "access.trust_certificate",
    "access.trust_profile", "access.trust_seen", "access.health", "access.invitation",
    "access.passkey_question", "access.sign_in_by_passkey", "access.set_language",
}
# The floor's shells and files carry no data of the book; what they show comes from the phone's own store, filled by
# the guarded API. Those that the server fills in ask first whether somebody is signed in. Both are looked at below.
OPEN_FLOOR = {
    "shipping.data", "shipping.words",
    "floor.describe", "floor.enrol", "floor.enrol_page", "floor.job", "floor.label", "floor.label_log",
    "floor.label_run", "floor.log", "floor.log_without_mark", "shipping.manifest", "floor.more", "floor.run",
    "floor.scan", "shipping.script", "floor.session", "shipping.shell", "floor.slate", "shipping.style", "floor.today",
    "floor.vessel", "floor.who", "shipping.whole", "shipping.worker",
}
EVERYBODY = ["stranger", "phone", "phone shut out", "floor", "distiller", "office"]
RANK = {"floor": 1, "distiller": 2, "office": 3}
CODES = {"floor": "WK", "distiller": "IM", "office": "OL"}
F1 = make_mark("F1")
OF_THE_BOOK = "Quittenbottich"


def unlisted(app):
    """Return the addresses that neither name the access they need nor are listed as open."""
    return [
        rule.endpoint
        for rule in app.url_map.iter_rules()
        if not {"needs_access", "reads_scope"} & set(vars(app.view_functions[rule.endpoint]))
        and rule.endpoint not in OPEN | OPEN_FLOOR
    ]


def test_every_address_names_the_access_it_needs_or_is_listed_as_open(app):
    assert unlisted(app) == []
    assert {rule.endpoint for rule in app.url_map.iter_rules()} >= OPEN | OPEN_FLOOR, "the lists hold nothing that went"


@pytest.mark.parametrize("room", ["desk", "floor", "access", "api"])
def test_an_address_that_was_forgotten_is_found(app, room):
    app._got_first_request = False
    app.add_url_rule(f"/{room}/new", f"{room}.new", lambda: "all of the book")
    assert unlisted(app) == [f"{room}.new"]


@pytest.fixture
def come_as(app, sign_in, phone):
    """Return a function that gives the client of one of EVERYBODY."""

    def come(who):
        if who in CODES:
            return sign_in(CODES[who])
        if who == "stranger":
            return app.test_client()
        client, device = phone
        if who == "phone shut out":
            devices.revoke_device(app.extensions["book"], device["id"], by="OL")
        return client

    return come


@pytest.mark.parametrize("who", EVERYBODY)
def test_everybody_gets_in_where_they_may_and_nowhere_else(app, come_as, who):
    book = app.extensions["book"]
    registry.put_vessel(book, {"mark": F1, "title": OF_THE_BOOK, "sort": "fermenter"}, by="OL")
    client = come_as(who)
    looked = 0
    for rule in app.url_map.iter_rules():
        needed = getattr(app.view_functions[rule.endpoint], "needs_access", None)
        if rule.endpoint == "access.sign_out":
            continue  # it would end the round
        with app.test_request_context():
            values = {name: F1 if name == "mark" else "none-such" for name in rule.arguments}
            path = app.url_map.bind("localhost").build(rule.endpoint, values)
        for method in sorted(rule.methods & {"GET", "POST", "PUT", "PATCH", "DELETE"}):
            answer = _ask(app, client, who, path, method)
            looked += 1
            assert answer.status_code < 500, (path, method, answer.status_code)
            if hasattr(app.view_functions[rule.endpoint], "reads_scope"):
                assert answer.status_code in (401, 405, 429), f"{path} is read without a key by a {who}"
            elif needed:
                _check_guarded(answer, who, path, method, RANK[needed])
            elif who not in CODES and not answer.is_streamed:
                assert OF_THE_BOOK not in answer.text, f"{path} shows the book to a {who}"
    assert looked > 60


def _ask(app, client, who, path, method):
    if method == "GET":
        return client.get(path)
    if path.startswith("/api/"):
        return client.open(path, method=method, json={})
    token = {}
    if who in CODES:
        with client.session_transaction() as session:
            session.setdefault("csrf_token", "0" * 40)
        token = {"csrf_token": _token(app, client)}
    return client.open(path, method=method, data=token)


def _check_guarded(answer, who, path, method, needed):
    found = (path, method, who, answer.status_code)
    if path.startswith("/api/"):
        is_in = who not in ("stranger", "phone shut out")
        assert (answer.status_code not in (401, 403)) if is_in else (answer.status_code == 401), found
    elif who not in CODES:
        # A form without its token is refused before anything else is looked at.
        assert answer.status_code in ((302,) if method == "GET" else (302, 400)), found
        if answer.status_code == 302:
            assert answer.headers["Location"].startswith("/sign-in"), found
    elif RANK[who] < needed:
        assert answer.status_code == 403, found
    else:
        assert answer.status_code not in (401, 403), found


def test_every_answer_carries_the_headers_that_fence_it_in(app, sign_in):
    """Nothing foreign, no inline script, no frame, no more of the phone than its camera; by TLS, TLS for ever."""
    client = sign_in("OL")
    for rule in app.url_map.iter_rules():
        if "GET" not in rule.methods:
            continue
        with app.test_request_context():
            path = app.url_map.bind("localhost").build(rule.endpoint, dict.fromkeys(rule.arguments, "none-such"))
        for head in (client.get(path).headers, client.open(path, method="DELETE").headers):
            policy = dict(part.split(" ", 1) for part in head["Content-Security-Policy"].split("; "))
            assert policy["default-src"] == "'self'", path
            assert policy["script-src"] == "'self' 'wasm-unsafe-eval'"
            assert policy["style-src"] == "'self'"
            assert policy["object-src"] == policy["base-uri"] == policy["frame-ancestors"] == "'none'"
            assert policy["form-action"] == "'self'"
            assert head["X-Frame-Options"] == "DENY"
            assert head["X-Content-Type-Options"] == "nosniff"
            assert head["Referrer-Policy"] == "same-origin"
            allowed = {p.split("=")[0] for p in head["Permissions-Policy"].split(", ") if not p.endswith("=()")}
            assert allowed == {"camera", "microphone", "screen-wake-lock"}, path


def _token(app, client):
    from flask_wtf.csrf import generate_csrf

    with client.session_transaction() as session:
        raw = dict(session)
    with app.test_request_context():
        from flask import session as current

        current.update(raw)
        return generate_csrf()


def test_errors_under_the_api_have_one_shape(app, phone):
    client, _ = phone
    tries = [
        client.get("/api/no-such"), client.delete("/api/hand-in"),
        client.post("/api/hand-in", data="x", content_type="text/plain"),
        client.post("/api/hand-in", data="{", content_type="application/json"),
        client.post("/api/hand-in", data="x" * 600_000, content_type="application/json"),
        client.get("/api/cards?since=-1"), client.get("/api/cards?since=abc"),
    ]
    for answer in tries:
        body = answer.json
        assert answer.status_code >= 400 and set(body) == {"marker", "ok", "error", "problems", "status"}, answer.text
        assert body["status"] == answer.status_code
        assert body["ok"] is False
        assert body["error"]
