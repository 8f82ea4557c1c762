"""Entries of a book that somebody else holds, as a file: what the group has of a site, for a damaged book there.

JSON lines: first the id of the book, then its rows as they were handed in, each with the digests that prove it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from pathlib import Path

from webapp.book.record.errors import BookError
from webapp.book.record.rows import row_of
from webapp.keeping.tables import ENTRIES
from webapp.keeping.wreck import Table

MARKER = "cellarslate-rows"
_NAMES = ("book_no", "body", "body_sha256", "received_at", "skew_s", "via", "digest")


def write_rows(path: Path, book_id: str, rows: Iterable[Mapping[str, object]]) -> int:
    """Write rows of a book to a new file; return how many. BookError where the file exists or cannot be written."""
    count = 0
    try:
        with path.open("x", encoding="ascii", newline="\n") as file:
            file.write(json.dumps({"marker": MARKER, "book_id": book_id}) + "\n")
            for row in rows:
                file.write(json.dumps({name: row[name] for name in _NAMES}) + "\n")
                count += 1
    except FileExistsError:
        raise BookError(f"{path} exists already and is left as it is. Give the file another name.") from None
    except OSError as error:
        raise BookError(f"{path} could not be written: {error.strerror}. Look at its folder and the disk.") from error
    return count


def read_rows(path: Path) -> dict[str, Table]:
    """Return the rows of such a file as tables of a book; a line that cannot be read is left out.

    Nothing is believed here: salvage takes what its digests prove. BookError where it is no such file.
    """
    try:
        first, *lines = path.read_text("ascii").splitlines()
        about = json.loads(first)
        if about["marker"] != MARKER:
            raise ValueError
        book_id = str(about["book_id"])
    except OSError as error:
        raise BookError(f"{path} cannot be read: {error.strerror}. Name the file that `group-copy` wrote.") from error
    except (ValueError, TypeError, LookupError):
        raise BookError(f"{path} holds no rows of a book. Name the file that `group-copy` wrote.") from None
    entries = Table(is_whole=False)
    for line in lines:
        try:
            told = json.loads(line)
            row = row_of(
                json.loads(told["body"]), told["body"], body_sha256=told["body_sha256"], via=told["via"],
                received_at=told["received_at"], skew_s=float(told["skew_s"]),
            )
            entries.rows[(told["book_no"],)] = {**row, "book_no": told["book_no"], "digest": told["digest"]}
        except (ValueError, TypeError, LookupError, AttributeError):
            continue
    settings = Table({("book_id",): {"name": "book_id", "value": book_id}}, is_whole=False)
    return {ENTRIES: entries, "settings": settings}
