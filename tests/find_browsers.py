"""Find the browsers the tests drive: Chromium, and Firefox and WebKit's GTK build where there is one."""

import functools
import os
import shutil
import subprocess
from dataclasses import dataclass
from pathlib import Path
from typing import Any

CHROMIUM_VARIABLE = "CELLARSLATE_CHROMIUM"
FIREFOX_VARIABLE = "CELLARSLATE_FIREFOX"
_FIREFOX_NAMES = ("firefox-esr", "firefox")
_CHROMIUM_NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome")

# No page may reach beyond this computer, and the browser itself must keep quiet.
CHROMIUM_FLAGS = [
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-domain-reliability",
    "--disable-sync",
    "--no-first-run",
    "--no-pings",
]


@dataclass(frozen=True)
class WebKit:
    """The programs that drive WebKitGTK without a screen."""

    driver_path: Path
    browser_path: Path
    screen_path: Path


def find_chromium() -> Path | None:
    """Return the Chromium to use: the one the environment names, one on the path, or Playwright's own."""
    named = os.environ.get(CHROMIUM_VARIABLE)
    if named:
        return Path(named) if Path(named).is_file() else None
    for name in _CHROMIUM_NAMES:
        found = shutil.which(name)
        if found:
            return Path(found)
    return find_playwright_chromium()


def chromium_options(path: Path) -> dict[str, Any]:
    """Return the launch options of Playwright for the Chromium at this path."""
    # Inside containers and as root Chromium's own sandbox cannot start.
    return {"executable_path": path, "headless": True, "chromium_sandbox": False, "args": list(CHROMIUM_FLAGS)}


@functools.cache  # Asked again inside a running Playwright it could not start a second one.
def find_playwright_chromium() -> Path | None:
    """Return the Chromium that `playwright install` has put down, if it is there."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        path = Path(playwright.chromium.executable_path)
    return path if path.is_file() else None


def read_version(path: Path) -> str:
    """Return what the browser says of its version, or a word that it does not say."""
    if os.name == "nt":  # There it opens a window instead of answering.
        return "version not asked on Windows"
    try:
        answer = subprocess.run([path, "--version"], capture_output=True, text=True, timeout=30, check=False)
    except (OSError, subprocess.TimeoutExpired):
        return "version unknown"
    return answer.stdout.strip() or "version unknown"


def find_webkit() -> WebKit | None:
    """Return WebKitGTK's driver, browser and a screenless display, if all three are there."""
    driver, screen = shutil.which("WebKitWebDriver"), shutil.which("Xvfb")
    browsers = sorted(Path("/usr").glob("lib*/*/webkit2gtk-4.*/MiniBrowser"), reverse=True)
    browsers += sorted(Path("/usr").glob("lib*/webkit2gtk-4.*/MiniBrowser"), reverse=True)
    if not driver or not screen or not browsers:
        return None
    return WebKit(Path(driver), browsers[0], Path(screen))


def find_firefox() -> Path | None:
    """Return the Firefox to use: the one the environment names, or one on the path. It needs no driver."""
    named = os.environ.get(FIREFOX_VARIABLE)
    if named:
        return Path(named) if Path(named).is_file() else None
    return next((Path(found) for name in _FIREFOX_NAMES if (found := shutil.which(name))), None)
