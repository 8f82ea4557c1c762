"""How the property tests of this room run."""

from hypothesis import settings

# The same examples each time, and no clock: a busy machine is no wrong figure.
steady = settings(deadline=None, derandomize=True, max_examples=300)
