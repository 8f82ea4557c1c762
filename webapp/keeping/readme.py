"""What stands in the README of an export: how to read it without this program."""

README = """A book of Cellarslate, as open files.

tables/*.jsonl   the record. One JSON object a line, UTF-8.
csv/*.csv        the entries of each kind for a spreadsheet, newest first: as read, and as computed. Nothing is read
                 back from these.
book.json        what this is: the book's id, how many entries, the last digest, a SHA-256 of every file.

enclosures/      pictures, papers and voice notes, each under the SHA-256 of its bytes, as entries name them in
                 `enclosed`; there where the book has any.

In tables:

entries.jsonl    every entry, in the order of the book. `body` is the entry as it was logged: raw readings as typed,
                 with unit and instrument; `book_no`, `received_at`, `skew_s` [s] and `via` are what the book added.
aside.jsonl      what was refused or clashed, with the reasons.
enclosures.jsonl which pictures and papers have come, when, and of which sort.
vessels, instruments, limits, site, people, devices, device_keys, settings, closes, seen, changes: the registry,
                 closed periods, counters of phones seen, and who changed what. A vessel's `mark` is what stands on
                 its label.

Times: `read_at` and `typed_at` are the phone's, with offset; `received_at` is the book's, UTC.

The chain. body_sha256 is the SHA-256 of the body as JSON with sorted keys, no spaces, UTF-8. digest is the SHA-256 of
six lines joined by a line feed: the digest before it (64 zeros before the first), book_no, body_sha256, received_at,
skew_s with one decimal, via.

What cannot be here: passwords, floor codes, phones' secrets, the keys of the server. Stock, flows, periods and
queries are computed from the entries, and are computed again when the files are taken in:

    cellarslate import FOLDER --data A_NEW_FOLDER

Records are kept by the fill, for as long as it and what was made of it matter: nothing here has an end date.
"""
