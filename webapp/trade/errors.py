"""What the sums raise when an input cannot be used."""


class OutOfDomain(ValueError):
    """An input lies outside the range for which its source gives figures.

    Carries ``what`` (the input's name), ``value``, ``low`` and ``high`` (the range; None when open) and
    ``sentence``, which says what to do next and is also the message.
    """

    def __init__(self, what: str, value: float, low: float | None, high: float | None, sentence: str) -> None:
        super().__init__(sentence)
        self.what = what
        self.value = value
        self.low = low
        self.high = high
        self.sentence = sentence


class NotANumber(ValueError):
    """A typed text is no number; the message says what to type instead."""
