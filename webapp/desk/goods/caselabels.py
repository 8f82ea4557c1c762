"""Labels of the cases of a bottling: which cases, what each says, and the file that is printed."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import islice

from flask import Response, abort, request, url_for

from webapp.access import current, needs
from webapp.book.goods import bottlings
from webapp.book.goods.bottlings import Batch
from webapp.desk.blueprint import bp
from webapp.desk.figures import amount
from webapp.desk.forms import CaseLabelForm
from webapp.desk.labelfile import check_file, file_answer, layout_asked, with_choices
from webapp.desk.paper.imprint import address_of
from webapp.kinds.goods_state import Bottling
from webapp.labels import BadLayout, CaseLabel, render_cases
from webapp.words.desk import say

CASES_MOST = 500
_CASE = re.compile(r"\s*(.*?)(\d{1,12})\s*", re.DOTALL)


def case_form(batch: Batch) -> CaseLabelForm | None:
    """Return the form for labels of a batch's cases, or None before a close has named any."""
    closes = [close for close in batch["closes"] if close["case_from"]]
    if not closes:
        return None
    form = with_choices(CaseLabelForm(request.args))
    form.first.data = form.first.data or closes[0]["case_from"]
    form.last.data = form.last.data or closes[0]["case_to"]
    return form


@bp.get("/bottlings/cases")
@needs("floor")
def case_labels() -> Response:
    """Send labels for cases of a batch as a PDF or in ZPL."""
    name = request.args.get("batch", "").strip()[:80]
    batch = bottlings.batch(current.book, name, current.site) if name else None
    form = case_form(batch) if batch else None
    if batch is None or form is None:
        abort(404, say("desk-bottling-the_book_has_no_batch"))
    if not form.validate():
        abort(400, " ".join(str(one) for errors in form.errors.values() for one in errors))
    first, last = str(form.first.data).strip(), str(form.last.data or form.first.data).strip()
    labels = list(islice(labels_of(batch, first, last), CASES_MOST + 1))
    if not 1 <= len(labels) <= CASES_MOST:
        abort(400, say("desk-bottling-these_are_no_cases", most=CASES_MOST))
    try:
        layout = layout_asked(form)
        check_file(form, len(labels), layout)
        body = render_cases(labels, layout, start_at=(form.start_at.data or 1) - 1)
        return file_answer(form, body, layout, "cases")
    except BadLayout as error:
        abort(400, str(error))


def labels_of(batch: Batch, first: str, last: str) -> Iterator[CaseLabel]:
    """Give the labels of those cases that the closes of the batch name; the odd case comes after its whole ones."""
    low, high = _number(first), _number(last)
    for close in batch["closes"]:
        start, end = _number(close["case_from"]), _number(close["case_to"])
        odd = (close["odd_case"] or "").strip()
        if first == last == odd and odd:
            yield _label(batch, close, odd, _odd_bottles(close))
            return
        if not (low and high and start and end and low[0] == high[0] == start[0] == end[0]):
            continue
        reach = range(max(low[1], start[1]), min(high[1], end[1]) + 1)
        digits = len(str(close["case_from"]).strip()) - len(start[0])
        for number in reach:
            yield _label(batch, close, f"{start[0]}{number:0{digits}d}", round(close["per_case"] or 0))
        if odd and reach and reach[-1] == end[1]:
            yield _label(batch, close, odd, _odd_bottles(close))


def _number(case: str | None) -> tuple[str, int] | None:
    """Return a case number as what stands before its digits, and its number."""
    found = _CASE.fullmatch(case or "")
    return (found[1], int(found[2])) if found else None


def _odd_bottles(close: Bottling) -> int:
    """Return the count of bottles in the odd case, once the whole cases are full; 0 where it is not known."""
    start, end = _number(close["case_from"]), _number(close["case_to"])
    if not (start and end and close["per_case"]):
        return 0
    left = close["good"] - round(close["per_case"]) * (end[1] - start[1] + 1)
    return left if 0 < left < close["per_case"] else 0


def _label(batch: Batch, close: Bottling, case: str, bottles: int) -> CaseLabel:
    size = f"{close['size_l']:g} L"
    strength = close["label_strength_pct"] or batch["limits"]["label_pct"] or close["strength_pct"]
    lot = close["lot_mark"] or batch["name"]
    facts: Sequence[str] = (
        close["what"] or batch["what"], f"{bottles} × {size}" if bottles else size, amount(strength, "pct_vol", 1),
    )
    address = address_of(url_for("desk.trace_page", key=close["entry"]))
    return CaseLabel(say("paper-case-lot", lot=lot), say("paper-case-case", case=case), tuple(facts), address)
