"""Bottles of a bottling leave the house, or their account, and sometimes come back."""

from webapp.kinds.effects import goods
from webapp.kinds.spec import Field, Kind, Rule

OUT = "why=tax_paid|in_bond|export"


def batch() -> Field:
    """Return the field that names a bottling. [text]"""
    return Field("batch", "Batch or lot mark", "text", required=True, help="As it stands on the bottles or the case.")


def bottle_count(name: str, label: str, most: int) -> Field:
    """Return a count of cases or bottles. [count], 0 or more"""
    return Field(name, label, units=("count",), usual=(0, most), possible=(0, 1_000_000), decimals=0, ghost=False)


KIND = Kind(
    name="dispatch",
    version=1,
    title="Bottled goods out or back",
    short="Cases out",
    icon="next",
    about="Cases or bottles of a bottling leave, tax determined or in bond, break, serve as samples, or come back.",
    needs_mark=False,
    role="office",
    fields=(
        batch(),
        Field("why", "What happens to them", "choice", required=True, choices=(
            ("tax_paid", "leave, duty determined"), ("in_bond", "leave in bond"), ("export", "leave for export"),
            ("sample", "samples and tastings"), ("broken", "broken"), ("destroyed", "destroyed"),
            ("missing", "missing"), ("dumped_back", "poured back into a tank"), ("returned", "come back"))),
        bottle_count("cases", "Whole cases", 2000),
        bottle_count("bottles", "Loose bottles", 200),
        Field("case_from", "First case", "text", ghost=False),
        Field("case_to", "Last case", "text", ghost=False),
        Field("document", "Document number", "text", ghost=False, source="27 CFR 19.618, 19.620"),
        Field("to_whom", "To or from whom", "text", help="Name and address. Destroyed: who did it or watched."),
        Field("to_vessel", "Into tank", "mark", vessels=("tank",), ghost=False),
    ),
    rules=(
        Rule("some_bottles", "any_of", "cases", "bottles", "refuse", "Type how many cases, or how many loose bottles."),
        Rule("out_has_document", "needs", OUT, "document", "refuse",
             "Goods that leave have a document. Type its number."),
        Rule("out_names_whom", "needs", OUT, "to_whom", "refuse",
             "Type to whom they go: in a recall nobody else knows."),
        Rule("destroyed_is_watched", "needs", "why=destroyed", "to_whom", "refuse",
             "Type who destroyed them or watched, with title."),
        Rule("poured_into_a_tank", "needs", "why=dumped_back", "to_vessel", "refuse", "Pick the tank."),
        Rule("last_needs_first", "needs", "case_to", "case_from", "refuse", "Type the first case too."),
    ),
    checks=("time_order", "clock", "late", "bottling_named", "cases_gone"),
    effect=goods.removal,
    summary="{batch}: {cases} cases, {why}",
    account="processing",
    taxed=True,
    feeds=("finished goods", "removal record", "recall list"),
)
