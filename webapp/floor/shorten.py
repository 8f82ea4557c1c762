"""Scripts without their comments and indents, for the one packed answer. Nothing else of them changes.

A real parser finds what is comment and what is text: a regular expression cannot tell a comment from a template with
templates in it. Line ends stay, so that no statement runs into the next.
"""

from __future__ import annotations

import bisect
from collections.abc import Iterator
from functools import lru_cache

import rcssmin
import tree_sitter_javascript
from tree_sitter import Language, Node, Parser

_KEPT_WHOLE = ("template_string", "string", "regex")


@lru_cache(maxsize=1)
def _parser() -> Parser:
    return Parser(Language(tree_sitter_javascript.language()))


# Files change only with the program: each is shortened once.
@lru_cache(maxsize=512)
def shorter_script(text: str) -> str:
    """Return the script without comments, indents and empty lines; as it is where the parser does not follow."""
    source = text.encode()
    root = _parser().parse(source).root_node
    if root.has_error:
        return text
    comments = [(node.start_byte, node.end_byte) for node in _nodes(root, ("comment",))]
    whole = [(node.start_byte, node.end_byte) for node in _nodes(root, _KEPT_WHOLE)]
    kept, at = [], 0
    for start, end in [*comments, (len(source), len(source))]:
        kept.append((source[at:start], at))
        if b"\n" in source[start:end]:
            kept.append((b"\n", -1))
        at = end
    return b"".join(_without_indents(piece, offset, whole) for piece, offset in kept).decode()


def _nodes(node: Node, types: tuple[str, ...]) -> Iterator[Node]:
    """Yield the outermost nodes of these types, in order."""
    todo = [node]
    while todo:
        one = todo.pop()
        if one.type in types:
            yield one
        else:
            todo.extend(reversed(one.children))


def _without_indents(piece: bytes, offset: int, whole: list[tuple[int, int]]) -> bytes:
    lines = piece.split(b"\n")
    out, at = [lines[0]], offset + len(lines[0]) + 1
    for line in lines[1:]:
        before = bisect.bisect_left(whole, (at, 0)) - 1  # the last that begins before this line
        is_text = before >= 0 and at < whole[before][1]
        short = line if is_text else line.lstrip(b" \t")
        if is_text or short:
            out.append(short)
        at += len(line) + 1
    if not lines[-1].strip() and len(lines) > 1 and out[-1]:
        out.append(b"")
    return b"\n".join(out)


@lru_cache(maxsize=128)
def shorter_style(text: str) -> str:
    """Return the stylesheet without comments and blanks."""
    return str(rcssmin.cssmin(text))
