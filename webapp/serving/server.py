"""The web server: one worker process that owns the book, and a parent that watches over it.

Why this server and this shape: docs/decisions/0002-server.md.
"""

from __future__ import annotations

import gc
import logging
import multiprocessing
import os
import pkgutil
import socket
import sys
import threading
import time
from collections.abc import Callable
from contextlib import closing
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any, Protocol

import click
from granian import Granian
from granian.constants import HTTPModes, Interfaces, SSLProtocols
from granian.http import HTTP1Settings
from granian.log import LogLevels

from webapp.book.record.errors import BookError
from webapp.keeping import schedule, scrub, upkeep
from webapp.keeping.folder_lock import AlreadyServed, hold_folder
from webapp.serving.addresses import is_loopback
from webapp.serving.certificates import LeafFiles
from webapp.serving.gate import Gate

if TYPE_CHECKING:
    from flask import Flask
    from granian.server.common import AbstractServer

# Readers (desk pages, cards) and whoever changes the registry. The book has one writer: more would only queue for it.
THREADS = 8
# Hand-ins queue for it by themselves, and those that wait are taken together (book/record/line.py).
LANES = {"/api/hand-in": 32}
# How long requests under way may take to end after a stop is asked. [s]
STOP_WAIT_S = 15
# A look is two small files, or one certificate and the computer's own addresses.
_RENEWAL_LOOK_EVERY_S = 900.0
_LOCK_WAIT_S = 10.0
# How long a connection may stand open without a request. [ms]
_HEAD_WAIT_MS = 15_000


class Certificate(Protocol):
    """Where the server's certificate comes from."""

    def take(self) -> LeafFiles:
        """Return the files to serve with."""

    def is_due(self) -> bool:
        """Say whether another pair is to be taken than was last."""


class CannotServe(Exception):
    """A sentence for the person who started the server."""


def serve(
    data_dir: Path,
    host: str,
    port: int,
    certificate: Certificate | None,
    greet: Callable[[Flask], None] | None,
    *,
    config: dict[str, object],
) -> None:
    """Serve the book in `data_dir` until asked to stop.

    With a `certificate` the server speaks https, and starts a fresh worker whenever another is to be served;
    without it, plain http. `greet` is called with the app, in the worker.
    """
    check_port(host, port)
    check_folder(data_dir)
    # A forked child would inherit locks and open books; a spawned one starts clean, and as on Windows.
    multiprocessing.set_start_method("spawn", force=True)
    while True:
        leaf = None if certificate is None else certificate.take()
        server = _build_server(host, port, leaf)
        is_renewal = threading.Event()
        if certificate is not None:
            _watch_certificate(certificate, server, is_renewal)
        load = partial(_load_app, str(data_dir), greet, config)
        try:
            server.serve(target_loader=load, wrap_loader=False)
        except SystemExit as error:
            # The worker could not start or ended on its own, and has said why.
            raise SystemExit(2) from error
        if not is_renewal.is_set():
            return


def check_port(host: str, port: int) -> None:
    """Raise CannotServe if the address cannot be had.

    Asked first, since the server itself shares ports with a second copy of itself without a word.
    """
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    with closing(socket.socket(family, socket.SOCK_STREAM)) as sock:
        if sys.platform != "win32":
            # Only past connections still winding down; a listener in the way is still refused.
            sock.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            sock.bind((host, port))
        except OSError as error:
            raise CannotServe(_explain_bind(host, port, error)) from error


def check_folder(data_dir: Path) -> None:
    """Raise AlreadyServed if another server has the folder, CannotServe if nothing can be written there."""
    try:
        hold_folder(data_dir).close()
    except OSError as error:
        raise CannotServe(
            f"Cannot write in {data_dir}: {error.strerror}. Choose another with --data."
        ) from error


def find_free_port(host: str = "127.0.0.1") -> int:
    """Return a port that is free at this moment."""
    with closing(socket.socket(socket.AF_INET6 if ":" in host else socket.AF_INET)) as sock:
        sock.bind((host, 0))
        return int(sock.getsockname()[1])


