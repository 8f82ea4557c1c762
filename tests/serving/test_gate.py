"""The gate between network and app: what it hands in is WSGI, and slow senders and readers hold no thread.

The environment is judged by wsgiref.validate, the standard library's checker of PEP 3333.
"""

from __future__ import annotations

import asyncio
import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from types import SimpleNamespace
from typing import Any
from wsgiref.validate import validator

import pytest

from webapp.serving import gate
from webapp.serving.gate import Gate


class Pieces:
    """A request's way in and its answer's way out, as the server gives them."""

    def __init__(self, pieces: tuple[bytes, ...] = (), *, pause_s: float = 0.0, reader_waits: bool = False) -> None:
        self.pieces, self.pause_s, self.reader_waits = pieces, pause_s, reader_waits
        self.status, self.headers, self.body = 0, [], b""
        self.read = asyncio.Event()

    async def __aiter__(self):
        for piece in self.pieces:
            await asyncio.sleep(self.pause_s)
            yield piece

    def response_bytes(self, status, headers, body):
        self.status, self.headers, self.body = status, headers, body

    def response_str(self, status, headers, body):
        self.response_bytes(status, headers, body.encode())

    def response_stream(self, status, headers):
        self.status, self.headers = status, headers
        return self

    async def send_bytes(self, piece):
        if self.reader_waits:
            await self.read.wait()
        self.body += piece


def run(scene: Any) -> Any:
    """Run in a thread of its own: where a browser is driven beside, this one has a loop already."""
    with ThreadPoolExecutor(1) as thread:
        return thread.submit(asyncio.run, scene).result()


def scope(method: str = "GET", path: str = "/", client: str = "127.0.0.1:5000", **headers: str) -> Any:
    named = {name.replace("_", "-"): value for name, value in {"host": "here:80", **headers}.items()}
    return SimpleNamespace(
        proto="http", http_version="1.1", server="127.0.0.1:80", client=client, scheme="http", method=method,
        path=path, query_string="a=b", authority=None, headers=named,
    )


def echo(environ: dict[str, Any], start_response: Any) -> list[bytes]:
    body = environ["wsgi.input"].read(int(environ["CONTENT_LENGTH"]))
    start_response("200 OK", [("Content-Type", "text/plain")])
    return [f"{environ['REQUEST_METHOD']} {environ['PATH_INFO']} ".encode("latin-1"), body]


def answered(made: Gate, asked: Any, proto: Pieces) -> Pieces:
    run(made.__rsgi__(asked, proto))
    return proto


def new_gate(app: Any = echo, threads: int = 2) -> Gate:
    return Gate(app, threads=threads, body_most=1000)


def test_what_the_app_is_given_is_wsgi() -> None:
    asked = scope("POST", "/brandy/prune", content_length="6", content_type="text/plain", cookie="a=1")
    proto = answered(new_gate(validator(echo)), asked, Pieces((b"abc", b"def")))
    assert (proto.status, proto.body) == (200, b"POST /brandy/prune abcdef")


def test_a_path_beyond_ascii_comes_as_the_standard_says() -> None:
    """PEP 3333: bytes of the path as latin-1."""
    proto = answered(new_gate(), scope(path="/pêche"), Pieces())
    assert proto.body.decode("utf-8") == "GET /pêche "


def test_a_body_without_a_length_is_taken_and_its_length_told() -> None:
    seen: dict[str, Any] = {}

    def app(environ, start_response):
        seen.update(environ)
        return echo(environ, start_response)

    proto = answered(new_gate(app), scope("POST", transfer_encoding="chunked"), Pieces((b"xy",) * 3))
    assert proto.body.endswith(b"xyxyxy") and seen["CONTENT_LENGTH"] == "6"
    assert "HTTP_TRANSFER_ENCODING" not in seen


def test_a_body_too_long_is_told_by_its_length_and_not_kept() -> None:
    seen: dict[str, Any] = {}

    def app(environ, start_response):
        seen.update(environ)
        start_response("413 Content Too Large", [])
        return [environ["wsgi.input"].read()]

    proto = answered(new_gate(app), scope("POST", content_length="5000"), Pieces((b"x" * 500,) * 10))
    assert (proto.status, proto.body, seen["CONTENT_LENGTH"]) == (413, b"", "1001")


def test_a_longer_body_goes_to_its_own_path_alone_and_few_at_once() -> None:
    made = Gate(echo, threads=2, body_most=1000, large={"/sheets": 4000})
    pieces = (b"x" * 500,) * 6
    assert answered(made, scope("POST", "/sheets", content_length="3000"), Pieces(pieces)).body.count(b"x") == 3000
    assert answered(made, scope("POST", "/other", content_length="3000"), Pieces(pieces)).body.count(b"x") == 0
    assert answered(made, scope("POST", "/sheets", content_length="4500"), Pieces(pieces[:1] * 9)).body.count(b"x") == 0

    async def many() -> list[int]:
        under_way = [Pieces(pieces, pause_s=0.05) for _ in range(gate.LARGE_MOST + 3)]
        await asyncio.gather(*(
            made.__rsgi__(scope("POST", "/sheets", content_length="3000"), one) for one in under_way
        ))
        return sorted(one.status for one in under_way)

    assert run(many()) == [200] * gate.LARGE_MOST + [503] * 3
    assert answered(made, scope("POST", "/sheets", content_length="3000"), Pieces(pieces)).status == 200, "room again"


def test_a_header_with_an_underscore_cannot_pass_for_another() -> None:
    asked = scope()
    asked.headers["x_forwarded_for"] = "1.2.3.4"
    assert "HTTP_X_FORWARDED_FOR" not in gate.make_environ(asked, b"", 10)


