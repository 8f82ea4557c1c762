"""The serving sheet of a blind tasting, for whoever pours: each glass by its code, and what goes into it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from reportlab.lib.units import mm

from webapp.desk.paper import cautions
from webapp.desk.paper.imprint import Imprint
from webapp.desk.paper.press import Cell, Paper
from webapp.desk.paper.shapes import Box
from webapp.kinds.tasting_state import Serving, Tasting
from webapp.words.desk import Later, say

ROW_HIGH = 9.5 * mm
ASKED = {
    "triangle": Later("paper-serving-two_of_the_three_are"),
    "duo_trio": Later("paper-serving-the_first_stands_open_as"),
    "pair": Later("paper-serving-which_of_the_two_has"),
    "pair_two_sided": Later("paper-serving-which_of_the_two_has"),
    "ranking": Later("paper-serving-put_all_in_order_no"),
}


def serving_paper(
    tasting: Tasting, sets: Sequence[tuple[Serving, str]], imprint: Imprint, *, method: str, served: str,
    names: Mapping[str, str],
) -> bytes:
    """Return the serving sheet as a PDF.

    sets: glasses of each taster with the letters of their samples; empty where the key is not in this book.
    """
    paper = Paper(say("paper-serving-serving_sheet"), f"{tasting['name']}: {tasting['question']}", imprint)
    paper.say(say("paper-serving-for_whoever_pours"))
    paper.facts([
        (say("paper-serving-method"), f"{method}: {ASKED[tasting['method']]}"),
        (say("paper-serving-served_at"), served),
        (say("paper-serving-sets_of_glasses"), str(len(tasting["servings"]))),
    ])
    paper.cautions(cautions.TASTING, cautions.NO_HEADS, cautions.METHANOL)
    paper.heading(say("desk-common-samples"))
    rows: list[list[Cell]] = [
        [one["letter"], f"{'' if one['sort'] == 'vessel' else one['sort'] + ' '}{one['name']}", one["words"], "", ""]
        for one in tasting["samples"]
    ]
    heads = (
        say("paper-serving-letter"), say("paper-serving-sample"), say("paper-serving-of_it"),
        say("paper-serving-strength_as_found"), say("paper-serving-water_added"),
    )
    paper.table(heads, rows, (10, 34, 40, 26, 26), high=ROW_HIGH)
    paper.say("Reduce all to one strength with the same water an hour before. Same glass, 20 to 30 mL, same "
              "temperature, covered. Where colour tells, coloured glass.", quiet=True)
    paper.heading(say("paper-serving-glasses_from_left_to_right"))
    if not sets:
        paper.say("The key of this tasting is not in this book. It cannot be poured from here: set it out anew.")
    lines: list[list[Cell]] = []
    for serving, word in sets:
        codes = (["R"] if len(word) > len(serving["codes"]) else []) + serving["codes"]
        said = " · ".join(f"{code} = {letter}" for code, letter in zip(codes, word, strict=True))
        lines.append([names.get(serving["person"], serving["person"]), str(serving["set_no"]), said, Box()])
    paper.table(
        (
            say("paper-serving-taster"), say("desk-common-set"), say("paper-serving-glass_sample"),
            say("paper-serving-poured"),
        ),
        lines, (34, 10, 84, 14), numbers="lrll", high=ROW_HIGH,
    )
    paper.signatures(say("paper-serving-poured_by"))
    return paper.render()
