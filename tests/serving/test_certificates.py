"""The site's own certificate authority, judged by an independent verifier (cryptography's verifier)."""

import ipaddress
import os
import plistlib
import shutil
import stat
import subprocess
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.verification import PolicyBuilder, Store, VerificationError

from webapp.serving import certificates, phone_trust
from webapp.serving.addresses import PRIVATE_NETWORKS

NOW = datetime(2026, 3, 1, 12, 0, tzinfo=UTC)
LAN = ["192.168.1.20", "10.0.0.5", "fd00::1", "cellar.local"]


def verify(data_dir: Path, leaf: x509.Certificate, host: str, at: datetime = NOW) -> None:
    authority = certificates.get_authority(data_dir)
    try:
        subject: x509.GeneralName = x509.IPAddress(ipaddress.ip_address(host))
    except ValueError:
        subject = x509.DNSName(host)
    verifier = (
        PolicyBuilder().store(Store([authority.certificate])).time(at).build_server_verifier(subject)  # type: ignore[arg-type]
    )
    verifier.verify(leaf, [])


def read_leaf(files: certificates.LeafFiles) -> x509.Certificate:
    return x509.load_pem_x509_certificates(files.certificate_path.read_bytes())[0]


@pytest.mark.parametrize("host", [*LAN, "localhost", "127.0.0.1", "still.home.arpa", "100.64.3.2"])
def test_leaf_is_trusted_for_hosts_of_a_private_network(tmp_path: Path, host: str) -> None:
    leaf = read_leaf(certificates.get_leaf(tmp_path, [host], now=NOW))
    verify(tmp_path, leaf, host)


@pytest.mark.parametrize("host", ["example.com", "8.8.8.8", "172.32.0.1", "notlocal", "2001:4860::1"])
def test_authority_vouches_for_nothing_outside_private_networks(tmp_path: Path, host: str) -> None:
    """A leaf for a foreign name, signed with the stolen key, is refused by the verifier."""
    authority = certificates.get_authority(tmp_path, now=NOW)
    assert not certificates.is_permitted(authority, host)
    forged = certificates.sign_leaf(authority, ec.generate_private_key(ec.SECP256R1()), [host], NOW)
    with pytest.raises(VerificationError):
        verify(tmp_path, forged, host)


def test_the_authority_signs_for_servers_alone_and_for_nobody_below_it(tmp_path: Path) -> None:
    """RFC 5280: 4.2.1.12 (its use), 4.2.1.10 (names it may, and may not, vouch for), 4.2.1.9 (no authority below)."""
    files = certificates.get_leaf(tmp_path, LAN, now=NOW)
    leaf, authority = x509.load_pem_x509_certificates(files.certificate_path.read_bytes())
    for certificate in (leaf, authority):
        uses = certificate.extensions.get_extension_for_class(x509.ExtendedKeyUsage).value
        assert list(uses) == [x509.ExtendedKeyUsageOID.SERVER_AUTH]
    basic = authority.extensions.get_extension_for_class(x509.BasicConstraints)
    assert (basic.critical, basic.value.ca, basic.value.path_length) == (True, True, 0)
    names = authority.extensions.get_extension_for_class(x509.NameConstraints)
    assert names.critical
    excluded = [one.value for one in names.value.excluded_subtrees or () if isinstance(one, x509.IPAddress)]
    for address in ("8.8.8.8", "0.0.0.0", "255.255.255.255", "11.0.0.0", "172.32.0.1", "192.169.0.0", "2001:4860::1"):
        asked = ipaddress.ip_address(address)
        assert sum(asked in network for network in excluded) == 1, address
    for network in PRIVATE_NETWORKS:
        private = ipaddress.ip_network(network)
        assert not any(private.version == one.version and private.overlaps(one) for one in excluded), network


@pytest.mark.skipif(not shutil.which("openssl"), reason="openssl is not on this computer")
@pytest.mark.parametrize(("purpose", "holds"), [("sslserver", True), ("sslclient", False), ("smimesign", False)])
def test_another_verifier_takes_its_certificates_for_servers_alone(tmp_path: Path, purpose: str, holds: bool) -> None:
    """By OpenSSL's own program, of a certificate that a thief of the key would make for any use."""
    authority = certificates.get_authority(tmp_path, now=NOW)
    assert authority.key is not None
    key = ec.generate_private_key(ec.SECP256R1())
    made = (
        x509.CertificateBuilder()
        .subject_name(x509.Name([x509.NameAttribute(x509.NameOID.COMMON_NAME, "any use")]))
        .issuer_name(authority.certificate.subject).public_key(key.public_key()).serial_number(7)
        .not_valid_before(NOW).not_valid_after(NOW + timedelta(days=30))
        .add_extension(x509.SubjectAlternativeName([x509.DNSName("cellar.local")]), critical=False)
        .sign(authority.key, hashes.SHA256())
    )
    path = tmp_path / "any.pem"
    path.write_bytes(made.public_bytes(serialization.Encoding.PEM))
    command = ["openssl", "verify", "-purpose", purpose, "-attime", str(int(NOW.timestamp()) + 60), "-CAfile",
               str(tmp_path / "tls" / "authority.pem"), str(path)]
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    assert (done.returncode == 0) is holds, done.stdout + done.stderr


