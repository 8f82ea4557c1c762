"""Hold an exported folder against signed heads: python3 inspect_export.py FOLDER HEADS [--key HEX].

One file, the standard library alone (Python 3.11 or later); nothing is written. FOLDER is what `cellarslate export`
made, HEADS a `heads.jsonl` that was kept outside the house. Sources: RFC 9162, 2.1 (the tree); RFC 8032, 5.1 (Ed25519).
"""

from __future__ import annotations

import argparse
import hashlib
import json
import sys
from pathlib import Path

COLUMNS = {
    "entries": "book_no id kind kind_version mark read_at typed_at person role device seq body body_sha256 received_at "
    "skew_s via digest",
    "aside": "no id device seq settled body body_sha256 problems received_at via",
    "changes": "no at person what key before after",
    "closes": "no month period start until zone figures digest book_no person signed_at",
    "takings": "no sha256 at person told rows",
}
P = 2**255 - 19
ORDER = 2**252 + 27742317777372353535851937790883648493
D = -121665 * pow(121666, -1, P) % P
ROOT_OF_MINUS_1 = pow(2, (P - 1) // 4, P)
Point = tuple[int, int, int, int]  # X, Y, Z, T


def add(a: Point, b: Point) -> Point:
    """Return the sum of two points. Source: RFC 8032, 5.1.4."""
    k, m = (a[1] - a[0]) * (b[1] - b[0]) % P, (a[1] + a[0]) * (b[1] + b[0]) % P
    c, d = 2 * a[3] * b[3] * D % P, 2 * a[2] * b[2] % P
    e, f, g, h = m - k, d - c, d + c, m + k
    return e * f % P, g * h % P, f * g % P, e * h % P


def times(number: int, point: Point) -> Point:
    """Return a point added to itself as often as the number says."""
    made: Point = (0, 1, 1, 0)
    while number:
        if number & 1:
            made = add(made, point)
        point, number = add(point, point), number >> 1
    return made


def is_same(a: Point, b: Point) -> bool:
    """Are these one point?"""
    return (a[0] * b[2] - b[0] * a[2]) % P == 0 and (a[1] * b[2] - b[1] * a[2]) % P == 0


def decode(data: bytes) -> Point | None:
    """Return the point of 32 bytes, or None where they are none. Source: RFC 8032, 5.1.3."""
    y = int.from_bytes(data, "little")
    sign, y = y >> 255, y & (2**255 - 1)
    if len(data) != 32 or y >= P:
        return None
    square = (y * y - 1) * pow(D * y * y + 1, -1, P) % P
    x = pow(square, (P + 3) // 8, P)
    if (x * x - square) % P:
        x = x * ROOT_OF_MINUS_1 % P
    if (x * x - square) % P or (x == 0 and sign):
        return None
    x = P - x if x & 1 != sign else x
    return x, y, 1, x * y % P


BASE = decode((4 * pow(5, -1, P) % P).to_bytes(32, "little"))


def is_signed(public: bytes, message: bytes, signature: bytes) -> bool:
    """Is this the signature (64 bytes) of the message by the public key (32 bytes)? Source: RFC 8032, 5.1.7."""
    key, r = decode(public), decode(signature[:32])
    s = int.from_bytes(signature[32:], "little")
    if len(signature) != 64 or key is None or r is None or BASE is None or s >= ORDER:
        return False
    k = int.from_bytes(hashlib.sha512(signature[:32] + public + message).digest(), "little") % ORDER
    return is_same(times(s, BASE), add(r, times(k, key)))


def roots(leaves: list[bytes], sizes: set[int]) -> dict[int, str]:
    """Return the roots over the first leaves, for each of these sizes that there is. Source: RFC 9162, 2.1.1."""
    edge: list[tuple[int, bytes]] = []
    found = {0: hashlib.sha256().hexdigest()}
    for size, row in enumerate(leaves, 1):
        made, height = hashlib.sha256(b"\x00" + row).digest(), 0
        while edge and edge[-1][0] == height:
            made, height = hashlib.sha256(b"\x01" + edge.pop()[1] + made).digest(), height + 1
        edge.append((height, made))
        if size in sizes:
            top = edge[-1][1]
            for _, left in reversed(edge[:-1]):
                top = hashlib.sha256(b"\x01" + left + top).digest()
            found[size] = top.hex()
    return found


def read_leaves(folder: Path, tree: str) -> list[bytes]:
    """Return the rows of a list as the book hashes them: every column, as a JSON array in ASCII."""
    leaves = []
    # Not splitlines: a remark may hold one of Unicode's other line ends.
    path = folder / "tables" / f"{tree}.jsonl"
    for line in (path.read_text("utf-8") if path.exists() else "").rstrip("\n").split("\n"):
        if not line:
            continue
        row = json.loads(line)
        if tree == "entries":  # the export shows the body as an object; the book keeps its text
            row["body"] = json.dumps(row["body"], ensure_ascii=False, sort_keys=True, separators=(",", ":"))
        leaves.append(json.dumps([row[name] for name in COLUMNS[tree].split()], separators=(",", ":")).encode("ascii"))
    return leaves


def inspect(folder: Path, heads: str, wanted_key: str = "") -> tuple[list[str], list[str]]:
    """Return two lists of sentences: the signed heads that the export bears out, and those that it does not."""
    book = json.loads((folder / "book.json").read_text("utf-8"))["book_id"]
    holds, troubles, read = [], [], []
    for number, line in enumerate(heads.splitlines(), 1):
        try:
            told = json.loads(line or "{}")
            if told:
                read.append({name: told[name] for name in ("book", "key", "root", "signature", "size", "time", "tree")})
        except (ValueError, KeyError, TypeError):  # a power cut may leave half a line
            troubles.append(f"line {number} of the heads cannot be read, and proves nothing.")
    leaves = {tree: read_leaves(folder, tree) for tree in COLUMNS}
    found = {t: roots(rows, {one["size"] for one in read if one["tree"] == t}) for t, rows in leaves.items()}
    for one in read:
        told = {name: one[name] for name in ("book", "key", "root", "size", "time", "tree")}
        message = json.dumps(told, sort_keys=True, separators=(",", ":")).encode("ascii")
        what = f"{one['size']} {one['tree']} of {one['time']}, key {one['key'][:16]}"
        if not is_signed(bytes.fromhex(one["key"]), message, bytes.fromhex(one["signature"])):
            troubles.append(f"{what}: the signature is not that of its key.")
        elif wanted_key and one["key"] != wanted_key:
            troubles.append(f"{what}: signed, but by another key than the one you named.")
        elif one["book"] != book:
            troubles.append(f"{what}: of another book, {one['book']}.")
        elif one["size"] > len(leaves[one["tree"]]):
            troubles.append(f"{what}: the export has only {len(leaves[one['tree']])}.")
        elif found[one["tree"]][one["size"]] != one["root"]:
            troubles.append(f"{what}: the export does not begin so; a row was changed, taken out or put in.")
        else:
            holds.append(f"{what}: the export begins so, in every column.")
    return holds, troubles


def main() -> int:
    """Print a line for each signed head; return 0 where all hold, 1 where one does not, 2 where there is none."""
    parser = argparse.ArgumentParser(description="Hold an exported folder against signed heads.")
    parser.add_argument("folder", type=Path)
    parser.add_argument("heads", type=Path)
    parser.add_argument("--key", default="", help="the public key that the heads must bear, 64 hex digits")
    asked = parser.parse_args()
    try:
        holds, troubles = inspect(asked.folder, asked.heads.read_text("utf-8"), asked.key)
    except (OSError, ValueError, KeyError, TypeError) as error:
        print(f"The export or the heads cannot be read: {error!r}.")
        return 2
    for line in (*(f"holds: {one}" for one in holds), *(f"DOES NOT HOLD: {one}" for one in troubles)):
        print(line)
    print(f"{len(holds)} heads hold, {len(troubles)} do not. What came after the last head is not proved by any.")
    return 1 if troubles else 0 if holds else 2


if __name__ == "__main__":
    sys.exit(main())
