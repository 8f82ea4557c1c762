"""The group's tables, as small named steps. A step that has once been released is never changed.

`sites`, `branches`, `entries`, `registry` and `aside` are the record. The step `fold` holds what each site's fold has
left behind, published; all of it can be made again. What grows is partitioned by site: a query about one site reads
its partition alone, and a site can be moved, detached or dropped by itself.
"""

from __future__ import annotations

import psycopg
from psycopg import sql
from psycopg.rows import DictRow

from webapp.book.record.errors import BookError

LOCK_NO = 0x43534C47  # "CSLG": one program at a time brings the tables up to date

RECORD = """
CREATE TABLE sites (
    site text PRIMARY KEY, no integer GENERATED ALWAYS AS IDENTITY, name text NOT NULL, device text NOT NULL UNIQUE,
    let_in_at text NOT NULL, heard_at text NOT NULL, skew_s double precision NOT NULL,
    effective integer NOT NULL DEFAULT 0, tip integer NOT NULL DEFAULT 0,
    head_no bigint NOT NULL DEFAULT 0, head_digest text NOT NULL DEFAULT '', trouble text NOT NULL DEFAULT '',
    registry_turn bigint NOT NULL DEFAULT 0,
    checked_at text NOT NULL DEFAULT '', checked_no bigint NOT NULL DEFAULT 0, checked text NOT NULL DEFAULT ''
);
-- A book restored from an older backup goes on differently from some number on: that is a branch. None is overwritten.
CREATE TABLE branches (
    site text NOT NULL REFERENCES sites, branch integer NOT NULL, parent integer, fork_no bigint NOT NULL,
    cursor bigint NOT NULL, digest text NOT NULL, opened_at text NOT NULL,
    taken_at text NOT NULL DEFAULT '', taken_by text NOT NULL DEFAULT '', PRIMARY KEY (site, branch)
);
CREATE TABLE entries (
    site text NOT NULL, branch integer NOT NULL, book_no bigint NOT NULL, id text NOT NULL, body text NOT NULL,
    body_sha256 text NOT NULL, received_at text NOT NULL, skew_s double precision NOT NULL, via text NOT NULL,
    digest text NOT NULL, PRIMARY KEY (site, branch, book_no)
) PARTITION BY LIST (site);
CREATE UNIQUE INDEX entries_id ON entries (site, branch, id);
-- Rows lie in the order in which they were received, so a few kilobytes of ranges find a week among millions.
CREATE INDEX entries_received ON entries USING brin (received_at);
CREATE TABLE registry (
    site text NOT NULL, sort text NOT NULL, key text NOT NULL, version integer NOT NULL, turn bigint NOT NULL,
    body text, sha256 text NOT NULL, at text NOT NULL, PRIMARY KEY (site, sort, key, version)
) PARTITION BY LIST (site);
CREATE TABLE aside (
    no bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY, site text NOT NULL, settled text NOT NULL, book_no bigint,
    id text, row text NOT NULL, row_sha256 text NOT NULL, words text NOT NULL, received_at text NOT NULL,
    UNIQUE (site, settled, row_sha256)
);
CREATE FUNCTION stays() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'what a site has handed in is never changed and never taken out'; END $$;
CREATE TRIGGER entries_stay BEFORE UPDATE OR DELETE ON entries FOR EACH ROW EXECUTE FUNCTION stays();
CREATE TRIGGER registry_stays BEFORE UPDATE OR DELETE ON registry FOR EACH ROW EXECUTE FUNCTION stays();
CREATE TRIGGER aside_stays BEFORE UPDATE OR DELETE ON aside FOR EACH ROW EXECUTE FUNCTION stays();
"""

