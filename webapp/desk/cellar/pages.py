"""The cellar: ferments with their forecast, casks against casks like them, the places as maps."""

from __future__ import annotations

import json
from collections.abc import Callable
from datetime import UTC, datetime
from typing import Final

from flask import abort, render_template, request
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.cellar import casks, ferments
from webapp.book.cellar.allowances import allowance_of
from webapp.book.cellar.casks import YEAR_S, Cask
from webapp.book.cellar.known import known_rates, last_fall, load_known
from webapp.book.checks import site_limit
from webapp.book.fold import queries, states
from webapp.book.house import places, registry
from webapp.book.today import due, facts
from webapp.desk.blueprint import bp
from webapp.desk.cellar.warehouse import rooms_of
from webapp.desk.chart import Chart
from webapp.desk.figures import in_house
from webapp.kinds.state import NO_FILL
from webapp.trade.caskloss import year_share
from webapp.trade.marks import BadMark, parse_mark
from webapp.trade.placenames import sort_key
from webapp.trade.uncertainty import expanded
from webapp.words.desk import Later, say

PAGES = (
    ("ferments", Later("desk-cellar-ferments"), "/desk/cellar"),
    ("casks", Later("desk-common-casks"), "/desk/cellar/casks"),
    ("map", Later("desk-cellar-places"), "/desk/cellar/map"),
    ("ready", Later("desk-cellar-ready"), "/desk/cellar/ready"),
    ("house", Later("desk-cellar-house_rules"), "/desk/cellar/house"),
)
COUNTS = {
    "gravity": Later("desk-cellar-by_the_fall_of_gravity"), "law_1880": Later("desk-cellar-as_the_law_of_1880"),
    "wash": Later("desk-cellar-by_the_wash_as_measured"), "low_wines": Later("desk-cellar-by_low_wines"),
    "spirits": Later("desk-cellar-by_spirits_and_feints"),
}
VERDICTS = {
    "usual": "", "leak": Later("desk-cellar-a_leak"), "slip": Later("desk-cellar-a_slip_of_the_glass"),
    "other_cask": Later("desk-cellar-another_cask"), "gain": Later("desk-cellar-gained"),
}
PLACE_CODES = ("places_swapped", "place_differs", "cask_missing", "not_in_book")
PLACES_MOST = 600  # on one page; more are shown a room at a time
DUES = {
    "regauge": Later("desk-cellar-to_regauge"), "sample": Later("desk-cellar-to_sample"),
    "taste": Later("desk-cellar-to_taste"),
}
SORTS = {
    "place": Later("desk-cellar-by_place"), "loss": Later("desk-cellar-loss_a_year"),
    "age": Later("desk-cellar-by_age"), "lpa": Later("desk-common-pure_alcohol"),
}


@bp.get("/cellar")
@needs("floor")
def ferments_page() -> ResponseReturnValue:
    """List ferments, those under way first, each with its last reading and when it will end."""
    found = ferments.ferments(current.book, 60)
    under_way = [one for one in found if not one["ended_at"]]
    past = [one for one in found if one["ended_at"]]
    stands = places.stands_at(current.book, {one["mark"] for one in under_way})
    return render_template("desk/cellar/ferments.html", under_way=under_way, past=past, stands=stands, pages=PAGES)


