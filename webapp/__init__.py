"""Cellarslate: an offline-first floor log for craft fruit distilleries."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from webapp.version import VERSION

if TYPE_CHECKING:
    from flask import Flask

__version__ = VERSION


def create_app(data_dir: Path | str, *, testing: bool = False, **config: object) -> Flask:
    """Return the Flask app over the book in `data_dir`, which is made if it is not there.

    `config` overrides Flask's settings: TLS (bool: cookies are Secure, HSTS is sent), PUBLIC_HOST (for labels),
    PASSKEY_ORIGINS (origins of the house's own names, such as https://log.stillhouse.example: passkeys are good there),
    DEMO (bool: open doors for everybody; only for a book that the demo laid itself, webapp/doors),
    BEHIND_PROXY (bool: a web server on this computer passes requests on; webapp/serving/behind.py),
    PLAIN_MODULES (bool: phones get the scripts as they are written, not packed; webapp/shipping/built.py).
    Raises BookError with a sentence if the book cannot be opened.
    """
    # Imported here so that webapp.trade and webapp.kinds can be used without Flask.
    from flask import Flask

    from webapp import access, desk, floor, isolate, readers, shipping
    from webapp.book.opening import open_book
    from webapp.keeping.witnesses import Witnesses
    from webapp.places import STATIC_DIR

    data_dir = Path(data_dir)
    data_dir.mkdir(parents=True, exist_ok=True)
    app = Flask("webapp", static_folder=str(STATIC_DIR), static_url_path="/static")
    app.config.update(
        TESTING=testing,
        DATA_DIR=data_dir,
        TLS=False,
        DEMO=False,
        PUBLIC_HOST=None,
        PASSKEY_ORIGINS=(),
        MAX_CONTENT_LENGTH=512 * 1024,
        MAX_FORM_MEMORY_SIZE=256 * 1024,
        # A house moves in with a workbook, and adds papers; what a phone hands in is never as long.
        LARGE_BODIES={"/desk/sheets": 5_000_000, "/desk/enclosures": 25_000_000},
        SEND_FILE_MAX_AGE_DEFAULT=0,
    )
    app.config.update(config)
    isolate.init_app(app)
    app.jinja_env.trim_blocks = app.jinja_env.lstrip_blocks = True
    app.extensions["book"] = open_book(data_dir / "book.sqlite")
    app.extensions["witnesses"] = Witnesses(app.extensions["book"], data_dir)
    app.before_request(_make_room)  # before anything reads the form
    access.init_app(app)
    app.register_blueprint(shipping.bp)
    app.register_blueprint(floor.bp)
    app.register_blueprint(desk.bp)
    app.register_blueprint(readers.bp)
    if app.config["DEMO"]:
        from webapp import doors

        doors.init_app(app)
    if app.config.get("BEHIND_PROXY"):
        from webapp.serving.behind import Behind

        app.wsgi_app = Behind(app.wsgi_app)  # type: ignore[method-assign]
    return app


def _make_room() -> None:
    """Let a longer body in where one is expected."""
    from flask import current_app, request

    most = current_app.config["LARGE_BODIES"].get(request.path)
    if most:
        request.max_content_length = request.max_form_memory_size = most
