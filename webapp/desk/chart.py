"""What the desk's script draws: points over time, what is expected, and levels that matter."""

from __future__ import annotations

from typing import NotRequired, TypedDict


class Series(TypedDict):
    """A line of a chart: points of [s since 1970, value]."""

    label: str
    points: list[list[float]]


class Chart(TypedDict):
    """A chart over time."""

    title: str
    yLabel: str
    yDecimals: int
    xIsTime: bool
    height: int
    series: list[Series]
    expected: NotRequired[Series]
