"""Senders that take for ever, against a real server: few of them must not stop everybody else."""

import contextlib
import socket
import ssl
import threading
import time
import urllib.request

import pytest

from tests.server_process import ServerProcess


@pytest.fixture
def server(tmp_path):
    process = ServerProcess(tmp_path / "book", arguments=("--plain",)).start()
    yield process
    process.close()


def connect(server):
    return socket.create_connection((server.host, server.port), timeout=30)


def test_forty_bodies_that_never_arrive_do_not_stop_the_server(server):
    """Defends: everybody, against one laptop on the network that begins forty forms and sends none."""
    head = "POST /sign-in HTTP/1.1\r\nHost: x\r\nContent-Type: application/x-www-form-urlencoded\r\n"
    held = [connect(server) for _ in range(40)]
    for sock in held:
        sock.sendall(f"{head}Content-Length: 1000\r\n\r\ncode=a".encode())
    time.sleep(5)
    started = time.monotonic()
    with urllib.request.urlopen(f"{server.url}/set-up", timeout=20) as answer:
        assert answer.status == 200
    assert time.monotonic() - started < 5
    for sock in held:
        sock.close()


def test_a_hundred_handshakes_that_never_come_do_not_stop_the_server(tmp_path):
    process = ServerProcess(tmp_path / "book", arguments=("--tls",)).start()
    try:
        held = [connect(process) for _ in range(100)]
        context = ssl.create_default_context(cafile=str(tmp_path / "book" / "tls" / "authority.pem"))
        with urllib.request.urlopen(f"{process.url}/set-up", timeout=20, context=context) as answer:
            assert answer.status == 200
        for sock in held:
            sock.close()
    finally:
        process.close()


def test_a_connection_that_says_nothing_is_closed(server):
    """Defends: the places of the server, against a thousand connections that stand open and silent."""
    for said in (b"", b"GET / HT"):
        with connect(server) as sock:
            sock.sendall(said)
            assert sock.recv(10) == b"", "closed within the half minute this waits"


def test_a_body_in_pieces_is_put_together(server):
    """A weak signal is no attack: what comes slowly, but comes, is answered."""
    with connect(server) as sock:
        body = b"setup_code=" + b"x" * 50
        sock.sendall(b"POST /set-up HTTP/1.1\r\nHost: x\r\nContent-Type: application/x-www-form-urlencoded\r\n")
        sock.sendall(f"Content-Length: {len(body)}\r\n\r\n".encode())
        for at in range(0, len(body), 10):
            sock.sendall(body[at : at + 10])
            time.sleep(0.25)
        assert sock.recv(100).startswith(b"HTTP/1.1 400"), "read whole, and refused for want of the form's token"


def test_a_body_far_too_large_is_refused(server):
    with connect(server) as sock:
        sock.sendall(b"POST /api/hand-in HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n")
        sock.sendall(b"Transfer-Encoding: chunked\r\n\r\n")
        answer = b""
        try:
            for _ in range(64):
                sock.sendall(b"10000\r\n" + b"x" * 65536 + b"\r\n")
            sock.sendall(b"0\r\n\r\n")
        except OSError:
            pass
        try:
            answer = sock.recv(100)
        except ConnectionError:
            return
        assert answer.split()[1] in (b"401", b"413")


def test_the_trust_page_keeps_few_callers_and_none_for_long(tmp_path, monkeypatch):
    """Defends: the office's computer, against somebody who calls the plain port by the thousand and says nothing."""
    from webapp.serving import phone_trust

    monkeypatch.setattr(phone_trust, "CALL_S", 4.0)
    most = phone_trust.CALLERS_OF_ADDRESS_MOST
    before = threading.active_count()
    listener = phone_trust.start_trust_listener(tmp_path, "https://localhost:8443/", "127.0.0.1", 0)
    where = ("127.0.0.1", listener.server_port)
    with contextlib.ExitStack() as held:
        held.callback(listener.server_close)
        held.callback(listener.shutdown)
        callers = [held.enter_context(socket.create_connection(where, timeout=20)) for _ in range(most + 12)]
        assert all(_is_closed(sock) for sock in callers[most:]), "one too many is hung up on"
        # A thread and a timer for each, and the listener's own.
        assert threading.active_count() - before <= 2 * most + 1
        for sock in callers[:most]:
            sock.settimeout(20)
            assert sock.recv(10) == b"", "it said nothing for too long"
        deadline = time.monotonic() + 10
        while not _has_trust_page(where[1]):  # the places are free again a moment later
            assert time.monotonic() < deadline


def _has_trust_page(port):
    try:
        with urllib.request.urlopen(f"http://127.0.0.1:{port}/trust", timeout=5) as answer:
            return answer.status == 200
    except OSError:
        time.sleep(0.05)
        return False


def _is_closed(sock):
    sock.settimeout(2)
    try:
        return sock.recv(10) == b""
    except TimeoutError:
        return False
    except OSError:
        return True
