"""The serving sheet of a blind tasting, for whoever pours: each glass by its code, and what goes into it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from reportlab.lib.units import mm

from webapp.desk.paper import cautions
from webapp.desk.paper.imprint import Imprint
from webapp.desk.paper.press import Cell, Paper
from webapp.desk.paper.shapes import Box
from webapp.kinds.tasting_state import Serving, Tasting

ROW_HIGH = 9.5 * mm
ASKED = {
    "triangle": "two of the three are the same: which is the odd one?",
    "duo_trio": "the first stands open as R: which of the two with a code is the same?",
    "pair": "which of the two has more of what is asked?",
    "pair_two_sided": "which of the two has more of what is asked?",
    "ranking": "put all in order, no two alike",
}


def serving_paper(
    tasting: Tasting, sets: Sequence[tuple[Serving, str]], imprint: Imprint, *, method: str, served: str,
    names: Mapping[str, str],
) -> bytes:
    """Return the serving sheet as a PDF.

    sets: glasses of each taster with the letters of their samples; empty where the key is not in this book.
    """
    paper = Paper("Serving sheet", f"{tasting['name']}: {tasting['question']}", imprint)
    paper.say("For whoever pours. No taster sees this sheet, and nobody who has seen it tastes or speaks to a taster.")
    paper.facts([("Method", f"{method}: {ASKED[tasting['method']]}"), ("Served at", served),
                 ("Sets of glasses", str(len(tasting["servings"])))])
    paper.cautions(cautions.TASTING, cautions.NO_HEADS, cautions.METHANOL)
    paper.heading("Samples")
    rows: list[list[Cell]] = [
        [one["letter"], f"{'' if one['sort'] == 'vessel' else one['sort'] + ' '}{one['name']}", one["words"], "", ""]
        for one in tasting["samples"]
    ]
    heads = ("Letter", "Sample", "Of it", "Strength as found", "Water added")
    paper.table(heads, rows, (10, 34, 40, 26, 26), high=ROW_HIGH)
    paper.say("Reduce all to one strength with the same water an hour before. Same glass, 20 to 30 mL, same "
              "temperature, covered. Where colour tells, coloured glass.", quiet=True)
    paper.heading("Glasses, from left to right")
    if not sets:
        paper.say("The key of this tasting is not in this book. It cannot be poured from here: set it out anew.")
    lines: list[list[Cell]] = []
    for serving, word in sets:
        codes = (["R"] if len(word) > len(serving["codes"]) else []) + serving["codes"]
        said = " · ".join(f"{code} = {letter}" for code, letter in zip(codes, word, strict=True))
        lines.append([names.get(serving["person"], serving["person"]), str(serving["set_no"]), said, Box()])
    paper.table(("Taster", "Set", "Glass = sample", "Poured"), lines, (34, 10, 84, 14), numbers="lrll", high=ROW_HIGH)
    paper.signatures("Poured by")
    return paper.render()
