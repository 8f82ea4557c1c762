"""The front of the demo: doors into the invented house that let everybody in, without a password.

They hang on an app only where two things are so: the command `demo` asked for them, and the book says that the
demo laid it (webapp/demo/own.py). No other command asks, and no request can.
"""

from __future__ import annotations

from flask import Blueprint, Flask

from webapp.book.record.errors import BookError
from webapp.demo import own

bp = Blueprint("doors", __name__, url_prefix="/demo")


def init_app(app: Flask) -> None:
    """Hang the doors on this app. BookError where its book is not the demo's own."""
    if not own.is_whole(app.extensions["book"]):
        raise BookError("This book is not the demo's own, so it has no open doors. Serve it with `cellarslate serve`.")
    app.register_blueprint(bp)
    app.before_request(pages.lead)


# Each module hangs its routes on the blueprint.
from webapp.doors import label_strip, pages  # noqa: E402, F401
