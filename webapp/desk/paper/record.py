"""The record of one entry on paper: a gauge with its readings, its sums, what it moved, and room to read again."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from reportlab.lib.units import mm

from webapp.book.periods.periods import litres, proof_gallons
from webapp.book.periods.postings import Postings
from webapp.desk.figures import figure, sign
from webapp.desk.paper import cautions
from webapp.desk.paper.imprint import Imprint
from webapp.desk.paper.press import Paper
from webapp.kinds.spec import Kind

_CAUTIONS = {
    "co2": cautions.GAS,
    "fire_zone": cautions.VAPOUR,
    "methanol": cautions.METHANOL,
    "still_heat": cautions.STILL,
    "lifting": cautions.CASKS,
    "confined": cautions.TANKS,
}


def is_gauge(kind: Kind) -> bool:
    """Whether an entry of this kind measures spirit: its pure alcohol is among its figures."""
    return any(figure.name == "lpa" for figure in kind.figures)


def record_paper(
    kind: Kind,
    row: Mapping[str, object],
    fields: Sequence[Mapping[str, str]],
    figures: Sequence[Mapping[str, str]],
    moved: Postings,
    asked: Sequence[tuple[str, str]],
    imprint: Imprint,
    *,
    is_us: bool,
    standing: str,
) -> bytes:
    """Return the record of an entry as a PDF.

    row, fields, figures: the entry as the desk's page shows it; standing: in words, why it moves nothing, or empty.
    """
    paper = Paper(f"Gauge record: {kind.title}" if is_gauge(kind) else f"Record: {kind.title}", kind.about, imprint)
    paper.facts(
        [
            ("Vessel", str(row["mark"] or "")),
            ("Stands at", str(row.get("stands") or "")),
            ("Read at", str(row["read_local"])),
            ("Read by", str(row["person"])),
            ("Role", str(row["role"] or "")),
            ("Book no.", str(row["book_no"])),
            ("Digest", str(row["digest"])[:16]),
        ],
        columns=4,
    )
    if standing:
        paper.say(standing)
    words = [_CAUTIONS[name] for name in kind.cautions if name in _CAUTIONS]
    if words:
        paper.cautions(*words)
    paper.heading("As read")
    paper.table(
        ("Reading", "As read", "Instrument", "Corrected"),
        [(one["label"], one["shown"], one["instrument"], one["corrected"]) for one in fields],
        (50, 50, 35, 45),
    )
    if row.get("remark"):
        paper.say(f"Remark: {row['remark']}")
    paper.heading("As computed")
    paper.table(
        ("Figure", "Value"),
        [(one["label"], one["shown"]) for one in figures],
        (90, 90),
        bold=[len(figures) - 1],
        empty="Nothing is computed from this.",
    )
    if moved.lines:
        paper.heading("What it moved")
        shown = proof_gallons if is_us else litres
        paper.table(
            ("From", "To", "Account", "Why", sign("kg"), "Proof gallons" if is_us else "Litres of pure alcohol"),
            [
                (
                    one.source,
                    one.target,
                    one.account,
                    one.reason,
                    figure(one.mass_g / 1000, "kg") if one.mass_g else "",
                    str(shown(one.lpa_ul)),
                )
                for one in moved.lines
            ],
            (34, 34, 30, 34, 22, 30),
            numbers="    rr",
        )
    paper.questions(asked)
    if is_gauge(kind):
        paper.heading("Read again by hand", room=75 * mm)
        paper.table(
            ("", f"Gross, {sign('kg')}, or dip, {sign('L')}", "Glass", f"Spirit {sign('degC')}", "Instruments", "At"),
            [("First", "", "", "", "", ""), ("Second", "", "", "", "", "")],
            (20, 40, 26, 26, 44, 26),
            high=9 * mm,
        )
    paper.signatures("Gauged by" if is_gauge(kind) else "Done by", "Witness")
    return paper.render()
