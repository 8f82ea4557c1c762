"""Which addresses are shown to phones, and how web addresses are written."""

import pytest

from webapp.serving import addresses


@pytest.mark.parametrize(
    ("address", "is_lan"),
    [
        # Private ranges: RFC 1918, section 3; RFC 4193, section 3.1; shared space: RFC 6598, section 7.
        ("10.255.255.255", True), ("11.0.0.0", False), ("172.15.255.255", False), ("172.16.0.0", True),
        ("172.31.255.255", True), ("172.32.0.0", False), ("192.168.0.1", True), ("192.169.0.1", False),
        ("fd12::1", True), ("fe00::1", False), ("100.64.0.0", True), ("100.128.0.0", False),
        ("127.0.0.1", False), ("::1", False), ("fe80::1", False), ("0.0.0.0", False), ("2001:4860::1", False),
    ],
)
def test_only_private_addresses_are_shown(address: str, is_lan: bool) -> None:
    assert addresses.is_lan_address(address) is is_lan


def test_addresses_found_here_are_private_and_steady() -> None:
    found = addresses.list_lan_addresses()
    assert found == addresses.list_lan_addresses()
    assert all(addresses.is_lan_address(address) for address in found)


@pytest.mark.parametrize(
    ("host", "is_loopback"),
    [("localhost", True), ("127.0.0.1", True), ("127.8.8.8", True), ("::1", True), ("0.0.0.0", False),
     ("192.168.1.1", False), ("cellar.local", False), ("localhost.example", False)],
)
def test_loopback_is_told_from_the_network(host: str, is_loopback: bool) -> None:
    assert addresses.is_loopback(host) is is_loopback


def test_web_addresses_are_written_as_browsers_read_them() -> None:
    assert addresses.write_url("10.0.0.5", 443, is_tls=True) == "https://10.0.0.5/"
    assert addresses.write_url("10.0.0.5", 80, is_tls=True) == "https://10.0.0.5:80/"
    assert addresses.write_url("fd00::1", 8080, is_tls=False) == "http://[fd00::1]:8080/"
