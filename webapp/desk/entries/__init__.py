"""Entries at the desk: all of them, one of them, its amendment, and what the book asks."""