FOLD = """
CREATE TABLE folds (
    site text PRIMARY KEY REFERENCES sites, work_id text NOT NULL, branch integer NOT NULL, book_no bigint NOT NULL,
    digest text NOT NULL, registry_turn bigint NOT NULL, turn bigint NOT NULL, at text NOT NULL, trouble text NOT NULL
);
CREATE TABLE flows (
    site text NOT NULL, entry text NOT NULL, n integer NOT NULL, source text NOT NULL, target text NOT NULL,
    lpa_ul bigint NOT NULL, volume_ml bigint NOT NULL, mass_g bigint NOT NULL, source_fill text NOT NULL,
    target_fill text NOT NULL, reason text NOT NULL, source_account text NOT NULL, target_account text NOT NULL,
    at text NOT NULL, sort text NOT NULL, order_key text NOT NULL, document text NOT NULL, whom text NOT NULL,
    PRIMARY KEY (site, entry, n)
) PARTITION BY LIST (site);
CREATE INDEX flows_source ON flows (source_fill) WHERE source_fill <> '';
CREATE INDEX flows_target ON flows (target_fill) WHERE target_fill <> '';
CREATE INDEX flows_document ON flows (document) WHERE document <> '';
CREATE TABLE fills (
    site text NOT NULL, id text NOT NULL, mark text NOT NULL, what text NOT NULL, name text NOT NULL, lot text NOT NULL,
    since text NOT NULL, ended_at text NOT NULL, PRIMARY KEY (site, id)
) PARTITION BY LIST (site);
CREATE TABLE bottlings (
    site text NOT NULL, id text NOT NULL, tank text NOT NULL, fill text NOT NULL, batch text NOT NULL,
    lot_mark text NOT NULL, case_from text NOT NULL, case_to text NOT NULL, odd_case text NOT NULL, at text NOT NULL,
    PRIMARY KEY (site, id)
) PARTITION BY LIST (site);
CREATE TABLE runs (
    site text NOT NULL, id text NOT NULL, still text NOT NULL, what text NOT NULL, started_at text NOT NULL,
    PRIMARY KEY (site, id)
) PARTITION BY LIST (site);
CREATE TABLE month_sums (
    site text NOT NULL, month text NOT NULL, a text NOT NULL, b text NOT NULL, reason text NOT NULL, sort text NOT NULL,
    lpa_ul bigint NOT NULL, n bigint NOT NULL, PRIMARY KEY (site, month, a, b, reason, sort)
) PARTITION BY LIST (site);
"""

# Bottles go over the border too: their flows are found by bottling, and published anew with what their papers say.
GOODS = """
CREATE INDEX flows_out_of_bottles ON flows (source) WHERE source LIKE 'b:%';
CREATE INDEX flows_into_bottles ON flows (target) WHERE target LIKE 'b:%';
UPDATE folds SET work_id = '';
"""

# The signed heads that a site's book had when it last handed in, a line each: the site gets them back and compares.
HEADS = """
ALTER TABLE sites ADD COLUMN heads text NOT NULL DEFAULT '';
"""

STEPS: list[tuple[str, str]] = [("record", RECORD), ("fold", FOLD), ("goods", GOODS), ("heads", HEADS)]
PARTITIONED = ("entries", "registry", "flows", "fills", "bottlings", "runs", "month_sums")


def bring_up_to_date(conn: psycopg.Connection[DictRow]) -> None:
    """Run the steps that this database has not had, in one transaction; refuse one of a newer program."""
    with conn.transaction():
        conn.execute("SELECT pg_advisory_xact_lock(%s)", (LOCK_NO,))
        conn.execute(
            "CREATE TABLE IF NOT EXISTS migrations (name text PRIMARY KEY, at timestamptz NOT NULL DEFAULT now())"
        )
        had = {row["name"] for row in conn.execute("SELECT name FROM migrations")}
        if had - {name for name, _ in STEPS}:
            raise BookError("This group book was written by a newer Cellarslate. Update the program, then start again.")
        for name, text in STEPS:
            if name not in had:
                conn.execute(text.encode())
                conn.execute("INSERT INTO migrations (name) VALUES (%s)", (name,))


def make_room(conn: psycopg.Connection[DictRow], site: str, no: int) -> None:
    """Make the partitions of a new site, inside the transaction that lets it in."""
    for table in PARTITIONED:
        conn.execute(
            sql.SQL("CREATE TABLE {} PARTITION OF {} FOR VALUES IN ({})").format(
                sql.Identifier(f"{table}_{no}"), sql.Identifier(table), sql.Literal(site)
            )
        )
