"""The record of a batch on paper: a ferment from its fruit to the still, or a bottling from its tank to its cases."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from webapp.book.cellar.ferments import Counted, Ferment
from webapp.book.goods.bottlings import Batch
from webapp.desk.blueprint import local_time
from webapp.desk.figures import amount, figure, or_us, sign
from webapp.desk.paper import cautions
from webapp.desk.paper.imprint import Imprint
from webapp.desk.paper.press import Paper
from webapp.words.desk import say

Entries = Sequence[Mapping[str, object]]
Asked = Sequence[tuple[str, str]]


def ferment_paper(
    ferment: Ferment,
    counts: Sequence[Counted],
    words: Mapping[str, str],
    entries: Entries,
    asked: Asked,
    imprint: Imprint,
    *,
    stands: str,
) -> bytes:
    """Return the record of a ferment as a PDF. words: what each count is called; stands: its vessel's place."""
    title = say("paper-batch-batch_record", ferment=ferment['name'] or ferment['what'] or 'ferment')
    paper = Paper(title, say("paper-batch-in", what=ferment['what'], mark=ferment['mark']), imprint)
    measured = ferment["measured"]
    first, last = (ferment["readings"][0], ferment["readings"][-1]) if ferment["readings"] else (None, None)
    paper.facts(
        [
            (say("paper-batch-fermenter"), ferment["mark"]),
            (say("paper-batch-stands_at"), stands),
            (say("desk-common-set"), local_time(ferment["since"])),
            (
                say("paper-batch-emptied"),
                local_time(ferment["ended_at"]) if ferment["ended_at"] else say("desk-common-not_yet"),
            ),
            (say("paper-batch-first_gravity"), f"{first['gravity']:.4f}" if first else ""),
            (say("paper-batch-last_gravity"), f"{last['gravity']:.4f}" if last else ""),
            (say("paper-batch-closed_at"), f"{gravity:.4f}" if (gravity := measured.get("final_gravity")) else ""),
            (say("paper-batch-wash"), amount(measured.get("volume_l"), "L", 1)),
            (say("paper-batch-wash_strength"), amount(measured.get("strength_pct"), "pct_vol", 2)),
            (say("paper-batch-pure_alcohol_in_the_wash"), amount(measured.get("lpa"), "LPA", 2)),
        ],
        columns=4,
    )
    paper.cautions(cautions.GAS, cautions.TANKS, cautions.ALONE)
    paper.heading(say("paper-batch-gravity_and_temperature"))
    paper.table(
        (say("desk-common-read_at"), say("desk-common-gravity"), sign("degC"), say("desk-common-who")),
        [
            (local_time(one["at"]), f"{one['gravity']:.4f}", figure(one["temp_c"], "degC", 1), one["person"])
            for one in ferment["readings"]
        ],
        (50, 36, 36, 40),
        numbers=" rr",
        empty=say("paper-batch-not_read_yet"),
    )
    if counts:
        paper.heading(say("paper-batch-counts_of_its_alcohol"))
        paper.table(
            (say("paper-batch-count"), say("paper-batch-of_wash", unit=sign('pct_vol')), or_us(
                say("desk-common-l_pure_alcohol"), say("desk-common-proof_gal2"),
            )),
            [
                (words.get(one["key"], one["key"]), figure(one["pct"], "pct_vol", 1), figure(one["lpa"], "LPA", 1))
                for one in counts
            ],
            (90, 45, 45),
            numbers=" rr",
        )
        paper.say("They count one thing in ways that do not know of each other.", quiet=True)
    _finish(paper, entries, asked)
    return paper.render()


