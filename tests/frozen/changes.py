"""What later rules say otherwise of a frozen book, by version: each code or sum with the reason, in a sentence.

A question may come or go because a check was bettered; a sum may change because an error was mended. Whoever changes
one says so here, and in docs/changelog.md.
"""

# version -> {code of the question: why it came, went, or reads otherwise}
CHANGED_QUESTIONS: dict[str, dict[str, str]] = {
    "0.1.0": {
        "held_strength": "A strength far from what stands in the vessel by the book is asked about since 0.2.0.",
        "ferment_fast": "A gravity that fell in a few hours by more than fruit does in ten is asked about since 0.2.0.",
        "filter_gain": "No alarm finer than the instruments since 0.2.0: two dips of a tank leave more open than this.",
        "move_balance": "No alarm finer than the instruments since 0.2.0.",
        "blend_sum": "No alarm finer than the instruments since 0.2.0.",
        "move_gain": "No alarm finer than the instruments since 0.2.0.",
        "named_twice": "A run name that stood on this still before is asked about since 0.2.0, with the next one.",
        "moved_twice": "The same figures of what moves stock, again within a day, are asked about since 0.2.0.",
        "received": "Handed in more than 3 days after it was typed is shown since 0.2.0, after 31 asked about.",
        "late": "Typed on a phone more than 36 hours late asks since 0.2.0; it was a note.",
        "source_strength": "What is taken is held against the strength of its vessel since 0.2.0.",
        "fill_level": "A cask filled to less than half of what it holds is asked about since 0.2.0.",
        "check_left": "A check called good that leaves an instrument off is asked about since 0.2.0.",
        "close_volume": "Wash is held against the fruit that went in since 0.2.0.",
        "glass_habit": "A corrected strength where a vessel was read by glass so far is asked about since 0.2.0.",
        "unit_odd": "Two systems of units in one entry are asked about since 0.2.0.",
        "flow_jump": "A flow far from those since the last cut is asked about since 0.2.0.",
        "vapour_strength": "Vapour is held against the readings of its own run since 0.2.0.",
        "dose_off": "An addition is held against its mash since 0.2.0.",
        "lab_off": "A laboratory's strength is held against the sampled vessel since 0.2.0.",
        "dip_sum": "A dip after water is held against the sum by mass since 0.2.0.",
        "distilled_off": "A strength off the still is held against its receiver since 0.2.0.",
        "place_from": "A place that a cask is moved from is held against the book's since 0.2.0.",
        "tare_share": "A tare is held against the load before since 0.2.0.",
        "wash_open": "A charge out of a ferment that nobody has closed is asked about since 0.2.0.",
        "water_unread": "Water that nobody has measured is asked about at the next step since 0.2.0.",
        "bottling_ungauged": "Bottles off a tank without its bottling gauge are asked about since 0.2.0.",
        "run_not_ended": "A run gauged to its end without its end is asked about since 0.2.0.",
        "fraction_left": "Parts of a run are held against the order they were gauged in before since 0.2.0.",
        "cleaned_full": "A vessel cleaned with something in it is asked about since 0.2.0.",
        "row_gap": "A figure that each line before had is missed since 0.2.0.",
        "stillage_strong": "Stillage that would be worth another run is asked about since 0.2.0.",
        "fraction_strength": "A fraction of one or two readings is held against them since 0.2.0.",
        "instrument": "A reading of an instrument that has failed its check asks since 0.2.0; it was a note.",
        "gauge_earlier": "Of gauges of a tank the one that stands alone is asked about since 0.2.0.",
        "charge_low": "A still charged with less than a fifth of what it holds is asked about since 0.2.0.",
        "dump_planned": "A dump is held against the plan of its tank since 0.2.0.",
        "vat_joins": "A vat is planned in an empty tank, or names what stands there, since 0.2.0.",
        "vat_sum": "A planned vat is held against its draws and its water since 0.2.0.",
        "vat_full": "A planned vat is held against its tank since 0.2.0.",
        "account_other": "A move out of another account than the vessel stands in changes that of all it holds; "
        "that went without a question.",
        "account_joined": "A move into a vessel of another account changes that of what stands there; that went "
        "without a question.",
    },
}

# version -> why questions offer other figures than they did; those that they offered then are offered still.
CHANGED_OFFERS: dict[str, str] = {
    "0.1.0": "One sum finds what may have been meant, for all questions about a figure, since 0.2.0.",
}

# version -> {code of the question: why some of what it offered is offered no more}. All else of it is as it was.
DROPPED_OFFERS: dict[str, dict[str, str]] = {
    "0.1.0": {
        "over_capacity": "What is offered leaves room for the fruit that lies in the vessel already, since 0.2.0.",
        "unusual": "Half a plate is not offered: what is counted is whole, since 0.2.0.",
        "strength_impossible": "Another scale, a key and two digits are likelier than 9.8 for 98.1, since 0.2.0.",
    },
}

# version -> why amounts of its sums, and figures in its questions, came out otherwise. Each posting lies at most
# AMOUNT_OFF of what went through its vessel from what it was, and each sum no further than all postings together;
# lines, names, states and questions are what they were.
CHANGED_AMOUNTS: dict[str, str] = {
    "0.1.0": "Weights allow for the buoyancy of air since 0.2.0: 0.12 % more by weight. Pounds go by 27 CFR 30.64.",
}
AMOUNT_OFF = 0.0013
LEAST_OFF = 10  # uL, mL or g: roundings of a sample
FIGURE_OFF = 0.02  # of a figure in words, which is rounded or a difference of two amounts
