"""How the floor comes to a phone: what it keeps of a version, packed for the way, and the worker that keeps it."""

from __future__ import annotations

from flask import Blueprint

bp = Blueprint("shipping", __name__)

# Each module hangs its routes on the blueprint.
import webapp.shipping.compress  # noqa: E402
import webapp.shipping.worker  # noqa: E402, F401

__all__ = ["bp"]
