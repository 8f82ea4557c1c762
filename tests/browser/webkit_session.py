"""A WebKitGTK session on a screen of its own."""

from __future__ import annotations

import os
import subprocess
import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from tests.find_browsers import WebKit


@contextmanager
def open_webkit(parts: WebKit, width: int = 420, height: int = 900) -> Iterator[Any]:
    """Give a WebDriver for as long as the block runs; browser and screen are ended with it."""
    from selenium import webdriver
    from selenium.webdriver.webkitgtk.options import Options
    from selenium.webdriver.webkitgtk.service import Service

    reading, writing = os.pipe()
    screen = subprocess.Popen(
        [parts.screen_path, "-displayfd", str(writing), "-screen", "0", f"{width + 80}x{height + 80}x24"],
        pass_fds=(writing,),
        stderr=subprocess.DEVNULL,
    )
    os.close(writing)
    driver = None
    try:
        with os.fdopen(reading) as pipe:
            display = f":{pipe.readline().strip()}"
        options = Options()
        options.binary_location = str(parts.browser_path)
        options.add_argument("--automation")
        # Without a language ("C", no phone's case) new Intl.NumberFormat(navigator.language) throws.
        environment = {**os.environ, "DISPLAY": display, "LANG": "en_GB.UTF-8", "LANGUAGE": "en_GB"}
        service = Service(executable_path=str(parts.driver_path), env=environment)
        with warnings.catch_warnings():
            # Selenium's own WebKitGTK driver still sets what its newer parts deprecate.
            warnings.simplefilter("ignore", DeprecationWarning)
            driver = webdriver.WebKitGTK(options=options, service=service)
        driver.set_window_size(width, height)
        yield driver
    finally:
        if driver is not None:
            driver.quit()
        screen.terminate()
        screen.wait(10)
