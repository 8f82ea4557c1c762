"""The passport of a lot: what it is, what it was made of back to the fruit, its papers, and where it went."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from webapp.book.lineage.certificates import Certificate
from webapp.book.lineage.lineage import Node, Trace
from webapp.desk.figures import amount, figure, or_us
from webapp.desk.paper.imprint import Imprint
from webapp.desk.paper.press import Paper
from webapp.desk.trace.lists import Line, Section
from webapp.desk.trace.picture import percent

# Of these a house has a paper in hand, or should: deliveries, what came in, what stood there before the book.
_PAPERED = ("fruit", "opening", "received", "goods")
_SIGN_FOR = "Laboratory certificate, and its number"
_UNTESTED = "none in the book: methanol and other figures of composition are not measured by it"


def passport_paper(
    made: Trace,
    back: Sequence[Section],
    on: Sequence[Line],
    standing: Sequence[Line],
    removals: Sequence[Mapping[str, object]],
    asked: Sequence[tuple[str, str]],
    imprint: Imprint,
    tested: Sequence[Certificate] = (),
) -> bytes:
    """Return the passport as a PDF. back: what it was made of; on: bottlings; standing: spirit that stands now.

    tested: certificates of laboratories about it and about what it was made of.
    """
    subject = made.nodes[made.subject.node]
    paper = Paper(f"Lot passport: {subject.name}", subject.words, imprint)
    facts = subject.facts
    size = facts.get("size_l")
    paper.facts(
        [
            ("What", str(facts.get("what") or subject.words.split(",")[0])),
            ("Since", subject.at[:10]),
            ("Vessel", subject.mark),
            ("Lot mark", str(facts.get("lot_mark") or "")),
            ("Batch", str(facts.get("batch") or "")),
            (
                "Good bottles",
                f"{facts['good']} of {size:g} L" if facts.get("good") and isinstance(size, float | int) else "",
            ),
            (
                "Strength",
                amount(pct, "pct_vol", 1) if isinstance(pct := facts.get("strength_pct"), float | int) else "",
            ),
            ("Pure alcohol", amount(made.lpa_ul / 1e6, "LPA", 2) if made.lpa_ul else ""),
        ],
        columns=4,
    )
    paper.heading("Made of")
    if not back:
        paper.say("Nothing has moved into it yet, by the book.", quiet=True)
    for section in back:
        paper.part(section["title"])
        paper.table(
            ("Name", "What", "Day", "Share", or_us("L pure alcohol", "proof gal"), "Came from"),
            [
                (
                    line["node"].name or "unnamed",
                    line["node"].words,
                    line["node"].at[:10],
                    percent(line["share_pct"]),
                    _lpa(line["lpa_ul"]),
                    _parts(line["parts"], line["more"]),
                )
                for line in section["lines"]
            ],
            (27, 46, 20, 16, 22, 46),
            numbers="   rr",
        )
    paper.say(
        "Every vessel and run is taken as well mixed: what leaves it holds all that came in before, each by its share "
        "of pure alcohol. The alcohol of a ferment is shared over its loads by their mass.",
        quiet=True,
    )
    if not made.spread.is_whole:
        paper.say("There is more than one trace can follow. What is printed holds, but it is not all.")
    paper.heading("Papers and certificates")
    paper.say("By the book, what each part came with. Number the papers that go with this passport.", quiet=True)
    papered = [node for node in _nodes_back(made) if node.sort in _PAPERED]
    paper.table(
        ("What", "By the book", "Paper no."),
        [
            *((node.name, f"{node.words}, {node.at[:10]}" if node.at else node.words, "") for node in papered),
            *(
                (str(one["happened"]), f"{one['document']}, {one['to_whom']}".strip(", "), "")
                for one in removals
                if one["document"]
            ),
            *((f"{one['laboratory']}, {one['document']}", _certified(one), "") for one in tested),
            *([] if tested else [(_SIGN_FOR, _UNTESTED, "")]),
        ],
        (44, 100, 36),
    )
    _on(paper, on, standing, removals)
    paper.questions(asked)
    paper.signatures("Made out by", "Approved by")
    return paper.render()


def _certified(one: Certificate) -> str:
    """Return a certificate in a line: "sample of 2026-08-25, C-04: methanol 812 g/hL p.a. (under); ..."."""
    results = "; ".join(
        f"{result['label'].lower()} {result['shown']}" + (f" ({result['verdict']})" if result["verdict"] else "")
        for result in one["results"]
    )
    about = ", ".join(part for part in (f"sample of {one['taken_on']}", one["mark"] or one["batch"]) if part)
    return f"{about}: {results}" if results else about


def _nodes_back(made: Trace) -> list[Node]:
    names = {name for pair in made.origin.links for name in pair} | set(made.origin.leaves)
    return sorted((made.nodes[name] for name in names if name in made.nodes), key=lambda node: (node.at, node.id))


def _on(paper: Paper, on: Sequence[Line], standing: Sequence[Line], removals: Sequence[Mapping[str, object]]) -> None:
    """Print where it went: bottles, what still stands, and what has left by which document."""
    share = ("Share", or_us("L pure alcohol", "proof gal"))
    if on:
        paper.heading("In these bottles")
        paper.table(
            ("Batch", "Bottled", "Cases and lot mark", *share),
            [
                (
                    line["node"].name,
                    line["node"].at[:10],
                    line["node"].words,
                    percent(line["share_pct"]),
                    _lpa(line["lpa_ul"]),
                )
                for line in on
            ],
            (38, 24, 72, 20, 26),
            numbers="   rr",
        )
    if standing:
        paper.heading("Standing now")
        paper.table(
            ("In", "What", *share),
            [
                (
                    line["node"].name,
                    line["node"].words,
                    percent(line["share_pct"]),
                    _lpa(line["lpa_ul"]) or "not fermented out",
                )
                for line in standing
            ],
            (38, 90, 22, 30),
            numbers="  rr",
        )
    if removals:
        paper.heading("Where the cases went")
        paper.table(
            ("When", "What happened", "Cases", "Bottles", "Document", "To or from"),
            [
                (
                    str(one["at"])[:10],
                    str(one["happened"]),
                    f"{one['case_from']} to {one['case_to']}" if one["case_to"] else str(one["case_from"] or ""),
                    str(one["bottles"]),
                    str(one["document"]),
                    str(one["to_whom"]),
                )
                for one in removals
            ],
            (22, 32, 32, 18, 36, 40),
            numbers="   r",
        )


def _lpa(ul: float | None) -> str:
    return figure(ul / 1e6, "LPA", 2) if ul else ""


def _parts(parts: Sequence[tuple[Node, float]], more: int) -> str:
    said = [f"{part.name or 'unnamed'} {percent(share)}" for part, share in parts[:6]]
    left = more + max(len(parts) - 6, 0)
    return ", ".join([*said, f"and {left} more"] if left else said)
