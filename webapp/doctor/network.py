"""The way from a phone to this computer: name, address, port, certificate."""

from __future__ import annotations

import ipaddress
import socket
import ssl
from collections.abc import Callable
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path
from urllib.parse import urlsplit

from cryptography import x509

from webapp.doctor.finding import Finding, bad, look, well
from webapp.serving.addresses import is_lan_address, is_loopback, list_lan_addresses
from webapp.serving.certificates import get_ca_pem

_WAIT_S = 5.0
# A certificate is renewed at half of its life, or at the latest when a third is left.
_LEFT_LEAST = 1 / 3
# Names that no public certificate can be had for: RFC 6762, RFC 8375, RFC 6761.
_LOCAL_ENDINGS = (".local", ".home.arpa", ".localhost", ".internal")

# Resolves a host name to its addresses. Raises OSError where it has none.
Resolve = Callable[[str], list[str]]


def resolve(host: str) -> list[str]:
    """Return the addresses that this computer's resolver knows for a host name; raise OSError where it knows none."""
    rows = socket.getaddrinfo(host, None, type=socket.SOCK_STREAM)
    return sorted({str(row[4][0]).partition("%")[0] for row in rows})


def look_at_addresses(own: list[str]) -> Finding:
    """Judge the addresses of this computer on private networks."""
    if not own:
        return bad("address", "This computer has no address on a private network.",
                   "Join the network that the phones are on, by cable if you can.")
    steady = "Give it a fixed address in the router: to a phone another address is another book."
    if len(own) > 1:
        return look("address", f"This computer has several addresses: {', '.join(own)}.", steady)
    return well("address", f"{own[0]}. {steady}")


def look_at_url(url: str | None, own: list[str], find: Resolve = resolve) -> list[Finding]:
    """Judge the address that the book was last served at: does its name lead to this computer?"""
    if not url:
        return [bad("served at", "This book was not served yet.", "Start `cellarslate serve`, then ask again.")]
    host = urlsplit(url).hostname or ""
    if is_loopback(host):
        step = "For phones serve it without --host 127.0.0.1."
        return [look("served at", f"{url} is for this computer alone.", step)]
    if _is_address(host):
        if host in own:
            return [well("served at", f"{url} leads here.")]
        return [bad("served at", f"{url} was this computer's address, and is not any more.",
                    f"Give it {host} again, in the router. What waits on phones was written for that address.")]
    return [_look_at_name(host, own, find)]


def _look_at_name(host: str, own: list[str], find: Resolve) -> Finding:
    try:
        found = find(host)
    except OSError:
        if host.endswith(_LOCAL_ENDINGS) or "." not in host:
            return bad("name", f"This network does not know the name {host}.",
                       "Some networks pass on no names of their own. Serve the book by its address instead.")
        return bad(
            "name", f"The router or its name server gives no address for {host}.",
            "Either the record is missing, or the router keeps back private addresses (rebind protection). Look the"
            " name up with a phone away from this network: if it is found there, make it an exception in the router.",
        )
    here = [address for address in found if address in own]
    if here:
        return well("name", f"{host} leads to {here[0]}, which is here.")
    if all(is_lan_address(address) for address in found):
        return bad("name", f"{host} leads to {', '.join(found)}, and here is {', '.join(own) or 'no address'}.",
                   "Set the record to this computer's address, or give the computer that address in the router.")
    return look("name", f"{host} leads to {', '.join(found)}, which is on the open internet.",
                "Well where another web server stands there and passes on to this one; otherwise set the record.")


def look_at_port(url: str | None, is_served: bool) -> list[Finding]:
    """Knock at the port of the book's address on this computer."""
    if not url or not is_served:
        return [look("port", "No server has this book open now.", "Start `cellarslate serve`, then ask again.")]
    parts = urlsplit(url)
    port = parts.port or (443 if parts.scheme == "https" else 80)
    try:
        with closing(socket.create_connection((parts.hostname or "", port), timeout=_WAIT_S)):
            words = f"{port} answers. Phones reach it if this computer's firewall lets them: open {url} on one."
            return [well("port", words)]
    except OSError as error:
        return [bad("port", f"{url} does not answer here ({error.strerror or error}).",
                    f"Let port {port} through this computer's firewall, for the private network.")]


def look_at_certificate(url: str | None, data_dir: Path, is_served: bool, now: datetime | None = None) -> list[Finding]:
    """Shake hands over TLS as a phone does, and judge the certificate: trusted, for this name, and not near its end.

    The house's own authority counts as trusted, as it is on a phone that has installed it.
    """
    if not url or not is_served or urlsplit(url).scheme != "https":
        return []
    parts = urlsplit(url)
    host, port = parts.hostname or "", parts.port or 443
    trust = ssl.create_default_context()
    if own := get_ca_pem(data_dir):
        trust.load_verify_locations(cadata=own.decode())
    try:
        with (
            closing(socket.create_connection((host, port), timeout=_WAIT_S)) as plain,
            trust.wrap_socket(plain, server_hostname=host) as wrapped,
        ):
            leaf = x509.load_der_x509_certificate(wrapped.getpeercert(binary_form=True) or b"")
    except ssl.SSLCertVerificationError as error:
        return [bad("certificate", f"A phone would refuse it: {error.verify_message}.", _step_for(error, host))]
    except (OSError, ValueError) as error:
        step = "See that nothing else has this port, and start the server again."
        return [bad("certificate", f"No TLS at {url}: {error}.", step)]
    begins, ends = leaf.not_valid_before_utc, leaf.not_valid_after_utc
    left = ends - (now or datetime.now(UTC))
    words = f"It is for {host} and lasts {left.days} more days, to {ends:%Y-%m-%d}."
    if left < (ends - begins) * _LEFT_LEAST and not own:
        step = "Whoever renews it seems to have stopped. Without it phones go on, but hand nothing in."
        return [look("certificate", words, step)]
    return [well("certificate", words)]


def _step_for(error: ssl.SSLCertVerificationError, host: str) -> str:
    words = (error.verify_message or "").lower()
    if "expired" in words:
        return "Renew it; where it is this house's own, start the server again. Phones keep their entries until then."
    if "not yet valid" in words:
        return "Look at this computer's clock."
    if "match" in words or "mismatch" in words:
        return f"Have it made for {host}, or serve the book by a name it is for."
    return "Give the server the whole chain, or use the house's own authority: leave --certificate out."


def _is_address(host: str) -> bool:
    try:
        ipaddress.ip_address(host)
    except ValueError:
        return False
    return True


def own_addresses() -> list[str]:
    """Return this computer's addresses on private networks, without loopback."""
    return list_lan_addresses()
