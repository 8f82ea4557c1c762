"""The group's pages: sites, the trace over all of them, their periods, and the people who may sign in."""

from __future__ import annotations

from collections import defaultdict
from datetime import UTC, datetime

from flask import Blueprint, abort, current_app, flash, make_response, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.again import asked_again
from webapp.access.journal import note
from webapp.book.goods import goods
from webapp.book.house import devices, invitations, people, registry
from webapp.book.lineage.lineage import Trace
from webapp.book.periods.periods import litres
from webapp.book.periods.words import CAUTION
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import local_time, sort_name, unit_symbol
from webapp.desk.figures import FILTERS
from webapp.desk.periods.rows import ROUNDED, rounding
from webapp.desk.trace.lists import LISTED_MOST, back_links, bottlings, sections, standing_spirit
from webapp.desk.trace.pages import PAGE_STEPS_MOST
from webapp.desk.trace.picture import draw, percent
from webapp.group import links as between
from webapp.group import periods, shown, sites
from webapp.group.folds import Folds
from webapp.group.store import GroupBusy, Store
from webapp.group.tracing import Tracing
from webapp.serving import phone_trust
from webapp.words import local
from webapp.words.desk import Later, say

bp = Blueprint("group", __name__, url_prefix="/group")
ROOMS = [
    ("sites", Later("group-page-sites"), "/group/sites"),
    ("trace", Later("desk-common-trace"), "/group/trace"),
    ("periods", Later("desk-common-periods"), "/group/periods"),
    ("people", Later("desk-common-people"), "/group/people"),
]
bp.add_app_template_filter(percent, "percent")
bp.add_app_template_filter(local_time, "local_time")
bp.add_app_template_filter(unit_symbol, "unit_symbol")
bp.add_app_template_filter(sort_name)
bp.add_app_template_filter(local.number)
for name, make in FILTERS.items():
    bp.add_app_template_filter(make, name)


@bp.context_processor
def for_every_page() -> dict[str, object]:
    """Give every page its rooms, the group's name and who is signed in."""
    site = registry.site(current.book)
    return {"rooms": ROOMS if current.person else [], "site": site, "person": current.person, "may": current.may,
            "zone": site.get("time_zone")}


@bp.get("/")
def first_page() -> ResponseReturnValue:
    """Lead to the sites."""
    return redirect(url_for("group.sites_page"))


@bp.route("/sites", methods=["GET", "POST"])
@needs("floor")
def sites_page() -> ResponseReturnValue:
    """Show the progress of each site; make a one-time code for a new one."""
    code = ""
    if request.method == "POST":
        _must("office")
        assert current.person
        code = devices.new_token(current.book, by=current.person["code"], name=request.form.get("name", "site"))
    now = datetime.now(UTC)
    return render_template(
        "group/sites.html", sites=sites.listed(_store(), now), code=code, url=request.host_url.rstrip("/"),
        fingerprint=phone_trust.write_fingerprint(current_app.config["DATA_DIR"]).replace(" ", ""),
        alike=links().alike, names=names(),
    )


@bp.post("/sites/<site>/shut-out")
@needs("office")
def shut_out(site: str) -> ResponseReturnValue:
    """Shut out the device that hands in for a site: a new code lets its next computer in."""
    row = _store().one("SELECT device FROM sites WHERE site = %s", (site,)) or abort(404)
    assert current.person
    devices.revoke_device(current.book, row["device"], by=current.person["code"])
    flash(say("group-page-shut_out_what_it_handed"), "note")
    return redirect(url_for("group.sites_page"))


@bp.post("/sites/<site>/take")
@needs("office")
def take(site: str) -> ResponseReturnValue:
    """Choose the branch that is a site's book from now on."""
    number = request.form.get("branch", "")
    assert current.person
    branch = int(number) if number.isascii() and number.isdecimal() and len(number) < 6 else -1
    sites.take(_store(), site, branch, current.person["code"], datetime.now(UTC))
    folds().wake.set()
    flash(say("group-page-taken_the_other_branch_stays"), "note")
    return redirect(url_for("group.sites_page"))


@bp.get("/trace")
@needs("floor")
def trace_search_page() -> ResponseReturnValue:
    """Show the search for a subject to trace, at any site."""
    text = request.args.get("q", "").strip()[:60]
    hits = tracing().search(text) if text else []
    return render_template("group/trace_search.html", text=text, hits=hits)


