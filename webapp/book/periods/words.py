"""What the lines of a period are called, and which rule asks for each. No legal advice."""

from __future__ import annotations

from collections.abc import Mapping

from webapp.book.periods.lines import ACCOUNTS, WAREHOUSE
from webapp.book.periods.periods import litres, proof_gallons
from webapp.words.houseunits import US, House

CAUTION = (
    "Figures here are worked out by the OIML R 22 formula from the readings in the book. Figures for excise must "
    "follow the tables and instruments that your authority prescribes, and its own forms. This is not legal advice."
)



def pure_words(ul: float, house: House) -> str:
    """Return microlitres of pure alcohol in words: `12.34 L of pure alcohol`, or `6.5 proof gallons`."""
    return f"{proof_gallons(round(ul))} proof gallons" if house == US else f"{litres(round(ul))} L of pure alcohol"


# (side, outside) -> words. What comes in from where one would not expect it is a gain, and says so.
PARTIES = {
    ("in", "out:fermented"): "made by fermentation",
    ("out", "out:fermented"): "fermentation, measured lower later",
    ("in", "out:opening"): "opening stock put in the book",
    ("out", "out:stillage"): "left in the stillage",
    ("out", "out:evaporation"): "evaporation in cask",
    ("in", "out:evaporation"): "casks gauged above the book",
    ("out", "out:soakage"): "kept by the wood",
    ("out", "out:leak"): "lost: leak",
    ("in", "out:leak"): "leaking casks gauged above the book",
    ("out", "out:spill"): "lost: spill or breakage",
    ("out", "out:missing"): "lost: missing",
    ("out", "out:sample"): "samples",
    ("out", "out:destroyed"): "destroyed",
    ("in", "out:gauge_difference"): "gain found by a gauge",
    ("out", "out:gauge_difference"): "loss found by a gauge",
    ("out", "out:filter_loss"): "filter and line",
    ("in", "out:received"): "received from elsewhere",
    ("out", "out:transit"): "lost in transit to here",
    ("in", "out:transit"): "received above what was declared",
    ("out", "out:shortage"): "shortage of bottled goods",
    ("in", "out:overage"): "overage of bottled goods",
    ("in", "out:returned"): "bottled goods that came back",
    ("out", "finished"): "bottled",
    ("in", "finished"): "poured back from bottles",
    ("out", "out:removed"): "left the premises",
    ("in", "out:not_accounted"): "came from where the book has nothing",
    ("out", "out:not_accounted"): "not accounted for",
}
REASONS = {
    "run_balance": "run balance", "more_than_booked": "more taken than booked", "heel": "heel left over",
    "closed": "wash closed", "left_over": "left over", "deposit": "deposit", "tax_paid": "tax paid",
    "in_bond": "in bond", "redistil": "to be distilled again", "tank_empty": "tank empty",
    "dumped_back": "poured back", "after_collection": "gauged after collection",
}

# Rules by account, then by outside; "" stands for the account as a whole and its opening and closing.
_PRODUCTION = {
    "": ("27 CFR 19.585", "27 CFR 19.632"),
    "out:fermented": ("27 CFR 19.584",),
    "out:stillage": ("27 CFR 19.584",),
    "storage": ("27 CFR 19.283", "27 CFR 19.618"),
    "processing": ("27 CFR 19.283", "27 CFR 19.618"),
    "out:gauge_difference": ("27 CFR 19.301", "27 CFR 19.304"),
    "out:not_accounted": ("27 CFR 19.585", "27 CFR 19.461"),
}
_STORAGE = {
    "": ("27 CFR 19.590", "27 CFR 19.591", "27 CFR 19.632"),
    "production": ("27 CFR 19.283", "27 CFR 19.618"),
    "processing": ("27 CFR 19.283", "27 CFR 19.618"),
    "out:evaporation": ("27 CFR 19.591", "27 CFR 19.619"),
    "out:soakage": ("27 CFR 19.619",),
    "out:gauge_difference": ("27 CFR 19.592", "27 CFR 19.462"),
}
_PROCESSING = {
    "": ("27 CFR 19.596", "27 CFR 19.632"),
    "production": ("27 CFR 19.598",),
    "storage": ("27 CFR 19.598",),
    "finished": ("27 CFR 19.599", "27 CFR 19.601"),
    "out:filter_loss": ("27 CFR 19.598",),
    "out:gauge_difference": ("27 CFR 19.598", "27 CFR 19.462"),
}
_FINISHED = {
    "": ("27 CFR 19.601", "27 CFR 19.632"),
    "processing": ("27 CFR 19.599", "27 CFR 19.601"),
    "out:removed": ("27 CFR 19.601", "27 CFR 19.611"),
    "out:shortage": ("27 CFR 19.465", "27 CFR 19.601"),
    "out:sample": ("27 CFR 19.434", "27 CFR 19.601"),
}
_ANY_US = {
    "out:received": ("27 CFR 19.621",),
    "out:transit": ("27 CFR 19.462", "27 CFR 19.621"),
    "out:leak": ("27 CFR 19.461",),
    "out:spill": ("27 CFR 19.461",),
    "out:missing": ("27 CFR 19.461", "27 CFR 19.465"),
    "out:sample": ("27 CFR 19.434", "27 CFR 19.616"),
    "out:destroyed": ("27 CFR 19.617",),
    "out:removed": ("27 CFR 19.611", "27 CFR 19.620"),
}
_WAREHOUSE = {
    "": ("Dir. (EU) 2020/262 Art. 15", "HMRC Notice 197"),
    "out:fermented": ("HMRC Notice 39",),
    "out:stillage": ("HMRC Notice 39",),
    "out:removed": ("Dir. (EU) 2020/262 Art. 15", "Dir. 92/83/EEC"),
}
_RULES: dict[str, Mapping[str, tuple[str, ...]]] = {
    "production": _PRODUCTION, "storage": _STORAGE, "processing": _PROCESSING, "finished": _FINISHED,
    WAREHOUSE: _WAREHOUSE,
}


def party_words(side: str, party: str) -> str:
    """Return the words for the other party of a line: the account it comes from or goes to."""
    words = PARTIES.get((side, party)) or (party if party in ACCOUNTS else party[4:].replace("_", " "))
    return words if (side, party) in PARTIES else f"{'from' if side == 'in' else 'to'} {words}"


def reason_words(reason: str) -> str:
    """Return the words for a reason."""
    return REASONS.get(reason) or reason.replace("_", " ")


def rules(account: str, party: str = "") -> tuple[str, ...]:
    """Return the rules that ask for a line; those of the whole account where none names it."""
    own = _RULES[account]
    return own.get(party) or (_ANY_US.get(party) if account != WAREHOUSE else None) or own[""]


def rules_words(cites: tuple[str, ...]) -> str:
    """Return rules in a line, what two have in common said once: `27 CFR 19.585, 19.632`."""
    words, law = [], ""
    for cite in cites:
        here = cite[: cite.rfind(" ")]
        words.append(f", {cite[len(here) + 1 :]}" if here == law else f"; {cite}")
        law = here
    return "".join(words)[2:]
