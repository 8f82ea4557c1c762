"""Labels for vessels: a QR symbol, the mark in large print, and a PDF to print them with. Pure functions, no web.

See docs/labels.md for how the sizes were chosen and what a phone finds of them.
"""

from webapp.labels.layouts import LAYOUTS, BadLayout, Layout, roll, tag
from webapp.labels.plan import LabelItem, LabelPlan, plan_label, with_standoffs
from webapp.labels.sheet import render_labels

__all__ = [
    "LAYOUTS",
    "BadLayout",
    "LabelItem",
    "LabelPlan",
    "Layout",
    "plan_label",
    "render_labels",
    "roll",
    "tag",
    "with_standoffs",
]
