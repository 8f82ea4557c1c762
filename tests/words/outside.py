"""Words for people that stand in a template or a module instead of the catalogue."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import webapp

ROOMS = Path(webapp.__file__).parent
TEMPLATES = ROOMS / "templates"
# What a program, a format or a unit is called, in any language.
NAMES = {
    "Cellarslate", "CSV", "JSON", "PDF", "XLSX", "SHA", "TLS", "LPA", "kg", "lb", "mm", "cm", "mL", "min", "gal", "vol",
    "pH", "CFR", "EEC", "RFC", "ACME", "DNS", "DE", "AT", "SVG", "https", "http", "UTC", "EU", "UK",
}
_INSIDE = re.compile(r"<(script|style|code|kbd)\b.*?</\1>", re.DOTALL)
_JINJA = re.compile(r"\{#.*?#\}|\{%.*?%\}|\{\{.*?\}\}", re.DOTALL)
_TAG = re.compile(r"<[^>]*>", re.DOTALL)
_SAYING = re.compile(r'\s(?:title|aria-label|placeholder|alt|label)="([^"]*)"')
_BUTTON = re.compile(r'<input\b[^>]*type="(?:submit|button)"[^>]*>')
_VALUE = re.compile(r'\svalue="([^"]*)"')
_WORD = re.compile(r"[^\W\d_]{2,}")
_LITERAL = re.compile(r'"([^"\n]*)"')
_SENTENCE = re.compile(r"[A-Z][a-z]+(?: |$)|[a-z]+ [a-z]+ [a-z]+")
_SQL = re.compile(r"\s*(SELECT|INSERT|UPDATE|DELETE|FROM|WHERE|WITH|AND|OR|ORDER)\b")
# What takes words that nobody reads on a page: journals, messages of the catalogue, patterns, addresses.
_UNSEEN = {"say", "t", "Later", "note", "note_once", "note_change", "url_for", "render_template", "Regexp", "compile"}


def in_template(path: Path) -> Iterator[str]:
    """Yield the words that a template says by itself: its text, what attributes say, and texts in its expressions."""
    text = path.read_text("utf-8")
    plain = _JINJA.sub("\0", _INSIDE.sub("", text))
    said = [_TAG.sub("\n", plain), *_SAYING.findall(plain)]
    said += [value for tag in _BUTTON.findall(plain) for value in _VALUE.findall(tag)]
    for each in said:
        yield from (line.strip() for line in re.split("[\n\0]", each) if _is_said(line))
    for made in _JINJA.findall(text):
        if not made.startswith("{#"):
            yield from (one for one in _LITERAL.findall(made) if _SENTENCE.match(one) and _is_said(one))


def in_module(path: Path) -> Iterator[str]:
    """Yield the texts of a module that read as words for people."""
    tree = ast.parse(path.read_text("utf-8"))
    hidden = {part for node in ast.walk(tree) if _is_unseen(node) for part in ast.walk(node)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and node not in hidden:
            words = node.value
            if _SENTENCE.match(words) and " " in words.strip() and _is_said(words) and not _SQL.match(words):
                yield words


def _is_unseen(node: ast.AST) -> bool:
    if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
        return True  # a docstring
    if isinstance(node, ast.keyword):
        return node.arg == "about"
    if isinstance(node, ast.Call):
        name = node.func.id if isinstance(node.func, ast.Name) else getattr(node.func, "attr", "")
        return name in _UNSEEN
    return isinstance(node, ast.Subscript | ast.Compare | ast.Assert)


def _is_said(text: str) -> bool:
    return bool(set(_WORD.findall(text.replace("&nbsp;", " "))) - NAMES)
