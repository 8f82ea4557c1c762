"""A vessel is cleaned."""

from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="cleaning",
    version=1,
    title="Cleaning",
    icon="erase",
    about="Agent, strength, time and temperature, and the rinse check. No one enters without a permit.",
    vessels=("fermenter", "still", "receiver", "tank", "cask", "can"),
    fields=(
        Field("agent", "Agent, strength, time", "text", required=True),
        Field("temp", "Temperature", aside=True, units=("degC", "degF"), usual=(5, 90), possible=(0, 130), decimals=0,
              instrument="thermometer"),
        Field("rinse_ph", "Rinse check, pH", units=("pH",), usual=(6, 8.5), possible=(0, 14), required=True, decimals=1,
              ghost=False, instrument="pH meter"),
        Field("entered", "Did anyone go in?", "yes_no", required=True, ghost=False),
        Field("permit_no", "Permit number", "text", ghost=False),
    ),
    rules=(
        Rule("entry_needs_permit", "needs", "entered=yes", "permit_no", "refuse",
             "No one enters a vessel without a permit. Type its number."),
    ),
    checks=("clock", "late", "twice", "cleaned_full"),
    effect=other.remembered,
    summary="{agent}, rinse {rinse_ph}",
    cautions=("confined", "still_heat"),
    feeds=("food safety",),
)