def test_a_sender_that_falls_silent_is_told_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(gate, "SILENCE_S", 0.05)
    asked = scope("POST", "/api/hand-in", content_length="20")
    proto = answered(new_gate(), asked, Pieces((b"a", b"b"), pause_s=5))
    assert proto.status == 408 and b'"marker": "cellarslate"' in proto.body and b"try again" in proto.body


def test_a_sender_that_drips_for_ever_is_told_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(gate, "BODY_S", 0.3)
    started = time.monotonic()
    proto = answered(new_gate(), scope("POST", content_length="999"), Pieces((b"a",) * 999, pause_s=0.02))
    assert proto.status == 408 and time.monotonic() - started < 10


def test_senders_that_wait_hold_no_thread() -> None:
    """One thread, fifty bodies on their way: a request that is whole is answered meanwhile."""

    async def scene() -> Pieces:
        made = new_gate(threads=1)
        slow = [
            asyncio.create_task(made.__rsgi__(scope("POST", content_length="9"), Pieces((b"x",) * 9, pause_s=60)))
            for _ in range(50)
        ]
        await asyncio.sleep(0.05)
        quick = Pieces()
        await asyncio.wait_for(made.__rsgi__(scope(), quick), 5)
        for task in slow:
            task.cancel()
        await asyncio.gather(*slow, return_exceptions=True)
        assert not made._inside and not made._of_address
        return quick

    assert run(scene()).status == 200


def test_one_address_cannot_take_every_place() -> None:
    async def scene() -> tuple[int, int]:
        made = new_gate()
        slow = [
            asyncio.create_task(made.__rsgi__(scope("POST", content_length="9"), Pieces((b"x",), pause_s=60)))
            for _ in range(gate.ADDRESS_MOST)
        ]
        await asyncio.sleep(0.05)
        same, other = Pieces(), Pieces()
        await made.__rsgi__(scope(), same)
        await made.__rsgi__(scope(client="[fe80::2]:5000"), other)
        for task in slow:
            task.cancel()
        await asyncio.gather(*slow, return_exceptions=True)
        return same.status, other.status

    assert run(scene()) == (503, 200)


def test_readers_that_wait_hold_no_thread() -> None:
    """A long answer that nobody takes, and one thread: others are served; the answer is closed in the end."""
    closed = threading.Event()

    class Long:
        def __iter__(self) -> Iterator[bytes]:
            while True:
                yield b"x" * (1 << 20)

        def close(self) -> None:
            closed.set()

    def app(environ, start_response):
        start_response("200 OK", [])
        return Long() if environ["PATH_INFO"] == "/long" else [b"short"]

    async def scene() -> Pieces:
        made = new_gate(app, threads=1)
        reader = asyncio.create_task(made.__rsgi__(scope(path="/long"), Pieces(reader_waits=True)))
        await asyncio.sleep(0.3)
        quick = Pieces()
        await asyncio.wait_for(made.__rsgi__(scope(), quick), 5)
        reader.cancel()
        await asyncio.gather(reader, return_exceptions=True)
        return quick

    assert run(scene()).body == b"short"
    assert closed.wait(5)


def test_a_long_answer_arrives_whole(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(gate, "WHOLE_MOST", 1000)
    monkeypatch.setattr(gate, "PIECE", 300)

    def app(_environ, start_response):
        start_response("200 OK", [])
        return (b"%03d" % number for number in range(1000))

    proto = answered(new_gate(app), scope(), Pieces())
    assert proto.body == b"".join(b"%03d" % number for number in range(1000))


def test_a_fault_below_the_app_is_one_sentence(capsys: pytest.CaptureFixture[str]) -> None:
    def app(_environ, _start_response):
        raise RuntimeError("not for strangers")

    proto = answered(new_gate(app), scope(), Pieces())
    assert proto.status == 500 and b"not for strangers" not in proto.body
    assert "not for strangers" in capsys.readouterr().err


def test_an_answer_that_fails_half_way_is_closed(capsys: pytest.CaptureFixture[str]) -> None:
    # PEP 3333: the server calls close() however the request ended.
    class Failing:
        is_closed = False

        def __iter__(self):
            yield b"the first half"
            raise RuntimeError("not for strangers")

        def close(self):
            self.is_closed = True

    made = Failing()

    def app(_environ, start_response):
        start_response("200 OK", [])
        return made

    assert answered(new_gate(app), scope(), Pieces()).status == 500
    assert made.is_closed
    assert "not for strangers" in capsys.readouterr().err


def test_who_waits_in_a_lane_holds_up_nobody_elsewhere() -> None:
    """As many as the lane has threads wait in it, and a request to another path is answered meanwhile."""
    let_go, inside = threading.Event(), threading.Semaphore(0)

    def app(environ, start_response):
        if environ["PATH_INFO"] == "/lane":
            inside.release()
            let_go.wait(60)
        return echo(environ, start_response)

    made = Gate(app, threads=1, body_most=1000, lanes={"/lane": 2})

    async def all_of_them() -> list[int]:
        waiting = [Pieces() for _ in range(3)]
        under_way = [asyncio.ensure_future(made.__rsgi__(scope(path="/lane"), one)) for one in waiting]
        for _ in range(2):
            await asyncio.get_running_loop().run_in_executor(None, inside.acquire)
        other = Pieces()
        await made.__rsgi__(scope(path="/other"), other)
        let_go.set()
        await asyncio.gather(*under_way)
        return [other.status, *(one.status for one in waiting)]

    assert run(all_of_them()) == [200] * 4
