"""What the kinds declare in English beside what they name: labels, titles, choices, rules, what to do in danger."""

from __future__ import annotations

import re
from collections.abc import Sequence

import webapp.kinds
from webapp.kinds.spec import Field, Kind

RULE = "rule"
_FILLED = re.compile(r"\{(\w+)\}")


def declared_words(path: Sequence[str]) -> str:
    """Return the English words at a path; the last part of the path where the kinds of today have none there."""
    sort, kind_name, *rest = path
    kind = webapp.kinds.get(kind_name)
    return (_words(sort, kind, rest) if kind else None) or path[-1]


def rule_words(message_id: str) -> str | None:
    """Return the sentence that a kind's rule declares under the id `rule-<kind>-<code>`, or None."""
    sort, _, rest = message_id.partition("-")
    kind_name, _, code = rest.partition("-")
    kind = webapp.kinds.get(kind_name) if sort == RULE else None
    return next((rule.words for rule in kind.rules if rule.code == code), None) if kind else None


def is_worked_out(message_id: str, name: str) -> bool:
    """Return whether a rule names a figure by that name, and no field that somebody types."""
    kind = webapp.kinds.get(message_id.split("-")[1])
    return kind is not None and kind.field(name) is None and any(one.name == name for one in kind.figures)


def fill_rule(words: str, params: dict[str, str]) -> str:
    """Return a rule's sentence with `{name}` replaced by its parameter."""
    return _FILLED.sub(lambda found: params.get(found[1], found[0]), words)


def _words(sort: str, kind: Kind, rest: Sequence[str]) -> str | None:
    if sort == "title":
        return kind.title
    if sort == "figure":
        return next((figure.label for figure in kind.figures if figure.name == rest[0]), None)
    spec = kind.field(rest[0])
    return _of_field(sort, spec, rest[1:]) if spec else None


def _of_field(sort: str, spec: Field, rest: Sequence[str]) -> str | None:
    if sort == "label":
        return spec.label
    if sort == "choice":
        return dict(spec.choices).get(rest[0])
    if sort == "danger" and int(rest[0]) < len(spec.danger):
        return spec.danger[int(rest[0])][1]
    return None
