"""Every address against every role: a new one that says nothing about access fails here until it is listed."""

import pytest

PUBLIC = {
    "static", "access.sign_in", "access.sign_out", "access.set_up", "access.trust", "access.trust_certificate",
    "access.trust_profile",
}  # fmt: skip
# The floor's shells carry no data; what they show comes from the phone's own store, filled by the guarded API.
OPEN_FLOOR = ("floor.",)
GUARDED_API = {"/api/hand-in": "POST", "/api/cards": "GET"}
LADDER = ["", "WK", "IM", "OL"]  # signed out, floor, distiller, office


def desk_rules(app):
    return [rule for rule in app.url_map.iter_rules() if rule.endpoint.startswith("desk.")]


def test_every_desk_page_names_the_access_it_needs(app):
    wrong = [
        rule.endpoint
        for rule in desk_rules(app)
        if not hasattr(app.view_functions[rule.endpoint], "needs_access") and rule.endpoint != "desk.queries"
    ]
    assert not wrong


def test_every_other_address_is_known_to_be_open_or_guarded(app):
    wrong = [
        rule.endpoint
        for rule in app.url_map.iter_rules()
        if not rule.endpoint.startswith("desk.")
        and rule.endpoint not in PUBLIC
        and not rule.endpoint.startswith(OPEN_FLOOR)
    ]
    assert not wrong


@pytest.mark.parametrize("who", LADDER, ids=["signed out", "floor", "distiller", "office"])
def test_each_role_gets_in_where_it_may_and_nowhere_else(app, sign_in, who):
    client = sign_in(who)
    rank = {"floor": 1, "distiller": 2, "office": 3}
    mine = LADDER.index(who)
    for rule in desk_rules(app):
        view = app.view_functions[rule.endpoint]
        needed = rank[getattr(view, "needs_access", "floor")]
        values = dict.fromkeys(rule.arguments, "none-such")
        with app.test_request_context():
            path = app.url_map.bind("localhost").build(rule.endpoint, values)
        for method in sorted(rule.methods & {"GET", "POST"}):
            token = {}
            if method == "POST" and mine:
                with client.session_transaction() as session:
                    session.setdefault("csrf_token", "0" * 40)
                token = {"csrf_token": _token(app, client)}
            answer = client.open(path, method=method, data=token)
            if mine == 0:
                assert answer.status_code in (302, 400), (path, answer.status_code)
                if answer.status_code == 302 and rule.endpoint != "desk.queries":
                    assert answer.headers["Location"].startswith("/sign-in"), path
            elif mine < needed:
                assert answer.status_code == 403, (path, method, answer.status_code)
            else:
                assert answer.status_code not in (401, 403, 500), (path, method, answer.status_code)


def _token(app, client):
    from flask_wtf.csrf import generate_csrf

    with client.session_transaction() as session:
        raw = dict(session)
    with app.test_request_context():
        from flask import session as current

        current.update(raw)
        return generate_csrf()


def test_the_api_is_shut_to_strangers_and_to_phones_that_were_shut_out(app, phone):
    from webapp.book import devices

    client, device = phone
    for path, method in GUARDED_API.items():
        answer = app.test_client().open(path, method=method, json={} if method == "POST" else None)
        assert answer.status_code == 401 and answer.json["marker"] == "cellarslate", path
    assert client.get("/api/cards").status_code == 200
    devices.revoke(app.extensions["book"], device["id"], by="OL")
    for path, method in GUARDED_API.items():
        answer = client.open(path, method=method, json={} if method == "POST" else None)
        assert answer.status_code == 401, path


def test_errors_under_the_api_have_one_shape(app, phone):
    client, _ = phone
    tries = [
        client.get("/api/no-such"), client.delete("/api/hand-in"),
        client.post("/api/hand-in", data="x", content_type="text/plain"),
        client.post("/api/hand-in", data="{", content_type="application/json"),
        client.post("/api/hand-in", data="x" * 600_000, content_type="application/json"),
        client.get("/api/cards?since=-1"), client.get("/api/cards?since=abc"),
    ]  # fmt: skip
    for answer in tries:
        body = answer.json
        assert answer.status_code >= 400 and set(body) == {"marker", "ok", "error", "problems", "status"}, answer.text
        assert body["status"] == answer.status_code
        assert body["ok"] is False
        assert body["error"]
