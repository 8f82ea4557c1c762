"""A certificate of the house's own name, from files that others renew: an ACME client, a provider, an office."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from hashlib import sha256
from pathlib import Path
from typing import cast

from cryptography import x509
from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric.types import CertificatePublicKeyTypes, PrivateKeyTypes

from webapp.serving.certificates import LeafFiles

# Whoever renews by half its life, as ACME clients do, never comes to the last third of it.
WARN_LEFT = 1 / 3


class BadCertificate(Exception):
    """The files do not serve; a sentence that says what to do."""


@dataclass(frozen=True)
class Named:
    """What a certificate says: its DNS names, lower case, a wildcard as `*.example.org`, and its span. [UTC]"""

    names: list[str]
    begins: datetime
    ends: datetime

    def covers(self, host: str) -> bool:
        """Say whether the certificate is for this host name; a wildcard stands for one label (RFC 6125, 6.4.3)."""
        host = host.lower().rstrip(".")
        return host in self.names or ("." in host and f"*.{host.partition('.')[2]}" in self.names)

    def is_near_its_end(self, now: datetime) -> bool:
        """Say whether less than a third of its life is left, so that whoever renews it seems to have stopped."""
        return self.ends - now < (self.ends - self.begins) * WARN_LEFT


class NamedCertificate:
    """The two files, and whether they have changed since they were last taken."""

    def __init__(self, certificate_path: Path, key_path: Path) -> None:
        self.certificate_path = certificate_path
        self._files = LeafFiles(certificate_path, key_path)
        self._taken = ""

    def read(self, *, now: datetime | None = None) -> Named:
        """Return the names and the life of the certificate. Raise BadCertificate where the pair does not serve now."""
        return read_pair(self._files.certificate_path, self._files.key_path, now=now or datetime.now(UTC))

    def take(self) -> LeafFiles:
        """Return the files to serve with. Raise BadCertificate where they do not serve."""
        self.read()
        self._taken = self._digest()
        return self._files

    def is_due(self) -> bool:
        """Say whether other files lie there than were taken, and serve; a pair half written is left for later."""
        try:
            if self._digest() == self._taken:
                return False
            self.read()
        except (BadCertificate, OSError):
            return False
        return True

    def _digest(self) -> str:
        return sha256(self._files.certificate_path.read_bytes() + self._files.key_path.read_bytes()).hexdigest()


def read_leaf(certificate_path: Path) -> Named:
    """Return the names and the life of a PEM file's first certificate, in force or not. BadCertificate if none."""
    return _say(_load_leaf(certificate_path))


def read_pair(certificate_path: Path, key_path: Path, *, now: datetime) -> Named:
    """Return the names and the life of a PEM file's first certificate, once its key fits and its time is now.

    Raise BadCertificate with a sentence where a file cannot be read, the key is another's, it names no host, or its
    time is over or has not come.
    """
    leaf = _load_leaf(certificate_path)
    # A key that a certificate can be made for has a public key that a certificate can hold.
    if leaf.public_key() != cast(CertificatePublicKeyTypes, _load_key(key_path).public_key()):
        words = f"The key in {key_path} is not the one of {certificate_path}. Give the two that were made together."
        raise BadCertificate(words)
    said = _say(leaf)
    if not said.names:
        raise BadCertificate(f"{certificate_path} names no host. Browsers want the name in the certificate itself.")
    if now >= said.ends:
        raise BadCertificate(f"{certificate_path} ended on {said.ends:%Y-%m-%d}. Renew it, then start again.")
    if now < said.begins:
        raise BadCertificate(f"{certificate_path} begins on {said.begins:%Y-%m-%d}. Look at this computer's clock.")
    return said


def _load_leaf(path: Path) -> x509.Certificate:
    try:
        return x509.load_pem_x509_certificates(path.read_bytes())[0]
    except OSError as error:
        raise BadCertificate(f"Cannot read {path}: {error.strerror}. Name the file with --certificate.") from error
    except ValueError as error:
        words = f"{path} holds no certificate in PEM. Give the file with the whole chain, your own first."
        raise BadCertificate(words) from error


def _load_key(path: Path) -> PrivateKeyTypes:
    try:
        return serialization.load_pem_private_key(path.read_bytes(), password=None)
    except OSError as error:
        raise BadCertificate(f"Cannot read {path}: {error.strerror}. Name the file with --key.") from error
    except TypeError as error:
        words = f"{path} wants a password, and nobody is there to type it. Store it without one."
        raise BadCertificate(words) from error
    except ValueError as error:
        raise BadCertificate(f"{path} holds no private key in PEM. Name the file with --key.") from error


def _say(leaf: x509.Certificate) -> Named:
    return Named(_names_of(leaf), leaf.not_valid_before_utc, leaf.not_valid_after_utc)


def _names_of(leaf: x509.Certificate) -> list[str]:
    try:
        names = leaf.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    except x509.ExtensionNotFound:
        return []
    return [name.lower() for name in names.get_values_for_type(x509.DNSName)]
