"""The records that public law asks for, and where the book holds each: kinds, pages, and what it does not hold."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from pathlib import Path

DATA = Path(__file__).with_name("records.json")

# Pages by a short name: (words, path).
PAGES = {
    "entries": ("Entries", "/desk/entries"),
    "runs": ("Runs", "/desk/runs"),
    "vessels": ("Vessels", "/desk/vessels"),
    "periods": ("Periods", "/desk/periods"),
    "bottled": ("Bottled goods", "/desk/bottled"),
    "casks": ("Casks by kind and year", "/desk/casks-by-year"),
    "instruments": ("Instruments", "/desk/instruments"),
    "labels": ("Labels", "/desk/labels"),
    "queries": ("Questions", "/desk/queries"),
    "laboratory": ("Laboratory", "/desk/certificates"),
}
_PERMIT = "names and numbers of plant and permit: keep them with the permit"


@dataclass(frozen=True, slots=True)
class Held:
    """Where the book holds a record. lacks: what of it the book does not hold, and why or where to keep it."""

    kinds: tuple[str, ...] = ()
    pages: tuple[str, ...] = ()
    lacks: tuple[str, ...] = ()


HELD: dict[str, Held] = {
    "US-1": Held(("fruit_intake", "addition", "ferment_closed", "charge", "loss", "destruction"), ("entries", "runs"),
                 ("wine gallons of wash (litres are kept)", "by-products sold: to whom, alcohol test")),
    "US-2": Held(("charge", "run_reading", "cut", "run_end", "fraction_gauge", "account_move", "loss"),
                 ("runs", "periods")),
    "US-3": Held(("fraction_gauge", "charge"), ("runs",)),
    "US-4": Held(("account_move", "gauge", "distilled_gauge", "opening", "cask_fill", "fraction_gauge", "dump"),
                 ("entries", "periods"),
                 ("serial number of the related record (the book links entries by id)", _PERMIT,
                  "wine gallons (litres at 20 °C are kept)")),
    "US-5": Held(("cask_fill", "cask_regauge", "dump"), ("vessels", "entries"),
                 (_PERMIT, "receiving weight of casks from elsewhere")),
    "US-6": Held(("cask_fill",), ("labels", "vessels"), ("marks painted on the cask itself", _PERMIT)),
    "US-7": Held(("account_move", "cask_fill", "top_up", "dump", "sample"), ("periods", "entries"),
                 ("oak chips and caramel: log them as a note with the cask",)),
    "US-8": Held(("opening", "cask_fill", "cask_regauge", "dump", "stock_count"), ("casks", "periods", "vessels")),
    "US-9": Held(("account_move", "dump", "stock_count", "gauge"), ("vessels", "periods"),
                 ("a serial number for each filling (each has an id of the book)",)),
    "US-10": Held(("dump", "account_move", "reduce", "chill_filter", "addition"), ("periods", "entries"),
                  ("formula number: keep it with the approval", _PERMIT)),
    "US-11": Held(("bottling_gauge", "bottling_close"), ("entries", "periods"),
                  ("formula number: keep it with the approval", "bottled-in-bond statement: keep it with the label")),
    "US-12": Held(("bottle_check",), ("entries",)),
    "US-13": Held(("opening_goods", "bottling_close", "dispatch", "bottled_count"), ("bottled", "periods", "entries")),
    "US-14": Held(("sample",), ("entries", "periods")),
    "US-15": Held(("loss", "stock_count", "cask_regauge", "gauge"), ("periods", "queries"),
                  ("the report to the authority itself",)),
    "US-16": Held(("destruction",), ("entries", "periods"), ("title of the person who watched",)),
    "US-17": Held(("account_move", "receipt", "dispatch", "goods_receipt"), ("entries", "periods"),
                  ("vehicle and seals of what is sent",
                   "signature under penalty of perjury: sign the shipping paper", _PERMIT)),
    "US-18": Held(("stock_count", "bottled_count"), ("entries", "queries"),
                  ("signature under penalty of perjury: print the count and sign it",)),
    "US-19": Held(("instrument_check",), ("instruments",), ("certificates: keep the papers",)),
    "US-20": Held((), ("periods",),
                  ("the authority's own forms: the figures are here, in our own layout",
                   "whisky by cooperage, and high-proof spirits by raw material")),
    "US-21": Held(("dispatch", "account_move"), ("bottled", "entries", "periods"),
                  ("rate of tax and payment: in the accounts of the house",)),
    "US-22": Held(("run_reading", "cask_fill", "bottling_gauge"), ("runs", "entries"),
                  ("permits and approved labels: keep the papers",)),
    "US-23": Held(("cleaning", "instrument_check"), ("entries", "instruments")),
    "US-24": Held(("fruit_intake", "account_move", "receipt", "dispatch", "goods_receipt"), ("bottled", "entries")),
    "EU-1": Held(("fruit_intake", "addition", "bottling_close", "account_move", "receipt", "dispatch", "goods_receipt"),
                 ("bottled", "entries", "vessels")),
    "EU-2": Held(("fruit_intake", "run_reading", "cut", "fraction_gauge", "addition", "lab_certificate"),
                 ("runs", "entries", "laboratory"), ("the certificate itself: keep the paper under its number",)),
    "EU-3": Held(("account_move", "receipt", "dispatch", "goods_receipt", "cask_fill", "stock_count", "loss",
                  "destruction"),
                 ("periods", "entries"),
                 ("movement documents of the excise system",)),
    "EU-4": Held((), ("periods",), ("the certificate of a small producer: keep the paper",)),
    "EU-5": Held(("cleaning", "instrument_check", "bottle_check"), ("entries", "instruments"),
                 ("the plan itself: hazards and critical points",)),
    "EU-6": Held(("fruit_intake", "cut", "run_reading", "lab_certificate"), ("runs", "entries", "laboratory"),
                 ("the certificate itself: keep the paper under its number",)),
    "EU-7": Held(("bottle_check", "bottling_close", "bottling_gauge"), ("entries",)),
    "DE-1": Held(("answer",), ("entries", "queries")),
    "UK-1": Held(("ferment_reading", "ferment_closed"), ("vessels", "entries"),
                 ("allowance for work already done when the back is set",)),
    "UK-2": Held(("fraction_gauge", "account_move"), ("runs", "periods")),
    "UK-3": Held(("ferment_closed", "charge", "fraction_gauge"), ("periods", "runs"),
                 ("presumptive yield as the authority reckons it",)),
    "UK-4": Held(("cask_fill", "cask_regauge", "dump", "top_up", "reduce", "bottling_close", "dispatch", "loss"),
                 ("periods", "bottled", "entries")),
}


@cache
def records() -> tuple[dict[str, object], ...]:
    """Return the records: id, where, rule, record, fields, when, keep, sign, source."""
    return tuple(json.loads(DATA.read_text(encoding="utf-8"))["records"])
