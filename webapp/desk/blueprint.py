"""The desk's blueprint: what every page is given, and the filters that templates use."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime
from typing import TYPE_CHECKING, Any

from flask import Blueprint, current_app, g

from webapp.access import current
from webapp.book.house.registry import SORTS
from webapp.desk import figures
from webapp.kinds.message import message_from_json
from webapp.trade import units
from webapp.words import local, sentence
from webapp.words.catalogue import ENGLISH
from webapp.words.desk import Later, say
from webapp.words.language import language

if TYPE_CHECKING:
    from webapp.book.fold.heading import Heading

bp = Blueprint("desk", __name__, url_prefix="/desk")

ROOMS = [
    ("today", Later("desk-room-today"), "/desk/"),
    ("queries", Later("desk-room-queries"), "/desk/queries"),
    ("entries", Later("desk-room-entries"), "/desk/entries"),
    ("vessels", Later("desk-room-vessels"), "/desk/vessels"),
    ("cellar", Later("desk-room-cellar"), "/desk/cellar"),
    ("runs", Later("desk-room-runs"), "/desk/runs"),
    ("blending", Later("desk-room-blending"), "/desk/blending"),
    ("trace", Later("desk-room-trace"), "/desk/trace"),
    ("periods", Later("desk-room-periods"), "/desk/periods"),
    ("labels", Later("desk-room-labels"), "/desk/labels"),
    ("settings", Later("desk-room-settings"), "/desk/settings"),
]


@bp.context_processor
def for_every_page() -> dict[str, object]:
    """Give every desk page its rooms, the count of open queries, the site and who is signed in."""
    if current.person is None:
        return {"side": "desk", "rooms": [], "site": {}, "person": None}
    site, head = current.site, read_heading()
    asked = sum(n for weight, n in head.counts.items() if weight != "note")
    rooms = [(*room, asked if room[0] == "queries" else None) for room in ROOMS]
    return {
        "side": "desk",
        "rooms": rooms,
        "site": site,
        "zone": site.get("time_zone"),
        "decimal_mark": site.get("decimal_mark"),
        "person": current.person,
        "may": current.may,
        "unjudged": head.progress,
        "otherwise": head.unread,
        "backup_trouble": _backup_trouble() if current.may("office") else "",
        "no_backups": _no_backups(),
        "damage": _damage(),
        "lost_heads": _lost_heads() if current.may("office") else "",
        "certificate_trouble": _certificate_trouble() if current.may("office") else "",
    }


def read_heading() -> Heading:
    """Return the head of every page, read once a request."""
    from webapp.book.fold.heading import load_heading

    if "heading" not in g:
        g.heading = load_heading(current.book)
    head: Heading = g.heading
    return head


def _damage() -> str:
    from webapp.keeping import scrub

    return scrub.describe_trouble(current.book, current_app.config["DATA_DIR"])


def _lost_heads() -> str:
    from webapp.keeping import witnesses

    return witnesses.describe_trouble(current.book, current_app.config["DATA_DIR"])


def _backup_trouble() -> str:
    from webapp.keeping import schedule

    return schedule.describe_trouble(current_app.config["DATA_DIR"], datetime.now(UTC))


def _no_backups() -> bool:
    """Say whether the office is to be asked for a folder for backups. A demo has nothing to lose."""
    from webapp.keeping import schedule

    asked = current.may("office") and not current_app.config.get("DEMO")
    return asked and schedule.is_asked(current_app.config["DATA_DIR"])


def _certificate_trouble() -> str:
    from webapp.desk.house.trust import certificate_trouble

    return certificate_trouble(datetime.now(UTC))


for filter_name, make in figures.FILTERS.items():
    bp.add_app_template_filter(make, filter_name)
for made in (local.number, local.long_day, local.weekday_and_time):
    bp.add_app_template_filter(made)


@bp.app_template_filter("unit_symbol")
def unit_symbol(unit: str) -> str:
    """Return the sign of a unit code, or the code itself where it has none."""
    try:
        return units.symbol(unit)
    except ValueError:
        return unit


@bp.app_template_filter("change")
def change_line(row: dict[str, object] | None) -> str:
    """Return one side of a change of the registry in a line."""
    shown = {name: value for name, value in (row or {}).items() if value not in (None, "") and name != "password_mark"}
    return ", ".join(f"{name} {value if not isinstance(value, dict) else len(value)}" for name, value in shown.items())


@bp.app_template_filter("local_time")
def local_time(stamp: str | None) -> str:
    """Return a UTC time as the house's clock shows it, to the minute."""
    return _at_house(stamp).strftime("%Y-%m-%d %H:%M") if stamp else ""


@bp.app_template_filter("local_clock")
def local_clock(stamp: str | None) -> str:
    """Return the minute of a UTC time as the house's clock shows it."""
    return _at_house(stamp).strftime("%H:%M") if stamp else ""


@bp.app_template_filter("house_day")
def house_day(seconds: float) -> str:
    """Return the day of a time since 1970 [s] as the house's clock shows it: 2 Dec 2026."""
    return local.short_day(_at_house(datetime.fromtimestamp(seconds, UTC).isoformat()))


@bp.app_template_filter("said")
def said(asked: Mapping[str, Any]) -> str:
    """Return the sentence of a question or of an offer in the language that is read. It comes with its English one."""
    if language() == ENGLISH or not asked.get("message"):
        return str(asked["words"])
    return sentence(message_from_json(asked["message"]), language(), current.house)


@bp.app_template_filter("sort_name")
def sort_name(sort: str) -> str:
    """Return the name of a sort of vessel."""
    return say(f"desk-sort-{sort}") if sort in SORTS else sort


@bp.app_template_filter("pair_with")
def pair_with(one: object, other: object) -> tuple[object, object]:
    """Return the two together, for a list that has both."""
    return one, other


@bp.app_template_filter("rule_words")
def rule_words(rule: dict[str, float | str | None]) -> str:
    """Return a rule of readiness in words."""
    said = ((name, rule.get(name)) for name in ("age_years", "strength_low", "strength_high", "score_low", "loss_high"))
    return ", ".join(
        say(f"desk-rule-{name}", figure=figures.amount(float(str(value)), "pct_vol", None)
            if name.startswith("strength") else local.number(f"{value:g}"))
        for name, value in said if value is not None
    )


def _at_house(stamp: str) -> datetime:
    return datetime.fromisoformat(stamp).astimezone(current.zone)
