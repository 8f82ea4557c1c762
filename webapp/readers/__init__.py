"""Doors for other tools under /api/read: a key, what it may read, JSON and CSV. Nothing here changes the book.

In words: docs/readers.md.
"""

from webapp.readers.guard import bp

from webapp.readers import calendar, pages  # isort: skip

__all__ = ["bp", "calendar", "pages"]
