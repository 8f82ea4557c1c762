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
    title = f"Batch record: {ferment['name'] or ferment['what'] or 'ferment'}"
    paper = Paper(title, f"{ferment['what']} in {ferment['mark']}", imprint)
    measured = ferment["measured"]
    first, last = (ferment["readings"][0], ferment["readings"][-1]) if ferment["readings"] else (None, None)
    paper.facts(
        [
            ("Fermenter", ferment["mark"]),
            ("Stands at", stands),
            ("Set", local_time(ferment["since"])),
            ("Emptied", local_time(ferment["ended_at"]) if ferment["ended_at"] else "not yet"),
            ("First gravity", f"{first['gravity']:.4f}" if first else ""),
            ("Last gravity", f"{last['gravity']:.4f}" if last else ""),
            ("Closed at", f"{gravity:.4f}" if (gravity := measured.get("final_gravity")) else ""),
            ("Wash", amount(measured.get("volume_l"), "L", 1)),
            ("Wash strength", amount(measured.get("strength_pct"), "pct_vol", 2)),
            ("Pure alcohol in the wash", amount(measured.get("lpa"), "LPA", 2)),
        ],
        columns=4,
    )
    paper.cautions(cautions.GAS, cautions.TANKS, cautions.ALONE)
    paper.heading("Gravity and temperature")
    paper.table(
        ("Read at", "Gravity", sign("degC"), "Who"),
        [
            (local_time(one["at"]), f"{one['gravity']:.4f}", figure(one["temp_c"], "degC", 1), one["person"])
            for one in ferment["readings"]
        ],
        (50, 36, 36, 40),
        numbers=" rr",
        empty="Not read yet.",
    )
    if counts:
        paper.heading("Counts of its alcohol")
        paper.table(
            ("Count", f"{sign('pct_vol')} of wash", or_us("L pure alcohol", "proof gal")),
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
    paper = Paper(f"Batch record: {batch['name']}", f"{batch['what']}, bottled", imprint)
    limits, sums = batch["limits"], batch["sums"]
    paper.facts(
        [
            ("Tanks", ", ".join(dict.fromkeys(one["tank"] for one in batch["fills"]))),
            ("Bottle", f"{limits['size_l']:g} L" if limits["size_l"] else ""),
            ("Strength on the label", amount(limits["label_pct"], "pct_vol", 1)),
            ("Good bottles", str(sums["good"] or "")),
            ("Filled", str(sums["filled"] or "")),
            ("Broken", str(sums["broken"]) if sums["filled"] else ""),
            ("Kept in the library", str(sums["library"]) if sums["filled"] else ""),
            ("Pure alcohol in bottles", amount(sums["lpa_l"], "LPA", 2) if sums["filled"] else ""),
        ],
        columns=4,
    )
    paper.heading("Tank gauges")
    paper.table(
        (
            "At",
            "Tank",
            f"{sign('L')} at {or_us('20 °C', '68 °F')}",
            f"True {sign('pct_vol')}",
            or_us("L pure alcohol", "proof gal"),
            "Who",
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
        empty="No bottling tank gauge yet.",
    )
    paper.heading("Checks of the line")
    paper.table(
        ("At", "Bottles", "Fill, %", "Least", "Most", sign("pct_vol"), "Labels right", "Done", "By"),
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
        empty="None yet.",
    )
    paper.heading("Cases")
    paper.table(
        ("Closed", "Cases", "Odd case", "Filled", "Broken", "Library", "Good"),
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
        empty="Not closed yet.",
    )
    paper.heading("Where it went")
    paper.table(
        ("To", f"{sign('L')} at {or_us('20 °C', '68 °F')}", or_us("L pure alcohol", "proof gal")),
        [(one["words"], figure(one["volume_l"], "L", 1), figure(one["lpa_l"], "LPA", 2)) for one in batch["went"]],
        (90, 45, 45),
        numbers=" rr",
        empty="Nothing has left the tank yet.",
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
    return f"{first} to {last}" if last else first


def _finish(paper: Paper, entries: Entries, asked: Asked) -> None:
    """Print what both records end with: the entries, what is open, the signatures."""
    paper.heading("Its entries")
    paper.table(
        ("No.", "Read at", "Entry", "What", "Who"),
        [
            (str(one["book_no"]), str(one["read_local"]), str(one["title"]), str(one["summary"]), str(one["person"]))
            for one in entries
        ],
        (14, 31, 36, 82, 16),
    )
    paper.questions(asked)
    paper.signatures("Made by", "Looked over by")
