"""The floor: pages that a phone opens with or without signal, and the API that they speak to."""

from __future__ import annotations

from flask import Blueprint

bp = Blueprint("floor", __name__)

# Each module hangs its routes on the blueprint.
import webapp.floor.api  # noqa: E402
import webapp.floor.enclosures  # noqa: E402
import webapp.floor.labels  # noqa: E402
import webapp.floor.pages  # noqa: E402
import webapp.floor.shown  # noqa: E402, F401

__all__ = ["bp"]
