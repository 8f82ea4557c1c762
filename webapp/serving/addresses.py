"""The names and addresses under which phones on the same network reach this computer."""

import ipaddress
import socket
from contextlib import closing

# RFC 1918, RFC 6598 (also used by private overlays), RFC 3927, RFC 4193, RFC 4291, and loopback.
PRIVATE_NETWORKS = (
    "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "100.64.0.0/10", "169.254.0.0/16", "127.0.0.0/8",
    "fc00::/7", "fe80::/10", "::1/128",
)

# A route look-up toward each private range names the interface that serves it. Nothing is sent.
_PROBES = ("10.255.255.254", "172.31.255.254", "192.168.255.254", "192.0.2.1")


def list_lan_addresses() -> list[str]:
    """Return the private IPv4 and IPv6 addresses of this computer, without loopback, in a steady order."""
    found = {_address_toward(probe) for probe in _PROBES} | _addresses_of_own_name()
    found.discard(None)
    return sorted(
        (address for address in found if address is not None and is_lan_address(address)),
        key=lambda text: (":" in text, ipaddress.ip_address(text)),
    )


def list_own_names() -> list[str]:
    """Return the names this computer may be called by on the network: its name, and its name in .local."""
    short = socket.gethostname().split(".")[0].lower()
    if not short or short == "localhost" or not short.isascii():
        return []
    return [short, f"{short}.local"]


def is_lan_address(address: str) -> bool:
    """Say whether another machine on a private network can reach the address."""
    parsed = ipaddress.ip_address(address)
    # Link-local IPv6 needs a zone and so fits in no web address.
    if parsed.is_loopback or (parsed.version == 6 and parsed.is_link_local):
        return False
    return any(parsed in ipaddress.ip_network(network) for network in PRIVATE_NETWORKS)


def is_loopback(host: str) -> bool:
    """Say whether only this computer itself can reach the host name or address."""
    if host == "localhost":
        return True
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return False


def write_url(host: str, port: int, *, is_tls: bool) -> str:
    """Return the web address to type; the port is left out where browsers know it."""
    scheme, usual_port = ("https", 443) if is_tls else ("http", 80)
    shown_host = f"[{host}]" if ":" in host else host
    shown_port = "" if port == usual_port else f":{port}"
    return f"{scheme}://{shown_host}{shown_port}/"


def _address_toward(probe: str) -> str | None:
    with closing(socket.socket(socket.AF_INET, socket.SOCK_DGRAM)) as sock:
        try:
            sock.connect((probe, 9))
            return str(sock.getsockname()[0])
        except OSError:
            return None


def _addresses_of_own_name() -> set[str | None]:
    try:
        rows = socket.getaddrinfo(socket.gethostname(), None)
    except OSError:
        return set()
    return {str(row[4][0]).partition("%")[0] for row in rows}
