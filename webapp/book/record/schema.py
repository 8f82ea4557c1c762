"""The tables, as small named steps. A step that has once been released is never changed; a new one is added below.

`entries`, `aside` and the registry are the record. The tables of the step `fold` hold only what can be computed from
them again (`rebuild`).
"""

from __future__ import annotations

import secrets
import sqlite3
from datetime import UTC, datetime
from pathlib import Path

from sqlite_utils import Database

from webapp.book.record.errors import BookError
from webapp.book.record.search_tables import SEARCH

APPLICATION_ID = 0x43534C42  # "CSLB"
REGISTRY_STATED = "registry_stated"  # the setting of a book whose changes name each row of its registry

RECORD = """
CREATE TABLE settings (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE entries (
    book_no INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, kind TEXT NOT NULL, kind_version INTEGER NOT NULL,
    mark TEXT NOT NULL, read_at TEXT NOT NULL, typed_at TEXT NOT NULL, person TEXT NOT NULL, role TEXT NOT NULL,
    device TEXT NOT NULL, seq INTEGER NOT NULL, body TEXT NOT NULL, body_sha256 TEXT NOT NULL,
    received_at TEXT NOT NULL, skew_s REAL NOT NULL, via TEXT NOT NULL, digest TEXT NOT NULL
) STRICT;
CREATE INDEX entries_mark ON entries (mark);
CREATE INDEX entries_kind ON entries (kind);
CREATE INDEX entries_person ON entries (person);
CREATE INDEX entries_device ON entries (device, seq);
CREATE TRIGGER entries_stay BEFORE UPDATE ON entries
BEGIN SELECT RAISE(ABORT, 'an entry in the book is never changed: amend it'); END;
CREATE TRIGGER entries_remain BEFORE DELETE ON entries
BEGIN SELECT RAISE(ABORT, 'an entry in the book is never taken out: strike it'); END;
CREATE TABLE aside (
    no INTEGER PRIMARY KEY, id TEXT, device TEXT, seq INTEGER, settled TEXT NOT NULL, body TEXT NOT NULL,
    body_sha256 TEXT NOT NULL, problems TEXT NOT NULL, received_at TEXT NOT NULL, via TEXT NOT NULL,
    UNIQUE (settled, body_sha256)
) STRICT;
CREATE INDEX aside_id ON aside (id);
CREATE TRIGGER aside_stays BEFORE UPDATE ON aside
BEGIN SELECT RAISE(ABORT, 'what was put aside is never changed'); END;
CREATE TRIGGER aside_remains BEFORE DELETE ON aside
BEGIN SELECT RAISE(ABORT, 'what was put aside is never taken out'); END;
CREATE TABLE seen (device TEXT NOT NULL, low INTEGER NOT NULL, high INTEGER NOT NULL, PRIMARY KEY (device, low))
    STRICT, WITHOUT ROWID;
"""

