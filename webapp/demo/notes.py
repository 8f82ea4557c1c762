"""Notes to the next shift, the distiller's cut plans and best runs, and the answers given to the book at the time."""

from __future__ import annotations

from webapp.demo.story import Draft, Values, day, figure, load


def drafts() -> list[Draft]:
    """Return the notes and answers of the year."""
    notes = [
        Draft(day(*note["at"].split(" ")), "shift_note", note["vessel"], note["person"], {"text": note["text"]})
        for note in load("notes")
    ]
    return [*notes, *_wishes(), *_answers()]


def _wishes() -> list[Draft]:
    """Return cut plans and best runs, as the distiller gave them."""
    told, wishes = [], load("wishes")
    for plan in wishes["plans"]:
        values: Values = {
            "what": plan["what"], "why": plan["why"], "heads": (figure(plan["heads_l"], 1), "L"),
            "hearts_to": (figure(plan["hearts_to_pct"], 1), "pct_vol"),
            "tails_to": (figure(plan["tails_to_pct"], 1), "pct_vol"),
        }
        told.append(Draft(day(*plan["at"].split(" ")), "cut_plan", plan["still"], "IM", values))
    for best in wishes["best"]:
        values = {"run": best["run"], "why": best["why"]}
        told.append(Draft(day(*best["at"].split(" ")), "best_run", best["still"], "IM", values))
    return told


def _answers() -> list[Draft]:
    """The questions about the cold pears were answered when they moved again; all others still wait."""
    reason = "The room door stood open on cold nights. Warmed, fresh yeast and yeast food on the 27th; it moves again."
    return [
        Draft(
            day("2025-09-29", f"17:{10 + days}"), "answer", "", "IM",
            {"entry": f"@ferment:B-25-03:{days}", "verdict": "stands", "reason": reason},
        )
        for days in range(7, 12)
    ]
