"""Between the network and the app: whole requests go in, and nobody slow holds a thread.

The app works through one request a thread, and threads are few. A request is therefore given to one only when all of it
has arrived, and its answer is taken from it at once; what a sender or a reader takes its time over costs a waiting
task, of which there is room for hundreds. Speaks RSGI to the server and WSGI (PEP 3333) to the app.
"""

from __future__ import annotations

import asyncio
import contextlib
import io
import json
import sys
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from webapp.serving.behind import caller

if TYPE_CHECKING:
    from wsgiref.types import WSGIApplication, WSGIEnvironment

    from granian._granian import RSGIHTTPProtocol as HTTPProtocol
    from granian.rsgi import Scope

Headers = list[tuple[str, str]]

# How long a sender may say nothing, and take in all. A weak signal is slow; it is seldom silent for long. [s]
SILENCE_S, BODY_S = 15.0, 120.0
# How long a reader may leave one piece of a long answer lying. [s]
READER_S = 60.0
# Requests on their way in or waiting for a thread: of everybody, and of one address (a house may stand behind one).
ALL_MOST, ADDRESS_MOST = 512, 96
# Requests at once whose bodies are longer than usual: each is held whole in memory before anybody knows who sends it.
LARGE_MOST = 4
# Answers up to this size leave their thread at once; longer ones, exports, go piece by piece. [bytes]
WHOLE_MOST = 4 << 20
PIECE = 64 << 10

_TOO_SLOW = "What you sent did not arrive whole in time. It is still where it came from; try again."
_TOO_MANY = "The server has its hands full. Nothing is lost; try again in a few seconds."
_FAILED = "Something went wrong on the server. Nothing that was confirmed is lost; try again."


class _TooSlow(Exception):
    """The body of a request did not come in time."""


class _TooMany(Exception):
    """As many long bodies as there is room for are on their way in."""


@dataclass
class _Answer:
    status: int = 500
    headers: Headers = field(default_factory=list)
    pieces: Iterator[bytes] = field(default_factory=lambda: iter(()))
    close: Callable[[], None] = lambda: None


class Gate:
    """The app as the server calls it. `threads` work; `body_most` bytes of a body are read, a longer one is refused.

    `lanes`: paths with threads of their own, and how many: who waits there holds up nobody elsewhere.
    `large`: paths to which longer bodies may be sent, and how long. [bytes]
    `is_behind`: a web server on this computer passes requests on, and says whose they are.
    """

    def __init__(
        self, app: WSGIApplication, *, threads: int, body_most: int, large: Mapping[str, int] | None = None,
        lanes: Mapping[str, int] | None = None, is_behind: bool = False,
    ) -> None:
        self.app = app
        self.is_behind = is_behind
        self.body_most = body_most
        self._large_paths = large or {}
        self._large = asyncio.Semaphore(LARGE_MOST)
        self._threads = ThreadPoolExecutor(threads, thread_name_prefix="request")
        self._lanes = {path: ThreadPoolExecutor(many, thread_name_prefix=path) for path, many in (lanes or {}).items()}
        self._inside = 0
        self._of_address: Counter[str] = Counter()

    async def __rsgi__(self, scope: Scope, proto: HTTPProtocol) -> None:
        """Answer one request."""
        if scope.proto != "http":
            return
        address = _host(scope.client)[0]
        if self.is_behind:
            address = caller(address, scope.headers.get("x-forwarded-for"))
        if self._inside >= ALL_MOST or self._of_address[address] >= ADDRESS_MOST:
            _refuse(scope, proto, 503, _TOO_MANY, [("retry-after", "5")])
            return
        self._inside += 1
        self._of_address[address] += 1
        try:
            await self._answer(scope, proto)
        finally:
            self._inside -= 1
            self._of_address[address] -= 1
            if not self._of_address[address]:
                del self._of_address[address]

    def __rsgi_del__(self, _loop: object) -> None:
        """Let requests under way end."""
        for threads in (self._threads, *self._lanes.values()):
            threads.shutdown(wait=True)

    async def _answer(self, scope: Scope, proto: HTTPProtocol) -> None:
        async with contextlib.AsyncExitStack() as room:
            try:
                body = await self._read(scope, proto, room)
            except _TooSlow:
                _refuse(scope, proto, 408, _TOO_SLOW, [("connection", "close")])
            except _TooMany:
                _refuse(scope, proto, 503, _TOO_MANY, [("retry-after", "5"), ("connection", "close")])
            else:
                await self._pass_on(scope, proto, body)

    async def _pass_on(self, scope: Scope, proto: HTTPProtocol, body: bytes | None) -> None:
        loop = asyncio.get_running_loop()
        environ = make_environ(scope, body, self._most(scope))
        threads = self._lanes.get(scope.path, self._threads)
        answer, first, is_whole = await loop.run_in_executor(threads, self._begin, environ)
        if is_whole:
            proto.response_bytes(answer.status, answer.headers, first)
        else:
            await self._send_on(loop, proto, answer, first)

    async def _read(self, scope: Scope, proto: HTTPProtocol, room: contextlib.AsyncExitStack) -> bytes | None:
        """Return the body, or None where it is too long. Raises _TooSlow, _TooMany.

        room: takes up a place among the long bodies where this is one, and gives it back when it closes.
        """
        if scope.headers.get("content-length", "0") == "0" and "transfer-encoding" not in scope.headers:
            return b""
        now = asyncio.get_running_loop().time
        end, most = now() + BODY_S, self.body_most
        parts: list[bytes] = []
        length = 0
        try:
            async with asyncio.timeout(SILENCE_S) as patience:
                async for piece in proto:
                    length += len(piece)
                    if length > most and most < self._most(scope):
                        await self._take_place(room)
                        most = self._most(scope)
                    if length > most:
                        return None
                    parts.append(bytes(piece))
                    patience.reschedule(min(now() + SILENCE_S, end))
        except TimeoutError as error:
            raise _TooSlow from error
        return b"".join(parts)

    def _most(self, scope: Scope) -> int:
        return max(self.body_most, self._large_paths.get(scope.path, 0))

    async def _take_place(self, room: contextlib.AsyncExitStack) -> None:
        if self._large.locked():
            raise _TooMany
        await room.enter_async_context(self._large)

    def _begin(self, environ: WSGIEnvironment) -> tuple[_Answer, bytes, bool]:
        """In a thread: call the app, and take from it all of a usual answer, or the beginning of a long one."""
        answer = _Answer()
        try:
            answer = call_app(self.app, environ)
            parts: list[bytes] = []
            length = 0
            for piece in answer.pieces:
                parts.append(piece)
                length += len(piece)
                if length > WHOLE_MOST:
                    return answer, b"".join(parts), False
            answer.close()
        except Exception:
            # The app answers its own errors; what comes here is a fault below it.
            sys.excepthook(*sys.exc_info())
            with contextlib.suppress(Exception):  # it may be what failed
                answer.close()
            return _Answer(500, [("content-type", "text/plain; charset=utf-8")]), _FAILED.encode(), True
        return answer, b"".join(parts), True

    async def _send_on(
        self, loop: asyncio.AbstractEventLoop, proto: HTTPProtocol, answer: _Answer, first: bytes
    ) -> None:
        transport = proto.response_stream(answer.status, answer.headers)
        piece: bytes | None = first
        try:
            while piece:
                await asyncio.wait_for(transport.send_bytes(piece), READER_S)
                piece = await loop.run_in_executor(self._threads, _some, answer.pieces)
        except TimeoutError:
            pass  # Whoever reads so slowly asks again. The connection ends with the task.
        finally:
            await loop.run_in_executor(self._threads, answer.close)


