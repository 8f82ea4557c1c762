"""A small certificate authority of our own, so that phones on the local network can trust this computer.

Browsers allow service workers and the camera over https only. The authority signs for servers alone and is
name-constrained: whoever steals its key can pretend to be a machine on a private network, and nothing else.
"""

import ipaddress
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

from webapp.book.record.errors import BookError
from webapp.durable import write_whole
from webapp.serving.addresses import PRIVATE_NETWORKS

AUTHORITY_DAYS = 3652
# Phones refuse leaves that are valid longer than 398 days (CA/Browser Forum Baseline Requirements, 6.3.2).
LEAF_DAYS = 397
RENEW_BEFORE_DAYS = 60
# A clock that is a little behind must not see a certificate from tomorrow.
_BACKDATE = timedelta(days=1)

PERMITTED_DOMAINS = ("local", "home.arpa", "localhost")
_GLOBAL_IPV6 = ipaddress.IPv6Network("2000::/3")  # global unicast, IANA's registry of the IPv6 address space


@dataclass(frozen=True)
class Authority:
    """The authority's certificate and key, as read from the data folder."""

    certificate: x509.Certificate
    key: ec.EllipticCurvePrivateKey | None  # None where it is kept apart, as after a restore


@dataclass(frozen=True)
class LeafFiles:
    """The files the server reads: its certificate (with the authority's behind it) and its key."""

    certificate_path: Path
    key_path: Path


class HouseCertificate:
    """The server's certificate by the house's own authority, for the hosts that reach it at the moment."""

    def __init__(self, data_dir: Path, list_hosts: Callable[[], list[str]]) -> None:
        self._data_dir, self._list_hosts = data_dir, list_hosts

    def take(self) -> LeafFiles:
        """Return the files to serve with, renewed where they are due."""
        return get_leaf(self._data_dir, self._list_hosts())

    def is_due(self) -> bool:
        """Say whether the certificate nears its end, or the hosts have changed."""
        return leaf_is_due(self._data_dir, self._list_hosts())


def get_authority(
    data_dir: Path, names: list[str] | None = None, *, now: datetime | None = None
) -> Authority:
    """Return the authority of this data folder, making it at the first call.

    `names` are host names of the site that the authority may vouch for beside private addresses, .local and
    .home.arpa. They are fixed when the authority is made, since phones trust exactly that certificate.
    """
    certificate_path, key_path = _paths(data_dir, "authority")
    if not certificate_path.exists():
        authority = _make_authority(names or [], now or datetime.now(UTC))
        assert authority.key is not None  # just made
        _write_pair(certificate_path, [authority.certificate], key_path, authority.key)
        return authority
    certificate = x509.load_pem_x509_certificate(certificate_path.read_bytes())
    return Authority(certificate, _load_key(key_path) if key_path.exists() else None)


def get_leaf(data_dir: Path, hosts: list[str], *, now: datetime | None = None) -> LeafFiles:
    """Return the server's certificate files for these hosts, renewing them when they are due.

    Hosts outside the authority's permitted names are left out: no phone would accept them. Raises BookError with a
    sentence where a new one is due and the authority's key is not here.
    """
    now = now or datetime.now(UTC)
    authority = get_authority(data_dir, now=now)
    certificate_path, key_path = _paths(data_dir, "server")
    if leaf_is_due(data_dir, hosts, now=now):
        if authority.key is None:
            raise BookError(
                "The server's certificate is due, and the key of the house's authority is not in this folder. Put it "
                "back: cellarslate authority-key FILE --put-back. Without it, move the folder tls aside; every phone "
                "must then trust the house anew."
            )
        key = ec.generate_private_key(ec.SECP256R1())
        leaf = sign_leaf(authority, key, [host for host in hosts if is_permitted(authority, host)], now)
        _write_pair(certificate_path, [leaf, authority.certificate], key_path, key)
    return LeafFiles(certificate_path, key_path)


def leaf_is_due(data_dir: Path, hosts: list[str], *, now: datetime | None = None) -> bool:
    """Say whether the leaf is missing, near its end, from another authority, not of its key, or lacks one of the hosts.

    Where the authority's key is kept apart, a leaf that still holds is not due: nobody could make another.
    """
    now = now or datetime.now(UTC)
    certificate_path, key_path = _paths(data_dir, "server")
    if not certificate_path.exists() or not key_path.exists():
        return True
    authority = get_authority(data_dir, now=now)
    leaf = x509.load_pem_x509_certificate(certificate_path.read_bytes())
    if _load_key(key_path).public_key() != leaf.public_key():  # the power failed between the two
        return True
    if now < leaf.not_valid_before_utc:  # made by a clock that was ahead: phones with a right one refuse it
        return True
    is_near_end = leaf.not_valid_after_utc - now < timedelta(days=RENEW_BEFORE_DAYS)
    if authority.key is not None and is_near_end:
        return True
    try:
        leaf.verify_directly_issued_by(authority.certificate)
    except Exception:  # Another authority made it; the library raises several kinds.
        return True
    if authority.key is None:
        return leaf.not_valid_after_utc <= now
    named = set(leaf.extensions.get_extension_for_class(x509.SubjectAlternativeName).value)
    wanted = {_general_name(host) for host in hosts if is_permitted(authority, host)}
    return not wanted <= named