def _explain_bind(host: str, port: int, error: OSError) -> str:
    if isinstance(error, PermissionError):
        return f"Port {port} needs an administrator on this computer. Choose one above 1024 with --port."
    if isinstance(error, socket.gaierror):
        return f"This computer knows no address {host}. Check --host."
    if is_loopback(host) or "in use" in str(error) or error.errno in (48, 98, 10013, 10048):
        return f"Port {port} is in use. Stop the program that has it, or choose another with --port."
    return f"This computer cannot listen at {host}. Check --host: {error.strerror}."


def _build_server(host: str, port: int, leaf: LeafFiles | None) -> AbstractServer[Any]:
    return Granian(
        "webapp",  # Shown in its log only: the loader below makes the app.
        address=host,
        port=port,
        interface=Interfaces.RSGI,
        workers=1,
        workers_kill_timeout=STOP_WAIT_S,
        websockets=False,
        # Told to find the version out by itself, it waits for ever for a first byte: a thousand silent connections
        # would leave no place for anybody.
        http=HTTPModes.http1,
        http1_settings=HTTP1Settings(header_read_timeout=_HEAD_WAIT_MS),
        log_level=LogLevels.error,
        ssl_cert=leaf.certificate_path if leaf else None,
        ssl_key=leaf.key_path if leaf else None,
        # Phones from 2014 on speak 1.2; newer ones take 1.3.
        ssl_protocol_min=SSLProtocols.tls12,
    )


def _watch_certificate(
    certificate: Certificate, server: AbstractServer[Any], is_renewal: threading.Event
) -> None:
    """End the server's round when another certificate is to be served."""

    def look() -> None:
        while True:
            time.sleep(_RENEWAL_LOOK_EVERY_S)
            try:
                is_due = certificate.is_due()
            except Exception:  # a look that fails must not be the last, or the certificate runs out
                logging.getLogger("webapp").exception("The certificate could not be looked at.")
                continue
            if is_due:
                is_renewal.set()
                server.signal_handler_interrupt()
                return

    threading.Thread(target=look, name="certificate watch", daemon=True).start()


def _collect_seldom() -> None:
    """Look for rings of dead objects seldom, and not among what the program is made of.

    As Python comes it looks each time that 700 more objects are alive: a tenth of the time of a hand-in.
    """
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20, 50)


def _load_app(data_dir: str, greet: Callable[[Flask], None] | None, config: dict[str, Any]) -> Any:
    """Make the app inside the worker process. Ends the worker with a sentence where it cannot."""
    _end_with_parent()
    try:
        # Kept for the life of the process. A worker whose parent was killed takes a moment to go.
        lock = hold_folder(Path(data_dir), wait_s=_LOCK_WAIT_S)
        # Which app: the site's own, or the group's. Named, not passed: the worker is a fresh process.
        make_app = pkgutil.resolve_name(config.pop("FACTORY", "webapp:create_app"))
        app = make_app(Path(data_dir), **config)
        lock.take_book()  # one that was made just now
        lock.beat()
        app.extensions["serving_lock"] = lock
        if "book" in app.extensions:  # the group's app has one for each site, and looks after them itself
            scrub.start_scrubs(app.extensions["book"], Path(data_dir))
            upkeep.start_upkeep(app.extensions["book"])
            if "witnesses" in app.extensions:
                app.extensions["witnesses"].start()
        if not config.get("DEMO"):
            schedule.start_backups(Path(data_dir), config.get("BACKUPS"))
        if greet is not None:
            greet(app)
        _collect_seldom()
        is_behind = bool(app.config.get("BEHIND_PROXY"))
        return Gate(
            app, threads=THREADS, body_most=app.config["MAX_CONTENT_LENGTH"],
            large=app.config.get("LARGE_BODIES"), lanes=LANES, is_behind=is_behind,
        )
    except (AlreadyServed, BookError) as error:
        click.echo(f"Error: {error}", err=True)
    except Exception:
        logging.getLogger("webapp").exception("The app could not start.")
    sys.stderr.flush()
    os._exit(2)


def _end_with_parent() -> None:
    """End this worker the moment its parent is gone: left alone it would keep the port and the book."""
    parent = multiprocessing.parent_process()
    if parent is None:
        return

    def wait() -> None:
        parent.join()
        # No tidy ending: the parent was killed, and the book survives a kill at any point.
        os._exit(1)

    threading.Thread(target=wait, name="parent watch", daemon=True).start()
