"""What later rules say otherwise of a frozen book, by version: each code or sum with the reason, in a sentence.

A question may come or go because a check was bettered; a sum may change because an error was mended. Whoever changes
one says so here, and in docs/changelog.md.
"""

# version -> {code of the question: why it came, went, or reads otherwise}
CHANGED_QUESTIONS: dict[str, dict[str, str]] = {
    "0.1.0": {
        "held_strength": "A strength far from what stands in the vessel by the book is asked about since 0.2.0.",
        "ferment_fast": "A gravity that fell in a few hours by more than fruit does in ten is asked about since 0.2.0.",
        "account_other": "A move out of another account than the vessel stands in changes that of all it holds; "
        "that went without a question.",
        "account_joined": "A move into a vessel of another account changes that of what stands there; that went "
        "without a question.",
    },
}

# version -> {part of said.py's sums: why it came out otherwise}
CHANGED_SUMS: dict[str, dict[str, str]] = {}