REGISTRY = """
CREATE TABLE vessels (
    mark TEXT PRIMARY KEY, name TEXT NOT NULL, title TEXT NOT NULL, sort TEXT NOT NULL, place TEXT NOT NULL,
    capacity_l REAL, working_l REAL, tare_kg REAL, wood TEXT NOT NULL, toast TEXT NOT NULL, use TEXT NOT NULL,
    size_class TEXT NOT NULL, in_zone INTEGER NOT NULL, curved INTEGER NOT NULL, note TEXT NOT NULL,
    retired INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX vessels_sort ON vessels (sort, name);
CREATE TABLE instruments (
    id TEXT PRIMARY KEY, sort TEXT NOT NULL, title TEXT NOT NULL, low REAL, high REAL, unit TEXT NOT NULL,
    due_on TEXT, state TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE limits (
    scope TEXT NOT NULL CHECK (scope IN ('site', 'material', 'sort', 'vessel')), key TEXT NOT NULL,
    kind TEXT NOT NULL, field TEXT NOT NULL, usual TEXT, possible TEXT, PRIMARY KEY (scope, key, kind, field)
) STRICT, WITHOUT ROWID;
CREATE TABLE site (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE people (
    code TEXT PRIMARY KEY, name TEXT NOT NULL, roles TEXT NOT NULL,
    access TEXT NOT NULL CHECK (access IN ('floor', 'distiller', 'office')),
    password TEXT, pin TEXT, retired INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE devices (
    id TEXT PRIMARY KEY, name TEXT NOT NULL, secret_sha256 TEXT UNIQUE, enrolled_at TEXT, enrolled_by TEXT,
    revoked_at TEXT, heard_at TEXT, skew_s REAL
) STRICT, WITHOUT ROWID;
CREATE TABLE tokens (
    token_sha256 TEXT PRIMARY KEY, name TEXT NOT NULL, made_by TEXT NOT NULL, made_at TEXT NOT NULL, used_at TEXT
) STRICT, WITHOUT ROWID;
CREATE TABLE changes (
    no INTEGER PRIMARY KEY, at TEXT NOT NULL, person TEXT NOT NULL, what TEXT NOT NULL, key TEXT NOT NULL,
    before TEXT, after TEXT
) STRICT;
CREATE TRIGGER changes_stay BEFORE UPDATE ON changes BEGIN SELECT RAISE(ABORT, 'a change stays on record'); END;
CREATE TRIGGER changes_remain BEFORE DELETE ON changes BEGIN SELECT RAISE(ABORT, 'a change stays on record'); END;
"""

FOLD = """
CREATE TABLE amendments (id TEXT PRIMARY KEY, amends TEXT NOT NULL, root TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE INDEX amendments_root ON amendments (root);
CREATE TABLE answers (
    id TEXT PRIMARY KEY, entry TEXT NOT NULL, query TEXT NOT NULL, verdict TEXT NOT NULL, reason TEXT NOT NULL,
    person TEXT NOT NULL, typed_key TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX answers_entry ON answers (entry);
CREATE TABLE folded (
    root TEXT PRIMARY KEY, entry TEXT NOT NULL, order_key TEXT NOT NULL, mark TEXT NOT NULL, keys TEXT NOT NULL,
    standing TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE touches (key TEXT NOT NULL, order_key TEXT NOT NULL, PRIMARY KEY (key, order_key)) STRICT, WITHOUT ROWID;
CREATE TABLE states (
    key TEXT NOT NULL, order_key TEXT NOT NULL, whole INTEGER NOT NULL, body TEXT NOT NULL,
    PRIMARY KEY (key, order_key)
) STRICT, WITHOUT ROWID;
CREATE TABLE flows (
    entry TEXT NOT NULL, n INTEGER NOT NULL, source TEXT NOT NULL, target TEXT NOT NULL, lpa_ul INTEGER NOT NULL,
    volume_ml INTEGER NOT NULL, mass_g INTEGER NOT NULL, at TEXT NOT NULL, PRIMARY KEY (entry, n)
) STRICT, WITHOUT ROWID;
CREATE INDEX flows_source ON flows (source);
CREATE INDEX flows_target ON flows (target);
CREATE TABLE queries (
    entry TEXT NOT NULL, name TEXT NOT NULL, code TEXT NOT NULL, weight TEXT NOT NULL, field TEXT NOT NULL,
    words TEXT NOT NULL, suggestions TEXT NOT NULL, mark TEXT NOT NULL, kind TEXT NOT NULL, person TEXT NOT NULL,
    at TEXT NOT NULL, answer TEXT NOT NULL, PRIMARY KEY (entry, name)
) STRICT, WITHOUT ROWID;
CREATE INDEX queries_open ON queries (weight, at) WHERE answer = '';
CREATE INDEX queries_mark ON queries (mark, at) WHERE answer = '' AND weight <> 'note';
CREATE TABLE runs (id TEXT PRIMARY KEY, still TEXT NOT NULL, what TEXT NOT NULL, started_at TEXT NOT NULL)
    STRICT, WITHOUT ROWID;
CREATE INDEX runs_still ON runs (still, started_at);
CREATE INDEX runs_started ON runs (started_at);
CREATE TABLE card_turns (mark TEXT PRIMARY KEY, turn INTEGER NOT NULL UNIQUE) STRICT, WITHOUT ROWID;
"""

