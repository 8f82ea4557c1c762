"""Tests of Cellarslate. `python -m tests` finds a browser and runs them all."""
