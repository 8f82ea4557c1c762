"""The book: an append-only log of entries, and everything that is folded from it."""