SESSIONS = """
CREATE TABLE ended_sessions (session_sha256 TEXT PRIMARY KEY, at TEXT NOT NULL) STRICT, WITHOUT ROWID;
"""

# Flows know their fills and tax accounts; fills and bottlings are found by name. All is folded anew.
STOCK = """
DROP TABLE flows;
CREATE TABLE flows (
    entry TEXT NOT NULL, n INTEGER NOT NULL, source TEXT NOT NULL, target TEXT NOT NULL, lpa_ul INTEGER NOT NULL,
    volume_ml INTEGER NOT NULL, mass_g INTEGER NOT NULL, source_fill TEXT NOT NULL, target_fill TEXT NOT NULL,
    reason TEXT NOT NULL, source_account TEXT NOT NULL, target_account TEXT NOT NULL, at TEXT NOT NULL,
    PRIMARY KEY (entry, n)
) STRICT, WITHOUT ROWID;
CREATE INDEX flows_source ON flows (source);
CREATE INDEX flows_target ON flows (target);
CREATE INDEX flows_source_fill ON flows (source_fill) WHERE source_fill <> '';
CREATE INDEX flows_target_fill ON flows (target_fill) WHERE target_fill <> '';
CREATE INDEX flows_at ON flows (at);
CREATE TABLE bottlings (
    id TEXT PRIMARY KEY, tank TEXT NOT NULL, fill TEXT NOT NULL, batch TEXT NOT NULL, lot_mark TEXT NOT NULL,
    case_from TEXT NOT NULL, case_to TEXT NOT NULL, odd_case TEXT NOT NULL, at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX bottlings_fill ON bottlings (fill);
CREATE INDEX bottlings_batch ON bottlings (batch);
CREATE TABLE fills (
    id TEXT PRIMARY KEY, mark TEXT NOT NULL, what TEXT NOT NULL, name TEXT NOT NULL, lot TEXT NOT NULL,
    since TEXT NOT NULL, ended_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX fills_mark ON fills (mark, since);
CREATE INDEX fills_name ON fills (name) WHERE name <> '';
CREATE INDEX fills_lot ON fills (lot) WHERE lot <> '';
INSERT OR REPLACE INTO settings VALUES ('fold_anew', '1');
"""

# Part of the record: what somebody has signed. Figures as JSON; each digest goes over the one before it.
CLOSES = """
CREATE TABLE closes (
    no INTEGER PRIMARY KEY, month TEXT NOT NULL UNIQUE, period TEXT NOT NULL, start TEXT NOT NULL, until TEXT NOT NULL,
    zone TEXT NOT NULL, figures TEXT NOT NULL, digest TEXT NOT NULL, book_no INTEGER NOT NULL, person TEXT NOT NULL,
    signed_at TEXT NOT NULL
) STRICT;
CREATE TRIGGER closes_stay BEFORE UPDATE ON closes BEGIN SELECT RAISE(ABORT, 'a closed period stays as signed'); END;
CREATE TRIGGER closes_remain BEFORE DELETE ON closes BEGIN SELECT RAISE(ABORT, 'a closed period stays as signed'); END;
"""

# Bottles are stock and leave by documents; flows know their class; sums of each month are kept. All is folded anew.
GOODS = """
ALTER TABLE flows ADD COLUMN sort TEXT NOT NULL DEFAULT '';
CREATE TABLE dispatches (
    id TEXT PRIMARY KEY, bottling TEXT NOT NULL, at TEXT NOT NULL, why TEXT NOT NULL, document TEXT NOT NULL,
    to_whom TEXT NOT NULL, case_from TEXT NOT NULL, case_to TEXT NOT NULL, cases TEXT NOT NULL, bottles TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX dispatches_bottling ON dispatches (bottling, at);
CREATE TABLE month_sums (
    month TEXT NOT NULL, a TEXT NOT NULL, b TEXT NOT NULL, reason TEXT NOT NULL, sort TEXT NOT NULL,
    lpa_ul INTEGER NOT NULL, n INTEGER NOT NULL, PRIMARY KEY (month, a, b, reason, sort)
) STRICT, WITHOUT ROWID;
INSERT OR REPLACE INTO settings VALUES ('fold_anew', '1');
"""

