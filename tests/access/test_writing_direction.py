"""Marks of writing direction: kept as typed, shown so that they turn nothing but themselves."""

import uuid
from datetime import UTC, datetime
from pathlib import Path

import pytest

from webapp.book.house import registry
from webapp.book.record import log
from webapp.isolate import AsTyped, isolate, isolate_shown
from webapp.trade.marks import make_mark

F1 = make_mark("F1")
OVERRIDE, POP, FSI, PDI = "\u202e", "\u202c", "\u2068", "\u2069"


@pytest.mark.parametrize(
    ("typed", "shown"),
    [
        ("plain", "plain"), ("süß, 12 % – Zwetschge 🥃", "süß, 12 % – Zwetschge 🥃"),
        (f"{OVERRIDE}03 si sihT", f"{FSI}{OVERRIDE}03 si sihT{PDI}"),
        (f"out{PDI}{OVERRIDE}gnp", f"{FSI}out{OVERRIDE}gnp{PDI}"),
        (f"{FSI}never closed", f"{FSI}{FSI}never closed{PDI}{PDI}"),
        ("\u05e9\u05d6\u05d9\u05e3", f"{FSI}\u05e9\u05d6\u05d9\u05e3{PDI}"),
    ],
)
def test_a_text_turns_only_itself(typed, shown):
    """By the rules of Unicode's UAX #9: an isolate ends at its own PDI, and closes embeddings left open in it (X6a)."""
    assert isolate(typed) == shown


def test_what_goes_back_into_a_box_is_not_touched():
    assert isolate(AsTyped(OVERRIDE)) == OVERRIDE
    assert isolate(3) == 3
    assert isolate(None) is None


def test_cards_close_off_what_they_show_and_leave_names_that_are_looked_up():
    card = {"title": OVERRIDE, "holds": {"name": OVERRIDE, "lot": OVERRIDE}, "queries": [{"words": OVERRIDE}]}
    closed = f"{FSI}{OVERRIDE}{PDI}"
    assert isolate_shown(card) == {
        "title": closed, "holds": {"name": OVERRIDE, "lot": OVERRIDE}, "queries": [{"words": closed}],
    }


def test_pages_and_cards_show_a_remark_closed_off_and_the_record_keeps_it(app, sign_in, phone):
    book = app.extensions["book"]
    remark = f"{OVERRIDE}drawkcab"
    registry.put_vessel(book, {"mark": F1, "title": remark, "sort": "fermenter"}, by="OL")
    now = datetime.now(UTC).isoformat(timespec="seconds")
    entry = {
        "id": str(uuid.uuid4()), "kind": "shift_note", "kind_version": 1, "mark": F1, "read_at": now, "typed_at": now,
        "person": "WK", "device": "d-1", "seq": 1, "remark": remark, "values": {"text": {"raw": remark}},
    }
    sent = phone[0].post("/api/hand-in", json={"now": now, "device": "d-1", "entries": [entry]}).json
    assert sent["results"][0]["settled"] in ("entered", "queried")
    client = sign_in("OL")
    seen = 0
    for path in (f"/desk/entries/{entry['id']}", "/desk/entries", f"/desk/vessels/{F1}", f"/m/{F1}", "/desk/settings"):
        text = client.get(path).text
        for at in range(len(text)):
            if text[at] == OVERRIDE:
                before, after = text.rfind(FSI, 0, at), text.find(PDI, at)
                assert before >= 0 and "<" not in text[before:at], (path, text[at - 40 : at + 20])
                assert after >= 0 and "<" not in text[at:after], path
                seen += 1
    assert seen >= 4
    assert phone[0].get("/api/cards").json["cards"][0]["title"] == f"{FSI}{remark}{PDI}"
    assert log.load_entry(book, entry["id"])["entry"]["remark"] == remark


def test_amending_gives_back_a_remark_to_the_letter(app, sign_in, phone):
    remark = f"{OVERRIDE}drawkcab"
    now = datetime.now(UTC).isoformat(timespec="seconds")
    entry = {
        "id": str(uuid.uuid4()), "kind": "shift_note", "kind_version": 1, "mark": F1, "read_at": now, "typed_at": now,
        "person": "WK", "device": "d-1", "seq": 1, "remark": remark, "values": {"text": {"raw": "Quiet."}},
    }
    phone[0].post("/api/hand-in", json={"now": now, "device": "d-1", "entries": [entry]})
    page = sign_in("OL").get(f"/desk/entries/{entry['id']}/amend").text
    box = page[page.index('name="remark"') :]
    box = box[: box.index("</textarea>")] if "</textarea>" in box else box[: box.index(">")]
    assert remark in box
    assert FSI not in box


def test_inline_parts_of_the_floors_lines_are_closed_off_by_the_style():
    text = (Path(__file__).parents[2] / "static" / "style" / "base.css").read_text("utf-8")
    assert "unicode-bidi: isolate" in text
