"""A house with US units, whose people type in US units, reads no metric figure on any page of the desk."""

import html
import re
from collections import Counter

from webapp.book.house import registry

from .conftest import C1, F1, R1, R2, S1

METRIC = re.compile(r"% vol|°C|\bL/h\b|(?<=[0-9] )(?:L|kg)\b|\bLPA\b|\bL pure|, (?:L|kg)\b|\b[Ll]itres?\b")
# Both on purpose: accounts in litres beside proof gallons, flat rates as published, units to pick from, limits as they
# are kept; texts of the law.
BOTH = {"desk.period_page", "desk.period_known", "desk.period_close", "desk.period_print", "desk.casks_by_year_page",
        "desk.bottled_page", "desk.records_page", "desk.settings_page", "desk.limits_page", "desk.instrument_edit",
        "desk.vessel_dips"}
PER_PAGE = 3


def a_us_year(house):
    """Pears, a run and a cask, all typed in US units."""
    house.log("fruit_intake", F1, -3000, gross=("3748", "lb"), tare=("20", "lb"), material="pear",
              grower_lot="Ostrey Farm", sugar=("12.9", "Bx"), temp=("59", "degF"), rot=("1", "pct"))
    for minutes, gravity in ((-2900, "1.049"), (-1500, "1.030"), (-100, "1.054")):
        house.log("ferment_reading", F1, minutes, temp=("58", "degF"), gravity=(gravity, "SG"))
    house.log("charge", S1, 0, run_name="R-25-02", from_vessel=F1, wash=("127", "gal"), wash_strength=("10.2", "proof"))
    for minutes, proof in ((60, "156"), (70, "155"), (100, "150"), (110, "153")):
        house.log("run_reading", S1, minutes, strength=(proof, "proof"), temp=("61", "degF"), flow=("2.9", "gal_h"))
    house.log("cut", S1, 75, event="heads_cut", receiver=R2, reason="nose", strength=("154", "proof"))
    house.log("cut", S1, 220, event="hearts_cut", receiver=R1, reason="nose", strength=("113", "proof"))
    house.log("run_end", S1, 290, reason="strength", strength=("20", "proof"), temp=("66", "degF"))
    house.log("fraction_gauge", R2, 300, fraction="hearts", volume=("9.5", "gal"), strength=("140", "proof"),
              temp=("66", "degF"))
    house.log("cut_plan", S1, 301, what="pear", heads=("0.3", "gal"), hearts_to=("116", "proof"))
    for minutes, gross in ((400, "430"), (90_000, "455")):
        house.log("cask_regauge", C1, minutes, gross=(gross, "lb"), strength=("124", "proof"), temp=("60", "degF"),
                  condition="tight")


def test_a_us_house_reads_no_metric_figure_at_the_desk(house):
    registry.set_site(house.book, {"units": "us"}, by="OL")
    a_us_year(house)
    found, seen = crawl(house)
    assert len(seen) > 25
    assert [line for line in found if line[0] not in BOTH] == []


def crawl(house):
    """Return the metric figures of the pages, each with its page and what stands around it, and the pages' names."""
    client, routes = house.client("OL"), house.app.url_map.bind("localhost")
    waiting, seen, found = ["/desk/", "/desk/limits", "/desk/queries?weight=note"], Counter(), []
    known = set(waiting)
    while waiting:
        address = waiting.pop(0)
        name = routes.match(address.partition("?")[0])[0]
        seen[name] += 1
        answer = client.get(address) if seen[name] <= PER_PAGE else None
        if answer is None or answer.status_code != 200 or "html" not in answer.content_type:
            continue
        links = {html.unescape(one) for one in re.findall(r'href="(/desk/[^"#]*)"', answer.text)} - known
        known |= links
        waiting += sorted(links)
        found += [(name, address, around) for around in metric_in(answer.text)]
    return found, seen


def metric_in(page):
    """Return each metric figure of a page with the words around it: in its text, spoken labels and charts' axes."""
    page = re.sub(r"<(script|style|select|fieldset).*?</\1>", "", page, flags=re.DOTALL)  # choices name every unit
    page = re.sub(r"L pure alcohol</th></tr></thead>.*?</table>", "", page, flags=re.DOTALL)  # what it does to accounts
    data = html.unescape(" ".join(re.findall(r'data-(?:charts?|run|beside)="([^"]*)"', page)))
    axes = re.findall(r'"(?:yLabel|unit|xLabel|pureUnit)": "[^"]*"', data)
    spoken = re.findall(r'(?:aria-label|title|placeholder)="([^"]*)"', page)
    text = html.unescape(re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", page)))
    hits = ((each, at) for each in (text, *axes, *spoken) for at in METRIC.finditer(each))
    return [each[max(0, at.start() - 40):at.end() + 20] for each, at in hits]