def _some(pieces: Iterator[bytes]) -> bytes:
    """In a thread: return the next stretch of a long answer, empty at its end."""
    parts: list[bytes] = []
    length = 0
    for piece in pieces:
        parts.append(piece)
        length += len(piece)
        if length >= PIECE:
            break
    return b"".join(parts)


def call_app(app: WSGIApplication, environ: WSGIEnvironment) -> _Answer:
    """Call a WSGI app and return its answer, its pieces not yet asked for."""
    answer = _Answer()

    def start_response(status: str, headers: Headers, exc_info: object = None) -> Callable[[bytes], None]:
        answer.status, answer.headers = int(status.split(" ", 1)[0]), list(headers)

        def write(_piece: bytes) -> None:
            raise NotImplementedError("This app yields its answer.")

        return write

    made = app(environ, start_response)
    answer.pieces = iter(made)
    answer.close = getattr(made, "close", lambda: None)
    return answer


def make_environ(scope: Scope, body: bytes | None, body_most: int) -> WSGIEnvironment:
    """Return the WSGI environment of a request. A body of None was too long: the app is told so and refuses it."""
    host, port = _host(scope.server)
    address, address_port = _host(scope.client)
    environ: WSGIEnvironment = {
        "REQUEST_METHOD": scope.method,
        "SCRIPT_NAME": "",
        "PATH_INFO": scope.path.encode("utf-8", "surrogateescape").decode("latin-1"),
        "QUERY_STRING": scope.query_string,
        "SERVER_NAME": host,
        "SERVER_PORT": port,
        "SERVER_PROTOCOL": f"HTTP/{scope.http_version}",
        "REMOTE_ADDR": address,
        "REMOTE_PORT": address_port,
        "wsgi.version": (1, 0),
        "wsgi.url_scheme": scope.scheme,
        "wsgi.input": io.BytesIO(body or b""),
        "wsgi.input_terminated": True,
        "wsgi.errors": sys.stderr,
        "wsgi.multithread": True,
        "wsgi.multiprocess": False,
        "wsgi.run_once": False,
    }
    for name, value in scope.headers.items():
        # A name with an underscore would pass for another one with a dash.
        if "_" not in name and name not in ("content-length", "content-type", "transfer-encoding"):
            key = f"HTTP_{name.upper().replace('-', '_')}"
            joint = "; " if name == "cookie" else ","
            environ[key] = f"{environ[key]}{joint}{value}" if key in environ else value
    if "content-type" in scope.headers:
        environ["CONTENT_TYPE"] = scope.headers.get("content-type")
    environ["CONTENT_LENGTH"] = str(body_most + 1 if body is None else len(body))
    environ.setdefault("HTTP_HOST", scope.authority or host)
    return environ


def _host(text: str) -> tuple[str, str]:
    host, _, port = text.rpartition(":")
    return (host.strip("[]"), port) if host else (text, "0")


def _refuse(scope: Scope, proto: HTTPProtocol, status: int, words: str, headers: Headers) -> None:
    if scope.path.startswith("/api/"):
        said = {"marker": "cellarslate", "ok": False, "error": words, "problems": [], "status": status}
        kind, body = "application/json", json.dumps(said)
    else:
        kind, body = "text/plain; charset=utf-8", f"{words}\n"
    with contextlib.suppress(Exception):  # the sender may have gone
        proto.response_str(status, [("content-type", kind), ("cache-control", "no-store"), *headers], body)
