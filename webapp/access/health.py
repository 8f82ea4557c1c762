"""How the server is, for a monitor: `/health`. Everybody may ask; figures are only for who is signed in."""

from __future__ import annotations

from flask import Flask, Response, current_app, jsonify

from webapp.access.guard import current
from webapp.access.pages import bp
from webapp.keeping.health import DOWN, Health, Watch
from webapp.version import VERSION


def init_app(app: Flask) -> None:
    """Have the book of this app looked after."""
    app.extensions["health"] = Watch(app.extensions["book"], app.config["DATA_DIR"])


@bp.get("/health")
def health() -> tuple[Response, int]:
    """Send the state as JSON: 200, or 503 where entries cannot be kept."""
    found: Health = current_app.extensions["health"].look()
    said: dict[str, object] = {"status": found.status, "version": VERSION, "checks": found.checks}
    if current.person:
        said["figures"] = found.figures
    answer = jsonify(said)
    answer.headers["Cache-Control"] = "no-store"
    return answer, 503 if found.status == DOWN else 200
