"""Script and marks of writing direction in every text that people type, on every page the server draws of it."""

import uuid
from datetime import UTC, datetime
from html.parser import HTMLParser

from webapp.book.house import people, registry
from webapp.trade.marks import make_mark

EVIL = "\"'><img src=x onerror=alert(1)><script>alert(2)</script>{{7*7}}"
F1 = make_mark("F1")


class Found(HTMLParser):
    """Collects what a browser would run: inline scripts, handlers, images of ours that are none."""

    def __init__(self):
        super().__init__()
        self.evil = []

    def handle_starttag(self, tag, attrs):
        names = dict(attrs)
        if any(name.startswith("on") for name in names) or names.get("src") == "x":
            self.evil.append((tag, attrs))
        if tag == "script" and "src" not in names:
            self.evil.append((tag, attrs))
        if any(str(names.get(name) or "").lower().startswith("javascript:") for name in ("href", "action", "src")):
            self.evil.append((tag, attrs))


def test_no_typed_text_becomes_script_on_any_page_of_the_server(app, sign_in, phone):
    """Defends: the office's browser against what a phone, a floor hand or another office login has typed."""
    book = app.extensions["book"]
    registry.set_site(book, {"name": EVIL, "decimal_mark": EVIL}, by="OL")
    registry.put_vessel(
        book, {"mark": F1, "title": EVIL, "place": EVIL, "note": EVIL, "wood": EVIL, "sort": "fermenter"}, by="OL"
    )
    registry.put_instrument(book, {"id": "TH-1", "sort": EVIL, "title": EVIL, "unit": EVIL}, by="OL")
    people.put_person(book, {"code": "ZZ", "name": EVIL, "roles": [EVIL], "access": "floor"}, by=EVIL)
    now = datetime.now(UTC).isoformat(timespec="seconds")
    text = EVIL[:40]
    entry = {
        "id": str(uuid.uuid4()), "kind": "shift_note", "kind_version": 1, "mark": F1, "read_at": now, "typed_at": now,
        "person": text, "role": text, "seen_by": text, "device": text, "seq": 1, "remark": EVIL, "reason": EVIL,
        "values": {"text": {"raw": EVIL, "unit": text[:24], "instrument": text}},
    }
    note = entry | {"id": str(uuid.uuid4()), "seq": 2, "amends": entry["id"]}
    sent = phone[0].post("/api/hand-in", json={"now": now, "device": text, "entries": [entry, note]}).json
    assert {one["settled"] for one in sent["results"]} <= {"entered", "queried"}, sent
    client = sign_in("OL")
    seen = 0
    values = {"entry_id": entry["id"], "mark": F1, "code": "ZZ", "instrument_id": "TH-1", "kind": "shift_note"}
    for rule in app.url_map.iter_rules():
        if "GET" not in rule.methods or rule.endpoint == "static":
            continue
        with app.test_request_context():
            given = {name: values.get(name, EVIL) for name in rule.arguments}
            path = app.url_map.bind("localhost").build(rule.endpoint, given)
        for query in ("", "?mark=%22%3E%3Cimg%20src=x%20onerror=x%3E&person=%3Cscript%3E&q=%22%3E%3Cscript%3E"):
            answer = client.get(path + query)
            assert answer.status_code < 500, path
            if answer.mimetype != "text/html":
                continue
            page = Found()
            page.feed(answer.text)
            assert not page.evil, (path, page.evil)
            assert "49</script>" not in answer.text, "a template inside a text"
            seen += 1
    assert seen > 30


def test_a_unit_that_is_none_does_not_stop_the_cards(phone, sign_in):
    """Defends: the cards of every phone and the lists of the desk, against one entry with a made-up unit."""
    now = datetime.now(UTC).isoformat(timespec="seconds")
    entry = {
        "id": str(uuid.uuid4()), "kind": "shift_note", "kind_version": 1, "mark": F1, "read_at": now, "typed_at": now,
        "person": "WK", "device": "d-1", "seq": 1, "values": {"text": {"raw": "Quiet.", "unit": "furlong"}},
    }
    assert phone[0].post("/api/hand-in", json={"now": now, "device": "d-1", "entries": [entry]}).status_code == 200
    assert phone[0].get("/api/cards").status_code == 200
    assert sign_in("OL").get("/desk/entries").status_code == 200


def test_a_label_holds_a_hostile_title_as_letters_only(app, sign_in):
    """Defends: whoever opens the PDF of labels. A title is drawn; it is no markup and no action."""
    from webapp.labels import LAYOUTS, LabelItem, render_labels

    for name in (EVIL, ") Tj /JS (app.alert(1)) /S /JavaScript", "<a href='file:///etc/passwd'>x</a>", "\x00\u202egnp"):
        body = render_labels([LabelItem(mark=F1, name=name, place=name)], next(iter(LAYOUTS.values())), host=None)
        assert body.startswith(b"%PDF")
        for action in (b"/JavaScript", b"/URI", b"/Launch", b"/OpenAction", b"/EmbeddedFile"):
            assert action not in body
