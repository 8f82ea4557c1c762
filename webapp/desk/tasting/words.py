"""What a blind tasting found, in plain sentences: how likely it is by guessing, and what so many answers can find."""

from __future__ import annotations

from typing import TypedDict

from webapp.book.cellar.tastings import ALPHA, BETA, Told, tell
from webapp.kinds.tasting_state import Tasting
from webapp.trade import sensory

FOUND_BY = (6, 9, 12, 18, 24, 30)
HIGH = 120  # of the picture of guesses [px]


class Finding(TypedDict):
    """The result in sentences: the finding itself, how likely by chance, and what the number of answers allows."""

    head: str
    chance: str
    reach: str
    is_found: bool


class Bar(TypedDict):
    """One bar of the picture: so many right by guessing alone, its share, where it stands and how high. [px]"""

    right: int
    share: float
    x: int
    y: int
    height: int
    is_found: bool


class Found(TypedDict):
    """What a number of answers of a triangle finds at a risk of 5 %. [shares in percent]"""

    answers: int
    needed: int | None
    half: float
    least: float


def finding(tasting: Tasting) -> Finding | None:
    """Return what an opened tasting found, or None where it is not opened or nobody answered."""
    told = tell(tasting)
    if told is None:
        return None
    return _of_ranking(tasting, told) if told.ranking else _of_count(tasting, told)


def _of_count(tasting: Tasting, told: Told) -> Finding:
    method, many = tasting["method"], told.answers
    what = f"named {told.named}" if method.startswith("pair") else "right"
    if told.is_found:
        says = "They can be told apart." if not method.startswith("pair") else f"{told.named} is named more often."
    else:
        says = "No difference shown. That is not proof of sameness."
    needed = f"{told.needed} were needed" if told.needed else "so few answers cannot show a difference at this risk"
    head = f"{told.right} of {many} {what}; {needed}. {says}"
    chance = f"By guessing alone so many or more come {times_in(told.p)} ({p_words(told.p)})."
    if told.share is None:
        reach = f"{_answers(many)} can find nothing at a risk of {tasting['alpha_pct']} %."
    else:
        share = f"{100 * told.share:.0f} %"
        reach = (f"{_answers(many)} of {_people(told.people)} find a difference four times in five if at least {share} "
                 "of the answers perceive it; a smaller one is easily missed.")
    return {"head": head, "chance": chance, "reach": reach + _about(told), "is_found": told.is_found}


def _of_ranking(tasting: Tasting, told: Told) -> Finding:
    assert told.ranking
    words = {one["letter"]: one["name"] for one in tasting["samples"]}
    if told.is_found and told.apart:
        pairs = "; ".join(f"{words[a]} before {words[b]}" for a, b in told.apart)
        head = f"The order is more than chance. Apart are: {pairs}."
    elif told.is_found:
        head = "The order is more than chance, but no two of them stand far enough apart to say which."
    else:
        head = "No order shown. That is not proof of sameness."
    how = "counted out over all orders" if told.ranking.is_exact else "by chi-square, which is near for so many"
    chance = (f"By chance alone the rank sums lie so far apart {times_in(told.p)} ({p_words(told.p)}, {how}; "
              f"Friedman's figure {told.ranking.friedman:.1f}).")
    reach = (f"{_answers(told.answers)} of {_people(told.people)}: rank sums must be apart by {told.ranking.lsd:.1f} "
             "to count.")
    return {"head": head, "chance": chance, "reach": reach + _about(told), "is_found": told.is_found}


def _about(told: Told) -> str:
    return "" if told.people == told.answers else " It speaks of these people, not of drinkers in general."


def _answers(many: int) -> str:
    return "1 answer" if many == 1 else f"{many} answers"


def _people(many: int) -> str:
    return "1 person" if many == 1 else f"{many} people"


def times_in(p: float) -> str:
    """Return a chance as "1 time in 51"; from a half on as so many times in ten."""
    if p > 0.45:
        return f"{min(10, round(10 * p))} times in 10"
    many = 1.0 / p if p > 0 else 1e9
    shown = round(many) if many < 1000 else round(many, -1) if many < 10_000 else round(many, -3)
    return f"1 time in {min(shown, 1_000_000):,.0f}"


def p_words(p: float) -> str:
    """Return p with two figures that count: p 0.0009, p 0.22."""
    return "p below 0.0001" if p < 0.0001 else f"p {p:.4f}" if p < 0.01 else f"p {p:.2f}"


def guess_bars(told: Told, method: str) -> list[Bar]:
    """Return how often guessing alone gives each count; nothing for a ranking, or where bars would be too thin."""
    many = told.answers
    if told.ranking or many > 40:
        return []
    one = "pair" if method == "pair_two_sided" else method
    tails = [sensory.guessing_p(k, many, one) for k in range(many + 1)] + [0.0]
    shares = [tails[k] - tails[k + 1] for k in range(many + 1)]
    step = 560 // (many + 1)
    highs = [max(1, round(HIGH * share / max(shares))) for share in shares]
    return [
        {"right": k, "share": shares[k], "x": 4 + k * step, "y": HIGH + 24 - highs[k], "height": highs[k],
         "is_found": k == told.right}
        for k in range(many + 1)
    ]


def found_by() -> list[Found]:
    """Return what numbers of answers of a triangle find, for whoever plans one."""
    alpha = ALPHA["5"]
    return [
        {"answers": n, "needed": sensory.critical_number(n, "triangle", alpha),
         "half": 100 * sensory.chance_to_find(n, "triangle", 0.5, alpha),
         "least": 100 * (sensory.least_share_found(n, "triangle", alpha, BETA) or 1.0)}
        for n in FOUND_BY
    ]
