"""The schema of the cards that a phone fetches, for the API description and for tests. In words: docs/hand-in.md."""

from __future__ import annotations

from marshmallow import INCLUDE, Schema, fields

from webapp.kinds.as_schema import MessageSchema


def _number() -> fields.Float:
    return fields.Float(required=True, allow_none=True)


def _text(words: str = "") -> fields.String:
    return fields.String(required=True, metadata={"description": words} if words else {})


class LastValueSchema(Schema):
    """The last value of a field on a vessel: canonical, and as it was typed."""

    value = fields.Raw(required=True, metadata={"description": "In the canonical unit; a text for a choice or words."})
    raw = _text()
    unit = _text()
    at = _text("When it was read. [UTC]")


class LineSchema(Schema):
    """One entry in the list of a vessel's latest."""

    entry = _text()
    kind = _text()
    at = _text("When it was read. [UTC]")
    person = _text()
    phone = _text("The phone that it was logged on, as the house calls it; empty for the desk.")
    summary = _text()


class CardQuerySchema(Schema):
    """An open question of the book about a vessel."""

    id = _text()
    entry = _text()
    kind = _text()
    code = _text()
    weight = _text("`stop` or `ask`.")
    message = fields.Nested(MessageSchema, required=True)
    words = _text("The sentence that the message makes, in English.")
    at = _text()
    suggestions = fields.List(fields.Dict(), required=True)


class HoldsSchema(Schema):
    """The fill in a vessel."""

    class Meta:
        unknown = INCLUDE

    fill = fields.String(required=True, allow_none=True)
    what = fields.String(required=True, allow_none=True)
    material = fields.String(required=True, allow_none=True)
    name = fields.String(required=True, allow_none=True)
    since = fields.String(required=True, allow_none=True)
    volume_l = _number()
    strength_pct = _number()
    lpa_l = _number()
    mass_kg = _number()
    og = _number()
    mash = fields.Boolean(required=True)


class ContextSchema(Schema):
    """The figures of the vessel that a form's own sums need."""

    og = _number()
    tare_kg = _number()
    juice_share = _number()
    volume_l = _number()
    strength_pct = _number()
    mass_kg = _number()
    lpa_l = _number()
    dips = fields.String(allow_none=True, metadata={"description": "Its strapping table, as JSON; empty: none."})
    cask_dips = fields.String(allow_none=True, metadata={"description": "The dimensions of a cask, as JSON."})


class CardSchema(Schema):
    """All that a phone needs of one vessel to work offline. A still's, a cask's and a ferment's card say more."""

    class Meta:
        unknown = INCLUDE

    mark = _text()
    rev = fields.Integer(required=True, metadata={"description": "The turn of its last change."})
    name = _text()
    title = _text()
    sort = _text("The sort of vessel.")
    place = _text()
    capacity_l = _number()
    working_l = _number()
    tare_kg = _number()
    in_zone = fields.Boolean(required=True)
    curved = fields.Boolean(required=True)
    holds = fields.Nested(HoldsSchema, required=True, allow_none=True)
    context = fields.Nested(ContextSchema, required=True)
    last = fields.Dict(
        keys=fields.String(), values=fields.Dict(keys=fields.String(), values=fields.Nested(LastValueSchema)),
        required=True, metadata={"description": "By kind, then by field."},
    )
    limits = fields.Dict(
        keys=fields.String(), values=fields.Dict(), required=True,
        metadata={"description": "The vessel's own ranges, by kind, then by field."},
    )
    recent = fields.List(fields.Nested(LineSchema), required=True, metadata={"description": "Newest first."})
    curves = fields.Dict(
        keys=fields.String(), values=fields.List(fields.List(fields.Float())), required=True,
        metadata={"description": "By figure: points of [s since 1970, value], oldest first."},
    )
    queries = fields.List(fields.Nested(CardQuerySchema), required=True)
    run = fields.Dict(required=True, allow_none=True, metadata={"description": "The run now on a still."})
    past_runs = fields.List(fields.Dict(), required=True)
    forms = fields.List(fields.String(), required=True, metadata={"description": "The kinds that its page offers."})
    judging = fields.Boolean(
        required=True, metadata={"description": "The book is still working out what late entries change here."}
    )