def bottling_paper(
    batch: Batch, balance: Mapping[str, float] | None, entries: Entries, asked: Asked, imprint: Imprint
) -> bytes:
    """Return the record of a bottled batch as a PDF.

    balance: gauged, bottled, off [L], off_pct; None before a close.
    """
    paper = Paper(
        say("paper-batch-batch_record2", batch=batch['name']), say("paper-batch-bottled", batch=batch['what']),
        imprint,
    )
    limits, sums = batch["limits"], batch["sums"]
    paper.facts(
        [
            (say("paper-batch-tanks"), ", ".join(dict.fromkeys(one["tank"] for one in batch["fills"]))),
            (say("paper-batch-bottle"), f"{limits['size_l']:g} L" if limits["size_l"] else ""),
            (say("paper-batch-strength_on_the_label"), amount(limits["label_pct"], "pct_vol", 1)),
            (say("paper-batch-good_bottles"), str(sums["good"] or "")),
            (say("desk-common-filled"), str(sums["filled"] or "")),
            (say("paper-batch-broken"), str(sums["broken"]) if sums["filled"] else ""),
            (say("paper-batch-kept_in_the_library"), str(sums["library"]) if sums["filled"] else ""),
            (say("paper-batch-pure_alcohol_in_bottles"), amount(sums["lpa_l"], "LPA", 2) if sums["filled"] else ""),
        ],
        columns=4,
    )
    paper.heading(say("paper-batch-tank_gauges"))
    paper.table(
        (
            say("paper-batch-at"),
            say("paper-batch-tank"),
            say("paper-batch-at2", unit=sign('L'), temp=or_us('20 °C', '68 °F')),
            say("paper-batch-true", unit=sign('pct_vol')),
            or_us(say("desk-common-l_pure_alcohol"), say("desk-common-proof_gal2")),
            say("desk-common-who"),
        ),
        [
            (
                local_time(one["at"]),
                one["tank"],
                figure(one["figures"].get("volume_20"), "L", 1),
                figure(one["figures"].get("true_strength"), "pct_vol", 2),
                figure(one["figures"].get("lpa"), "LPA", 2),
                one["person"],
            )
            for one in batch["gauges"]
        ],
        (40, 25, 30, 30, 32, 20),
        numbers="  rrr",
        empty=say("paper-batch-no_bottling_tank_gauge_yet"),
    )
    paper.heading(say("paper-batch-checks_of_the_line"))
    paper.table(
        (
            say("paper-batch-at"), say("desk-common-bottles"), say("paper-batch-fill"), say("paper-batch-least"),
            say("paper-batch-most"), sign("pct_vol"), say("paper-batch-labels_right"), say("paper-batch-done"),
            say("desk-common-by"),
        ),
        [
            (
                local_time(one["at"]),
                *(
                    figure(_number(one["values"].get(name)), unit, places)
                    for name, unit, places in (
                        ("tested", "count", 0),
                        ("fill_found", "pct", 1),
                        ("fill_least", "pct", 1),
                        ("fill_most", "pct", 1),
                        ("strength_found", "pct_vol", 1),
                    )
                ),
                str(one["values"].get("labels_right") or ""),
                str(one["values"].get("done") or ""),
                one["person"],
            )
            for one in batch["checks"]
        ],
        (34, 16, 18, 18, 18, 18, 20, 22, 14),
        numbers=" rrrrr",
        empty=say("desk-common-none_yet"),
    )
    paper.heading(say("desk-common-cases"))
    paper.table(
        (
            say("desk-common-closed2"), say("desk-common-cases"), say("paper-batch-odd_case"),
            say("desk-common-filled"), say("paper-batch-broken"), say("paper-batch-library"), say("paper-batch-good"),
        ),
        [
            (
                local_time(str(one.get("at") or "")),
                _from_to(str(one.get("case_from") or ""), str(one.get("case_to") or "")),
                str(one.get("odd_case") or ""),
                *(str(one.get(name) or 0) for name in ("filled", "broken", "library", "good")),
            )
            for one in batch["closes"]
        ],
        (36, 44, 24, 20, 20, 20, 20),
        numbers="   rrrr",
        empty=say("paper-batch-not_closed_yet"),
    )
    paper.heading(say("desk-common-where_it_went"))
    paper.table(
        (say("desk-common-to2"), say("paper-batch-at2", unit=sign('L'), temp=or_us('20 °C', '68 °F')), or_us(
            say("desk-common-l_pure_alcohol"), say("desk-common-proof_gal2"),
        )),
        [(one["words"], figure(one["volume_l"], "L", 1), figure(one["lpa_l"], "LPA", 2)) for one in batch["went"]],
        (90, 45, 45),
        numbers=" rr",
        empty=say("paper-batch-nothing_has_left_the_tank"),
    )
    if balance:
        paper.say(
            f"Gauged {figure(balance['gauged'], 'LPA', 2)}, bottled {figure(balance['bottled'], 'LPA', 2)}: "
            f"{amount(balance['off'], 'LPA', 2)}{or_us(' pure alcohol', '')} ({balance['off_pct']:.1f} %) "
            "not in a bottle."
        )
    _finish(paper, entries, asked)
    return paper.render()


def _number(value: object) -> float | None:
    return float(value) if isinstance(value, int | float) and not isinstance(value, bool) else None


def _from_to(first: str, last: str) -> str:
    return say("paper-batch-to", first=first, last=last) if last else first


def _finish(paper: Paper, entries: Entries, asked: Asked) -> None:
    """Print what both records end with: the entries, what is open, the signatures."""
    paper.heading(say("paper-batch-its_entries"))
    paper.table(
        (
            say("paper-batch-no"), say("desk-common-read_at"), say("desk-common-entry"), say("desk-common-what"),
            say("desk-common-who"),
        ),
        [
            (str(one["book_no"]), str(one["read_local"]), str(one["title"]), str(one["summary"]), str(one["person"]))
            for one in entries
        ],
        (14, 31, 36, 82, 16),
    )
    paper.questions(asked)
    paper.signatures(say("paper-batch-made_by"), say("paper-batch-looked_over_by"))
