"""The records that public law asks for, and where the book holds each."""

from __future__ import annotations

from flask import render_template
from flask.typing import ResponseReturnValue

import webapp.kinds
from webapp.access import needs
from webapp.book.periods.records import HELD, PAGES, records
from webapp.book.periods.words import CAUTION
from webapp.desk.blueprint import bp
from webapp.words.kindwords import kind_in
from webapp.words.language import language


@bp.get("/records")
@needs("floor")
def records_page() -> ResponseReturnValue:
    """Show each record with its rule, what it asks for, and where it is held or why not."""
    return render_template(
        "desk/periods/records.html",
        records=records(),
        held=HELD,
        pages=PAGES,
        titles={kind.name: kind_in(kind, language()).title for kind in webapp.kinds.ALL},
        caution=CAUTION,
    )
