"""The run sheet: a still run minute by minute with true strengths, cuts, receivers and balance, or room to go on."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from reportlab.lib.units import mm
from reportlab.platypus.flowables import Flowable

from webapp.book.still.run_account import Balance
from webapp.book.still.runs import KnownRun
from webapp.desk.blueprint import local_clock, local_time
from webapp.desk.figures import amount, figure, or_us, sign, value_of
from webapp.desk.paper import cautions
from webapp.desk.paper.imprint import Imprint
from webapp.desk.paper.press import Paper
from webapp.desk.paper.shapes import COPPER, DUST, INK, RULE
from webapp.kinds.run_state import CutPlan, RunLine
from webapp.labels.plan import FONT
from webapp.words.desk import say

ROOM_ROWS = 14  # for readings of a run that is under way
ROW_HIGH = 8 * mm
_READ = (
    ("glass", "pct_glass"),
    ("temp", "degC"),
    ("true_strength", "pct_vol"),
    ("vapour_temp", "degC"),
    ("flow", "L_h"),
    ("dip", "L"),
)
_WIDTHS = (14, 23, 15, 17, 19, 19, 15, 15, 43)


def run_paper(
    run: KnownRun,
    balance: Balance | None,
    plan: CutPlan | None,
    asked: Sequence[tuple[str, str]],
    imprint: Imprint,
) -> bytes:
    """Return the run sheet as a PDF. plan: what the distiller wants of this fruit on this still, or None."""
    what = " ".join(filter(None, (run["what"], run["batch"])))
    paper = Paper(
        say(
            "paper-run-run_sheet", run=run['name'] or local_time(run['started_at']),
        ), say("paper-run-on", what=what, still=run['still']),
        imprint,
    )
    charge = run["charge"]
    paper.facts(
        [
            (say("desk-common-still"), run["still"]),
            (say("paper-run-charged_from"), run["from"] or ""),
            (say("paper-run-begun"), local_time(run["started_at"])),
            (
                say("desk-common-ended2"),
                local_time(run["ended_at"]) if run["ended_at"] else say("desk-common-under_way"),
            ),
            (say("paper-run-charge"), amount(charge.get("volume_l"), "L", 1)),
            (say("paper-run-of_it_feints"), amount(charge.get("feints_l"), "L", 1)),
            (say("paper-run-pure_alcohol_charged"), amount(charge.get("lpa_l"), "LPA", 2)),
            (say("paper-run-plan"), _plan_words(plan) if plan else ""),
        ],
        columns=4,
    )
    paper.cautions(cautions.STILL, cautions.VAPOUR, cautions.METHANOL)
    picture = Curve(run, paper.width, 46 * mm)
    if picture.is_drawn:
        paper.heading(say("paper-run-true_strength", unit=sign('pct_vol')))
        paper.put(picture)
    paper.heading(say("paper-run-minute_by_minute"))
    heads = (
        say("desk-common-minute"),
        say("paper-run-event"),
        say("paper-run-glass"),
        say("paper-run-spirit", unit=sign('degC')),
        say("paper-run-true", unit=sign('pct_vol')),
        say("paper-run-vapour", unit=sign('degC')),
        sign("L_h"),
        say("paper-run-dip", what=sign('L')),
        say("paper-run-into_why"),
    )
    lines = sorted(_lines(run), key=lambda line: (line["at"], line["entry"]))
    rows = [_row(line) for line in lines]
    paper.table(heads, rows, _WIDTHS, numbers="  rrrrrr", bold=[n for n, line in enumerate(lines) if line.get("event")])
    if not run["ended_at"]:
        paper.say("Under way when printed: go on here, and log it.", quiet=True)
        paper.table(heads, [[""] * len(heads)] * ROOM_ROWS, _WIDTHS, high=ROW_HIGH)
    paper.heading(say("paper-run-what_the_receivers_hold"))
    paper.table(
        (
            say("paper-run-fraction"),
            say("desk-common-in"),
            say("paper-run-at", unit=sign('L'), temp=or_us('20 °C', '68 °F')),
            sign("pct_vol"),
            or_us(say("desk-common-pure_alcohol_l"), say("desk-common-proof_gal")),
        ),
        [
            (
                str(one["fraction"] or "").replace("_", " "),
                one["receiver"],
                figure(one["volume_l"], "L", 1),
                figure(one["strength_pct"], "pct_vol", 1),
                figure(one["lpa_l"], "LPA", 2),
            )
            for one in run["fractions"]
        ],
        (44, 40, 32, 28, 36),
        numbers="  rrr",
        empty=say("paper-run-none_gauged_yet"),
    )
    if balance:
        _balance(paper, balance)
    paper.questions(asked)
    paper.say(
        "Not tested here: methanol, ethyl carbamate. No figure on this sheet says anything about composition.",
        quiet=True,
    )
    paper.signatures(say("paper-run-still_hand"), say("paper-run-distiller"))
    return paper.render()


def _plan_words(plan: CutPlan) -> str:
    parts = [
        say("paper-run-heads", plan=amount(plan['heads_l'], 'L', 1)) if plan["heads_l"] else "",
        say("paper-run-hearts_to", plan=amount(plan['hearts_to_pct'], 'pct_vol', 1)) if plan["hearts_to_pct"] else "",
        say("paper-run-tails_to", plan=amount(plan['tails_to_pct'], 'pct_vol', 1)) if plan["tails_to_pct"] else "",
    ]
    return ", ".join(filter(None, parts))


def _lines(run: KnownRun) -> list[RunLine]:
    """Return readings and cuts of a run, each once: a cut with a strength is a reading too."""
    cuts = {cut["entry"] for cut in run["cuts"]}
    return [*run["cuts"], *(line for line in run["readings"] if line["entry"] not in cuts)]


def _row(line: RunLine) -> list[str]:
    said: Any = line  # its keys are those of _READ, where they were read
    figures = [figure(said[name], unit, 1) if said.get(name) is not None else "" for name, unit in _READ]
    event = str(line.get("event") or "").replace("_", " ")
    why = ", ".join(str(said[name]) for name in ("receiver", "reason", "nose", "late_why") if said.get(name))
    late = say("paper-run-logged", clock=local_clock(line['typed_at'])) if line.get("typed_at") else ""
    return [local_clock(line["at"]), event, *figures, why + late]


def _balance(paper: Paper, balance: Balance) -> None:
    """Print what went in over what came out, and what is left."""
    paper.heading(
        say(
            "paper-run-balance",
            what=or_us(say('desk-house-litres_of_pure_alcohol'), say('desk-common-proof_gallons2')),
        ),
        room=55 * mm,
    )
    rows = [("in", part.replace("_", " "), figure(litres, "LPA", 2)) for part, litres in balance.into]
    rows += [
        (
            "out",
            part.replace("_", " ")
            + (
                say("paper-run-not_read_taken_as", balance=amount(balance.stillage_pct, 'pct_vol', 1))
                if part == "stillage" and not balance.is_stillage_read
                else ""
            ),
            figure(litres, "LPA", 2),
        )
        for part, litres in balance.out
    ]
    rest = say("paper-run-not_accounted_for") if balance.open >= 0 else say("paper-run-more_than_went_in")
    rows.append(
        ("", say(
            "paper-run-of_the_charge", rest=rest, abs=f"{abs(balance.share_pct):.1f}",
        ), figure(abs(balance.open), "LPA", 2)),
    )
    paper.table(
        ("", say("paper-run-part"), or_us("L", say("desk-common-proof_gal2"))), rows, (20, 120, 40), numbers="  r",
        bold=[len(rows) - 1],
    )


class Curve(Flowable):
    """True strength over time with the cuts as lines that say their minute. [pt]"""

    def __init__(self, run: KnownRun, width: float, height: float) -> None:
        super().__init__()
        self.width, self.height = width, height
        lines = {line["entry"]: line for line in [*run["cuts"], *run["readings"]]}
        read = sorted(
            (one for one in lines.values() if one.get("true_strength") is not None), key=lambda one: one["at"]
        )
        self._points = [
            (_minutes(one["at"], run), value_of(float(one["true_strength"] or 0), "pct_vol")) for one in read
        ]
        self._cuts = [
            (_minutes(cut["at"], run), str(cut.get("event") or ""), local_clock(cut["at"]))
            for cut in run["cuts"]
            if cut.get("event") in ("heads_cut", "hearts_cut")
        ]
        self.is_drawn = len(self._points) > 1

    def draw(self) -> None:
        """Draw axes, the curve, and the cuts."""
        canvas, left, foot, top = self.canv, 9 * mm, 5 * mm, 4 * mm
        last = (
            max(self._points[-1][0], *(at for at, _, _ in self._cuts), 1.0)
            if self._cuts
            else max(self._points[-1][0], 1.0)
        )
        low, high = min(y for _, y in self._points), max(y for _, y in self._points)
        step = next((one for one in (10, 20, 25, 50) if one >= (high - low) / 5), 100)
        low, high = step * (low // step), step * (high // step + 1)
        wide, tall = self.width - left - 2 * mm, self.height - foot - top
        x_of = [left + wide * at / last for at, _ in self._points]
        y_of = [foot + tall * (y - low) / (high - low) for _, y in self._points]
        canvas.setFont(FONT, 7.5)
        canvas.setLineWidth(0.4)
        for level in range(int(low), int(high) + 1, step):
            y = foot + tall * (level - low) / (high - low)
            canvas.setStrokeColor(RULE)
            canvas.line(left, y, left + wide, y)
            canvas.setFillColor(DUST)
            canvas.drawRightString(left - 1.5 * mm, y - 2.5, str(level))
        for at, event, minute in self._cuts:
            x = left + wide * at / last
            canvas.setStrokeColor(COPPER)
            canvas.setLineWidth(1)
            canvas.line(x, foot, x, foot + tall + 3 * mm)
            canvas.setFillColor(COPPER)
            words = f"{'hearts' if event == 'heads_cut' else 'tails'} {minute}"
            draw = canvas.drawRightString if at > 0.85 * last else canvas.drawString
            draw(x + (-1 if at > 0.85 * last else 1) * mm, foot + tall + 1.2 * mm, words)
        canvas.setStrokeColor(INK)
        canvas.setLineWidth(1.3)
        path = canvas.beginPath()
        path.moveTo(x_of[0], y_of[0])
        for x, y in zip(x_of[1:], y_of[1:], strict=True):
            path.lineTo(x, y)
        canvas.drawPath(path, stroke=1, fill=0)
        canvas.setFillColor(DUST)
        canvas.drawString(left, 0, "0 min")
        canvas.drawRightString(left + wide, 0, say("paper-run-min", last=f"{last:.0f}"))


def _minutes(at: str, run: KnownRun) -> float:
    return (datetime.fromisoformat(at) - datetime.fromisoformat(run["started_at"])).total_seconds() / 60