def test_an_authority_of_an_earlier_version_goes_on(tmp_path: Path) -> None:
    """Phones trust exactly that certificate: one without its use and the excluded addresses is not made anew."""
    authority = certificates.get_authority(tmp_path, now=NOW)
    assert authority.key is not None
    bare = x509.CertificateBuilder(
        authority.certificate.issuer, authority.certificate.subject, authority.certificate.public_key(), 9,
        authority.certificate.not_valid_before_utc, authority.certificate.not_valid_after_utc,
    )
    for extension in authority.certificate.extensions:
        value = extension.value
        if isinstance(value, x509.NameConstraints):
            value = x509.NameConstraints(value.permitted_subtrees, None)
        if not isinstance(value, x509.ExtendedKeyUsage):
            bare = bare.add_extension(value, extension.critical)
    earlier = bare.sign(authority.key, hashes.SHA256())
    (tmp_path / "tls" / "authority.pem").write_bytes(earlier.public_bytes(serialization.Encoding.PEM))
    leaf = read_leaf(certificates.get_leaf(tmp_path, LAN, now=NOW))
    assert certificates.get_authority(tmp_path).certificate == earlier
    verify(tmp_path, leaf, LAN[0])


def test_foreign_hosts_are_left_out_of_the_leaf(tmp_path: Path) -> None:
    leaf = read_leaf(certificates.get_leaf(tmp_path, ["example.com", "10.0.0.5"], now=NOW))
    names = leaf.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    assert [str(name.value) for name in names] == ["10.0.0.5"]
    verify(tmp_path, leaf, "10.0.0.5")


def test_a_name_given_at_set_up_is_vouched_for(tmp_path: Path) -> None:
    authority = certificates.get_authority(tmp_path, ["log.stillhouse.example"], now=NOW)
    assert certificates.list_site_names(authority) == ["log.stillhouse.example"]
    leaf = read_leaf(certificates.get_leaf(tmp_path, ["log.stillhouse.example"], now=NOW))
    verify(tmp_path, leaf, "log.stillhouse.example")


def test_leaf_is_not_valid_for_another_host(tmp_path: Path) -> None:
    leaf = read_leaf(certificates.get_leaf(tmp_path, ["10.0.0.5"], now=NOW))
    with pytest.raises(VerificationError):
        verify(tmp_path, leaf, "10.0.0.6")


def test_lives_hold_to_what_phones_accept(tmp_path: Path) -> None:
    """At most 398 days for a leaf: CA/Browser Forum, Baseline Requirements, section 6.3.2 (from memory)."""
    leaf = read_leaf(certificates.get_leaf(tmp_path, LAN, now=NOW))
    authority = certificates.get_authority(tmp_path).certificate
    assert leaf.not_valid_after_utc - leaf.not_valid_before_utc <= timedelta(days=397)
    assert authority.not_valid_after_utc - NOW == timedelta(days=3652)
    with pytest.raises(VerificationError):
        verify(tmp_path, leaf, LAN[0], at=NOW + timedelta(days=397))


def test_leaf_is_kept_until_it_nears_its_end_then_renewed_under_the_same_authority(tmp_path: Path) -> None:
    first = read_leaf(certificates.get_leaf(tmp_path, LAN, now=NOW))
    authority = certificates.get_authority(tmp_path).certificate
    later = NOW + timedelta(days=330)
    assert read_leaf(certificates.get_leaf(tmp_path, LAN, now=later)) == first
    near_end = NOW + timedelta(days=350)
    assert certificates.leaf_is_due(tmp_path, LAN, now=near_end)
    second = read_leaf(certificates.get_leaf(tmp_path, LAN, now=near_end))
    assert second != first
    assert certificates.get_authority(tmp_path).certificate == authority
    verify(tmp_path, second, LAN[0], at=near_end)


def test_leaf_is_renewed_when_an_address_comes_and_kept_when_one_goes(tmp_path: Path) -> None:
    first = read_leaf(certificates.get_leaf(tmp_path, LAN, now=NOW))
    assert read_leaf(certificates.get_leaf(tmp_path, LAN[:1], now=NOW)) == first
    second = read_leaf(certificates.get_leaf(tmp_path, [*LAN, "10.0.0.99"], now=NOW))
    verify(tmp_path, second, "10.0.0.99")


def test_leaf_is_renewed_when_the_authority_was_replaced(tmp_path: Path) -> None:
    certificates.get_leaf(tmp_path, LAN, now=NOW)
    (tmp_path / "tls" / "authority.pem").unlink()
    leaf = read_leaf(certificates.get_leaf(tmp_path, LAN, now=NOW))
    verify(tmp_path, leaf, LAN[0])


@pytest.mark.skipif(os.name == "nt", reason="Windows has no permission bits")
def test_keys_can_be_read_by_their_owner_alone(tmp_path: Path) -> None:
    certificates.get_leaf(tmp_path, LAN, now=NOW)
    for path in (tmp_path / "tls").glob("*.key"):
        assert stat.S_IMODE(path.stat().st_mode) == 0o600, path
    assert stat.S_IMODE((tmp_path / "tls").stat().st_mode) == 0o700


def test_profile_carries_the_same_certificate_and_replaces_itself(tmp_path: Path) -> None:
    assert phone_trust.ca_mobileconfig(tmp_path) is None
    assert phone_trust.ca_pem(tmp_path) is None
    authority = certificates.get_authority(tmp_path, now=NOW).certificate
    profile = plistlib.loads(phone_trust.ca_mobileconfig(tmp_path) or b"")
    (payload,) = profile["PayloadContent"]
    assert payload["PayloadType"] == "com.apple.security.root"
    assert x509.load_der_x509_certificate(payload["PayloadContent"]) == authority
    again = plistlib.loads(phone_trust.ca_mobileconfig(tmp_path) or b"")
    assert again["PayloadUUID"] == profile["PayloadUUID"] != payload["PayloadUUID"]
