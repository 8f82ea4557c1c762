"""Entries of every kind for stories told at random: few vessels and few figures, so that all meddle with all.

A story is a list of tellings, each drawn for itself: whoever leaves one out, as hypothesis does when it looks for the
shortest story that fails, has a story still. For a soak the same tellings are drawn from a seeded generator.
"""

from __future__ import annotations

import hashlib
import random
from collections.abc import Iterable
from datetime import timedelta
from typing import Any, NamedTuple

from hypothesis import strategies as st

from tests.book.conftest import (
    C1,
    C2,
    F1,
    F2,
    F3,
    NOW,
    R1,
    R2,
    R3,
    S1,
    T1,
    T2,
    answer,
    charge,
    entry,
    fruit,
    gauge,
    new_id,
    reading,
)
from webapp.kinds.tasting_texts import seal_of
from webapp.trade.marks import make_mark

SKEWS = {"d-one": 0.0, "d-two": -3661.2, "d-three": 95.0, "d-four": 86_400.0 * 400}
DOES = (*["says"] * 39, *["answers"] * 5, *["amends"] * 6)
ABOUT = (0, 1, 2, 3, 4, 6, 8, 11, 15, 20, 26, 33, 45)
VERDICTS = ("stands", "stands", "struck")
QUERIES = ("", "", "ferment_gravity_rose", "unusual", "impossible:gravity", "place_differs", "places_swapped",
           "stock_short", "from_nothing", "over_capacity")
LOTS = ("L-1", "L-2", "L-3", "L-4", "L-5", "L-6")
POSSIBLE = {"glass": "62.0 pct_glass", "temp": "12 degC"}


def make_any(chance: random.Random, **more: Any) -> dict[str, Any]:
    """Return an entry of any kind but an answer."""
    name = chance.choice(list(MAKERS))
    return MAKERS[name](chance, more)


class Telling(NamedTuple):
    """One entry of a story before the story around it: what it says, on which phone, and what it does to earlier ones.

    `about` counts back from the entry before it, at most to the first, however many there are when its turn comes.
    """

    does: str  # "says", "amends" or "answers"
    about: int
    keeps_its_time: bool
    verdict: str
    query: str
    device: str
    entry: dict[str, Any]


def draw_telling(chance: random.Random) -> Telling:
    """Return one telling. The first of each choice is the plainest: there a search for a shorter story ends."""
    does = chance.choice(DOES)
    device = chance.choice(list(SKEWS))
    # Few different minutes: so that ties come up, and everything meddles with everything.
    true_at = NOW - timedelta(minutes=10 * chance.randrange(1, 60), days=chance.choice((0, 0, 0, 90, 400)))
    read_at = true_at + timedelta(seconds=SKEWS[device])
    typed_at = read_at + timedelta(minutes=chance.choice((0, 1, 45)))
    about, keeps_its_time, verdict, query = chance.choice(ABOUT), chance.random() < 0.6, "stands", ""
    if does == "answers":
        verdict, query = chance.choice(VERDICTS), chance.choice(QUERIES)
        made = answer("", verdict, query, read_at=read_at, typed_at=typed_at, device=device)
    else:
        made = make_any(chance, read_at=read_at, typed_at=typed_at, device=device)
    return Telling(does, about, keeps_its_time, verdict, query, device, made)


def tell_story(tellings: Iterable[Telling]) -> list[dict[str, Any]]:
    """A season in little: readings, fruit, runs, gauges, and people who amend, strike and answer, on four phones."""
    story: list[dict[str, Any]] = []
    seqs = dict.fromkeys(SKEWS, 0)
    for one in tellings:
        said = [e for e in story if e["kind"] != "answer"]
        among = story if one.does == "answers" else said
        if one.does == "answers" and not among:
            continue  # there is nothing yet to answer
        seqs[one.device] += 1
        made = one.entry | {"id": new_id(), "seq": seqs[one.device]}
        if one.does != "says" and among:
            old = among[-1 - min(one.about, len(among) - 1)]
            if one.does == "answers":
                made["values"] = made["values"] | {"entry": {"raw": old["id"]}}
            else:
                made |= {"amends": old["id"], "reason": "misread"}
                if one.keeps_its_time:
                    made["read_at"] = old["read_at"]
        story.append(made)
    return story