# An instrument has the table of corrections of its certificate; what was read with it is worked out anew.
CORRECTIONS = """
ALTER TABLE instruments ADD COLUMN corrections TEXT NOT NULL DEFAULT '';
INSERT OR REPLACE INTO settings VALUES ('fold_anew', '1');
"""

# What each material gave of what it promised is kept in the fold: all is folded anew.
YIELDS = """
INSERT OR REPLACE INTO settings VALUES ('fold_anew', '1');
"""

# Places in the fold that a change of the registry concerns and that have not been worked out again since; and seams:
# where that was put off, each with the keys whose states are beyond it as they were (replay.py).
UNJUDGED = """
CREATE TABLE unjudged (order_key TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;
CREATE TABLE seams (order_key TEXT NOT NULL, key TEXT NOT NULL, PRIMARY KEY (order_key, key)) STRICT, WITHOUT ROWID;
"""

# A question is kept as the id of a message and its parameters. What was asked before says what it said until its entry
# is judged again: all of them stand in the list for it.
MESSAGES = """
ALTER TABLE queries ADD COLUMN message TEXT NOT NULL DEFAULT '';
UPDATE queries SET
    message = json_object('id', 'as_said', 'params', json_object('words', words)),
    suggestions = (
        SELECT json_group_array(
            CASE WHEN coalesce(value ->> 'words', '') = '' THEN json_remove(value, '$.words')
            ELSE json_set(json_remove(value, '$.words'), '$.message',
                          json_object('id', 'as_said', 'params', json_object('words', value ->> 'words'))) END
        ) FROM json_each(suggestions)
    );
ALTER TABLE queries DROP COLUMN words;
INSERT OR IGNORE INTO unjudged SELECT order_key FROM folded;
"""

# By which rules the book was judged, and what came out otherwise: entries with what the fold said of them before and
# after (judgings.py, differences.py). A book of before has no row: all of it is put on the list when it is opened.
RULES = """
CREATE TABLE rules (
    no INTEGER PRIMARY KEY, number INTEGER NOT NULL, source TEXT NOT NULL, digest TEXT NOT NULL, parts TEXT NOT NULL,
    version TEXT NOT NULL, begun_at TEXT NOT NULL, done_at TEXT, read_by TEXT, read_at TEXT
) STRICT;
CREATE TABLE differences (
    rules INTEGER NOT NULL, entry TEXT NOT NULL, before TEXT NOT NULL, after TEXT NOT NULL, PRIMARY KEY (rules, entry)
) STRICT, WITHOUT ROWID;
"""

# Part of the record: sheets as they came, which of their rows went into the book, and which were taken back. The names
# and addresses of customers and growers are of the registry.
SHEETS = """
CREATE TABLE sheets (
    sha256 TEXT PRIMARY KEY, name TEXT NOT NULL, size INTEGER NOT NULL, content TEXT NOT NULL, kept_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TRIGGER sheets_stay BEFORE UPDATE ON sheets BEGIN SELECT RAISE(ABORT, 'a sheet stays as it came'); END;
CREATE TRIGGER sheets_remain BEFORE DELETE ON sheets BEGIN SELECT RAISE(ABORT, 'a sheet stays as it came'); END;
CREATE TABLE takings (
    no INTEGER PRIMARY KEY, sha256 TEXT NOT NULL, at TEXT NOT NULL, person TEXT NOT NULL, told TEXT NOT NULL,
    rows TEXT NOT NULL
) STRICT;
CREATE TRIGGER takings_stay BEFORE UPDATE ON takings BEGIN SELECT RAISE(ABORT, 'what was put in stays on record'); END;
CREATE TRIGGER takings_remain BEFORE DELETE ON takings
BEGIN SELECT RAISE(ABORT, 'what was put in stays on record'); END;
CREATE TABLE taken_back (
    taking INTEGER PRIMARY KEY, at TEXT NOT NULL, person TEXT NOT NULL, reason TEXT NOT NULL
) STRICT;
CREATE TABLE parties (
    name TEXT NOT NULL, role TEXT NOT NULL CHECK (role IN ('customer', 'supplier')), address TEXT NOT NULL,
    number TEXT NOT NULL, note TEXT NOT NULL, retired INTEGER NOT NULL, PRIMARY KEY (name, role)
) STRICT, WITHOUT ROWID;
"""

