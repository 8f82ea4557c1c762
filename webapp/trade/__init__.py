"""The numbers of the trade: pure computation, no I/O but reading its own tables. See docs/numbers.md."""
