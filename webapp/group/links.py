"""Transfers between sites, in bulk or in bottles: which papers of sender and receiver are the same, and which only look
alike.

The paper of a removal has the serial number of its gauge record, or the document number of the cases that went out in
bond; a receipt names that number as its document, and whom it came from. They are the same where the numbers are, the
removal came first and within WITHIN, and at least one side names the other site. Bottles must answer to the same batch
or lot mark too: one document may bring several. Numbers alone prove nothing: each site begins at 1 (common practice, no
source).
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import TypedDict

from webapp.group.store import Store

WITHIN = timedelta(days=180)
OFF_UL = 10_000  # what two papers of one load may differ by through rounding: a hundredth of a litre
NAME_LEAST = 4  # letters of a site's name below which it could be found in anything
_READ = (
    "SELECT f.site, f.entry, f.n, f.source, f.target, f.lpa_ul, f.source_fill, f.target_fill, f.reason, "
    "f.source_account, f.target_account, f.at, f.sort, f.document, f.whom, coalesce(b.batch, '') AS batch, "
    "coalesce(b.lot_mark, '') AS lot_mark FROM flows f LEFT JOIN bottlings b ON b.site = f.site "
    "AND b.id = substr(CASE WHEN f.source LIKE 'b:%%' THEN f.source ELSE f.target END, 3) "
    "WHERE f.document <> '' AND f.lpa_ul <> 0 AND "
)
# Of bottles, only what went in bond: what duty was paid on is sold, whoever bought it.
_SENT = f"{_READ} f.target = 'out:removed' AND (f.source NOT LIKE 'b:%%' OR f.reason = 'in_bond')"
_RECEIVED = f"{_READ} f.source IN ('out:received', 'out:returned')"


class Flow(TypedDict):
    """A flow over the border of a site, with the names on its paper."""

    site: str
    entry: str
    n: int
    source: str
    target: str
    lpa_ul: int
    source_fill: str
    target_fill: str
    reason: str
    source_account: str
    target_account: str
    at: str
    sort: str
    document: str
    whom: str
    batch: str
    lot_mark: str


class Alike(Flow):
    """A receipt that only looks like a transfer, and the sites that it may be from."""

    sites: list[str]


@dataclass(slots=True)
class Link:
    """One transfer: flows out of one site and into another under one document; of bottles, of one batch."""

    sender: str
    receiver: str
    document: str
    goods: str = ""  # batch or lot mark, as the receiver has it; empty in bulk
    sent: list[Flow] = field(default_factory=list)
    received: list[Flow] = field(default_factory=list)

    @property
    def id(self) -> str:
        """The id of the fill that its spirit makes while it is on the way: a fill of no site."""
        goods = f"/{_plain(self.goods)}" if self.goods else ""
        return f"t/{self.sender}/{self.receiver}/{_plain(self.document)}{goods}"

    @property
    def sent_ul(self) -> int:
        """Pure alcohol that left. [uL]"""
        return sum(flow["lpa_ul"] for flow in self.sent)

    @property
    def differs(self) -> str:
        """Return the difference between the receiver's papers and the sender's, in words; empty where it is rounding
        alone.
        """
        off_ul = self.sent_ul - self.received_ul
        way = "less" if off_ul > 0 else "more"
        return f"{abs(off_ul) / 1e6:.2f} L {way} than sent" if abs(off_ul) >= OFF_UL else ""

    @property
    def received_ul(self) -> int:
        """Pure alcohol as the receiver's papers declare it. [uL]"""
        return sum(flow["lpa_ul"] for flow in self.received)


@dataclass(slots=True)
class Links:
    """All transfers, found by either end, and the receipts that only look like one."""

    links: list[Link] = field(default_factory=list)
    by_flow: dict[tuple[str, str, int], Link] = field(default_factory=dict)  # (site, entry, n)
    bottlings: set[tuple[str, str]] = field(default_factory=set)  # (site, root) of bottles that went over the border
    alike: list[Alike] = field(default_factory=list)


def load(store: Store, names: Mapping[str, str]) -> Links:
    """Return the transfers between these sites; names: by site, as the sites call themselves."""
    sent: dict[str, list[Flow]] = defaultdict(list)
    for flow in store.rows(Flow, _SENT):
        sent[_plain(flow["document"])].append(flow)
    found = Links()
    by_key: dict[str, Link] = {}
    for flow in sorted(store.rows(Flow, _RECEIVED), key=lambda f: (f["at"], f["entry"], f["n"])):
        near = [one for one in sent[_plain(flow["document"])] if one["site"] != flow["site"] and _is_before(one, flow)
                and _is_bottles(one) == _is_bottles(flow)]
        if not near:
            continue
        sure = {one["site"] for one in near if _is_same(one, flow) and (
            _names(flow["whom"], names.get(one["site"], "")) or _names(one["whom"], names.get(flow["site"], "")))
        }
        if len(sure) != 1:
            found.alike.append({**flow, "sites": sorted({one["site"] for one in near})})
            continue
        _join(found, by_key, flow, [one for one in near if one["site"] in sure and _is_same(one, flow)])
    found.links = [link for link in by_key.values() if link.sent]
    found.by_flow = {key: link for key, link in found.by_flow.items() if link.sent}
    found.bottlings = {
        (site, bottling[2:])
        for link in found.links if link.goods
        for site, bottling in (*((flow["site"], flow["source"]) for flow in link.sent),
                               *((flow["site"], flow["target"]) for flow in link.received))
    }
    return found


def _join(found: Links, by_key: dict[str, Link], flow: Flow, sent: list[Flow]) -> None:
    """Put a receipt beside the removal of the same paper; a second receipt of that paper goes to the same transfer."""
    known = [link for one in sent if (link := found.by_flow.get(_key(one))) and link.receiver == flow["site"]]
    link = known[0] if known else Link(sent[0]["site"], flow["site"], flow["document"], flow["batch"])
    link = by_key.setdefault(link.id, link)
    link.received.append(flow)
    found.by_flow[_key(flow)] = link
    for one in sent:
        if _key(one) not in found.by_flow:
            link.sent.append(one)
            found.by_flow[_key(one)] = link


def _key(flow: Flow) -> tuple[str, str, int]:
    return flow["site"], flow["entry"], flow["n"]


def _is_bottles(flow: Flow) -> bool:
    return "b:" in (flow["source"][:2], flow["target"][:2])


def _goods(flow: Flow) -> set[str]:
    """Return the keys that identify bottles on a paper: batch and lot mark."""
    return {_plain(name) for name in (flow["batch"], flow["lot_mark"]) if name}


def _is_same(sent: Flow, received: Flow) -> bool:
    return not _is_bottles(received) or bool(_goods(sent) & _goods(received))


def _is_before(sent: Flow, received: Flow) -> bool:
    gone, come = (datetime.fromisoformat(flow["at"]) for flow in (sent, received))
    return gone <= come <= gone + WITHIN


def _plain(text: str) -> str:
    return " ".join(text.casefold().split())


def _names(text: str, name: str) -> bool:
    """Return whether a text names a site."""
    return len(_plain(name)) >= NAME_LEAST and _plain(name) in _plain(text)
