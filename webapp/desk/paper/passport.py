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
from webapp.words.desk import Later, say

# Of these a house has a paper in hand, or should: deliveries, what came in, what stood there before the book.
_PAPERED = ("fruit", "opening", "received", "goods")
_SIGN_FOR = Later("paper-passport-laboratory_certificate_and_its_num")
_UNTESTED = Later("paper-passport-none_in_the_book_methanol")


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
    paper = Paper(say("paper-passport-lot_passport", name=subject.name), subject.words, imprint)
    facts = subject.facts
    size = facts.get("size_l")
    paper.facts(
        [
            (say("desk-common-what"), str(facts.get("what") or subject.words.split(",")[0])),
            (say("desk-common-since"), subject.at[:10]),
            (say("desk-common-vessel"), subject.mark),
            (say("paper-passport-lot_mark"), str(facts.get("lot_mark") or "")),
            (say("desk-common-batch"), str(facts.get("batch") or "")),
            (
                say("paper-passport-good_bottles"),
                say(
                    "paper-passport-of_l", good=facts['good'], size=f"{size:g}",
                ) if facts.get("good") and isinstance(size, float | int) else "",
            ),
            (
                say("paper-passport-strength"),
                amount(pct, "pct_vol", 1) if isinstance(pct := facts.get("strength_pct"), float | int) else "",
            ),
            (say("paper-passport-pure_alcohol"), amount(made.lpa_ul / 1e6, "LPA", 2) if made.lpa_ul else ""),
        ],
        columns=4,
    )
    paper.heading(say("paper-passport-made_of"))
    if not back:
        paper.say("Nothing has moved into it yet, by the book.", quiet=True)
    for section in back:
        paper.part(section["title"])
        paper.table(
            (
                say("desk-common-name"), say("desk-common-what"), say("paper-passport-day"),
                say("paper-passport-share"), or_us(say("desk-common-l_pure_alcohol"), say("desk-common-proof_gal2")),
                say("paper-passport-came_from"),
            ),
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
    paper.heading(say("paper-passport-papers_and_certificates"))
    paper.say("By the book, what each part came with. Number the papers that go with this passport.", quiet=True)
    papered = [node for node in _nodes_back(made) if node.sort in _PAPERED]
    paper.table(
        (say("desk-common-what"), say("paper-passport-by_the_book"), say("paper-passport-paper_no")),
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
    paper.signatures(say("paper-passport-made_out_by"), say("paper-passport-approved_by"))
    return paper.render()


def _certified(one: Certificate) -> str:
    """Return a certificate in a line: "sample of 2026-08-25, C-04: methanol 812 g/hL p.a. (under); ..."."""
    results = "; ".join(
        f"{result['label'].lower()} {result['shown']}" + (f" ({result['verdict']})" if result["verdict"] else "")
        for result in one["results"]
    )
    about = ", ".join(part for part in (f"sample of {one['taken_on']}", one["mark"] or one["batch"]) if part)
    said = f"{about}: {results}" if results else about
    return f"{said}. Its paper is in the book, SHA-256 {one['papers'][0][:16]}…" if one["papers"] else said


def _nodes_back(made: Trace) -> list[Node]:
    names = {name for pair in made.origin.links for name in pair} | set(made.origin.leaves)
    return sorted((made.nodes[name] for name in names if name in made.nodes), key=lambda node: (node.at, node.id))


def _on(paper: Paper, on: Sequence[Line], standing: Sequence[Line], removals: Sequence[Mapping[str, object]]) -> None:
    """Print where it went: bottles, what still stands, and what has left by which document."""
    share = (say("paper-passport-share"), or_us(say("desk-common-l_pure_alcohol"), say("desk-common-proof_gal2")))
    if on:
        paper.heading(say("desk-common-in_these_bottles"))
        paper.table(
            (say("desk-common-batch"), say("desk-common-bottled"), say("paper-passport-cases_and_lot_mark"), *share),
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
        paper.heading(say("desk-common-standing_now"))
        paper.table(
            (say("desk-common-in"), say("desk-common-what"), *share),
            [
                (
                    line["node"].name,
                    line["node"].words,
                    percent(line["share_pct"]),
                    _lpa(line["lpa_ul"]) or say("desk-common-not_fermented_out"),
                )
                for line in standing
            ],
            (38, 90, 22, 30),
            numbers="  rr",
        )
    if removals:
        paper.heading(say("desk-common-where_the_cases_went"))
        paper.table(
            (
                say("desk-common-when"), say("desk-common-what_happened"), say("desk-common-cases"),
                say("desk-common-bottles"), say("desk-common-document"), say("paper-passport-to_or_from"),
            ),
            [
                (
                    str(one["at"])[:10],
                    str(one["happened"]),
                    say(
                        "paper-passport-to", first=one['case_from'], last=one['case_to'],
                    ) if one["case_to"] else str(one["case_from"] or ""),
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
