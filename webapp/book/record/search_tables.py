"""The tables of the search: what has a name, the words of remarks, and what is still to be indexed.

All of it is derived. Whoever writes into a table that has names fires a trigger that puts the row on the list
`search_due`; the index is made at the end of the same write (book/search/keeping.py). Entries are found by their book
numbers: those above `above`, and those up to `below`, are not indexed yet.
"""

from __future__ import annotations

PREFIX = "search_"  # how the name of each of them begins
# A beginning of one to three characters is looked up; a longer one is gathered from the words that begin with it.
_KEPT = "prefix='1 2 3', tokenize='unicode61 remove_diacritics 2'"
# The words of remarks are kept without the remarks: those stand in the log, which never changes.
FULL_TEXT = (
    "CREATE VIRTUAL TABLE search_names_fts USING "
    f"fts5(words, content='search_names', content_rowid='id', {_KEPT})",
    f"CREATE VIRTUAL TABLE search_remarks USING fts5(words, content='', {_KEPT})",
    "CREATE VIRTUAL TABLE search_names_words USING fts5vocab(search_names_fts, row)",
    "CREATE VIRTUAL TABLE search_remarks_words USING fts5vocab(search_remarks, row)",
)
FULL_TEXT_NAMES = ("names_words", "remarks_words", "names_fts", "remarks")  # without the prefix

# [sort: (table, the key of its row, the columns whose change counts; None where rows are never updated)]
SOURCES: dict[str, tuple[str, str, tuple[str, ...] | None]] = {
    "vessel": ("vessels", "mark", ("name", "title", "sort", "place", "wood", "use", "note", "retired")),
    "person": ("people", "code", ("name", "retired")),
    "instrument": ("instruments", "id", ("sort", "title", "state")),
    "party": ("parties", "name || '|' || {row}.role", ("address", "number", "note", "retired")),
    "fill": ("fills", "id", None),
    "bottling": ("bottlings", "id", None),
}


def key_in(key: str, row: str) -> str:
    """Return the SQL for the key of a row of a source. `row`: what the row is called there, such as NEW."""
    return f"{row}.{key.format(row=row)}"


def _triggers() -> str:
    made = []
    for sort, (table, key, columns) in SOURCES.items():
        events = [("INSERT", "NEW", "new"), ("DELETE", "OLD", "gone")]
        if columns:
            events.append((f"UPDATE OF {', '.join(columns)}", "NEW", "other"))
        made += [
            f"CREATE TRIGGER search_{table}_{name} AFTER {event} ON {table} BEGIN "  # noqa: S608
            f"INSERT INTO search_due (sort, key) VALUES ('{sort}', {key_in(key, row)}); END;"
            for event, row, name in events
        ]
    return "\n".join(made)


SEARCH = f"""
CREATE TABLE search_names (
    id INTEGER PRIMARY KEY, sort TEXT NOT NULL, key TEXT NOT NULL, name TEXT NOT NULL, facts TEXT NOT NULL,
    words TEXT NOT NULL, UNIQUE (sort, key)
) STRICT;
CREATE TABLE search_due (no INTEGER PRIMARY KEY, sort TEXT NOT NULL, key TEXT NOT NULL) STRICT;
CREATE TABLE search_state (name TEXT PRIMARY KEY, value INTEGER NOT NULL) STRICT, WITHOUT ROWID;
{"".join(f"{one};" for one in FULL_TEXT)}
{_triggers()}
INSERT INTO search_state VALUES ('above', 0), ('below', 0), ('version', 0);
"""  # noqa: S608
