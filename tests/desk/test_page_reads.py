"""A page reads once: however many rows it shows, what it needs comes in few statements.

Every statement that a request gives SQLite counts, whatever it is. What SQLite then asks itself, to read a full-text
index, does not: it reports that as a comment (sqlite.org, sqlite3_trace_v2, SQLITE_TRACE_STMT). The bound is the
house's own, not out of a standard.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from typing import Any

import pytest

from tests.desk.large_world import MANY, R1, S1, LargeWorld
from webapp import kinds
from webapp.book.house import registry
from webapp.book.periods import ledger, notices
from webapp.book.today import facts
from webapp.sheets.entering import Stamp
from webapp.sheets.lookover import Told
from webapp.sheets.putting import put_in

STATEMENTS_MOST = 15

Addresses = Callable[[LargeWorld], list[str]]


def at(*paths: str) -> Addresses:
    """Return what gives addresses that are always the same."""
    return lambda world: [f"/desk{path}" for path in paths]


# Every page and file of the desk, with addresses at which it has more than a hundred rows to show or to look through.
PAGES: dict[str, Addresses] = {
    "amend": lambda w: [f"/desk/entries/{one}/amend" for one in (w.amended, w.run, w.bottled, w.plan)],
    "blending_page": at("/blending"),
    "bottling_pdf": at("/bottlings.pdf?batch=K-26-03", "/bottlings.pdf?batch=K-25-7"),
    "count_pdf": at("/cellar/count.pdf", "/cellar/count.pdf?room=cell&sort=cask"),
    "entry_pdf": lambda w: [f"/desk/entries/{one}.pdf" for one in (w.amended, w.run, w.bottled, w.fill, w.plan)],
    "ferment_pdf": lambda w: [f"/desk/cellar/ferments/{w.first_fill}.pdf", f"/desk/cellar/ferments/{w.fill}.pdf"],
    "passport_pdf": lambda w: [f"/desk/trace/{key}.pdf" for key in traced(w)],
    "run_pdf": lambda w: [f"/desk/runs/{w.run}.pdf"],
    "access_lines": at("/access.jsonl"),
    "access_page": at("/access", "/access?sort=signed_in"),
    "bottled_csv": at("/bottled.csv"),
    "bottled_page": at("/bottled"),
    "bottling_page": at("/bottlings?batch=K-26-03", "/bottlings?batch=K-25-7"),
    "cask_page": lambda w: [f"/desk/cellar/casks/{mark}" for mark in w.marks("C")[:2]],
    "casks_by_year_page": at("/casks-by-year", "/casks-by-year?month=2025-09", "/casks-by-year?known=1"),
    "casks_page": at("/cellar/casks", "/cellar/casks?sort=loss", "/cellar/casks?due=regauge"),
    "cellar_house_page": at("/cellar/house"),
    "certificates_page": at("/certificates", "/certificates?which=open"),
    "check_limits_page": at("/limits/checks"),
    "enclosures_page": lambda w: [f"/desk/enclosures/entry/{w.amended}", f"/desk/enclosures/mark/{S1}",
                                  *(f"/desk/enclosures/trace/{key}" for key in traced(w))],
    "entries_csv": lambda w: [f"/desk/entries.csv?kind={kind.name}" for kind in kinds.ALL],
    "case_labels": at("/bottlings/cases?batch=K-26-03&layout=roll-62x60&file=pdf"),
    "entries_json": at("/entries.json"),
    "entries_page": lambda w: ["/desk/entries", f"/desk/entries?mark={w.marks('F')[0]}", f"/desk/entries?mark={S1}",
                               "/desk/entries?kind=ferment_reading", "/desk/entries?kind=shift_note"],
    "entry_page": lambda w: [f"/desk/entries/{one}" for one in (w.amended, w.run, w.bottled, w.fill, w.plan)],
    "feints_page": at("/runs/feints"),
    "ferment_page": lambda w: [f"/desk/cellar/ferments/{w.first_fill}", f"/desk/cellar/ferments/{w.fill}"],
    "ferments_page": at("/cellar"),
    "instrument_edit": at("/instruments/new", "/instruments/TH-0/edit"),
    "instrument_page": at("/instruments/TH-0", "/instruments/TH-7"),
    "instruments_page": at("/instruments"),
    "judging_csv": lambda w: [f"/desk/rules/{w.judging}/entries.csv"],
    "judging_page": lambda w: [f"/desk/rules/{w.judging}"],
    "labels_page": at("/labels"),
    "limits_page": at("/limits"),
    "map_page": at("/cellar/map"),
    "people_page": at("/people"),
    "period_close": at("/periods/2025-Q3/close", "/periods/2016-Q2/close"),
    "period_csv": at("/periods/2025-Q3.csv"),
    "period_held": at("/periods/2025-Q3/held", "/periods/2016-Q2/held"),
    "period_json": at("/periods/2025-Q3.json"),
    "period_known": at("/periods/2025-Q3/known", "/periods/2016-Q2/known"),
    "period_page": at("/periods/2025-Q3", "/periods/2025-09", "/periods/2016-Q1", "/periods/2016-Q2"),
    "period_pdf": at("/periods/2025-Q3.pdf"),
    "periods_page": at("/periods"),
    "person_edit": at("/people/new", "/people/Z1"),
    "phones_page": at("/phones"),
    "readers_page": at("/readers"),
    "plans_page": at("/runs/plans"),
    "proof_page": at("/proof"),
    "queries_page": at("/queries", "/queries?weight=note"),
    "ready_page": at("/cellar/ready"),
    "records_page": at("/records"),
    "rules_page": at("/rules"),
    "run_page": lambda w: [f"/desk/runs/{w.run}"],
    "runs_beside": lambda w: [
        "/desk/runs/beside?" + "&".join(f"run={row['id']}" for row in w.book.query("SELECT id FROM runs LIMIT 4"))
    ],
    "runs_page": at("/runs"),
    "search_hits": at("/search/hits?q=c", "/search/hits?q=Ostrey"),
    "search_page": at("/search?q=c", "/search?q=fruit", "/search?q=stir", "/search?q=Ostrey&in=load",
                      "/search?q=nonesuch", "/search?q=stir&in=entry"),
    "seasons_page": at("/seasons"),
    "parties_page": at("/parties"),
    "party_edit": at("/parties/edit"),
    "address_page": at("/address"),
    "settings_page": at("/settings"),
    "you_page": at("/you"),
    "passkey_new": at("/you/passkeys/new"),
    "sheet_file": at("/sheets/1/file"),
    "sheet_page": at("/sheets/1"),
    "sheet_template": at("/sheets/template/all.xlsx", "/sheets/template/opening.csv"),
    "sheets_page": at("/sheets"),
    "today_page": at("/"),
    "tasting_new": at("/tastings/new"),
    "tasting_page": at("/tastings/T-0", "/tastings/T-99"),
    "serving_pdf": at("/tastings/T-0/serving.pdf"),
    "tastings_page": at("/tastings"),
    "trace_csv": lambda w: [f"/desk/trace/{key}.csv" for key in traced(w)],
    "trace_json": lambda w: [f"/desk/trace/{key}.json" for key in traced(w)],
    "trace_page": lambda w: [f"/desk/trace/{key}" for key in traced(w)],
    "trace_search_page": at("/trace?q=Ostrey", "/trace?q=R-", "/trace?q=K-26-03", f"/trace?q={R1}"),
    "vat_page": at("/blending/plan"),
    "vat_plan_page": lambda w: [f"/desk/blending/plans/{w.plan}"],
    "vessel_dips": lambda w: [f"/desk/vessels/{S1}/dips"],
    "vessel_edit": lambda w: ["/desk/vessels/new", f"/desk/vessels/{S1}/edit"],
    "vessel_page": lambda w: [f"/desk/vessels/{one}" for one in (S1, R1, w.marks("F")[0], w.marks("C")[0])],
    "vessels_page": at("/vessels"),
    "yields_page": at("/runs/yields"),
}
# Rows of tables on the pages whose list goes on past a hundred.
LONG = ("bottled_page", "casks_page", "entries_page", "instruments_page", "people_page", "phones_page", "runs_page",
        "vessels_page", "yields_page", "limits_page", "settings_page")
LEADS_ON = ("check_limits_page",)  # to another page


def traced(world: LargeWorld) -> list[str]:
    return [world.run, f"load-{world.first_fill}", world.bottled, R1]


@pytest.fixture(scope="module")
def world(tmp_path_factory: pytest.TempPathFactory) -> Iterator[LargeWorld]:
    made = LargeWorld(tmp_path_factory.mktemp("large"))
    made.app.config["PASSKEY_ORIGINS"] = {"http://localhost"}
    growers = "".join(f"Grower {n},grower\n" for n in range(120))
    stamp = Stamp("OL", "office", datetime(2026, 11, 29, tzinfo=UTC))
    put_in(made.book, "growers.csv", f"Name,Role\n{growers}".encode(), Told(), stamp, registry.site(made.book))
    yield made
    made.book.close()


@pytest.fixture(scope="module")
def browser_at_desk(world: LargeWorld) -> Any:
    return world.client()


def counted(world: LargeWorld, ask: Callable[[], Any]) -> tuple[Any, list[str]]:
    """Return an answer and the statements that it took, nothing being held from a page before."""
    # What is worked out once for all pages until the book changes is worked out anew here.
    ledger._held.clear()
    notices._held.clear()
    facts._held.clear()
    said: list[str] = []
    connections = [world.book.db.conn, world.book._writer.conn]
    for connection in connections:
        connection.set_trace_callback(said.append)
    try:
        answer = ask()
        answer.get_data()
    finally:
        for connection in connections:
            connection.set_trace_callback(None)
    return answer, [one for one in said if not one.startswith("-- ")]


def test_every_page_and_file_of_the_desk_is_counted(world: LargeWorld) -> None:
    rules = [rule for rule in world.app.url_map.iter_rules() if rule.endpoint.startswith("desk.")]
    assert {rule.endpoint.removeprefix("desk.") for rule in rules if "GET" in (rule.methods or ())} == set(PAGES)


@pytest.mark.parametrize("name", sorted(PAGES))
def test_a_page_reads_once(world: LargeWorld, browser_at_desk: Any, name: str) -> None:
    for address in PAGES[name](world):
        answer, said = counted(world, lambda address=address: browser_at_desk.get(address))  # type: ignore[misc]
        assert answer.status_code == (302 if name in LEADS_ON else 200), address
        assert said  # the counting works
        assert len(said) <= STATEMENTS_MOST, (address, len(said), said)
    if name in LONG:
        body = browser_at_desk.get(PAGES[name](world)[0]).get_data(as_text=True)
        assert len(re.findall("<tr", body)) >= min(MANY, 100)


def test_an_entry_is_worked_out_with_the_offered_figure_in_few_statements_more(
    world: LargeWorld, browser_at_desk: Any
) -> None:
    """Ten more at most: the states before it in one, the registry, and what a check asks that it had not asked."""
    offered = world.book.query(
        "SELECT entry FROM queries WHERE answer = '' AND suggestions <> '[]' GROUP BY entry LIMIT 3"
    )
    assert offered
    for one in offered:
        answer, said = counted(world, lambda one=one: browser_at_desk.get(f"/desk/entries/{one['entry']}"))  # type: ignore[misc]
        assert "beside__offer" in answer.get_data(as_text=True)
        assert len(said) <= STATEMENTS_MOST + 10, (len(said), said)


@pytest.fixture
def judging(world: LargeWorld) -> Iterator[None]:
    """The whole book is on the list of what is to be judged again, and stays there."""
    with world.book.write() as database:
        database.conn.execute("INSERT INTO unjudged SELECT order_key FROM folded")
    yield
    with world.book.write() as database:
        database.conn.execute("DELETE FROM unjudged")


@pytest.mark.usefixtures("judging")
@pytest.mark.parametrize("name", sorted(set(PAGES) - {*LEADS_ON, "entries_csv"}))
def test_a_page_reads_once_while_the_book_is_judged_again(world: LargeWorld, browser_at_desk: Any, name: str) -> None:
    address = PAGES[name](world)[0]
    answer, said = counted(world, lambda: browser_at_desk.get(address))
    assert answer.status_code == 200, address
    assert len(said) <= STATEMENTS_MOST, (address, len(said), said)
