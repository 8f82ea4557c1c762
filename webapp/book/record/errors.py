"""The error that the rooms of the book raise."""


class BookError(Exception):
    """A request that the book cannot fulfil; `str(error)` is a sentence that tells the next step."""
