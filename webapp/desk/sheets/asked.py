"""What a person has told of a sheet, out of the form it was looked over with."""

from __future__ import annotations

import re

from werkzeug.datastructures import MultiDict

from webapp.sheets.lookover import Told
from webapp.sheets.targets import BY_NAME

EDITS_MOST = 500
_AT = re.compile(r"(target|order|column)-(\d{1,3})(?:-(\d{1,3}))?\Z")
_EDIT = re.compile(r"(\d{1,3}):(\d{1,5}):(\w{1,40}):(.{0,200})\Z", re.DOTALL)
_LEFT = re.compile(r"(\d{1,3}):(\d{1,5})\Z")


def told_of(form: MultiDict[str, str]) -> Told:
    """Return the boxes' choices: `target-0`, `order-0`, `column-0-3`, and lines `edit`, `cell-0-5-gross`, `leave`."""
    told = Told()
    for name, value in form.items():
        found = _AT.match(name)
        if not found or not value:
            continue
        at = int(found[2])
        if found[1] == "target" and value in BY_NAME:
            told.targets[at] = value
        elif found[1] == "order" and value in ("dmy", "mdy"):
            told.orders[at] = value
        elif found[1] == "column" and found[3]:
            told.columns.setdefault(at, {})[int(found[3])] = value
    for at, target in told.targets.items():
        if form.get(f"shown-{at}", target) != target:  # its columns were those of another target
            told.columns.pop(at, None)
    edits = [*form.getlist("edit"), *form.getlist("set")]
    # A box beside a fault counts where somebody has changed it.
    edits += [f"{name[5:].replace('-', ':', 2)}:{value}" for name, value in form.items()
              if name.startswith("cell-") and value != form.get(f"was-{name[5:]}", "")]
    for line in edits[:EDITS_MOST]:
        if edit := _EDIT.match(line):
            told.edits[int(edit[1]), int(edit[2]), edit[3]] = edit[4].strip()
    for line in form.getlist("leave")[:EDITS_MOST]:
        if left := _LEFT.match(line):
            told.left.add((int(left[1]), int(left[2])))
    for line in form.getlist("take"):
        if left := _LEFT.match(line):
            told.left.discard((int(left[1]), int(left[2])))
    return told