@bp.get("/trace/<site>/<key>")
@needs("floor")
def trace_page(site: str, key: str) -> ResponseReturnValue:
    """Show a trace over all sites, both ways."""
    tracer = tracing()
    subject = tracer.find(f"{site}/{key}")
    if subject is None:
        return render_template("group/trace_search.html", text=key[:60], hits=[]), 404
    made = tracer.trace(subject, back_most=PAGE_STEPS_MOST)
    back, on = back_links(made), made.spread.links
    ways = (("back", say("group-page-made_of"), back, made.lpa_ul),
            ("on", say("desk-common-where_it_went"), on, made.spread.started_ul))
    return render_template(
        "group/trace.html", made=made, subject=made.nodes[subject.node], bottlings=bottlings(made),
        removals=removals(made), standing=standing_spirit(made), most=LISTED_MOST,
        ways=[
            (way, head, sections(made, found, total, backward=way == "back"), total,
             [(size, draw(made.nodes, found, total, tall=size == "tall")) for size in ("wide", "tall")])
            for way, head, found, total in ways if found
        ],
    )


@bp.get("/periods")
@needs("floor")
def periods_page() -> ResponseReturnValue:
    """List every quarter and month with what all sites had on hand at its end."""
    found = periods.totals(folds().all_works(), links(), datetime.now(UTC))
    return render_template("group/periods.html", found=found, litres=litres, title_of=shown.title_of)


@bp.get("/periods/<name>")
@needs("floor")
def period_page(name: str) -> ResponseReturnValue:
    """Show one period: the sum, and each site's own."""
    return render_template(
        "group/period.html", total=total(name), rows_of=shown.rows_of, title_of=shown.title_of,
        names=names(), litres=litres, rounding=rounding, rounded=ROUNDED, caution=CAUTION,
    )


def total(name: str) -> periods.Total:
    """Return a period of the group; 404 with a sentence where there is none."""
    try:
        return periods.total(folds().all_works(), links(), name, datetime.now(UTC))
    except GroupBusy:
        raise
    except BookError as error:
        abort(404, str(error))


@bp.route("/people", methods=["GET", "POST"])
@needs("office")
def people_page() -> ResponseReturnValue:
    """Show the people who may sign in here; add or change one; make somebody an invitation, shown once.

    Giving the office role and inviting want the password of whoever does it.
    """
    wrong = address = ""
    if request.method == "POST":
        assert current.person
        said, by = request.form, current.person["code"]
        row = {"code": said.get("code", ""), "name": said.get("name", ""), "access": said.get("access", "floor"),
               "retired": said.get("retired") == "yes"}
        is_invited = said.get("invite") == "yes"
        if (is_invited or row["access"] == "office") and (page := asked_again()):
            return page
        try:
            made = people.put_person(current.book, row, by=by)
            note("person", about=f"{made['code']}: may {made['access']}")
            if is_invited:
                now, folder = datetime.now(UTC), current_app.config["DATA_DIR"]
                token = invitations.invite(current.book, folder, made["code"], by, now)
                address = url_for("access.invitation", token=token, _external=True)
                note("invited", about=made["code"])
        except BookError as error:
            wrong = str(error)
        else:
            if not address:
                return redirect(url_for("group.people_page"))
    page_shown = make_response(
        render_template("group/people.html", people=people.people(current.book), wrong=wrong, address=address,
                        days=invitations.GOOD_FOR.days), 422 if wrong else 200,
    )
    page_shown.headers["Cache-Control"] = "no-store"
    return page_shown


def removals(made: Trace) -> list[dict[str, object]]:
    """Return the cases that left all its bottlings, at whichever site they were filled, by destination."""
    nodes = [made.nodes[f"b:{entry}"] for entry in made.spread.bottled]
    nodes += [made.nodes[made.subject.node]] if made.subject.sort == "bottling" else []
    by_site: dict[str, dict[str, dict[str, object]]] = defaultdict(dict)
    for node in nodes:
        site, _, own = node.key.partition("/")
        by_site[site][own] = {name: node.facts.get(name) or "" for name in ("batch", "lot_mark")}
    return [
        line | facts[line["bottling"]] | {"site": site}
        for site, facts in by_site.items()
        for line in goods.removals(folds().work(site).book, facts)
    ]


def _must(access: str) -> None:
    if not current.may(access):
        abort(403, say("group-page-this_needs_the_role_ask", access=access))


def _store() -> Store:
    store: Store = current_app.extensions["store"]
    return store


def folds() -> Folds:
    """Return the folds of this app."""
    found: Folds = current_app.extensions["folds"]
    return found


def names() -> dict[str, str]:
    """Return the sites' names by their ids."""
    return {row["site"]: row["name"] for row in _store().query("SELECT site, name FROM sites")}


def links() -> between.Links:
    """Return the transfers between sites."""
    return between.load(_store(), names())


def tracing() -> Tracing:
    """Return the tracer over all sites, made once a request."""
    return Tracing(_store(), folds(), links())
