"""The version of the program. It stands alone, so that every room may name it."""

VERSION = "0.2.0"
