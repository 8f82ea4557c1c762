"""A browser that trusts our authority gets a secure context; one that does not is kept out."""

import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tests.server_process import ServerProcess
from tests.serving import trust_store

pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(
        sys.platform != "linux" or trust_store.find_library() is None,
        reason="needs the trust store that Chromium reads on Linux (libnss3)",
    ),
]

REGISTER = "() => navigator.serviceWorker.register('/sw.js').then(it => it.scope)"

HAND_IN = """() => fetch('/api/hand-in', {
    method: 'POST', headers: {'Content-Type': 'application/json'}, body: '{}'
}).then(answer => answer.status)"""


def launch(playwright: Any, browser_options: dict[str, Any], home_dir: Path) -> Any:
    return playwright.chromium.launch(**browser_options, env={**os.environ, "HOME": str(home_dir)})


def test_worker_registers_over_tls_once_our_authority_is_trusted(
    make_server: Callable[..., ServerProcess],
    playwright: Any,
    browser_options: dict[str, Any],
    tmp_path: Path,
) -> None:
    server = make_server(arguments=("--tls",))
    home_dir = tmp_path / "home"
    program = [sys.executable, trust_store.__file__, str(home_dir / ".pki" / "nssdb")]
    subprocess.run([*program, str(server.data_dir / "tls" / "authority.pem")], check=True, timeout=60)
    browser = launch(playwright, browser_options, home_dir)
    try:
        page = browser.new_page()
        page.goto(server.url)
        assert page.evaluate("isSecureContext")
        assert page.evaluate(REGISTER) == f"{server.url}/"
        # Over TLS the server still knows its own pages: not let in (401), yet no foreign site (403).
        assert page.evaluate(HAND_IN) == 401
    finally:
        browser.close()


def test_browser_that_does_not_trust_us_is_kept_out(
    make_server: Callable[..., ServerProcess],
    playwright: Any,
    browser_options: dict[str, Any],
    tmp_path: Path,
) -> None:
    from playwright.sync_api import Error

    server = make_server(arguments=("--tls",))
    browser = launch(playwright, browser_options, tmp_path / "other-home")
    try:
        page = browser.new_page()
        with pytest.raises(Error, match="ERR_CERT_AUTHORITY_INVALID"):
            page.goto(server.url)
    finally:
        browser.close()
