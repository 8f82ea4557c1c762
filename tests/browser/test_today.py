"""The page of the day on four screens by day and by night: in its order, within the screen, and sound for everybody."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Any

import pytest

from tests.browser.test_desk_axe import _FOUND, AXE, signed_in
from tests.server_process import ServerProcess
from webapp import demo

pytestmark = pytest.mark.browser
SIZES = {"desk": (1440, 900), "phone": (390, 844), "lying": (844, 390), "small": (320, 568)}


@pytest.fixture(scope="module")
def living(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The demo with its living moment: ferments and a run under way, questions open."""
    folder = tmp_path_factory.mktemp("living")
    demo.load(folder, today=datetime.now(UTC).astimezone())
    server = ServerProcess(folder)
    server.start()
    yield server.url
    server.close()


@pytest.fixture(scope="module")
def page(browser: Any, living: str) -> Iterator[Any]:
    """A page signed in as the office."""
    page = signed_in(browser, living, "desk")
    yield page
    page.context.close()


@pytest.mark.parametrize("size", SIZES)
def test_it_fits_every_screen_and_axe_finds_nothing(page: Any, living: str, size: str) -> None:
    width, height = SIZES[size]
    page.set_viewport_size({"width": width, "height": height})
    wrong: list[str] = []
    for theme in ("light", "dark"):
        page.emulate_media(color_scheme=theme)
        page.goto(living + "/desk/")
        page.locator(".house canvas").wait_for()
        page.evaluate(AXE)
        wrong += [f"{theme}: {rule} {html}" for rule, html in page.evaluate(_FOUND, {})]
        wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        assert wide <= 0, f"{theme}: {wide} px wider than the screen"
    assert not wrong, "\n".join(wrong)


def top_of(page: Any, selector: str) -> dict[str, float]:
    box: dict[str, float] = page.locator(selector).first.bounding_box()
    return box


def test_a_phone_has_one_column_in_the_order_of_weight(page: Any, living: str) -> None:
    page.set_viewport_size({"width": 390, "height": 844})
    page.goto(living + "/desk/")
    order = ["h1", ".dayline", ".asked", ".ends", ".due", ".house", ".today__foot"]
    tops = [top_of(page, one)["y"] for one in order]
    assert tops == sorted(tops)
    weights = page.locator(".asked__weight").all_inner_texts()
    assert weights == sorted(weights, key=["stop", "ask"].index), "stops come first"
    assert page.locator(".dayline__words").first.is_visible(), "the line is said in words where they have no room"


def test_at_the_desk_the_house_stands_beside_the_questions(page: Any, living: str) -> None:
    page.set_viewport_size({"width": 1440, "height": 900})
    page.goto(living + "/desk/")
    asked, house = top_of(page, ".asked"), top_of(page, ".house")
    assert house["x"] > asked["x"] + asked["width"] and house["y"] < asked["y"] + asked["height"]


def test_all_of_it_is_reached_by_keyboard(page: Any, living: str) -> None:
    page.set_viewport_size({"width": 1440, "height": 900})
    page.goto(living + "/desk/")
    wanted = page.locator("main a, main summary").count()
    reached = set()
    page.focus("#main")
    for _ in range(wanted + 20):
        page.keyboard.press("Tab")
        reached.add(page.evaluate("""() => [...document.querySelectorAll("main a, main summary")]
          .indexOf(document.activeElement)"""))
    assert len(reached - {-1}) == wanted > 20


def test_what_is_pressed_is_large_enough(page: Any, living: str) -> None:
    """WCAG 2.2, 2.5.8: targets of 24 by 24 CSS px at least, but for links within a sentence."""
    page.set_viewport_size({"width": 390, "height": 844})
    page.goto(living + "/desk/")
    for selector in (".asked__offer", ".dayline__name a", ".today__counts a", ".today__foot a", ".house summary"):
        for one in page.locator(selector).all():
            box = one.bounding_box()
            assert box["width"] >= 24 and box["height"] >= 24, (selector, box)
