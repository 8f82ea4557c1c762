"""Pictures on the phone: kept before an entry names them, without their place, handed in after entries, in pieces."""

from __future__ import annotations

import hashlib
import io
import re
from pathlib import Path
from typing import Any

import pytest
from PIL import Image

from tests.browser.floor_house import FERMENTER, TIMEOUT_MS, Floor, far_floor, floor, near_floor
from webapp.book.enclosures import shelf
from webapp.book.opening import open_book

__all__ = ["far_floor", "floor", "near_floor"]

FORM = f"/m/{FERMENTER}/log/ferment_reading"
_FILES = """async () => {
  const { read, BYTES, ENCLOSURES } = await import("/static/slate/db.js");
  return read([ENCLOSURES, BYTES], async (tx) => {
    const all = await tx.objectStore(ENCLOSURES).getAll();
    const bytes = await Promise.all(all.map((one) => tx.objectStore(BYTES).get(one.sha256)));
    return all.map((one, at) => ({ ...one, bytes: [...new Uint8Array(bytes[at])] }));
  });
}"""
_WIPE = """async () => {
  const { write, BYTES, ENCLOSURES, META } = await import("/static/slate/db.js");
  await write([ENCLOSURES, BYTES, META], async (tx) => {
    await tx.objectStore(ENCLOSURES).clear();
    await tx.objectStore(BYTES).clear();
    await tx.objectStore(META).delete("enclosing");
  });
}"""


