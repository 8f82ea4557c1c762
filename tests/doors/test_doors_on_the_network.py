"""`cellarslate demo --lan`: one square trusts and lets in, and the computer itself needs no certificate."""

from __future__ import annotations

import re
import urllib.request
from collections.abc import Iterator
from pathlib import Path
from shutil import copytree
from typing import Any

import pytest

from tests.doors.served import Demo
from tests.server_process import find_free_port

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def on_lan(laid: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Demo, int]]:
    folder = tmp_path_factory.mktemp("lan") / "demo"
    copytree(laid, folder)
    trust_port = find_free_port()
    demo = Demo(folder, "--lan", "--trust-port", str(trust_port))
    yield demo, trust_port
    demo.close()


def test_one_square_is_printed_and_its_page_leads_on_to_the_door_of_a_phone(on_lan: tuple[Demo, int]) -> None:
    demo, trust_port = on_lan
    said = demo.said.read_text()
    assert len(re.findall(r"^http://\S+/trust$", said, re.MULTILINE)) == 1
    assert "it learns to trust this computer, and is then let in" in said
    assert "take the certificate off again" in said
    with urllib.request.urlopen(f"http://127.0.0.1:{trust_port}/trust", timeout=30) as answer:
        page = answer.read().decode()
    address = re.search(r"^Address: (https://\S+)/demo$", said, re.MULTILINE)
    assert address
    assert f'data-next="{address[1]}/demo/join"' in page
    groups = re.search(r"what the phone shows: (.+)$", said, re.MULTILINE)
    assert groups
    assert groups[1].strip() in page


def test_on_the_computer_itself_the_doors_open_without_a_certificate(on_lan: tuple[Demo, int], browser: Any) -> None:
    demo, trust_port = on_lan
    context = browser.new_context(viewport={"width": 390, "height": 844})
    page = context.new_page()
    page.goto(demo.url + "/demo")
    assert page.evaluate("isSecureContext")
    assert f":{trust_port}/trust" in page.inner_text("main"), "the square's address is written beside it"
    assert page.locator(".door .qr svg").count() == 1
    page.click("text=Sit down at the desk")
    page.wait_for_url(re.compile("/desk/"))
    page.goto(demo.url + "/demo/join")
    page.click("text=Open it")
    page.wait_for_url(re.compile("/today$"), timeout=45_000)
    who = page.evaluate("""async () => (await (await import("/static/slate/who.js")).current()).name""")
    assert who == "Pavel R."
    context.close()