class PersonSchema(Schema):
    """Somebody who may be picked on a phone."""

    code = _text()
    name = _text()
    roles = fields.List(fields.String(), required=True)
    access = _text()
    has_pin = fields.Boolean(required=True)
    language = fields.String()
    pin = fields.Dict(
        required=True, allow_none=True,
        metadata={"description": "Salt, rounds, hash of the short code; of those who have typed it on this phone."},
    )


class InstrumentSchema(Schema):
    """An instrument of the house."""

    id = _text()
    sort = _text()
    title = _text()
    low = _number()
    high = _number()
    unit = _text()
    due_on = fields.String(required=True, allow_none=True)
    state = _text()
    corrections = _text("As they were typed.")
    accuracy = _text("Its class, I to IIII, or an empty text.")
    interval = _number()
    doubtful = fields.Boolean(required=True, metadata={"description": "Overdue, failed or out of use."})
    correction = fields.Dict(required=True, allow_none=True, metadata={"description": "To be added to what it shows."})


class NoteSchema(Schema):
    """A note to the next shift, of a vessel or of the house."""

    entry = _text()
    mark = _text()
    person = _text()
    at = _text()
    text = _text()
    heard = _text("The code of who has read or heard it first; empty: nobody yet, and it hangs on its vessel.")
    heard_at = _text("When. [UTC]")
    enclosed = fields.List(fields.Dict(), required=True, metadata={"description": "Pictures and voice notes of it."})


class GoodsSchema(Schema):
    """A bottling: what it is, and what is left of it."""

    id = _text()
    batch = _text()
    lot_mark = _text("On the bottles; empty where there is none.")
    what = _text()
    at = _text("When it was bottled or received. [UTC]")
    tank = _text("Empty where it came from another site.")
    label_strength_pct = _number()
    size_l = fields.Float(required=True, metadata={"description": "Of one bottle. [L]"})
    per_case = fields.Integer(required=True, metadata={"description": "Bottles in a case; 0 where nobody said."})
    good = fields.Integer(required=True)
    on_hand = fields.Integer(required=True, metadata={"description": "Bottles, in cases and loose."})
    case_from = _text()
    case_to = _text()
    odd_case = _text()
    gone = fields.List(
        fields.List(fields.Raw()), required=True,
        metadata={"description": "Ranges of cases that left: what stands before their numbers, first, last."},
    )
    counted_at = _text("When it was last counted; empty for never. [UTC]")


class ServingSchema(Schema):
    """One set of glasses of a blind tasting."""

    person = _text("The code of the taster.")
    set_no = fields.Integer(required=True, metadata={"description": "Which of this taster's sets, counted from 1."})
    codes = fields.List(fields.String(), required=True, metadata={"description": "From left to right."})


class TastingSchema(Schema):
    """A blind tasting that is not opened: codes alone, and nothing of what they hold."""

    name = _text()
    question = _text()
    method = _text("`triangle`, `duo_trio`, `pair`, `pair_two_sided` or `ranking`.")
    sets = fields.List(fields.Nested(ServingSchema), required=True)
    answered = fields.List(
        fields.List(fields.Raw()), required=True, metadata={"description": "Taster and set of each answer."},
    )


class CardsSchema(Schema):
    """The cards that have changed after a cursor, with the lists that every phone keeps whole."""

    marker = _text()
    ok = fields.Boolean(required=True)
    book_id = _text()
    server_now = _text()
    cursor = fields.Integer(required=True, metadata={"description": "To be sent as `since` the next time."})
    more = fields.Boolean(required=True, metadata={"description": "There are more: ask again with this cursor."})
    cards = fields.List(fields.Nested(CardSchema), required=True)
    gone = fields.List(fields.String(), required=True, metadata={"description": "Marks of vessels that are retired."})
    people = fields.List(fields.Nested(PersonSchema), required=True)
    instruments = fields.List(fields.Nested(InstrumentSchema), required=True)
    site = fields.Dict(required=True)
    notes = fields.List(fields.Nested(NoteSchema), required=True, metadata={"description": "Newest first."})
    tastings = fields.List(
        fields.Nested(TastingSchema), required=True, metadata={"description": "Those that are not opened."},
    )
    goods = fields.List(
        fields.Nested(GoodsSchema),
        metadata={"description": "Bottlings, newest first. Only where it is asked for and was not known."},
    )
    goods_rev = fields.String(metadata={"description": "The name of the list of goods, to be sent as `goods`."})
