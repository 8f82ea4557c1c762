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
from webapp.words.desk import say
from webapp.words.kindwords import kind_in
from webapp.words.language import language

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
    kind = kind_in(kind, language())
    paper = Paper(
        say("paper-record-gauge_record", title=kind.title) if is_gauge(kind) else say(
            "paper-record-record", title=kind.title,
        ),
        kind.about, imprint,
    )
    paper.facts(
        [
            (say("desk-common-vessel"), str(row["mark"] or "")),
            (say("paper-record-stands_at"), str(row.get("stands") or "")),
            (say("desk-common-read_at"), str(row["read_local"])),
            (say("paper-record-read_by"), str(row["person"])),
            (say("paper-record-role"), str(row["role"] or "")),
            (say("desk-common-book_no"), str(row["book_no"])),
            (say("desk-common-digest"), str(row["digest"])[:16]),
        ],
        columns=4,
    )
    if standing:
        paper.say(standing)
    words = [_CAUTIONS[name] for name in kind.cautions if name in _CAUTIONS]
    if words:
        paper.cautions(*words)
    paper.heading(say("paper-record-as_read"))
    paper.table(
        (
            say("paper-record-reading"), say("paper-record-as_read"), say("paper-record-instrument"),
            say("paper-record-corrected"),
        ),
        [(one["label"], one["shown"], one["instrument"], one["corrected"]) for one in fields],
        (50, 50, 35, 45),
    )
    if row.get("remark"):
        paper.say(f"Remark: {row['remark']}")
    paper.heading(say("paper-record-as_computed"))
    paper.table(
        (say("paper-record-figure"), say("paper-record-value")),
        [(one["label"], one["shown"]) for one in figures],
        (90, 90),
        bold=[len(figures) - 1],
        empty=say("paper-record-nothing_is_computed_from_this"),
    )
    if moved.lines:
        paper.heading(say("paper-record-what_it_moved"))
        shown = proof_gallons if is_us else litres
        paper.table(
            (
                say("desk-common-from"), say("desk-common-to2"), say("desk-common-account"), say("desk-common-why"),
                sign("kg"), say("desk-common-proof_gallons") if is_us else say("desk-common-litres_of_pure_alcohol"),
            ),
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
        paper.heading(say("paper-record-read_again_by_hand"), room=75 * mm)
        paper.table(
            (
                "", say("paper-record-gross_or_dip", kg=sign('kg'), what=sign('L')), say("paper-record-glass"),
                say("paper-record-spirit", unit=sign('degC')), say("desk-common-instruments"), say("paper-record-at"),
            ),
            [(say("paper-record-first"), "", "", "", "", ""), (say("paper-record-second"), "", "", "", "", "")],
            (20, 40, 26, 26, 44, 26),
            high=9 * mm,
        )
    paper.signatures(
        say("paper-record-gauged_by") if is_gauge(kind) else say("paper-record-done_by"), say("paper-record-witness"),
    )
    return paper.render()