@bp.get("/cellar/ferments/<fill>")
@needs("floor")
def ferment_page(fill: str) -> ResponseReturnValue:
    """Show one ferment: its curve and what is expected, its readings, and the counts of its alcohol side by side."""
    found = ferments.ferment(current.book, fill)
    if found is None:
        abort(404, say("desk-cellar-the_book_has_no_such"))
    points = [[_seconds(line["at"]), line["gravity"]] for line in found["readings"]]
    temps = [[_seconds(line["at"]), line["temp_c"]] for line in found["readings"] if line["temp_c"] is not None]
    gravity: Chart = {
        "title": say("desk-common-gravity"), "yLabel": "SG", "yDecimals": 3, "xIsTime": True, "height": 260,
        "series": [{"label": say("desk-cellar-gravity"), "points": points}],
    }
    if curve := found["forecast"].get("curve_s"):
        gravity["expected"] = {"label": say("desk-cellar-expected"), "points": curve}
    warmth: Chart = {"title": say("desk-cellar-mash_temperature"), "yLabel": "°C", "yDecimals": 1, "xIsTime": True,
                              "height": 180, "series": [{"label": "mash", "points": temps}]}
    charts = [one for one in (gravity, in_house(warmth, "degC")) if len(one["series"][0]["points"]) > 1]
    asked = [query for query in queries.for_card(current.book, found["mark"]) if found["holds"]]
    counts = ferments.count_alcohol(current.book, found)
    stands = places.stands_at(current.book, [found["mark"]])[found["mark"]] if not found["ended_at"] else ""
    return render_template("desk/cellar/ferment.html", ferment=found, counts=counts, words=COUNTS, asked=asked,
                           stands=stands, charts=json.dumps(charts), pages=PAGES)


@bp.get("/cellar/casks")
@needs("floor")
def casks_page() -> ResponseReturnValue:
    """List casks that hold something: loss a year beside that of casks like it."""
    sort, area, wanted = request.args.get("sort", "place"), request.args.get("area", ""), request.args.get("due", "")
    found = [cask for cask in casks.casks(current.book) if cask.holds]
    areas = sorted({cask.area for cask in found}, key=sort_key)
    now = datetime.now(UTC)
    of_due = _marks_due(wanted, now) if wanted in DUES else None
    shown = [
        cask for cask in found
        if (not area or cask.area == area) and (of_due is None or cask.row["mark"] in of_due)
    ]
    keys: dict[str, Callable[[Cask], float]] = {
        "loss": lambda cask: -(cask.loss if cask.loss is not None else -1e9),
        "age": lambda cask: -(cask.age_years(now) or 0),
        "lpa": lambda cask: -((cask.holds or NO_FILL)["lpa_l"] or 0),
    }
    if sort in keys:
        shown.sort(key=keys[sort])
    return render_template("desk/cellar/casks.html", casks=shown, now=now, sort=sort, area=area, areas=areas,
                           sorts=SORTS, year_share=year_share, dues=DUES, due=wanted, verdicts=VERDICTS, pages=PAGES)


def _marks_due(wanted: str, now: datetime) -> set[str]:
    """Return the casks that are due in a round, as the page of the day counts them."""
    known = facts.load_facts(current.book, facts.load_registry(current.book), current.house)
    return {one.mark for one in due.casks_due(known.standings.values(), wanted, current.site, now)}


@bp.get("/cellar/casks/<mark>")
@needs("floor")
def cask_page(mark: str) -> ResponseReturnValue:
    """Show the course of a cask: pure alcohol, strength and scores over the years, a forecast for a day, notes."""
    everyone = casks.casks(current.book)
    cask = next((one for one in everyone if one.row["mark"] == _mark(mark)), None)
    if cask is None:
        abort(404, say("desk-cellar-the_book_knows_no_cask", mark=mark[:16]))
    day, wrong = _day(request.args.get("on", ""))
    forecast = cask.at(day) if day else None
    groups = casks.Alike(everyone, site_limit("small_l", current.site)).groups(cask)
    alike = next((group for group in reversed(groups) if len(group) >= 3), groups[1])
    asked = queries.for_card(current.book, cask.row["mark"])
    known = load_known(current.book, cask.gauges)
    return render_template("desk/cellar/cask.html", cask=cask, day=day, wrong=wrong, forecast=forecast,
                           alike=alike[:12], asked=asked, year_share=year_share,
                           allowed=allowance_of(current.site, cask.row["capacity_l"]), now=datetime.now(UTC), at=_at,
                           verdicts=VERDICTS, pages=PAGES, charts=json.dumps(_charts(cask)),
                           fallen=last_fall(known, cask.gauges),
                           known=known_rates(known, cask.gauges, cask.rates), expanded=expanded)


def _at(at_s: float) -> str:
    """Return a time as a UTC text. [s since 1970]"""
    return datetime.fromtimestamp(at_s, UTC).isoformat(timespec="seconds")


