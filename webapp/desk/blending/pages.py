"""Blending: vats planned and how they went, and the planner itself."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book import intake
from webapp.book.before.vat_draws import read_draws
from webapp.book.cellar.tastings import load_tastings
from webapp.book.checks.product_limits import CAUTION, limit_sentence, limits_of
from webapp.book.fold import queries
from webapp.book.goods import bottlings
from webapp.book.house import registry
from webapp.book.vats import plans, sources
from webapp.book.vats.plans import draws_text
from webapp.book.vats.solve import SOURCES_MOST, NoVat, WorkedOut, work_out
from webapp.book.vats.sum import Draw, Source, Vat, make_vat
from webapp.desk.blending.vat_form import VatForm, wish_words
from webapp.desk.blueprint import bp
from webapp.desk.figures import amount
from webapp.kinds.state import Fill
from webapp.words import sentence
from webapp.words.desk import say
from webapp.words.language import language


@bp.get("/blending")
@needs("floor")
def blending_page() -> ResponseReturnValue:
    """List vats that were planned and batches that were bottled, the newest first."""
    return render_template(
        "desk/blending/blending.html", plans=plans.load_plans(current.book), batches=bottlings.batches(current.book)
    )


@bp.get("/blending/plan")
@needs("floor")
def vat_page() -> ResponseReturnValue:
    """Show the spirits for a vat, the wish for it, and the vat that meets the wish best."""
    form = VatForm.of_request(current.site)
    found = _sources(form)
    asked = queries.count_by_mark(current.book, (one.mark for one in found))
    picked = form.picked([one for one in found if not asked[one.mark]])
    found_best: WorkedOut | None = None
    why = ""
    if "solve" in request.args and form.validate():
        try:
            wanted = picked - (_too_young(found, form) - form.always())
            if not wanted:
                raise NoVat(say("desk-blending-nothing_is_left_to_choose"))
            found_best = work_out([one for one in found if one.mark in wanted], form.wish())
        except NoVat as error:
            why = str(error)
    vat = found_best.vat if found_best else None
    return render_template(
        "desk/blending/vat.html", form=form, sources=found,
        proof=found_best.words(lambda litres: amount(litres, "L", 1)) if found_best else "",
        young=_too_young(found, form), picked=picked,
        always=form.always(), vat=vat, why=why, sorts=sources.sorts_of_spirit(current.book),
        tanks=[row for row in registry.vessels(current.book, "tank") if not row["retired"]], years_of=_years_of,
        asked=asked, tastings=[one["name"] for one in load_tastings(current.book) if "opened" in one],
        notes=_notes(form, vat), draws=draws_text(vat.draws) if vat else "", caution=sentence(CAUTION, language()),
    )


def _years_of(source: Source) -> str:
    """Return the years that the youngest part of a source is in wood, as far as the book knows."""
    if source.years is None:
        return say("desk-common-not_known")
    by = say("desk-blending-by_papers") if source.papers is not None and not source.is_least else ""
    return f"{'at least ' if source.is_least else ''}{source.years:.1f}{by}"


def _sources(form: VatForm) -> list[Source]:
    found = sources.sources(
        current.book, datetime.now(UTC), what=form.what.data or "", soak_200_kg=form.number("soak") or 0.0
    )
    return [form.as_told(one) for one in found]


def _too_young(sources: list[Source], form: VatForm) -> set[str]:
    """Return the marks that the rule of age leaves out: younger, or never known to be so old."""
    least = form.number("youngest") or 0.0
    return {one.mark for one in sources if least > 0 and (one.years is None or one.years < least)}


def _notes(form: VatForm, vat: Vat | None) -> list[str]:
    """Return notes from published law on the plan: floors of strength and age for its name."""
    what = form.what.data or (vat.draws[0].source.what if vat else "")
    if not what:
        return []
    wanted = ("bottled", "aged", "aged_small", "coloured")
    found = [row for row in limits_of(what, current.site) if row["limit"] in wanted]
    return [sentence(limit_sentence(row), language(), house=current.house) for row in found]


@bp.post("/blending/plan")
@needs("distiller")
def vat_keep() -> ResponseReturnValue:
    """Keep a vat as worked out: an entry about its tank, with who planned it."""
    form = VatForm.of_request(current.site)
    tank, name = request.form.get("tank", ""), request.form.get("name", "").strip()[:80]
    draws, odd = read_draws(request.form.get("draws", "")[:4000])
    sources = {one.mark: one for one in _sources(form)}
    if odd or not draws or not set(draws) <= set(sources) or len(draws) > SOURCES_MOST:
        abort(400, say("desk-blending-these_draws_cannot_be_read"))
    vat = make_vat([Draw(sources[mark], kg) for mark, kg in draws.items()], form.number("strength"))
    if vat is None or not name or registry.vessel(current.book, tank) is None:
        flash(say("desk-blending-give_the_vat_a_name"), "ask")
        return redirect(request.referrer or url_for("desk.vat_page"))
    result = _enter(tank, name, vat, wish_words(form), request.form.get("tasting", "").strip()[:40])
    flash(say("desk-blending-kept_the_tanks_card_shows"), "entered")
    return redirect(url_for("desk.vat_plan_page", entry_id=result["id"]))


def _enter(tank: str, name: str, vat: Vat, wishes: str, tasting: str) -> intake.Result:
    assert current.person
    now = datetime.now(UTC)
    values = {
        "name": {"raw": name}, "draws": {"raw": draws_text(vat.draws)}, "wishes": {"raw": wishes},
        "water": {"raw": f"{vat.water_kg:.1f}", "unit": "kg"},
        "target": {"raw": f"{vat.strength_pct:.1f}", "unit": "pct_vol"},
        "volume": {"raw": f"{vat.volume_l:.1f}", "unit": "L"},
    } | ({"tasting": {"raw": tasting}} if tasting else {})
    return intake.enter_page_entry(
        current.book, kind="vat_plan", mark=tank, values=values, person=current.person["code"],
        role=(current.person.get("roles") or [""])[0], read_at=now.isoformat(timespec="seconds"), now=now,
    )


@bp.get("/blending/plans/<entry_id>")
@needs("floor")
def vat_plan_page(entry_id: str) -> ResponseReturnValue:
    """Show one plan against what has gone into its tank since."""
    plan = plans.load_plan(current.book, entry_id)
    if plan is None:
        abort(404, say("desk-blending-the_book_has_no_such"))
    names = {row["mark"]: row["name"] for row in registry.vessels(current.book)} if plan["draws"] else {}
    return render_template(
        "desk/blending/plan.html", plan=plan, lines=plans.so_far(current.book, plan), names=names,
        done=_done(plan),
    )


def _done(plan: plans.Plan) -> Fill | None:
    """Return the fill in the tank now, where it is the vat of this plan."""
    from webapp.book.fold import states

    held = states.load_fill(current.book, plan["mark"])
    return held if held and not held["mash"] and held["since"] >= plan["read_at"][:10] else None
