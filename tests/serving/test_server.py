"""The real server process: it answers over TLS, has its book alone, and survives being killed."""

import http.client
import os
import signal
import socket
import ssl
import subprocess
import sys
import threading
import time
from collections.abc import Callable
from pathlib import Path
from types import SimpleNamespace

import pytest

from tests.server_process import ROOT_DIR, ServerProcess, find_free_port
from webapp.serving import server as serving
from webapp.serving.server import STOP_WAIT_S

MakeServer = Callable[..., ServerProcess]
TLS = ("--tls",)
posix_only = pytest.mark.skipif(os.name == "nt", reason="signals and process groups of POSIX")


def run_serve(*arguments: str | Path) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "webapp", "serve", *map(str, arguments)]
    return subprocess.run(command, capture_output=True, text=True, timeout=60, cwd=ROOT_DIR, check=False)


def ask_over_tls(server: ServerProcess, trust: ssl.SSLContext, host: str = "127.0.0.1") -> int:
    connection = http.client.HTTPSConnection(host, server.port, timeout=10, context=trust)
    try:
        connection.request("GET", "/")
        return connection.getresponse().status
    finally:
        connection.close()


def trust_only(server: ServerProcess) -> ssl.SSLContext:
    return ssl.create_default_context(cafile=server.data_dir / "tls" / "authority.pem")


def test_client_that_trusts_our_authority_alone_is_served_over_tls(make_server: MakeServer) -> None:
    server = make_server(arguments=TLS)
    assert ask_over_tls(server, trust_only(server)) < 500
    with pytest.raises(ssl.SSLCertVerificationError):
        ask_over_tls(server, ssl.create_default_context())


def test_plain_request_at_the_tls_port_gets_no_page(make_server: MakeServer) -> None:
    server = make_server(arguments=TLS)
    with socket.create_connection(("127.0.0.1", server.port), 10) as sock:
        sock.sendall(b"GET / HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n")
        try:
            answer = sock.recv(4096)
        except ConnectionError:
            answer = b""
    assert not answer.startswith(b"HTTP/")


def test_old_tls_is_refused_and_1_2_is_taken(make_server: MakeServer) -> None:
    server = make_server(arguments=TLS)
    trust = trust_only(server)
    trust.maximum_version = ssl.TLSVersion.TLSv1_2
    assert ask_over_tls(server, trust) < 500


def test_connection_is_kept_between_requests(make_server: MakeServer) -> None:
    server = make_server()
    connection = http.client.HTTPConnection("127.0.0.1", server.port, timeout=10)
    sockets = set()
    for _ in range(3):
        connection.request("GET", "/")
        connection.getresponse().read()
        sockets.add(connection.sock)
    connection.close()
    assert len(sockets) == 1
    assert None not in sockets


def test_stop_is_clean_and_quick_even_with_an_idle_connection(make_server: MakeServer) -> None:
    server = make_server()
    with socket.create_connection(("127.0.0.1", server.port), 10):
        started = time.monotonic()
        assert server.stop() == 0
        # It ended by itself, and did not have to be cut off.
        assert time.monotonic() - started < STOP_WAIT_S
    server.start()


def test_killed_server_starts_again_on_the_same_port_and_folder(make_server: MakeServer) -> None:
    server = make_server()
    for _ in range(2):
        server.kill()
        with pytest.raises(OSError), socket.create_connection(("127.0.0.1", server.port), 2):
            pass
        server.start()


@posix_only
def test_worker_does_not_outlive_a_parent_that_was_killed(make_server: MakeServer) -> None:
    """A worker left alone would keep the port and write to the book beside the next server."""
    server = make_server()
    process = server.process
    assert process is not None
    os.kill(process.pid, signal.SIGKILL)
    process.wait(10)
    deadline = time.monotonic() + 20
    while time.monotonic() < deadline:
        try:
            socket.create_connection(("127.0.0.1", server.port), 1).close()
        except OSError:
            break
        time.sleep(0.02)
    else:
        pytest.fail("the worker still listens 20 s after its parent was killed")
    server.process = None
    server.start()


def test_second_server_for_one_book_is_refused(make_server: MakeServer) -> None:
    server = make_server()
    second = run_serve("--data", server.data_dir, "--host", "127.0.0.1", "--port", find_free_port())
    assert second.returncode == 2
    assert "Another server has the book" in second.stderr


def test_port_in_use_is_said_in_one_sentence(tmp_path: Path) -> None:
    with socket.socket() as holder:
        holder.bind(("127.0.0.1", 0))
        holder.listen()
        done = run_serve("--data", tmp_path, "--host", "127.0.0.1", "--port", holder.getsockname()[1])
    assert done.returncode == 2
    assert "is in use" in done.stderr
    assert "Traceback" not in done.stderr


def test_folder_that_cannot_be_made_is_said_in_one_sentence(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("not a folder")
    done = run_serve("--data", tmp_path / "file" / "book", "--host", "127.0.0.1", "--port", find_free_port())
    assert done.returncode == 2
    assert "Choose another with --data" in done.stderr
    assert "Traceback" not in done.stderr


@pytest.mark.parametrize(
    ("arguments", "sentence"),
    [
        (("--host", "0.0.0.0", "--plain"), "Plain http is for this computer only"),
        (("--host", "8.8.8.8"), "covers private networks"),
    ],
)
def test_options_that_would_leave_phones_outside_are_refused(
    tmp_path: Path, arguments: tuple[str, ...], sentence: str
) -> None:
    done = run_serve("--data", tmp_path, *arguments)
    assert done.returncode == 2
    assert sentence in done.stderr


def test_name_unknown_to_the_authority_is_refused_with_what_to_do(tmp_path: Path) -> None:
    arguments = ("--data", tmp_path, "--port", "0", "--trust-port", "0")
    process = subprocess.Popen(
        [sys.executable, "-m", "webapp", "serve", *map(str, arguments)], cwd=ROOT_DIR, stdout=subprocess.PIPE
    )
    assert process.stdout is not None
    process.stdout.readline()
    process.terminate()
    process.communicate(timeout=30)
    done = run_serve(*arguments, "--name", "log.stillhouse.example")
    assert done.returncode == 2
    assert "log.stillhouse.example" in done.stderr
    assert str(tmp_path / "tls") in done.stderr


def test_a_look_at_the_certificate_that_fails_is_not_the_last(monkeypatch: pytest.MonkeyPatch) -> None:
    looks = [OSError(5, "Input/output error"), False, True]
    interrupted, is_renewal = threading.Event(), threading.Event()

    def look() -> bool:
        found = looks.pop(0)
        if isinstance(found, OSError):
            raise found
        return found

    monkeypatch.setattr(serving, "_RENEWAL_LOOK_EVERY_S", 0.01)
    server = SimpleNamespace(signal_handler_interrupt=interrupted.set)
    serving._watch_certificate(SimpleNamespace(is_due=look), server, is_renewal)
    assert interrupted.wait(30) and is_renewal.is_set() and not looks
