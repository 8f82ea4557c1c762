"""The floor: pages that a phone keeps and opens without signal, the worker that keeps them, the API they speak to."""

from __future__ import annotations

from flask import Blueprint

bp = Blueprint("floor", __name__)

# Each module hangs its routes on the blueprint.
import webapp.floor.api  # noqa: E402
import webapp.floor.compress  # noqa: E402
import webapp.floor.pages  # noqa: E402
import webapp.floor.worker  # noqa: E402, F401

__all__ = ["bp"]
