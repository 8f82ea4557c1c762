"""Mutation testing: small faults are put into the program one at a time, and the tests must notice each of them."""
