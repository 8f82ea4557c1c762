"""The desk: pages in the office, server-rendered, which need the server. One folder a subject."""

from __future__ import annotations

# Each module hangs its pages on the blueprint.
import webapp.desk.blending.pages
import webapp.desk.cellar.pages
import webapp.desk.cellar.rules
import webapp.desk.entries.enclosures
import webapp.desk.entries.entries
import webapp.desk.entries.queries
import webapp.desk.goods.bottlings
import webapp.desk.goods.goods
import webapp.desk.house.access
import webapp.desk.house.address
import webapp.desk.house.instruments
import webapp.desk.house.limits
import webapp.desk.house.parties
import webapp.desk.house.people
import webapp.desk.house.phones
import webapp.desk.house.proof
import webapp.desk.house.readers
import webapp.desk.house.rules
import webapp.desk.house.settings
import webapp.desk.house.you
import webapp.desk.laboratory.pages
import webapp.desk.paper.pages
import webapp.desk.periods.pages
import webapp.desk.periods.records
import webapp.desk.periods.seasons
import webapp.desk.runs.pages
import webapp.desk.search.pages
import webapp.desk.sheets.pages
import webapp.desk.tasting.pages
import webapp.desk.today.pages
import webapp.desk.trace.pages
import webapp.desk.vessels.dips
import webapp.desk.vessels.labels
import webapp.desk.vessels.vessels  # noqa: F401
from webapp.desk.blueprint import bp

__all__ = ["bp"]