def make_story(chance: random.Random, size: int) -> list[dict[str, Any]]:
    """Return a story of so many tellings from a seeded generator."""
    return tell_story(draw_telling(chance) for _ in range(size))


@st.composite
def _tellings(draw: st.DrawFn) -> Telling:
    return draw_telling(draw(st.randoms(use_true_random=False)))


def stories(most: int) -> st.SearchStrategy[list[dict[str, Any]]]:
    """Return the strategy of stories with one telling to so many."""
    return st.lists(_tellings(), min_size=1, max_size=most).map(tell_story)


def _number(chance: random.Random, *of: float) -> str:
    return str(chance.choice(of))


def _ferment(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    gravity = chance.choice(("1.052", "1.040", "1.043", "1.031", "1.020", "1.4"))
    one = reading(chance.choice((F1, F2)), gravity, str(chance.randrange(12, 30)), **more)
    if chance.random() < 0.5:
        one["values"]["temp"]["instrument"] = "TH-2"
    return one


def _second_run(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    feints = chance.choice(({}, {"feints": "40 L", "feints_strength": "30 pct_vol", "feints_from": R2}))
    return entry("charge", S1, from_vessel=chance.choice((R1, F2)), wash=f"{chance.choice((20, 40))} L",
                 wash_strength="30 pct_vol", heads_to=R1, **feints, **more)


def _run_reading(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("run_reading", S1, glass=f"{chance.randrange(200, 860) / 10} pct_glass", temp="16 degC", **more)


def _cut(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    event, to = chance.choice((("heads_cut", R2), ("hearts_cut", R1), ("first_drop", R1)))
    return entry("cut", S1, event=event, receiver=to, reason="nose", **more)


def _fraction(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    remnant = chance.choice(({}, {"remnant": "10 L", "remnant_strength": "65 pct_vol"}))
    return entry("fraction_gauge", chance.choice((R1, R2)), still=S1, volume="40 L", temp="18 degC",
                 fraction=chance.choice(("hearts", "heads", "stillage")),
                 strength=f"{chance.randrange(60, 75)} pct_vol",
                 goes_to=chance.choice(("stays", "stays", "drain")), **remnant, **more)


def _closed(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("ferment_closed", chance.choice((F1, F2)), final_gravity="1.010 SG",
                 volume=f"{chance.choice((460, 800))} L", wash_strength="5.5 pct_vol", **more)


def _regauge(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("cask_regauge", chance.choice((C1, C2)), gross=f"{chance.randrange(60, 240)} kg", **POSSIBLE,
                 condition=chance.choice(("tight", "leaking")), **more)


def _move(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    to = chance.choice(({}, {"to_vessel": T1}, {"to_vessel": C1}, {"to_vessel": R3}))
    names = ("production", "storage", "processing")
    return entry("account_move", chance.choice((R1, R2, T1)), serial="1", from_account=chance.choice(names),
                 to_account=chance.choice((*names, "removed")), purpose="deposit", spirit="plum",
                 distilling_strength="70 pct_vol", volume=f"{chance.choice((5, 40, 300))} L", temp="18 degC",
                 strength="66 pct_vol", **to, **more)


def _fill(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("cask_fill", chance.choice((C1, C2)), from_vessel=chance.choice((T1, R2)), lot="L-01", tare="46 kg",
                 gross=f"{chance.choice((110, 150, 240))} kg", use="new", soaked="yes",
                 place=chance.choice(("A1", "A2")),
                 **POSSIBLE, **more)


def _cask_move(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("cask_move", chance.choice((C1, C2)), from_place="A1", to_place=chance.choice(("A1", "A2")), **more)


def _top_up(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    proved = {"volume": "20 L", "strength": "61 pct_vol", "temp": "20 degC"}
    much = chance.choice(({"volume": "5 L"}, {"net_weight": "30 kg"}, proved))
    mark, source = chance.choice(((C1, C2), (C2, C1), (C1, T1), (C1, C1)))
    return entry("top_up", mark, from_vessel=source, work=chance.choice(("top_up", "recask")), **much, **more)


def _sample(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("sample", chance.choice((C1, T1, F1, R2)), size="100 mL", number="2 count", purpose="analysis",
                 went=chance.choice(("destroyed", "returned")), **more)


def _certificate(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    none_found = {"ethyl_carbamate_below": "50 ug_L"}
    results = chance.choice(({"methanol": "1150 g_hL_pa"}, {"methanol": "5.4 mg_L"}, none_found))
    return entry("lab_certificate", chance.choice((C1, T1, R2)), laboratory="Laboratory One", document="26-0415",
                 taken_on="2026-05-11", spirit=chance.choice(("plum", "cherry", "rye")), **results, **more)


def _taste(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    scores = {f"{part}_score": "6 count" for part in ("nose", "mouth", "wood", "fault")}
    return entry("tasting_note", chance.choice((C1, T1)), reduced_to="22 pct_vol", decision="hold", **scores, **more)


def _loss(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    proved = {"volume": "8 L", "strength": "70 pct_vol"}
    much = chance.choice(({"whole": "yes"}, {"volume": "8 L"}, {"net_weight": "3 kg"}, proved))
    return entry("loss", chance.choice((F1, S1, R2, T1, C1)), cause=chance.choice(("leak", "spill", "missing")),
                 found="NS told JK", done="pumped", **much, **more)


def _dump(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("dump", chance.choice((C1, C2)), gross=f"{chance.choice((140, 200))} kg",
                 empty=f"{chance.choice((44, 51))} kg", to_vessel=T1, **POSSIBLE, **more)


def _vat_plan(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    draws = chance.choice((f"{C1} 90.5; {C2} 80", f"{C2} 900", "some of everything"))
    return entry("vat_plan", T1, name="K-26-04", draws=draws, water="30 kg", target="45 pct_vol", volume="200 L",
                 **more)


TASTED_KEY = "AAB BBA 00ff"


def _tasting(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    glasses = chance.choice(("NS 418 902 637; JK 271 550 803", "NS 418 902; JK 418"))
    samples = chance.choice((f"A {C1}; B {C2}, from the loft", f"A {T1}; B {R2}", "A run R-9; some cask"))
    values = {"name": "T-1", "question": "told apart?", "samples": samples, "glasses": glasses,
              "seal": seal_of(TASTED_KEY), "method": chance.choice(("triangle", "ranking")), "alpha": "5"}
    given = {name: {"raw": text} for name, text in values.items()}
    return entry("tasting_session", values=given | {"reduced_to": {"raw": "25", "unit": "pct_vol"}}, **more)


def _tasted(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    values = {"session": chance.choice(("T-1", "t-1", "T-9")), "sure": "fairly",
              **chance.choice(({"picked": "637"}, {"picked": "111"}, {"order": "418 902"}))}
    given = {name: {"raw": text} for name, text in values.items()}
    number = str(chance.choice((1, 1, 2)))
    return entry("tasting_answer", values=given | {"set_no": {"raw": number, "unit": "count"}},
                 **more)


def _opened(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    values = {"session": "T-1", "key": chance.choice((TASTED_KEY, "AAB 00")), "decision": "cut as before"}
    return entry("tasting_result", values={name: {"raw": text} for name, text in values.items()}, **more)


def _reduce(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    much = chance.choice(({"water": "30 kg"}, {"water_volume": "12 L"}, {"water": "0 kg"}))
    return entry("reduce", T1, target="45 pct_vol", **much, **more)


def _filter(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    to = chance.choice(({}, {"to_vessel": T2}))
    return entry("chill_filter", T1, temp="-2 degC", sheets="K100", volume_before="300 L",
                 strength_before="45.0 pct_vol",
                 volume_after=f"{chance.choice((298, 301))} L", strength_after="44.9 pct_vol", **to,
                 **more)


def _bottling_gauge(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    solids = chance.choice(({}, {"obscuration": "0.5 g_100mL"}))
    return entry("bottling_gauge", T1, batch="K-26-03", volume=f"{chance.choice((200, 285))} L", temp="17 degC",
                 strength="45.0 pct_vol", label_strength="45 pct_vol", **solids, **more)


def _distilled_gauge(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    much = chance.choice(({"volume": "200 L", "temp": "17 degC"}, {"net_weight": "40 kg", "temp": "17 degC"}))
    return entry("distilled_gauge", chance.choice((T1, R2, C1)), glass="33.0 pct_glass", sample_volume="200 mL",
                 sample_temp="20 degC", distillate_volume="200 mL", distillate_temp="20 degC",
                 distillate_glass="35.0 pct_glass", dry_extract=f"{chance.choice((11, 90))} g_L", **much, **more)


def _bottle_check(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("bottle_check", T1, line="1", tested="6 count", fill_found=f"{chance.choice((99.4, 100.2))} pct",
                 strength_found="45 pct_vol", labels_right="yes", **more)


def _bottling_close(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("bottling_close", T1, filled=f"{chance.choice((300, 560))} count", broken="2 count",
                 per_case="6 count",
                 bottle_size="0.5 L", lot_mark=chance.choice(LOTS), case_from="1", case_to="93", loss="1 L",
                 tank_empty=chance.choice(("yes", "no")), **more)


def _receipt(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    declared = chance.choice(({"declared_volume": "100 L"}, {"declared_weight": "90 kg"}))
    return entry("receipt", chance.choice((T1, T2, C1)), consignor="Hollow Hill", document="T-7", purpose="in_bond",
                 spirit=chance.choice(("plum", "rye")), to_account=chance.choice(("storage", "processing")),
                 declared_strength="62 pct_vol", volume=f"{chance.choice((97, 100, 101))} L", temp="20 degC",
                 strength="62 pct_vol", seals=chance.choice(("yes", "no")), **declared, **more)


def _opening(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    papers = chance.choice(({}, {"filled_on": "2024-03-01", "filled_volume": "100 L", "filled_strength": "63 pct_vol"}))
    return entry("opening", chance.choice((T2, R2, C1, C2)), spirit="plum", net_weight=f"{chance.choice((18, 40))} kg",
                 strength="62 pct_vol", to_account=chance.choice(("storage", "processing")), papers="page 7",
                 **papers, **more)


def _opening_goods(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("opening_goods", batch=chance.choice(LOTS), spirit="plum", strength="45 pct_vol", bottle_size="0.5 L",
                 per_case="6 count", cases=f"{chance.choice((20, 60))} count", **more)


def _goods_receipt(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    short = chance.choice(({}, {"short": f"{chance.choice((1, 700))} count"}))
    return entry("goods_receipt", consignor="Hollow Hill", document="T-8", batch=chance.choice(("K-26-03", *LOTS)),
                 spirit="plum", strength="45 pct_vol", bottle_size="0.5 L", per_case="6 count",
                 cases=f"{chance.choice((20, 60))} count", seals=chance.choice(("yes", "no")), **short,
                 **more)


def _dispatch(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    reasons = ("tax_paid", "in_bond", "sample", "broken", "missing", "missing", "dumped_back", "returned", "destroyed")
    why = chance.choice(reasons)
    cases = chance.choice(({}, {"case_from": "1", "case_to": "20"}, {"case_from": "15", "case_to": "34"}))
    return entry("dispatch", batch=chance.choice(("K-26-03", "l-1 ", *LOTS)), why=why, document="D-1",
                 to_whom="Corner shop", to_vessel=T2, **{"cases": "20 count"} if cases else {"bottles": "7 count"},
                 **cases, **more)


def _bottled_count(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    cases = f"{chance.choice((0, 0, 300))} count"
    return entry("bottled_count", batch=chance.choice(LOTS), cases=cases, signed="NS", **more)


def _count(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    if chance.random() < 0.3:
        return entry("stock_count", T1, found="here", volume=f"{chance.choice((100, 290))} L", temp="15 degC",
                     strength="45 pct_vol", signed="NS", **more)
    found = chance.choice(("here", "here", "here", "nothing"))
    return entry("stock_count", chance.choice((C1, C2)), found=found, place=chance.choice(("A1", "A2")),
                 signed="NS", **more)


def _instrument(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    result = chance.choice(("good", "failed"))
    return entry("instrument_check", instrument="TH-2", against="ice", expected="0 plain", found="0.9 plain",
                 correction=f"{chance.choice(('0', '-0.9'))} plain", result=result, in_use="yes", **more)


def _destroy(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return entry("destruction", chance.choice((R1, T1)), what="heads", volume=f"{chance.choice((5, 40))} L",
                 temp="20 degC", strength="70 pct_vol", place="yard", manner="poured out", withdrawn="no",
                 watched_by="JK", **more)


def _enclosure(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    """Return an entry that adds a picture to another one, which may never come."""
    named = [hashlib.sha256(str(chance.randrange(40)).encode()).hexdigest() for _ in range(chance.choice((1, 2)))]
    made = entry("enclosure", chance.choice((F1, "")), values={"entry": {"raw": new_id()}}, **more)
    return made | {"enclosed": named}


def _stranger(chance: random.Random, more: dict[str, Any]) -> dict[str, Any]:
    return reading(make_mark("Z9"), person="XX", **more)


MAKERS: dict[str, Any] = {
    "fruit_intake": lambda chance, more: fruit(chance.choice((F1, F2, F3)), _number(chance, 300, 900), **more),
    "addition": lambda chance, more: entry("addition", F1, what="yeast", lot_no="Y1", amount="20 g",
                                           is_sugar=chance.choice(("yes", "no")), **more),
    "ferment_reading": _ferment,
    "ferment_reading again": _ferment,
    "ferment_closed": _closed,
    "charge": lambda chance, more: charge(S1, chance.choice((F1, F2)), **more),
    "charge named": lambda chance, more: charge(S1, chance.choice((F1, F2)), run_name="R-9", **more),
    "charge again": _second_run,
    "run_reading": _run_reading,
    "cut": _cut,
    "run_end": lambda chance, more: entry("run_end", S1, reason="strength", **more),
    "fraction_gauge": _fraction,
    "fraction_gauge again": _fraction,
    "gauge": lambda chance, more: gauge(chance.choice((T1, R2, C1)), _number(chance, 0, 60, 140, 900), **more),
    "account_move": _move,
    "cask_fill": _fill,
    "cask_move": _cask_move,
    "cask_regauge": _regauge,
    "top_up": _top_up,
    "sample": _sample,
    "tasting_note": _taste,
    "tasting_session": _tasting,
    "tasting_answer": _tasted,
    "tasting_answer again": _tasted,
    "tasting_result": _opened,
    "loss": _loss,
    "vat_plan": _vat_plan,
    "dump": _dump,
    "reduce": _reduce,
    "chill_filter": _filter,
    "bottling_gauge": _bottling_gauge,
    "distilled_gauge": _distilled_gauge,
    "bottle_check": _bottle_check,
    "bottling_close": _bottling_close,
    "receipt": _receipt,
    "opening": _opening,
    "opening_goods": _opening_goods,
    "goods_receipt": _goods_receipt,
    "dispatch": _dispatch,
    "dispatch again": _dispatch,
    "bottled_count": _bottled_count,
    "stock_count": _count,
    "cleaning": lambda chance, more: entry("cleaning", T1, agent="caustic 2 %", rinse_ph="7 pH", entered="no", **more),
    "instrument_check": _instrument,
    "destruction": _destroy,
    "shift_note": lambda chance, more: entry("shift_note", chance.choice((F1, "")), text="stir at six", **more),
    "note_heard": lambda chance, more: entry("note_heard", chance.choice((F1, "")), values={"note": {"raw": new_id()}},
                                             **more),
    "enclosure": _enclosure,
    "cut_plan": lambda chance, more: entry("cut_plan", chance.choice((S1, "")), what=chance.choice(("plum", "PLUM")),
                                           hearts_to=f"{chance.choice((56, 58))} pct_vol", **more),
    "best_run": lambda chance, more: entry("best_run", S1, run="R-9", **more),
    "stranger": _stranger,
    "lab_certificate": _certificate,
}