def sign_leaf(
    authority: Authority, key: ec.EllipticCurvePrivateKey, hosts: list[str], now: datetime
) -> x509.Certificate:
    """Return a server certificate for the hosts, signed by the authority, whose key must be here."""
    assert authority.key is not None
    not_after = min(now - _BACKDATE + timedelta(days=LEAF_DAYS), authority.certificate.not_valid_after_utc)
    issuer_key_id = authority.certificate.extensions.get_extension_for_class(x509.SubjectKeyIdentifier).value
    return (
        x509.CertificateBuilder()
        .subject_name(_name("Cellarslate server"))
        .issuer_name(authority.certificate.subject)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - _BACKDATE)
        .not_valid_after(not_after)
        .add_extension(x509.SubjectAlternativeName([_general_name(host) for host in hosts]), critical=False)
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(_key_usage(digital_signature=True), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .add_extension(
            x509.AuthorityKeyIdentifier.from_issuer_subject_key_identifier(issuer_key_id), critical=False
        )
        .sign(authority.key, hashes.SHA256())
    )


def is_permitted(authority: Authority, host: str) -> bool:
    """Say whether the authority may vouch for the host."""
    permitted = authority.certificate.extensions.get_extension_for_class(x509.NameConstraints).value
    wanted = _general_name(host)
    return any(_covers(subtree, wanted) for subtree in permitted.permitted_subtrees or ()) and not any(
        _covers(subtree, wanted) for subtree in permitted.excluded_subtrees or ()
    )


def list_site_names(authority: Authority) -> list[str]:
    """Return the site's own host names that the authority was made for."""
    permitted = authority.certificate.extensions.get_extension_for_class(x509.NameConstraints).value
    names = [
        subtree.value for subtree in permitted.permitted_subtrees or () if isinstance(subtree, x509.DNSName)
    ]
    return [name for name in names if name not in PERMITTED_DOMAINS]


def get_ca_pem(data_dir: Path) -> bytes | None:
    """Return the authority's certificate (PEM), or None where there is none yet."""
    path = _paths(data_dir, "authority")[0]
    return path.read_bytes() if path.exists() else None


def _make_authority(names: list[str], now: datetime) -> Authority:
    key = ec.generate_private_key(ec.SECP256R1())
    domains = dict.fromkeys([*PERMITTED_DOMAINS, *(name.lower().rstrip(".") for name in names)])
    permitted: list[x509.GeneralName] = [x509.DNSName(domain) for domain in domains]
    permitted += [x509.IPAddress(ipaddress.ip_network(network)) for network in PRIVATE_NETWORKS]
    # The date tells two authorities apart in a phone's list.
    subject = _name(f"Cellarslate local authority {now:%Y-%m-%d}")
    certificate = (
        x509.CertificateBuilder()
        .subject_name(subject)
        .issuer_name(subject)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - _BACKDATE)
        .not_valid_after(now + timedelta(days=AUTHORITY_DAYS))
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_key_usage(key_cert_sign=True, crl_sign=True), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.NameConstraints(permitted, _public_addresses()), critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .sign(key, hashes.SHA256())
    )
    return Authority(certificate, key)


def _public_addresses() -> list[x509.GeneralName]:
    """Return what the authority never vouches for: all of IPv4 that is no private network, and global IPv6.

    What is not permitted is refused already (RFC 5280, 4.2.1.10); this says it to software that reads only this half.
    """
    private = [ipaddress.IPv4Network(network) for network in PRIVATE_NETWORKS if ":" not in network]
    public = [ipaddress.IPv4Network("0.0.0.0/0")]
    for network in private:
        public = [
            part for one in public for part in (one.address_exclude(network) if network.subnet_of(one) else (one,))
        ]
    return [*map(x509.IPAddress, sorted(public)), x509.IPAddress(_GLOBAL_IPV6)]


def _covers(subtree: x509.GeneralName, wanted: x509.GeneralName) -> bool:
    if isinstance(subtree, x509.IPAddress) and isinstance(wanted, x509.IPAddress):
        return ipaddress.ip_address(str(wanted.value)) in ipaddress.ip_network(str(subtree.value))
    if isinstance(subtree, x509.DNSName) and isinstance(wanted, x509.DNSName):
        return wanted.value == subtree.value or wanted.value.endswith("." + subtree.value)
    return False


def _general_name(host: str) -> x509.GeneralName:
    try:
        return x509.IPAddress(ipaddress.ip_address(host))
    except ValueError:
        return x509.DNSName(host.lower().rstrip("."))


def _name(common_name: str) -> x509.Name:
    return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, common_name)])


def _key_usage(**wanted: bool) -> x509.KeyUsage:
    uses = (
        "digital_signature", "content_commitment", "key_encipherment", "data_encipherment", "key_agreement",
        "key_cert_sign", "crl_sign", "encipher_only", "decipher_only",
    )
    return x509.KeyUsage(**{use: wanted.get(use, False) for use in uses})


def _paths(data_dir: Path, stem: str) -> tuple[Path, Path]:
    folder = data_dir / "tls"
    return folder / f"{stem}.pem", folder / f"{stem}.key"


def _load_key(path: Path) -> ec.EllipticCurvePrivateKey:
    key = serialization.load_pem_private_key(path.read_bytes(), password=None)
    assert isinstance(key, ec.EllipticCurvePrivateKey)
    return key


def _write_pair(
    certificate_path: Path, chain: list[x509.Certificate], key_path: Path, key: ec.EllipticCurvePrivateKey
) -> None:
    certificate_path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    key_bytes = key.private_bytes(
        serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
    )
    chain_bytes = b"".join(item.public_bytes(serialization.Encoding.PEM) for item in chain)
    write_whole(key_path, key_bytes)
    write_whole(certificate_path, chain_bytes, 0o644)
