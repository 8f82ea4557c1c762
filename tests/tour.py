"""Make the moving picture of the README from the demo: `python -m tests.tour`, anew when the look has changed.

It goes through the demo's own front in Chromium, as a visitor does, and writes docs/pictures/tour.webp.
"""

from __future__ import annotations

import io
import re
import sys
import tempfile
from pathlib import Path
from typing import Any

from PIL import Image, ImageDraw, ImageFont
from playwright.sync_api import sync_playwright

from tests.doors.served import Demo
from tests.find_browsers import CHROMIUM_FLAGS, find_chromium

ROOT = Path(__file__).parent.parent
OUT = ROOT / "docs" / "pictures" / "tour.webp"
FONT = ROOT / "webapp" / "labels" / "data" / "AtkinsonHyperlegible-Bold.ttf"
SIZE, CAPTION_PX = (960, 600), 56
STILL_MS = 3600
MOST_BYTES = 1_000_000
GROUND, SLATE, CHALK = "#ece7dc", "#12181b", "#f3f0e7"  # of static/style/tokens.css
DESK = {"width": 1360, "height": 770}
PHONE = {"width": 390, "height": 700}
Shots = list[bytes]


def main() -> None:
    """Walk through the demo, and write what was seen."""
    chromium = find_chromium()
    if chromium is None:
        sys.exit("No Chromium was found: install one, or name it in CELLARSLATE_CHROMIUM.")
    with tempfile.TemporaryDirectory() as folder:
        demo = Demo(Path(folder) / "demo")
        try:
            with sync_playwright() as playwright:
                options = {"executable_path": chromium, "chromium_sandbox": False, "args": CHROMIUM_FLAGS}
                browser = playwright.chromium.launch(**options)
                told = [*_at_desk(browser, demo.url, "front"), *_on_phone(browser, demo.url),
                        *_at_desk(browser, demo.url, "rest")]
                browser.close()
        finally:
            demo.close()
    _write([_frame(words, shots) for words, shots in told])


def _on_phone(browser: Any, url: str) -> list[tuple[str, Shots]]:
    """Log a reading without signal, put the signal back, and keep a run."""
    context = browser.new_context(viewport=PHONE, has_touch=True, color_scheme="light")
    page = context.new_page()

    def shot(path: str = "") -> bytes:
        if path:
            page.goto(url + path)
            page.locator("html[data-started]").wait_for(state="attached")
        page.wait_for_timeout(2500)  # curves are drawn, and what the page before said has gone
        return bytes(page.screenshot())

    page.goto(url + "/demo/")
    page.click("form[action$='/reading'] button")
    page.wait_for_url(re.compile("/log/ferment_reading$"))
    page.wait_for_selector("form[data-ready]")
    page.wait_for_timeout(6000)  # "works without signal" has been said
    page.locator("[name=temp]").fill("18.5")
    page.locator("[name=gravity]").fill("1.038")
    typed = shot()
    page.click("[data-part=log]")
    page.wait_for_url(re.compile("/m/F4-6$"))
    waits = shot("/slate")
    page.goto(url + "/demo/")
    page.click("text=Put the signal back")
    handed_in = shot("/slate")
    page.goto(url + "/demo/")
    page.click("form[action$='/run'] button")
    page.wait_for_url(re.compile("/run$"))
    run = shot()
    page.mouse.wheel(0, 260)
    curve = shot()
    context.close()
    return [
        ("Logged where there is no signal: it waits on the slate, then hands itself in.", [typed, waits, handed_in]),
        ("At the still: true strength at once, and the minute of the next cut.", [run, curve]),
    ]


def _at_desk(browser: Any, url: str, part: str) -> list[tuple[str, Shots]]:
    context = browser.new_context(viewport=DESK, color_scheme="light")
    page = context.new_page()
    page.goto(url + "/demo/")
    page.wait_for_timeout(1000)
    told = [("Three doors into an invented distillery, and five things to try.", [bytes(page.screenshot())])]
    for key, words in (
        ("question", "The book asks about what cannot be right, and offers what was meant."),
        ("trace", "A cask, back to the loads of fruit that are in it."),
        ("sheet", "A house with a past moves in by spreadsheet: nothing is written before you say so."),
    ) if part == "rest" else ():
        page.goto(url + "/demo/")
        page.click(f"form[action$='/{key}'] button")
        page.wait_for_load_state()
        page.wait_for_timeout(1500)
        told.append((words, [bytes(page.screenshot())]))
    context.close()
    return told[1:] if part == "rest" else told


def _frame(words: str, shots: Shots) -> Image.Image:
    """Return one still: the shots side by side, and under them what they show."""
    width, height = SIZE
    room = height - CAPTION_PX
    frame = Image.new("RGB", SIZE, GROUND)
    pictures = [Image.open(io.BytesIO(one)).convert("RGB") for one in shots]
    is_desk = pictures[0].width > pictures[0].height
    scale = width / pictures[0].width if is_desk else (room - 24) / pictures[0].height
    sized = [
        one.resize((round(one.width * scale), round(one.height * scale)), Image.Resampling.LANCZOS) for one in pictures
    ]
    gap = (width - sum(one.width for one in sized)) // (len(sized) + 1)
    left = gap
    pen = ImageDraw.Draw(frame)
    for one in sized:
        top = 0 if is_desk else 12
        frame.paste(one, (left, top))
        if not is_desk:
            pen.rounded_rectangle((left - 3, top - 3, left + one.width + 2, top + one.height + 2), 10, None, SLATE, 3)
        left += one.width + gap
    pen.rectangle((0, room, width, height), fill=SLATE)
    pen.text((24, room + CAPTION_PX / 2), words, fill=CHALK, font=ImageFont.truetype(str(FONT), 22), anchor="lm")
    return frame


def _write(frames: list[Image.Image]) -> None:
    OUT.parent.mkdir(exist_ok=True)
    first, *rest = frames
    first.save(OUT, save_all=True, append_images=rest, duration=STILL_MS, loop=0, quality=82, method=6)
    size = OUT.stat().st_size
    print(f"{OUT.name}: {len(frames)} stills, {size} bytes")
    if size > MOST_BYTES:
        sys.exit(f"The picture is larger than {MOST_BYTES} bytes. Take a lower quality.")


if __name__ == "__main__":
    main()
