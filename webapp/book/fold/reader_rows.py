"""Rows of the tables by which readers find what the fold keeps (reader_tables.py)."""

from __future__ import annotations

from typing import TypedDict


class FillRow(TypedDict):
    """What stood in a vessel from empty to empty; `ended_at` is empty while it stands there."""

    id: str
    mark: str
    what: str
    name: str
    lot: str
    since: str
    ended_at: str


class RunRow(TypedDict):
    """A run of a still."""

    id: str
    still: str
    what: str
    started_at: str


class BottlingRow(TypedDict):
    """A bottling, with its cases as they were typed; without a tank it came in bottles."""

    id: str
    tank: str
    fill: str
    batch: str
    lot_mark: str
    case_from: str
    case_to: str
    odd_case: str
    at: str


class DispatchRow(TypedDict):
    """Cases or bottles that left or came back."""

    id: str
    bottling: str
    at: str
    why: str
    document: str
    to_whom: str
    case_from: str
    case_to: str
    cases: str
    bottles: str
