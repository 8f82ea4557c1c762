"""Bottled goods in a ledger: bottlings of one tank, and what leaves them."""

from typing import Any

from tests.book.checks.ledger import Ledger
from webapp.book.before.view import Query

DAY = "2025-10-02"


def bottle(
    book: Ledger, first: int = 1, *, at: str = "08:00", batch: str = "K-26-03", volume: str = "181", **more: str | None,
) -> str:
    """Bottle 360 half-litre bottles at 45 %, 81 L of pure alcohol, in 60 cases of 6; return the bottling's root."""
    gauged = {"batch": batch, "volume": volume, "temp": "20", "strength": "45", "label_strength": "45"}
    assert book.enter("bottling_gauge", "T1", f"{DAY} {at}", **gauged) == []
    said = {"filled": "360", "broken": "0", "bottle_size": "0.5", "per_case": "6", "case_from": str(first),
            "case_to": str(first + 59), "lot_mark": "K2603", "loss": "1", "tank_empty": "yes", **more}
    given = {name: text for name, text in said.items() if text is not None}
    assert book.enter("bottling_close", "T1", f"{DAY} {at}", **given) == []
    return f"e{book.count}"


def out(book: Ledger, why: str = "sample", batch: str = "K2603", **more: str) -> list[Query]:
    """Let bottles leave or come back, with what papers that needs."""
    paper = {"document": "D-1", "to_whom": "Corner shop"} if why in ("tax_paid", "in_bond", "export") else {}
    return book.enter("dispatch", "", f"{DAY} 10:00", batch=batch, why=why, **{**paper, **more})


def count(book: Ledger, **more: str) -> list[Query]:
    """Count the bottles of the bottling in the store."""
    return book.enter("bottled_count", "", f"{DAY} 11:00", batch="K2603", signed="Noor S., cellar hand", **more)


def come_in(book: Ledger, **more: str) -> list[Query]:
    """Receive 20 cases of 6 half-litre bottles at 45 % by their papers, 27 L of pure alcohol."""
    said = {"consignor": "Northhill", "document": "D-7", "batch": "K2603", "spirit": "kirsch", "strength": "45",
            "bottle_size": "0.5", "per_case": "6", "cases": "20", "case_from": "1", "case_to": "20", "seals": "yes"}
    return book.enter("goods_receipt", "", f"{DAY} 09:00", **{**said, **more})


def state(book: Ledger, root: str) -> dict[str, Any]:
    """Return the state of a bottling."""
    found: dict[str, Any] = book.states[f"b:{root}"]
    return found