# Where entries put vessels, folded: filled while the book is judged by these rules. And of the registry: which label
# was printed last of each vessel, and with which words.
PLACES = """
CREATE TABLE placings (
    entry TEXT NOT NULL, mark TEXT NOT NULL, place TEXT NOT NULL, order_key TEXT NOT NULL, PRIMARY KEY (entry, mark)
) STRICT, WITHOUT ROWID;
CREATE INDEX placings_mark ON placings (mark, order_key);
CREATE TABLE label_prints (
    mark TEXT PRIMARY KEY, words TEXT NOT NULL, at TEXT NOT NULL, person TEXT NOT NULL
) STRICT, WITHOUT ROWID;
"""

# Leave for a phone has a code to type beside the token of its QR: one row, so that using either uses up both.
TYPED_CODES = """
ALTER TABLE tokens ADD COLUMN code_sha256 TEXT;
CREATE UNIQUE INDEX tokens_code ON tokens (code_sha256);
"""

# An instrument has a class and an interval: by them its figures say how far they may be off.
ACCURACY = """
ALTER TABLE instruments ADD COLUMN accuracy TEXT NOT NULL DEFAULT '';
ALTER TABLE instruments ADD COLUMN interval REAL;
"""

# How the litres of a vessel follow from its dip: a strapping table, or the dimensions of a cask (trade/dipping.py).
DIPS = """
ALTER TABLE vessels ADD COLUMN dips TEXT NOT NULL DEFAULT '';
"""

# The keys of blind tastings that are not opened yet, by their seals. Once opened, an entry says the key.
TASTINGS = """
CREATE TABLE tasting_keys (seal TEXT PRIMARY KEY, key TEXT NOT NULL) STRICT, WITHOUT ROWID;
"""

# Public keys of phones, by which the signature of an entry is looked at (record/signing.py).
DEVICE_KEYS = """
CREATE TABLE device_keys (
    thumbprint TEXT PRIMARY KEY, device TEXT NOT NULL, x TEXT NOT NULL, y TEXT NOT NULL, from_seq INTEGER NOT NULL,
    at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX device_keys_device ON device_keys (device, from_seq);
"""

# Who has typed their PIN on which phone (house/hands.py), and which phones say of each entry whether that was done.
# A phone goes on holding the PIN of those who have logged on it so far.
HANDS = """
CREATE TABLE hands (device TEXT NOT NULL, person TEXT NOT NULL, since TEXT NOT NULL, PRIMARY KEY (device, person))
    STRICT, WITHOUT ROWID;
ALTER TABLE devices ADD COLUMN shows INTEGER NOT NULL DEFAULT 0;
INSERT INTO hands SELECT e.device, e.person, min(e.received_at) FROM entries e JOIN people p ON p.code = e.person
    JOIN devices d ON d.id = e.device WHERE p.pin IS NOT NULL AND d.enrolled_at IS NOT NULL GROUP BY 1, 2;
"""

# A card asks whether something is still being judged for its keys.
SEAMS_BY_KEY = "CREATE INDEX seams_key ON seams (key);"

# Public keys of people, by which they sign in at the desk (house/passkeys.py).
PASSKEYS = """
CREATE TABLE passkeys (
    credential TEXT PRIMARY KEY, person TEXT NOT NULL, name TEXT NOT NULL, public_key TEXT NOT NULL,
    sign_count INTEGER NOT NULL, rp_id TEXT NOT NULL, made_at TEXT NOT NULL, used_at TEXT, ended_at TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX passkeys_person ON passkeys (person) WHERE ended_at IS NULL;
"""

