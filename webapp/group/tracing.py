"""The trace over all sites: the book's own sums over the group's flows, continued over the border where papers join.

Ids of a fill or an entry are `<site>/<id>` here. What is on the way between two sites is a fill of its own, and so are
bottles that went over the border (bottles.py), so that nothing in the sums has to know of borders.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from typing import TypedDict

from webapp.book.lineage import lineage, search
from webapp.book.lineage.lineage import Subject, Trace
from webapp.book.lineage.names import Node, names_of
from webapp.book.lineage.search import Hit
from webapp.book.lineage.trace import Reader, Step, trace_forth
from webapp.group import bottles
from webapp.group.folds import Folds
from webapp.group.links import Link, Links
from webapp.group.store import Store
from webapp.words.desk import say

_COLUMNS = (
    "SELECT site, entry, n, source, target, source_fill, target_fill, lpa_ul, mass_g, at, order_key FROM flows WHERE "
)


class _FlowRow(TypedDict):
    site: str
    entry: str
    n: int
    source: str
    target: str
    source_fill: str
    target_fill: str
    lpa_ul: int
    mass_g: int
    at: str
    order_key: str


class Tracing:
    """Traces of one request: it reads the links between sites once."""

    def __init__(self, store: Store, folds: Folds, links: Links) -> None:
        self._store, self._folds, self._links = store, folds, links
        self._of_link: dict[str, list[Step]] = {}

    def find(self, key: str) -> Subject | None:
        """Return the subject that `<site>/<key>` names, with its ids as the group has them; or None."""
        site, _, own = key.partition("/")
        if not self._store.one("SELECT 1 AS one FROM sites WHERE site = %s", (site,)):
            return None
        found = lineage.find_subject(self._folds.work(site).book, own)
        return found and Subject(found.sort, f"{site}/{found.id}", f"{site}/{found.entry}" if found.entry else "")

    def search(self, text: str) -> list[tuple[str, str, Hit]]:
        """Return (site, its name, hit) for each meaning that the text may have at a site."""
        hits = [
            (row["site"], row["name"], hit)
            for row, work in self._folds.all_works()
            for hit in search.search(work.book, text)
        ]
        return hits[: search.HITS_MOST]

    def trace(self, subject: Subject, *, back_most: int) -> Trace:
        """Return the trace of a subject over all sites, both ways."""
        read = self.reader()
        made = lineage.trace_over(subject, read, self._steps_of, back_most=back_most)
        site, _, root = subject.id.partition("/")
        if subject.sort == "bottling" and (site, root) in self._links.bottlings:
            made.spread = trace_forth(read, fill=bottles.fill_of(site, root))
        bottles.name_bottlings(made, read, self._entry_of)
        made.nodes = self._names(lineage.nodes_in(made), made.origin.steps)
        return made

    def reader(self) -> Reader:
        """Return a function that reads the flows of a fill, at its site or between two."""

        def read(fill: str) -> list[Step]:
            if fill[:2] == "t/":
                return self._on_the_way(fill)
            site, _, own = fill.partition("/")
            if bottles.is_bottles(fill):
                # The two tests by letter are those of the indexes.
                return self._read("site = %s AND ((source LIKE 'b:%%' AND source = %s) OR (target LIKE 'b:%%' AND "
                                  "target = %s))", (site, own, own))
            return self._read("site = %s AND (source_fill = %s OR target_fill = %s) AND source_fill <> target_fill",
                              (site, own, own))

        return read

    def _steps_of(self, entry: str) -> list[Step]:
        return self._read("site = %s AND entry = %s", tuple(entry.split("/", 1)))

    def _read(self, test: str, params: tuple[object, ...]) -> list[Step]:
        return sorted(self._step(row) for row in self._store.rows(_FlowRow, _COLUMNS + test, params))

    def _step(self, row: _FlowRow) -> Step:
        site = row["site"]
        link = self._links.by_flow.get((site, row["entry"], row["n"]))
        source_fill = self._fill(site, row["source"], row["source_fill"])
        target_fill = self._fill(site, row["target"], row["target_fill"])
        if link and row["target"] == "out:removed":
            target_fill = link.id
        elif link and row["source"][:4] == "out:":
            source_fill = link.id
        source, target = self._named(site, row["source"]), self._named(site, row["target"])
        return Step((row["order_key"], row["n"]), f"{site}/{row['entry']}", source, target, source_fill, target_fill,
                    row["lpa_ul"], row["mass_g"], row["at"])

    def _fill(self, site: str, place: str, fill: str) -> str:
        if place[:2] == "b:" and (site, place[2:]) in self._links.bottlings:
            return bottles.fill_of(site, place[2:])
        return f"{site}/{fill}" if fill else ""

    def _entry_of(self, site: str, root: str) -> str:
        """Return the entry of a bottling that has effect."""
        row = self._folds.work(site).book.one("SELECT entry FROM folded WHERE root = ?", (root,))
        return str(row["entry"]) if row else root

    @staticmethod
    def _named(site: str, place: str) -> str:
        """Return a place with its site before it, where it is a run or a bottling of a site."""
        return f"{place[:2]}{site}/{place[2:]}" if place[:2] in ("r:", "b:") else place

    def _on_the_way(self, fill: str) -> list[Step]:
        if fill not in self._of_link:
            link = next(link for link in self._links.links if link.id == fill)
            ends = [(flow["site"], flow["entry"], flow["n"]) for flow in (*link.sent, *link.received)]
            self._of_link[fill] = sorted(
                step for end in ends for step in self._read("site = %s AND entry = %s AND n = %s", end)
            )
        return self._of_link[fill]

    def _names(self, ids: Iterable[str], steps: dict[str, Step]) -> dict[str, Node]:
        """Return the nodes by their names at their own sites, each with the site's name before its words."""
        by_site: dict[str, set[str]] = defaultdict(set)
        nodes: dict[str, Node] = {}
        for node in ids:
            if node[2:4] == "t/":
                nodes[node] = self._way_node(node, next(one for one in self._links.links if one.id == node[2:]))
            elif "/" in node:
                by_site[node[2:].partition("/")[0]].add(node[:2] + node.partition("/")[2])
            else:
                by_site[""].add(node)
        for site, own in by_site.items():
            if not site:
                continue
            name = str((self._store.one("SELECT name FROM sites WHERE site = %s", (site,)) or {}).get("name") or site)
            own_steps = {node[:2] + node.partition("/")[2]: step for node, step in steps.items() if f":{site}/" in node}
            for found in names_of(self._folds.work(site).book, own, own_steps).values():
                found.id = f"{found.id[:2]}{site}/{found.id[2:]}"
                found.words = ", ".join(part for part in (name, found.words) if part)
                found.key = f"{site}/{found.key}" if found.key else ""
                nodes[found.id] = found
        if by_site[""]:
            any_book = self._folds.all_works()[0][1].book
            nodes |= names_of(any_book, by_site[""], {})
        return nodes

    def _way_node(self, node: str, link: Link) -> Node:
        names = {row["site"]: row["name"] for row in self._store.query("SELECT site, name FROM sites")}
        words = say("group-trace-from_to", sender=names[link.sender], receiver=names[link.receiver])
        sort = "goods_way" if link.goods else "way"
        words += f", {say('group-trace-declared', differs=link.differs)}" if link.differs else ""
        document = say("group-trace-document", document=link.document)
        return Node(node, sort, document, words, at=min(flow["at"] for flow in link.sent))

