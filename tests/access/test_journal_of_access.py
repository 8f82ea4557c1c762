"""What the journal of access is told: sign-ins, phones, people, data taken out, writes refused."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from flask import Flask

from tests.access.conftest import PASSWORD, csrf_of
from webapp.book.house import journal


def told(app: Flask) -> list[tuple[str, str, str]]:
    """Return (sort, who, about) of each line, oldest first."""
    return [(line["sort"], line["who"], line["about"]) for line in journal.all_lines(Path(app.config["DATA_DIR"]))]


def test_who_signs_in_and_out_and_who_does_not(app: Flask) -> None:
    client = app.test_client()
    for code, password in (("OL", "not this one"), ("my own password", "OL"), ("OL", PASSWORD)):
        token = csrf_of(client.get("/sign-in").text)
        client.post("/sign-in", data={"code": code, "password": password, "csrf_token": token})
    client.post("/sign-out", data={"csrf_token": csrf_of(client.get("/desk/").text)})
    assert told(app) == [
        ("not_signed_in", "", "OL"), ("not_signed_in", "", "no such code"), ("signed_in", "OL", ""),
        ("signed_out", "OL", ""),
    ], "what was typed in the place of a code may be a password"
    assert {line["origin"] for line in journal.all_lines(Path(app.config["DATA_DIR"]))} == {"127.0.0.1"}


def test_phones_people_and_files(app: Flask, sign_in: Any) -> None:
    client = sign_in("OL")
    token = csrf_of(client.get("/desk/people/IM").text)
    form = {"code": "IM", "name": "Ilka M.", "access": "office", "csrf_token": token}
    client.post("/desk/people/IM", data=form)
    client.get("/desk/bottled.csv")
    lines = told(app)[1:]
    assert lines == [
        ("person", "OL", "IM: changed, may office"), ("took_out", "OL", "/desk/bottled.csv"),
    ]
    page = client.get("/desk/access").text
    assert "IM: changed, may office" in page and "data taken out" in page
    assert "/desk/bottled.csv" not in client.get("/desk/access?sort=person").text
    sent = [json.loads(line)["about"] for line in client.get("/desk/access.jsonl").text.splitlines()]
    assert sent == ["", *(about for *_, about in lines), "/desk/access.jsonl"], "the taking of it too"


def test_a_phone_is_let_in_once_and_a_refused_write_is_a_line_a_minute(app: Flask, sign_in: Any) -> None:
    from webapp.book.house import devices

    token = devices.new_token(app.extensions["book"], "OL", "PH-9")
    phone = app.test_client()
    body = {"token": token, "name": "PH-9"}
    assert phone.post("/api/enrol", json=body).status_code == 200
    assert app.test_client().post("/api/enrol", json=body).status_code == 403
    for _ in range(3):
        assert app.test_client().post("/api/hand-in", json={}).status_code in (401, 403)
    sorts = [sort for sort, _, _ in told(app)]
    assert sorts.count("let_in") == 1 and sorts.count("not_let_in") == 1
    assert [about for sort, _, about in told(app) if sort == "refused"] == ["POST /api/enrol", "POST /api/hand-in"]
