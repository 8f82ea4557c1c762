"""Times of the book: UTC texts of fixed width, so that they sort and compare as they stand."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

SKEW_LET_BE_S = 60.0  # trade practice: a clock within a minute of the book's is as good as the book's


def utc_text(moment: datetime) -> str:
    """Return an aware datetime as UTC text to the second, `2025-09-24T06:05:00Z`."""
    return moment.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ").rjust(20, "0")


def measured_skew(phone_now: object, now: datetime) -> float:
    """Return phone clock minus book clock. [s], any; 0 where the phone said no time."""
    if not isinstance(phone_now, str):
        return 0.0
    try:
        stamp = datetime.fromisoformat(phone_now)
        # Plus nothing: a clock a few hundredths behind would come out as -0.0, which SQLite gives back as 0.0.
        return round((stamp - now).total_seconds(), 1) + 0.0
    except (TypeError, ValueError, OverflowError):
        return 0.0


def order_skew(skew_s: float) -> int:
    """Return the skew that the order of the fold corrects for. [s], whole minutes, 0 within a minute.

    The measure is never the same twice: it holds the way of the message. Whole minutes keep the readings of one
    phone in their order although they came in several batches.
    """
    return 0 if abs(skew_s) <= SKEW_LET_BE_S else round(skew_s / 60.0) * 60


def correct_time(stamp: str, skew_s: int) -> datetime:
    """Return the instant of a stamp with offset, less the skew; clamped to the years that can be written."""
    moment = datetime.fromisoformat(stamp)
    try:
        return (moment - timedelta(seconds=skew_s)).astimezone(UTC)
    except OverflowError:
        return datetime(1, 1, 2, tzinfo=UTC) if skew_s > 0 else datetime(9999, 12, 30, tzinfo=UTC)


def sort_text(moment: datetime) -> str:
    """Return UTC text to the millisecond; sorts as the instants do."""
    return moment.strftime("%Y-%m-%dT%H:%M:%S.").rjust(20, "0") + f"{moment.microsecond // 1000:03d}Z"