def camera_picture(width: int = 3000, height: int = 2000, colour: tuple[int, int, int] = (140, 90, 30)) -> bytes:
    """Return a JPEG as a camera makes it, with its place, its camera, and lying on its side (Exif 2.32, 4.6)."""
    exif = Image.Exif()
    exif[0x010F], exif[0x0112] = "a camera", 6
    exif[0x8825] = {1: "N", 2: (47.0, 3.0, 12.0), 3: "E", 4: (9.0, 1.0, 2.0)}
    made = io.BytesIO()
    picture = Image.effect_noise((width, height), 40).convert("RGB")
    picture.paste(colour, (0, 0, width // 2, height // 2))
    picture.save(made, "JPEG", quality=80, exif=exif)
    return made.getvalue()


def files_of(floor: Floor) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = floor.page.evaluate(_FILES)
    return found


def add(page: Any, content: bytes, name: str = "image.jpg", type_: str = "image/jpeg", count: int = 1) -> None:
    """Give the camera's box a file, and wait until it stands under the form."""
    page.locator(".enclose input[type=file]").set_input_files({"name": name, "mimeType": type_, "buffer": content})
    page.wait_for_function("count => document.querySelectorAll('.enclose .thumbs li').length === count", arg=count,
                           timeout=TIMEOUT_MS)


def wait_until_had(floor: Floor) -> None:
    """Wait until the book has every file of this phone."""
    for _ in range(200):
        if {one["state"] for one in files_of(floor)} == {"had"}:
            return
        floor.page.wait_for_timeout(200)
    raise AssertionError([(one["state"], one["words"]) for one in files_of(floor)])


def log_reading(page: Any) -> None:
    page.locator("[name=temp]").fill("14.6")
    page.locator("[name=gravity]").fill("1.031")
    page.locator("[data-part=log]").click()
    page.wait_for_url(re.compile(r"/m/[^/]+$"), timeout=TIMEOUT_MS)


@pytest.fixture
def clean(floor: Floor) -> Floor:
    """The far phone without pictures."""
    floor.page.evaluate(_WIPE)
    return floor


def test_a_picture_is_kept_small_and_without_its_place_and_its_entry_names_it(clean: Floor) -> None:
    page = clean.form(FORM)
    page.locator(".enclose").wait_for()
    original = camera_picture()
    add(page, original)
    (kept,) = files_of(clean)
    content = bytes(kept["bytes"])
    made = Image.open(io.BytesIO(content))
    assert Image.open(io.BytesIO(original)).getexif().get_ifd(0x8825), "what came had a place"
    assert not made.getexif() and b"Exif" not in content and b"a camera" not in content
    assert made.size == (1067, 1600), "upright, and the longer side 1600"
    assert len(content) < len(original) / 2
    assert kept["sha256"] == hashlib.sha256(content).hexdigest()
    log_reading(page)
    (entry,) = clean.entries()
    assert entry["enclosed"] == [kept["sha256"]]
    assert kept["state"] == "waiting"


def test_an_entry_without_pictures_is_as_it_always_was(clean: Floor) -> None:
    log_reading(clean.form(FORM))
    assert "enclosed" not in clean.entries()[0]


def test_the_same_picture_twice_is_one_and_one_that_is_taken_off_is_gone(clean: Floor) -> None:
    page = clean.form(FORM)
    page.locator(".enclose").wait_for()
    add(page, camera_picture(400, 300))
    add(page, camera_picture(400, 300, (1, 200, 3)), count=2)
    first = files_of(clean)
    page.locator(".enclose input[type=file]").set_input_files(
        {"name": "again.jpg", "mimeType": "image/jpeg", "buffer": bytes(first[0]["bytes"])})
    page.wait_for_function("!document.querySelector('.enclose__add').dataset.busy && true")
    page.locator(".thumbs__off").last.click()
    page.wait_for_function("document.querySelectorAll('.enclose .thumbs li').length <= 2")
    log_reading(page)
    assert len(clean.entries()[0]["enclosed"]) == len(set(clean.entries()[0]["enclosed"]))
    assert {one["sha256"] for one in files_of(clean)} == set(clean.entries()[0]["enclosed"])


@pytest.mark.parametrize(
    ("content", "said"),
    [(b"<!doctype html><script>document.title = 'ran'</script>", "cannot read that as a picture"),
     (b"<svg xmlns='http://www.w3.org/2000/svg' onload='1'", "cannot read that as a picture"),
     (camera_picture(300, 200)[:400], "cannot read that as a picture")],
    ids=["html", "svg", "cut off"],
)
def test_what_is_no_picture_is_said_and_the_entry_goes_on(clean: Floor, content: bytes, said: str) -> None:
    page = clean.form(FORM)
    page.locator(".enclose").wait_for()
    page.locator(".enclose input[type=file]").set_input_files(
        {"name": "image.jpg", "mimeType": "image/jpeg", "buffer": content})
    page.locator(".enclose__says", has_text=said).wait_for()
    assert files_of(clean) == []
    log_reading(page)
    assert "enclosed" not in clean.entries()[0]


def test_a_picture_of_60_mb_is_refused_before_it_is_opened(clean: Floor, tmp_path: Path) -> None:
    page = clean.form(FORM)
    page.locator(".enclose").wait_for()
    large = tmp_path / "large.jpg"
    large.write_bytes(camera_picture(300, 200) + bytes(60_000_000))
    page.locator(".enclose input[type=file]").set_input_files(str(large))
    page.locator(".enclose__says", has_text="larger than 40 MB").wait_for()
    assert files_of(clean) == []


def test_where_room_is_short_no_picture_is_taken_and_entries_go_on(clean: Floor) -> None:
    page = clean.form(FORM)
    page.locator(".enclose").wait_for()
    page.evaluate("navigator.storage.estimate = async () => ({ quota: 30_000_000, usage: 15_000_000 })")
    page.locator(".enclose input[type=file]").set_input_files(
        {"name": "image.jpg", "mimeType": "image/jpeg", "buffer": camera_picture(300, 200)})
    page.locator(".enclose__says", has_text="kept for entries").wait_for()
    log_reading(page)
    assert len(clean.entries()) == 1


def test_a_full_slate_lets_go_what_the_book_has_before_an_entry_is_turned_away(clean: Floor) -> None:
    page = clean.open("/more")
    page.evaluate("""async () => {
      const { keep, noteFile } = await import("/static/slate/enclosures.js");
      const { sha256 } = await keep(new Blob(["a picture that the book has"], { type: "image/jpeg" }));
      await noteFile(sha256, { state: "had", had_at: new Date().toISOString() });
      const add = IDBObjectStore.prototype.add;
      IDBObjectStore.prototype.add = function (...given) {
        if (this.name !== "entries") return add.apply(this, given);
        IDBObjectStore.prototype.add = add; // full this once
        throw new DOMException("full", "QuotaExceededError");
      };
    }""")
    clean.phone.log({"kind": "shift_note", "kind_version": 1, "mark": FERMENTER, "person": "NS",
                     "values": {"text": {"raw": "stir"}}})
    assert len(clean.entries()) == 1
    assert files_of(clean) == []


def test_a_phone_that_dies_half_way_has_picture_and_entry_and_the_book_gets_both_once(
    near_floor: Floor, tmp_path: Path
) -> None:
    floor = near_floor
    page = floor.form(FORM)
    page.locator(".enclose").wait_for()
    floor.world.server.stop()
    add(page, camera_picture())
    log_reading(page)
    (kept,) = files_of(floor)
    floor.phone.kill()
    floor.open("/slate")
    assert [one["sha256"] for one in files_of(floor)] == [kept["sha256"]]
    floor.page.locator("[data-part=files]", has_text="1 picture or voice note waits").wait_for()
    floor.world.server.start()
    floor.page.locator("[data-part=thumb] button").click()
    wait_until_had(floor)
    with open_book(floor.world.book_path) as book:
        path = shelf.find_path(book, kept["sha256"])
        assert path and path.read_bytes() == bytes(kept["bytes"])
        assert shelf.verify(book) == []
    page = floor.open(f"/m/{FERMENTER}")
    page.locator(".thumbs__one").first.click()
    page.locator("dialog img.enclosed__whole").wait_for()


def test_over_a_line_that_breaks_it_goes_on_from_where_the_book_is_and_holds_no_entry_up(near_floor: Floor) -> None:
    floor = near_floor
    page = floor.open("/slate")
    broken: list[str] = []

    def line(route: Any) -> None:
        """Break every second piece, before it arrives or after."""
        broken.append(route.request.headers["content-range"])
        if len(broken) % 4 == 1:
            route.abort()
        elif len(broken) % 4 == 3:
            route.fetch()
            route.abort()  # it arrived, and its answer is lost
        else:
            route.continue_()

    def every(route: Any) -> None:
        line(route) if route.request.method == "PUT" else route.continue_()

    page.route("**/api/enclosures/*", every)
    size = 900_000
    page.evaluate(
        """async (size) => {
          const { keep } = await import("/static/slate/enclosures.js");
          const { log } = await import("/static/slate/queue.js");
          const bytes = new Uint8Array(size);
          for (let at = 0; at < size; at += 65536) crypto.getRandomValues(bytes.subarray(at, at + 65536));
          bytes.set(new TextEncoder().encode("%PDF-1.7\\n"));
          const { sha256 } = await keep(new Blob([bytes], { type: "application/pdf" }));
          const values = { text: { raw: "look" } };
          await log({ kind: "shift_note", kind_version: 1, mark: "", person: "NS", values, enclosed: [sha256] });
        }""", size)
    for at in range(40):
        done = page.evaluate(f"({_FILES})().then((all) => all[0].state === 'had')")
        if done:
            break
        if at == 3:
            floor.phone.log({"kind": "shift_note", "kind_version": 1, "mark": "", "person": "NS",
                             "values": {"text": {"raw": "logged meanwhile"}}})
        page.evaluate("import('/static/slate/handin.js').then((module) => module.handInNow())")
        page.wait_for_timeout(400)
    assert done
    assert len(broken) > 4
    starts = [int(re.match(r"bytes (\d+)-", span)[1]) for span in broken]  # type: ignore[index]
    assert starts == sorted(starts), "it never begins anew"
    with open_book(floor.world.book_path) as book:
        assert shelf.verify(book) == []
        assert len(list(shelf.walk_files(book))) == 1
        assert len(floor.world.all_entries()) == 2


def test_a_line_that_was_logged_gets_a_picture_by_an_entry_of_its_own(clean: Floor) -> None:
    log_reading(clean.form(FORM))
    first = clean.entries()[0]
    page = clean.open(f"/m/{FERMENTER}")
    page.locator(".list__pen").first.click()
    page.locator("dialog .enclose").wait_for()
    page.locator("dialog input[type=file]").set_input_files(
        {"name": "image.jpg", "mimeType": "image/jpeg", "buffer": camera_picture(500, 400)})
    page.locator("dialog .thumbs__one").wait_for()
    added = clean.entries()[1]
    assert (added["kind"], added["mark"]) == ("enclosure", FERMENTER)
    assert added["values"] == {"entry": {"raw": first["id"]}}
    assert added["enclosed"] == [files_of(clean)[0]["sha256"]]


def test_what_was_taken_for_a_form_that_nobody_logged_goes_after_three_days(clean: Floor) -> None:
    page = clean.form(FORM)
    page.locator(".enclose").wait_for()
    add(page, camera_picture(300, 200))
    log_reading(page)
    page = clean.form(FORM)
    page.locator(".enclose").wait_for()
    add(page, camera_picture(300, 200, (9, 9, 200)))
    page = clean.open("/more")
    days = """async (days) => {
      const { pruneFiles } = await import("/static/slate/enclosures.js");
      await pruneFiles(Date.now() + days * 864e5);
    }"""
    page.evaluate(days, 2)
    assert len(files_of(clean)) == 2
    page.evaluate(days, 4)
    assert [one["sha256"] for one in files_of(clean)] == clean.entries()[0]["enclosed"]


def test_where_the_book_has_another_past_its_pictures_are_offered_again(clean: Floor) -> None:
    page = clean.open("/more")
    state = page.evaluate("""async () => {
      const { keep, noteFile, about } = await import("/static/slate/enclosures.js");
      const { log, settle } = await import("/static/slate/queue.js");
      const { offerAgain } = await import("/static/slate/again.js");
      const { getMeta } = await import("/static/slate/db.js");
      const { sha256 } = await keep(new Blob(["a picture that the book had"], { type: "image/jpeg" }));
      const values = { text: { raw: "look" } };
      const note = { kind: "shift_note", kind_version: 1, mark: "", person: "NS", values, enclosed: [sha256] };
      const { id } = await log(note);
      await settle([{ id, settled: "entered", book_no: 7, digest: "" }], "b-1");
      await noteFile(sha256, { state: "had", had_at: new Date().toISOString() });
      const before = [(await about(sha256)).state, await getMeta("enclosing")];
      await offerAgain({ devices: {}, book_id: "b-1", has_head: false });
      for (let n = 0; n < 50 && (await about(sha256)).state === "had"; n++) {
        await new Promise((done) => setTimeout(done, 100));
      }
      return [...before, (await about(sha256)).state, await getMeta("enclosing")];
    }""")
    assert state == ["had", False, "waiting", True]
