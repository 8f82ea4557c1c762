"""The site's own certificate authority, judged by an independent verifier (cryptography's verifier)."""

import ipaddress
import os
import plistlib
import stat
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.verification import PolicyBuilder, Store, VerificationError

from webapp.serving import certificates, phone_trust

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
