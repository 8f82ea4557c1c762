"""What a blind tasting found, in plain sentences: how likely it is by guessing, and what so many answers can find."""

from __future__ import annotations

from typing import TypedDict

from webapp.book.cellar.tastings import ALPHA, BETA, Told, tell
from webapp.kinds.tasting_state import Tasting
from webapp.trade import sensory
from webapp.words.desk import say

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
    what = say("desk-tasting-named2", named=told.named) if method.startswith("pair") else "right"
    if told.is_found:
        says = say("desk-tasting-they_can_be_told_apart") if not method.startswith("pair") else say(
            "desk-tasting-is_named_more_often", named=told.named,
        )
    else:
        says = say("desk-tasting-no_difference_shown_that_is")
    needed = say("desk-tasting-were_needed", needed=told.needed) if told.needed else say(
        "desk-tasting-so_few_answers_cannot_show",
    )
    head = say("desk-tasting-of", right=told.right, many=many, what=what, needed=needed, says=says)
    chance = say("desk-tasting-by_guessing_alone_so_many", times_in=times_in(told.p), p_words=p_words(told.p))
    if told.share is None:
        reach = say("desk-tasting-can_find_nothing_at_a", answers=_answers(many), tasting=tasting['alpha_pct'])
    else:
        share = f"{100 * told.share:.0f} %"
        reach = (say(
            "desk-tasting-of_find_a_difference_four", answers=_answers(many), people=_people(told.people),
            share=share,
        ))
    return {"head": head, "chance": chance, "reach": reach + _about(told), "is_found": told.is_found}


def _of_ranking(tasting: Tasting, told: Told) -> Finding:
    assert told.ranking
    words = {one["letter"]: one["name"] for one in tasting["samples"]}
    if told.is_found and told.apart:
        pairs = "; ".join(f"{words[a]} before {words[b]}" for a, b in told.apart)
        head = say("desk-tasting-the_order_is_more_than", pairs=pairs)
    elif told.is_found:
        head = say("desk-tasting-the_order_is_more_than2")
    else:
        head = say("desk-tasting-no_order_shown_that_is")
    how = say("desk-tasting-counted_out_over_all_orders") if told.ranking.is_exact else say(
        "desk-tasting-by_chi_square_which_is",
    )
    chance = (say(
        "desk-tasting-by_chance_alone_the_rank", times_in=times_in(told.p), p_words=p_words(told.p), how=how,
        friedman=f"{told.ranking.friedman:.1f}",
    ))
    reach = (say(
        "desk-tasting-of_rank_sums_must_be", answers=_answers(told.answers), people=_people(told.people),
        lsd=f"{told.ranking.lsd:.1f}",
    ))
    return {"head": head, "chance": chance, "reach": reach + _about(told), "is_found": told.is_found}


def _about(told: Told) -> str:
    return "" if told.people == told.answers else (" " + say("desk-tasting-it_speaks_of_these_people"))


def _answers(many: int) -> str:
    return say("desk-tasting-answers", many=many)


def _people(many: int) -> str:
    return say("desk-tasting-people", many=many)


def times_in(p: float) -> str:
    """Return a chance as "1 time in 51"; from a half on as so many times in ten."""
    if p > 0.45:
        return say("desk-tasting-times_in_10", min=min(10, round(10 * p)))
    many = 1.0 / p if p > 0 else 1e9
    shown = round(many) if many < 1000 else round(many, -1) if many < 10_000 else round(many, -3)
    return say("desk-tasting-n1_time_in", min=f"{min(shown, 1000000):,.0f}")


def p_words(p: float) -> str:
    """Return p with two figures that count: p 0.0009, p 0.22."""
    return say("desk-tasting-p_below_0_0001") if p < 0.0001 else f"p {p:.4f}" if p < 0.01 else f"p {p:.2f}"


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
