"""Odd figures, odd letters, odd addresses: a sentence or a plain page, never a crash, never a script."""

import csv
import io

import pytest

from webapp.kinds import as_data
from webapp.trade.marks import make_mark

from .conftest import csrf_of

HUGE = "9" * 25


@pytest.mark.parametrize(
    "formula",
    [
        "=1+1", "+1+1", "-1+1", "@SUM(A1)", "\t=1+1", "\r=1+1", "\n=1+1", " =1+1", "\u00a0=1", "\uff1d1+1", "ok;=1+1",
        'ok"; "=1+1', "ok\n=1+1", "ok;\t@x", "'=1", '"=1',
    ],
)
def test_no_cell_of_a_csv_is_a_formula(formula):
    """Defends: whoever opens an export. With a decimal comma office programs cut lines at semicolons too."""
    cell = as_data.safe_cell(formula)
    for part in (piece for line in cell.splitlines() for piece in line.replace("\t", ";").split(";")):
        assert part.strip(" \"\u00a0")[:1] not in tuple("=+-@\uff1d") or not part.strip(), cell


@pytest.mark.parametrize("plain", ["-1.5", "+3", "-1,25", "12", "a;b", "x = y", "2-3", "pear; apple", "1e5"])
def test_plain_cells_stay_as_they_are(plain):
    assert as_data.safe_cell(plain) == plain


def test_an_export_of_the_desk_carries_no_formula(app, sign_in, phone):
    import uuid
    from datetime import UTC, datetime

    now = datetime.now(UTC).isoformat(timespec="seconds")
    entry = {
        "id": str(uuid.uuid4()), "kind": "shift_note", "kind_version": 1, "mark": make_mark("F1"), "read_at": now,
        "typed_at": now, "person": "=1+1", "role": "@x", "device": "d-1", "seq": 1, "remark": "fine;=cmd|'/c calc'!A0",
        "values": {"text": {"raw": "=HYPERLINK(1)"}}, "reason": "+1+1",
    }
    sent = phone[0].post("/api/hand-in", json={"now": now, "device": "d-1", "entries": [entry]}).json
    assert sent["results"][0]["settled"] in ("entered", "queried"), sent
    text = sign_in("WK").get("/desk/entries.csv?kind=shift_note").text.lstrip("\ufeff")
    for delimiter in ",;":
        for row in csv.reader(io.StringIO(text), delimiter=delimiter):
            assert not [cell for cell in row if cell[:1] in tuple("=+@")], row


@pytest.mark.parametrize(
    "path",
    [
        f"/desk/entries?before={HUGE}", f"/desk/vessels?start={HUGE}", "/desk/entries?before=-1",
        "/desk/entries?mark=%00%ff", "/desk/entries/%00", "/desk/vessels?q=%ED%A0%80",
    ],
)
def test_odd_addresses_of_the_desk_do_not_crash_it(sign_in, path):
    assert sign_in("OL").get(path).status_code in (200, 404)


@pytest.mark.parametrize(
    "path",
    [
        "/static/../book.sqlite", "/static/%2e%2e/session.key", "/static/..%2f..%2fetc/passwd", "/static//etc/passwd",
        "/data/../session.key", "/data/..%2fsession.key", "/data/book.sqlite", "/shell/../base", "/shell/log/..%2f..",
        "/pack/..%2f..", "/desk/entries.csv/../../session.key",
    ],
)
def test_no_path_leads_out_of_the_served_folders(sign_in, path):
    assert sign_in("OL").get(path).status_code in (302, 308, 404)


@pytest.mark.parametrize("figure", ["999999999999999", "1e999", "nan", "inf", "-Infinity", "\u0663"])
def test_a_capacity_that_is_no_plain_figure_gets_a_sentence(app, sign_in, figure):
    client = sign_in("OL")
    token = csrf_of(client.get("/desk/vessels/new").text)
    form = {"base": "Q1", "sort": "cask", "capacity_l": figure, "csrf_token": token}
    answer = client.post("/desk/vessels/new", data=form)
    assert answer.status_code == 422, answer.status_code


@pytest.mark.parametrize("zone", ["America", "../../etc/passwd", "Nowhere/Land", "/etc/passwd"])
def test_a_time_zone_that_is_none_is_not_kept(app, sign_in, zone):
    """Defends: every page that shows a time. `America` is a folder of zones, and reading it raises."""
    from webapp.book.house import registry

    client = sign_in("OL")
    form = {"name": "T", "units": "metric", "decimal_mark": ".", "height_m": "", "time_zone": zone}
    token = csrf_of(client.get("/desk/settings").text)
    assert client.post("/desk/settings", data=form | {"csrf_token": token}).status_code in (200, 422)
    assert registry.site(app.extensions["book"]).get("time_zone") != zone


def test_a_floor_code_in_other_digits_gets_a_sentence(sign_in):
    client = sign_in("OL")
    form = {"code": "WK", "name": "Wim K.", "access": "floor", "pin": "\u0661\u0662\u0663\u0664"}
    token = csrf_of(client.get("/desk/people/WK").text)
    assert client.post("/desk/people/WK", data=form | {"csrf_token": token}).status_code == 422


@pytest.mark.parametrize("host", ['evil.example"><script>alert(1)</script>', "evil.example/path", "a b"])
def test_a_forged_host_puts_no_script_and_no_foreign_path_into_an_enrolment_link(app, sign_in, host):
    client = sign_in("OL")
    token = csrf_of(client.get("/desk/phones").text)
    answer = client.post("/desk/phones", data={"name": "PH-7", "csrf_token": token}, headers={"Host": host})
    assert "<script>alert" not in answer.text
    assert "evil.example/path/enrol" not in answer.text


DEEP = "[" * 100_000


@pytest.mark.parametrize(
    "body",
    [
        DEEP, '{"a":' * 20_000 + "1" + "}" * 20_000, '{"now":1,"now":2}', "NaN", "1e999", "", "null", "[]", "9" * 5000,
        '{"now":"2025-09-24T12:00:00Z","device":"\\ud800","entries":[]}',
    ],
)
def test_a_malformed_body_is_refused_with_a_sentence(phone, body):
    answer = phone[0].post("/api/hand-in", data=body, content_type="application/json")
    assert answer.status_code in (400, 413, 422)
    assert answer.json["ok"] is False


def test_malformed_entries_are_put_aside_one_by_one(phone):
    odd = (
        '1,"x",[],{},{"id":1e999},{"id":NaN},{"seq":99999999999999999999999999},{"id":"\\ud800"},'
        '{"values":{"\\ud800":1}},{"a":' + "[" * 900 + "]" * 900 + '},{"id":"\\u0000"}'
    )
    body = '{"now":"2025-09-24T12:00:00Z","device":"d-1","entries":[' + odd + "]}"
    answer = phone[0].post("/api/hand-in", data=body, content_type="application/json")
    assert answer.status_code == 200, answer.text
    assert [result["settled"] for result in answer.json["results"]] == ["refused"] * 11
