"""What the rooms of the book raise."""


class BookError(Exception):
    """Something that the book cannot do; `str(error)` is a sentence that says what to do next."""
