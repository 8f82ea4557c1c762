"""Labels for vessels and cases: a QR symbol, the mark in large print, as PDF, dots or ZPL. Pure functions, no web.

See docs/labels.md for how the sizes were chosen and what a phone finds of them.
"""

from webapp.labels.cases import CaseLabel, render_cases
from webapp.labels.dots import png_of, zpl_of
from webapp.labels.layouts import LAYOUTS, BadLayout, Layout, own, roll, tag
from webapp.labels.plan import LabelItem, LabelPlan, plan_label, with_standoffs
from webapp.labels.sheet import render_labels

__all__ = [
    "LAYOUTS",
    "BadLayout",
    "CaseLabel",
    "LabelItem",
    "LabelPlan",
    "Layout",
    "own",
    "plan_label",
    "png_of",
    "render_cases",
    "render_labels",
    "roll",
    "tag",
    "with_standoffs",
    "zpl_of",
]
