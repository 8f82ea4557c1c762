"""The floor: pages that a phone keeps and opens without signal, the worker that keeps them, the API they speak to."""

from __future__ import annotations

from flask import Blueprint

bp = Blueprint("floor", __name__)

# Each module hangs its routes on the blueprint.
from webapp.floor import api, compress, pages, worker  # noqa: E402

__all__ = ["api", "bp", "compress", "pages", "worker"]
