"""The count sheet: what stands where, by place, without the book's figures, with room to write and to sign."""

from __future__ import annotations

from collections.abc import Sequence

from reportlab.lib.units import mm

from webapp.desk.cellar.warehouse import Room, Standing
from webapp.desk.figures import sign
from webapp.desk.paper import cautions
from webapp.desk.paper.imprint import Imprint
from webapp.desk.paper.press import Cell, Paper
from webapp.desk.paper.shapes import Box
from webapp.words.desk import say

ROW_HIGH = 9.5 * mm
MORE_ROWS = 5  # for what is found that the sheet has not
_WIDTHS = (29, 20, 37, 12, 22, 17, 15, 26)


def count_paper(rooms: Sequence[Room], imprint: Imprint, *, what: str) -> bytes:
    """Return the count sheet as a PDF: every place of these rooms, and no figure of the book.

    what: which part of the house it is for, in words.
    """
    paper = Paper(say("paper-count-count_sheet"), what, imprint)
    paper.say(
        "Blind: this sheet does not say what the book expects. Write what you read yourself; tick what is here. "
        "A place without a vessel is one that the book knows and has nothing in: write what stands there, or a dash. "
        "Then log the count."
    )
    paper.blanks(
        say("paper-count-begun_date_and_time"), say("paper-count-ended_date_and_time"),
        say("paper-count-instruments_used"),
    )
    sorts = {one.row["sort"] for room in rooms for one in room.standing}
    words = [cautions.CASKS] if "cask" in sorts else []
    words += [cautions.TANKS] if sorts & {"tank", "fermenter"} else []
    words += [cautions.GAS] if "fermenter" in sorts else []
    paper.cautions(*words, cautions.VAPOUR, cautions.ALONE)
    heads = (
        say("desk-common-place"),
        say("desk-common-vessel"),
        say("paper-count-what_it_is"),
        say("paper-count-here"),
        say("paper-count-gross_or_dip", kg=sign('kg'), what=sign('L')),
        say("paper-count-glass"),
        say("paper-count-spirit", unit=sign('degC')),
        say("desk-common-remark"),
    )
    for room in rooms:
        lines = [row for place in room.all_places for row in _rows(place.name, place.standing)]
        if lines:
            paper.heading(room.name or say("paper-count-other_places"))
            paper.table(heads, lines, _WIDTHS, high=ROW_HIGH)
    paper.heading(say("paper-count-stands_there_and_is_not"))
    paper.table(heads, [["", "", "", Box(), "", "", "", ""]] * MORE_ROWS, _WIDTHS, high=ROW_HIGH)
    paper.signatures(say("paper-count-counted_by"), say("paper-count-second_person"))
    return paper.render()


def _rows(place: str, standing: Sequence[Standing]) -> list[list[Cell]]:
    if not standing:
        return [[place, "", "", Box(), "", "", "", ""]]
    return [[place, one.row["name"], one.row["title"] or one.row["sort"], Box(), "", "", "", ""] for one in standing]
