"""What makes phones trust the address of the book, and whether whoever renews the certificate has stopped."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from flask import current_app

from webapp.serving.named_certificate import BadCertificate, Named, read_leaf
from webapp.words.desk import say


@dataclass(frozen=True, slots=True)
class Trust:
    """What makes phones trust the address. way: own, named, front or here. The rest is of its certificate, if any."""

    way: str
    ends: str = ""
    left_days: int = 0
    is_near_its_end: bool = False


def certificate_trouble(now: datetime) -> str:
    """Return a sentence for the office where whoever renews the house's named certificate seems to have stopped."""
    trust = trust_now(now)
    if trust.way != "named" or not trust.is_near_its_end:
        return ""
    if trust.left_days < 0:
        return say("desk-trust-the_certificate_ended_on_phones", ends=trust.ends)
    return say("desk-trust-the_certificate_ends_in_days", left_days=trust.left_days)


def trust_now(now: datetime) -> Trust:
    """Return the ground on which phones trust this server, and the days its certificate has left from `now` (aware)."""
    config = current_app.config
    if config.get("BEHIND_PROXY"):
        return Trust("front")
    if not config["TLS"]:
        return Trust("here")
    path: Path | None = config.get("CERTIFICATE_FILE")
    said = _read(path or config["DATA_DIR"] / "tls" / "server.pem")
    way = "named" if path else "own"
    if said is None:
        return Trust(way)
    return Trust(way, f"{said.ends:%Y-%m-%d}", (said.ends - now).days, said.is_near_its_end(now))


def _read(path: Path) -> Named | None:
    try:
        return read_leaf(path)
    except BadCertificate:
        return None
