"""Spirit sent in bulk from one site and received at another: which papers are the same, and which only look alike.

The paper of a removal has the serial number of its gauge record; a receipt names that number as its document, and
whom it came from. They are the same where the numbers are, the removal came first and within MONTHS, and at least one
side names the other site. Numbers alone prove nothing: each site begins at 1 (common practice, no source).
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from webapp.group.store import Store

WITHIN = timedelta(days=180)
NAME_LEAST = 4  # letters of a site's name below which it could be found in anything
_READ = (
    "SELECT site, entry, n, source, target, lpa_ul, source_fill, target_fill, reason, source_account, target_account, "
    "at, sort, document, whom FROM flows WHERE document <> '' AND lpa_ul <> 0 AND "
)


@dataclass(slots=True)
class Link:
    """One transfer: flows out of one site and into another under one document."""

    sender: str
    receiver: str
    document: str
    sent: list[dict[str, Any]] = field(default_factory=list)
    received: list[dict[str, Any]] = field(default_factory=list)

    @property
    def id(self) -> str:
        """What its spirit is called while it is on the way: a fill of no site."""
        return f"t/{self.sender}/{self.receiver}/{self.document.casefold()}"

    @property
    def sent_ul(self) -> int:
        """Pure alcohol that left. [uL]"""
        return sum(flow["lpa_ul"] for flow in self.sent)

    @property
    def received_ul(self) -> int:
        """Pure alcohol as the receiver's papers declare it. [uL]"""
        return sum(flow["lpa_ul"] for flow in self.received)


@dataclass(slots=True)
class Links:
    """All transfers, found by either end, and the receipts that only look like one."""

    links: list[Link] = field(default_factory=list)
    by_flow: dict[tuple[str, str, int], Link] = field(default_factory=dict)  # (site, entry, n)
    alike: list[dict[str, Any]] = field(default_factory=list)


def load(store: Store, names: Mapping[str, str]) -> Links:
    """Return the transfers between these sites; names: by site, as the sites call themselves."""
    sent: dict[str, list[dict[str, Any]]] = defaultdict(list)
    for flow in store.query(f"{_READ} target = 'out:removed'"):
        sent[_plain(flow["document"])].append(flow)
    found = Links()
    by_key: dict[str, Link] = {}
    for flow in sorted(store.query(f"{_READ} source = 'out:received'"), key=lambda f: (f["at"], f["entry"], f["n"])):
        near = [one for one in sent[_plain(flow["document"])] if one["site"] != flow["site"] and _is_before(one, flow)]
        if not near:
            continue
        sure = {one["site"] for one in near if _names(flow["whom"], names.get(one["site"], ""))
                or _names(one["whom"], names.get(flow["site"], ""))}  # fmt: skip
        if len(sure) != 1:
            found.alike.append(flow | {"sites": sorted({one["site"] for one in near})})
            continue
        link = Link(sure.pop(), flow["site"], flow["document"])
        link = by_key.setdefault(link.id, link)
        link.received.append(flow)
        found.by_flow[flow["site"], flow["entry"], flow["n"]] = link
        for one in near:
            key = (one["site"], one["entry"], one["n"])
            if one["site"] == link.sender and key not in found.by_flow:
                link.sent.append(one)
                found.by_flow[key] = link
    found.links = [link for link in by_key.values() if link.sent]
    found.by_flow = {key: link for key, link in found.by_flow.items() if link.sent}
    return found


def _is_before(sent: Mapping[str, Any], received: Mapping[str, Any]) -> bool:
    gone, come = (datetime.fromisoformat(flow["at"]) for flow in (sent, received))
    return gone <= come <= gone + WITHIN


def _plain(text: str) -> str:
    return " ".join(text.casefold().split())


def _names(text: str, name: str) -> bool:
    """Say whether a text names a site."""
    return len(_plain(name)) >= NAME_LEAST and _plain(name) in _plain(text)
