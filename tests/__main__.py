"""`python -m tests`: find or get a browser, then run pytest with the arguments given.

Only this command ever fetches anything; the tests themselves need no network.
"""

import functools
import os
import shutil
import subprocess
import sys
from pathlib import Path

from tests.find_browsers import (
    CHROMIUM_VARIABLE,
    find_chromium,
    find_firefox,
    find_playwright_chromium,
    find_webkit,
    read_version,
)

_DOWNLOAD_WAIT_S = 240
_INSTALL_WAIT_S = 420
_NO_BROWSER = f"""
No Chromium could be found or fetched, and the tests drive one. Install Chromium or Google Chrome in the
usual way of this system, or name one: {CHROMIUM_VARIABLE}=/path/to/chromium. Then run this command again.
"""


def main(arguments: list[str]) -> int:
    """Run all tests and return pytest's exit code."""
    chromium = find_chromium() or _get_from_playwright() or _get_from_apt()
    if chromium is None:
        print(_NO_BROWSER, file=sys.stderr)
        return 2
    print(f"Chromium: {read_version(chromium)} ({chromium})", flush=True)
    os.environ[CHROMIUM_VARIABLE] = str(chromium)
    _try_others()
    import pytest

    return int(pytest.main([*_side_by_side(arguments), *arguments]))


def _side_by_side(arguments: list[str]) -> list[str]:
    """Return how many files are tested at once: browsers wait a good deal. Measurements and soaks run alone."""
    if any(one in ("-n", "--bench", "--soak", "-s", "--pdb") or one.startswith("-n") for one in arguments):
        return []
    return ["-n", str(min(4, (os.cpu_count() or 1) + 1)), "--dist", "loadfile"]


def _get_from_playwright() -> Path | None:
    print("No Chromium here: trying `playwright install chromium`.", flush=True)
    if not _run([sys.executable, "-m", "playwright", "install", "chromium"], _DOWNLOAD_WAIT_S):
        return None
    # Asked afresh in a process of its own, and tried: libraries of the system may be missing.
    find_playwright_chromium.cache_clear()
    path = find_playwright_chromium()
    if path is not None and "unknown" in read_version(path):
        print("It was fetched but does not start: libraries of this system are missing.", flush=True)
        return None
    return path


def _get_from_apt() -> Path | None:
    return find_chromium() if _install_by_apt(["chromium"]) else None


def _try_others() -> None:
    """Get WebKitGTK's driver and Firefox where that is easy. Their tests are skipped without them."""
    if find_webkit() is None and _is_apt_usable():
        _install_by_apt(["webkit2gtk-driver", "xvfb"])
    if find_firefox() is None and _is_apt_usable():
        _install_by_apt(["firefox-esr"])
    webkit, firefox = find_webkit(), find_firefox()
    print(f"WebKitGTK: {webkit.browser_path if webkit else 'none'}", flush=True)
    print(f"Firefox: {f'{read_version(firefox)} ({firefox})' if firefox else 'none'}", flush=True)


def _install_by_apt(packages: list[str]) -> bool:
    if not _is_apt_usable():
        return False
    print(f"Installing by apt-get: {' '.join(packages)}", flush=True)
    prefix = [] if _is_root() else ["sudo", "-n"]
    environment = ["env", "DEBIAN_FRONTEND=noninteractive"]
    install = [*prefix, *environment, "apt-get", "install", "-y", "--no-install-recommends", *packages]
    return _update_lists(tuple(prefix)) and _run(install, _INSTALL_WAIT_S)


@functools.cache
def _update_lists(prefix: tuple[str, ...]) -> bool:
    return _run([*prefix, "apt-get", "update"], _DOWNLOAD_WAIT_S)


def _is_apt_usable() -> bool:
    if shutil.which("apt-get") is None:
        return False
    return _is_root() or (shutil.which("sudo") is not None and _run(["sudo", "-n", "true"], 10))


def _is_root() -> bool:
    return hasattr(os, "geteuid") and os.geteuid() == 0


def _run(command: list[str], wait_s: float) -> bool:
    """Run a command quietly; on failure show the end of what it said."""
    try:
        done = subprocess.run(
            command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, timeout=wait_s, check=False
        )
    except subprocess.TimeoutExpired:
        print(f"Gave up after {wait_s:.0f} s: {' '.join(command)}", flush=True)
        return False
    except OSError as error:
        print(f"Could not run {command[0]}: {error}", flush=True)
        return False
    if done.returncode != 0:
        print(f"Did not work: {' '.join(command)}\n{done.stdout[-600:]}", flush=True)
    return done.returncode == 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