def _charts(cask: Cask) -> list[Chart]:
    """Return pure alcohol and strength with a year and two to come, and the scores."""
    made: list[Chart] = []
    for key in _COURSES:
        name, title, unit = (str(one) for one in _COURSE_WORDS[key])
        points = [[one["at_s"], one[key]] for one in cask.gauges]
        if not points:
            continue
        chart: Chart = {"title": title, "yLabel": "", "yDecimals": 1, "xIsTime": True, "height": 200,
                                 "series": [{"label": name, "points": points}]}
        ahead = [(years, cask.at(datetime.fromtimestamp(points[-1][0] + years * YEAR_S, UTC))) for years in (1, 2)]
        expected = [[points[-1][0] + years * YEAR_S, told[key]["at"]] for years, told in ahead if told]
        if expected:
            chart["expected"] = {"label": say("desk-cellar-expected"), "points": [points[-1], *expected]}
        made.append(in_house(chart, unit))
    scores = [[_seconds(one["at"]), one["score"]] for one in cask.tastings]
    if len(scores) > 1:
        made.append({
            "title": say("desk-cellar-scores"), "yLabel": say("desk-cellar-of_10"), "yDecimals": 1, "xIsTime": True,
            "height": 160, "series": [{"label": say("desk-cellar-score"), "points": scores}],
        })
    return [one for one in made if len(one["series"][0]["points"]) > 1]


_COURSES: Final = ("lpa", "strength_pct")
_COURSE_WORDS = {
    "lpa": (Later("desk-common-pure_alcohol"), Later("desk-cellar-pure_alcohol"), "LPA"),
    "strength_pct": (Later("desk-cellar-strength_in_words"), Later("desk-cellar-strength"), "pct_vol"),
}


@bp.get("/cellar/map")
@needs("floor")
def map_page() -> ResponseReturnValue:
    """Show the rooms as maps of their places, with what stands in each and what a stock count found elsewhere.

    A large house is shown a room at a time.
    """
    book, site = current.book, current.site
    sort = request.args.get("sort") or ""
    vessels = places.standing_vessels(book, (sort,) if sort in registry.SORTS else ())
    asked = [query for query in queries.open_queries(book) if query["code"] in PLACE_CODES]
    marks = {query["mark"] for query in asked}
    holds = states.load_fills(book, (one["mark"] for one in vessels))
    verdicts = {one.row["mark"]: one.verdict for one in casks.casks(book)} if sort in ("", "cask") else {}
    names = {area["id"]: area["name"] for area in site.get("areas") or [] if isinstance(area, dict)}
    # A place that is kept for one sort of vessel is not known as such: with a sort picked, what is free is not said.
    known = () if sort else places.known_places(book)
    rooms = rooms_of(vessels, known, holds, names, marks, verdicts)
    wanted = request.args.get("room", "")
    is_large = sum(len(room.all_places) for room in rooms) > PLACES_MOST
    first = [room for room in rooms if room.key == wanted] or rooms[:1]
    return render_template(
        "desk/cellar/map.html", found=rooms, shown=first if is_large else rooms, is_large=is_large, asked=asked,
        unplaced=[one for one in vessels if not one["stands"]], sort=sort, sorts=registry.SORTS, verdicts=VERDICTS,
        pages=PAGES, most=places.VESSELS_MOST if len(vessels) >= places.VESSELS_MOST else None,
    )


def _mark(text: str) -> str:
    try:
        return parse_mark(text)
    except BadMark:
        return ""


def _day(text: str) -> tuple[datetime | None, str]:
    """Return the day asked for; a year from now where none was."""
    if not text:
        return datetime.fromtimestamp(datetime.now(UTC).timestamp() + YEAR_S, UTC), ""
    try:
        day = datetime.fromisoformat(text[:10]).replace(tzinfo=UTC)
    except ValueError:
        return None, say("desk-cellar-that_is_no_day_pick")
    return day, ""


def _seconds(at: str) -> float:
    return datetime.fromisoformat(at).timestamp()