# The language that a person reads in; empty: their browser's, or the house's (words/language.py).
LANGUAGES = """
ALTER TABLE people ADD COLUMN language TEXT NOT NULL DEFAULT '';
"""

# Pictures, papers and voice notes. `enclosed`: which entries name which, folded from them; `about` is the entry that
# one belongs to. `enclosures`: the files that have come, which lie beside the book under their digest; they stay.
ENCLOSURES = """
CREATE TABLE enclosed (
    entry TEXT NOT NULL, sha256 TEXT NOT NULL, about TEXT NOT NULL, mark TEXT NOT NULL, PRIMARY KEY (entry, sha256)
) STRICT, WITHOUT ROWID;
CREATE INDEX enclosed_sha256 ON enclosed (sha256);
CREATE INDEX enclosed_about ON enclosed (about);
CREATE INDEX enclosed_mark ON enclosed (mark, entry) WHERE mark <> '';
CREATE TABLE enclosures (
    sha256 TEXT PRIMARY KEY, type TEXT NOT NULL, size INTEGER NOT NULL, arrived_at TEXT NOT NULL, via TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TRIGGER enclosures_stay BEFORE UPDATE ON enclosures BEGIN SELECT RAISE(ABORT, 'a picture stays as it came'); END;
CREATE TRIGGER enclosures_remain BEFORE DELETE ON enclosures
BEGIN SELECT RAISE(ABORT, 'a picture stays as it came'); END;
CREATE INDEX entries_heard ON entries (json_extract(body, '$.values.note.raw')) WHERE kind = 'note_heard';
"""

STEPS: list[tuple[str, str]] = [
    ("record", RECORD), ("registry", REGISTRY), ("fold", FOLD), ("sessions", SESSIONS), ("stock", STOCK),
    ("closes", CLOSES), ("goods", GOODS), ("corrections", CORRECTIONS), ("yields", YIELDS),
    ("unjudged", UNJUDGED), ("messages", MESSAGES), ("rules", RULES), ("sheets", SHEETS), ("places", PLACES),
    ("search", SEARCH), ("typed_codes", TYPED_CODES), ("accuracy", ACCURACY), ("dips", DIPS),
    ("tastings", TASTINGS), ("device_keys", DEVICE_KEYS), ("hands", HANDS),
    ("seams_by_key", SEAMS_BY_KEY),
    ("passkeys", PASSKEYS), ("languages", LANGUAGES), ("enclosures", ENCLOSURES),
]


def bring_up_to_date(database: Database, path: Path) -> None:
    """Run the steps this book has not had, inside the caller's transaction; refuse a book of a newer program."""
    conn = database.conn
    try:
        found_id = conn.execute("PRAGMA application_id").fetchone()[0]
        tables = {row[0] for row in conn.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    except sqlite3.DatabaseError as error:
        raise BookError(f"{path} is no book of Cellarslate. Give the path of another file.") from error
    if tables and (found_id != APPLICATION_ID or "migrations" not in tables):
        raise BookError(f"{path} is a database of something else. Give the path of another file.")
    if not tables:
        conn.execute(f"PRAGMA application_id = {APPLICATION_ID}")
        conn.execute("CREATE TABLE migrations (name TEXT PRIMARY KEY, at TEXT NOT NULL) STRICT, WITHOUT ROWID")
    is_new = not tables
    had = {row[0] for row in conn.execute("SELECT name FROM migrations")}
    if had - {name for name, _ in STEPS}:
        raise BookError("This book was written by a newer Cellarslate. Update the program, then open it again.")
    for name, sql in STEPS:
        if name not in had:
            database.executescript(sql)
            now = datetime.now(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
            conn.execute("INSERT INTO migrations VALUES (?, ?)", (name, now))
    conn.execute("INSERT OR IGNORE INTO settings VALUES ('book_id', ?), ('turn', '0')", (f"b-{secrets.token_hex(8)}",))
    if is_new:  # nothing was ever put into it that no change has named
        conn.execute("INSERT INTO settings VALUES (?, '0')", (REGISTRY_STATED,))
