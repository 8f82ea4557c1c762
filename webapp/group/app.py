"""The group's server: takes the batches of the sites, keeps their folds, and shows all of them side by side.

People, one-time codes and the sites' secrets lie in a small book of the group's own folder, as at a site; so sign-in,
sessions and backup of that folder are the same code. The record of the sites lies in PostgreSQL.
"""

from __future__ import annotations

import atexit
import threading
from pathlib import Path

import psycopg
from flask import Flask, current_app, redirect, url_for
from werkzeug.wrappers import Response

from webapp import access, isolate
from webapp.access import errors
from webapp.book.opening import open_book
from webapp.group import api, files
from webapp.group.folds import Folds
from webapp.group.store import AWAY, GroupBusy, open_store
from webapp.places import STATIC_DIR

WAIT_S = 30.0


def create_app(data_dir: Path | str, *, DATABASE: str, testing: bool = False, **config: object) -> Flask:  # noqa: N803
    """Return the group's Flask app over the database at that address; its own keys and people lie in `data_dir`.

    Raises BookError with a sentence if the database or the folder cannot be opened. When testing, the folds are
    brought up to date by `app.extensions["folds"].step()` alone.
    """
    data_dir = Path(data_dir)
    data_dir.mkdir(parents=True, exist_ok=True, mode=0o700)
    app = Flask("webapp", static_folder=str(STATIC_DIR), static_url_path="/static")
    app.config.update(
        TESTING=testing, DATA_DIR=data_dir, TLS=False, PUBLIC_HOST=None, MAX_CONTENT_LENGTH=512 * 1024,
        MAX_FORM_MEMORY_SIZE=256 * 1024, SEND_FILE_MAX_AGE_DEFAULT=0, HOME="group.sites_page",
        HOUSE="The group",
    )
    app.config.update(config)
    isolate.init_app(app)
    app.jinja_env.trim_blocks = app.jinja_env.lstrip_blocks = True
    # The command has looked before: what is away now comes back, as after both computers had no power.
    store = open_store(DATABASE, wait_s=WAIT_S)
    folds = Folds(store, data_dir / "sites")
    app.extensions.update(book=open_book(data_dir / "book.sqlite"), store=store, folds=folds)
    access.init_app(app)
    app.register_blueprint(api.bp)
    app.register_blueprint(files.bp)  # the pages', with the files on it
    for away in (GroupBusy, psycopg.OperationalError, psycopg.InterfaceError):
        app.register_error_handler(away, _busy)
    app.add_url_rule("/", "root", lambda: redirect(url_for("group.sites_page")))
    app.context_processor(lambda: {"group": True, "home": "/group/", "side": "desk"})
    if not testing:
        thread = threading.Thread(target=folds.run, name="folds", daemon=True)
        thread.start()
        atexit.register(folds.stop)
    return app


def _busy(error: Exception) -> Response:
    """Answer a page while the database is away: it will be back."""
    current_app.extensions["store"].drop()
    return errors.show_error(503, AWAY, None)
