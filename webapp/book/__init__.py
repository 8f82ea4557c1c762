"""The book: an append-only log of entries, and everything that is folded from it.

The wings, each importing only those before it: record, before, checks, fold, house; then one for each question that is
asked of the book: lineage, periods, vats, cellar, still, goods. Beside them lie the one way in (intake), the opening of
a book, the cards of the phones, and the verification of a whole book.
"""
