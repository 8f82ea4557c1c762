"""Put a certificate authority in the trust store that Chromium on Linux reads, without certutil.

Chromium brings libnss3; its own functions are called through ctypes. Run as a program, so that the library's
global state ends with the process: `python trust_store.py FOLDER CERTIFICATE.pem`.
"""

import ctypes
import ctypes.util
import sys
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives.serialization import Encoding

# From NSS's certdb.h: a valid authority, trusted to issue server certificates ("C,," in certutil's words).
_VALID_CA, _TRUSTED_CA = 1 << 3, 1 << 4


class _Trust(ctypes.Structure):
    _fields_ = (("ssl", ctypes.c_uint), ("email", ctypes.c_uint), ("objects", ctypes.c_uint))


class _Item(ctypes.Structure):
    _fields_ = (("kind", ctypes.c_int), ("data", ctypes.c_char_p), ("length", ctypes.c_uint))


def find_library() -> str | None:
    """Return the name of libnss3, or None where there is none."""
    return ctypes.util.find_library("nss3")


def add_authority(store_dir: Path, pem: bytes) -> None:
    """Make a trust store in the folder and trust the authority there."""
    store_dir.mkdir(parents=True, exist_ok=True)
    name = find_library()
    assert name is not None
    nss = ctypes.CDLL(name)
    for function in ("PK11_GetInternalKeySlot", "CERT_NewTempCertificate", "CERT_GetDefaultCertDB"):
        getattr(nss, function).restype = ctypes.c_void_p
    der = x509.load_pem_x509_certificate(pem).public_bytes(Encoding.DER)
    _check(nss.NSS_InitReadWrite(f"sql:{store_dir}".encode()) == 0, "open the store")
    slot = ctypes.c_void_p(nss.PK11_GetInternalKeySlot())
    _check(nss.PK11_InitPin(slot, b"", b"") == 0, "set an empty password")
    database = ctypes.c_void_p(nss.CERT_GetDefaultCertDB())
    item = _Item(0, der, len(der))
    made = nss.CERT_NewTempCertificate(database, ctypes.byref(item), None, 0, 1)
    _check(made is not None, "read the certificate")
    certificate = ctypes.c_void_p(made)
    _check(nss.PK11_ImportCert(slot, certificate, 0, b"cellarslate", 0) == 0, "import the certificate")
    trust = _Trust(_VALID_CA | _TRUSTED_CA, 0, 0)
    _check(nss.CERT_ChangeCertTrust(database, certificate, ctypes.byref(trust)) == 0, "trust the certificate")


def _check(is_good: bool, step: str) -> None:
    if not is_good:
        raise SystemExit(f"Could not {step}.")


if __name__ == "__main__":
    add_authority(Path(sys.argv[1]), Path(sys.argv[2]).read_bytes())
