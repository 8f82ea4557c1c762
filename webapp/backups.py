"""A backup is one zip file: a consistent copy of the book, and the certificate that phones know.

Where the folder of the book names a public key (webapp/sealed.py), the zip is closed to it in the age format. Neither
the key that signs sessions nor that of the house's authority is in it: sessions begin anew at a restore, and the
authority's key is kept apart (keep_authority). Nor is the key of heads; the heads that it signed of this copy are.

Pictures and papers are not in the zip: they lie beside it in a folder, each once for all backups there.
"""

import os
import shutil
import tempfile
import zipfile
import zlib
from datetime import UTC, datetime
from pathlib import Path

from webapp.book.enclosures import copies, shelf
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.backup import backup as copy_book
from webapp.book.record.errors import BookError
from webapp.durable import sync_below, sync_file, sync_folder
from webapp.sealed import RECIPIENT_NAME, is_sealed, recipient_of, seal, unseal
from webapp.signed_heads import SIDE_NAME, SignedHead, sign_heads

BOOK_NAME = "book.sqlite"
AUTHORITY_KEY = "tls/authority.key"
# Beside the book: without these, phones would have to trust a new certificate.
_KEYS = ("tls/authority.pem", "tls/server.pem", "tls/server.key", RECIPIENT_NAME)
# What older backups hold besides, and is taken from them. The key of sessions is not: sessions begin anew.
_OLDER_KEYS = (AUTHORITY_KEY,)
SERVER_FILES = (*_KEYS, *_OLDER_KEYS)  # beside a book: what phones know the server by


def write_backup(data_dir: Path, file_path: Path) -> int:
    """Write the backup, verified, and return how many entries it holds; see write_with_heads."""
    return write_with_heads(data_dir, file_path)[0]


def write_with_heads(
    data_dir: Path, file_path: Path, now: datetime | None = None
) -> tuple[int, list[SignedHead]]:
    """Write the backup, verified; return how many entries it holds and its heads, signed as of `now` (aware).

    The server may go on meanwhile.
    It is encrypted where the folder names a public key; the plain copy meanwhile lies in the folder of the book.
    Raises BookError with a sentence if there is no book, the file exists or its folder does not, or the copy does not
    verify.
    """
    if not (data_dir / BOOK_NAME).is_file():
        raise BookError(f"There is no book in {data_dir}. Name its folder with --data.")
    if file_path.exists():
        raise BookError(f"{file_path} exists already and is left as it is. Give the backup another name.")
    if not file_path.parent.is_dir():
        raise BookError(f"There is no folder {file_path.parent}. Make it, or put in the disk, then back up again.")
    recipient = recipient_of(data_dir)
    # A plain copy never touches a disk that is meant for closed ones: what was deleted there could be read again.
    with tempfile.TemporaryDirectory(dir=data_dir if recipient else file_path.parent, prefix=".backup-") as folder:
        copy_path = Path(folder) / BOOK_NAME
        with open_book(data_dir / BOOK_NAME) as book:
            copy_book(book, copy_path)
        with open_book(copy_path) as copy:
            entry_count = log.load_head(copy)[0]
            signed = sign_heads(data_dir, copy, now or datetime.now(UTC))
        archive_path = Path(folder) / "archive.zip"
        with zipfile.ZipFile(archive_path, "w", zipfile.ZIP_DEFLATED) as archive:
            archive.write(copy_path, BOOK_NAME)
            archive.writestr(SIDE_NAME, "".join(f"{one.line()}\n" for one in signed))
            for name in _KEYS:
                if (data_dir / name).is_file():
                    archive.write(data_dir / name, name)
        # It holds the server's own key.
        archive_path.chmod(0o600)
        with archive_path.open("rb+") as file:
            sync_file(file)
        if recipient:
            _verify_archive(archive_path, Path(folder) / "tried")
            _seal_into(archive_path, file_path, recipient)
        else:
            archive_path.replace(file_path)
            sync_folder(file_path.parent)
        # The entries are safe by now; what is large comes after them.
        with open_book(copy_path) as copy:
            copies.copy_out(copy, data_dir / shelf.FOLDER, file_path.parent / shelf.FOLDER, _closing(recipient))
    return entry_count, signed


def _closing(recipient: str) -> copies.Change | None:
    return (lambda plain, closed: seal(plain, closed, recipient)) if recipient else None


def keep_authority(data_dir: Path, file_path: Path) -> bool:
    """Write the key of the house's authority to a file of its own; say whether it is encrypted.

    It is where the folder names a public key. BookError where there is no such key, or the file exists.
    """
    key_path = data_dir / AUTHORITY_KEY
    if not key_path.is_file():
        raise BookError(f"There is no key of an authority in {data_dir}: it is kept apart already, or there is none.")
    if file_path.exists():
        raise BookError(f"{file_path} exists already and is left as it is. Give the key another name.")
    recipient = recipient_of(data_dir)
    if recipient:
        _seal_into(key_path, file_path, recipient)
        return True
    with os.fdopen(os.open(file_path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
        file.write(key_path.read_bytes())
        sync_file(file)
    sync_folder(file_path.parent)
    return False


def put_authority_back(data_dir: Path, file_path: Path, identity: Path | None = None) -> None:
    """Put the authority's key back into the folder. BookError where it is not the key of the certificate there."""
    from cryptography import x509
    from cryptography.hazmat.primitives.serialization import load_pem_private_key

    certificate_path, key_path = data_dir / "tls" / "authority.pem", data_dir / AUTHORITY_KEY
    if not certificate_path.is_file():
        raise BookError(f"There is no certificate of an authority in {data_dir}. Restore the backup first.")
    if key_path.exists():
        raise BookError(f"The authority's key is in {data_dir} already, and is left as it is.")
    with tempfile.TemporaryDirectory(dir=data_dir, prefix=".backup-") as folder:
        plain = Path(folder) / "authority.key"
        if is_sealed(file_path):
            unseal(file_path, plain, identity)
        else:
            shutil.copyfile(file_path, plain)
        plain.chmod(0o600)
        try:
            key = load_pem_private_key(plain.read_bytes(), password=None)
        except (ValueError, TypeError) as error:
            raise BookError(f"{file_path} holds no private key. Name the file that `authority-key` wrote.") from error
        if key.public_key() != x509.load_pem_x509_certificate(certificate_path.read_bytes()).public_key():
            raise BookError(f"{file_path} is the key of another authority than the one in {data_dir}.")
        with plain.open("rb+") as file:
            sync_file(file)
        plain.replace(key_path)
    sync_folder(key_path.parent)


def _seal_into(plain: Path, file_path: Path, recipient: str) -> None:
    with tempfile.TemporaryDirectory(dir=file_path.parent, prefix=".backup-") as folder:
        closed = Path(folder) / "closed"
        seal(plain, closed, recipient)
        closed.chmod(0o600)
        closed.replace(file_path)
    sync_folder(file_path.parent)


def _verify_archive(archive_path: Path, folder: Path) -> int:
    _unpack(archive_path, folder)
    return _verify(folder / BOOK_NAME)


def restore_backup(
    file_path: Path, data_dir: Path, identity: Path | None = None, *, with_enclosures: bool = True
) -> int:
    """Put a backup into an empty data folder, verify it there, and return how many entries it holds.

    `identity`: the file with the private key, for one that is encrypted. Nothing is left behind if it does not
    verify. Phones hand in again what this book has not got. Pictures and papers come from the folder beside the
    backup; those that are not there are found by `verify`.
    """
    if data_dir.exists() and any(data_dir.iterdir()):
        raise BookError(
            f"{data_dir} is not empty. Restore into a new folder, then serve that one with --data."
        )
    data_dir.parent.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=data_dir.parent, prefix=".restore-") as folder:
        restored = Path(folder) / "data"
        archive_path = file_path
        if _is_sealed(file_path):
            archive_path = Path(folder) / "archive.zip"
            unseal(file_path, archive_path, identity)
        _unpack(archive_path, restored, file_path)
        entry_count = _verify(restored / BOOK_NAME)
        if with_enclosures:
            with open_book(restored / BOOK_NAME) as book:
                copies.bring_in(book, [file_path.parent / shelf.FOLDER], _opening(identity))
        if data_dir.exists():
            data_dir.rmdir()
        shutil.move(restored, data_dir)
    # What phones hand in next is synced by itself; what it stands on must be there too.
    sync_below(data_dir)
    sync_folder(data_dir.parent)
    return entry_count


def _opening(identity: Path | None) -> copies.Change | None:
    return (lambda closed, plain: unseal(closed, plain, identity)) if identity else None


def _verify(path: Path) -> int:
    with open_book(path) as book:
        (answer,) = book.db.conn.execute("PRAGMA integrity_check(1)").fetchone()
        troubles = [] if answer == "ok" else [f"The file is damaged: {answer}."]
        troubles += log.verify(book, but_salvaged=True)
        entry_count = log.load_head(book)[0]
    if troubles:
        raise BookError(f"The copy does not verify. {troubles[0]}")
    return entry_count


def _is_sealed(file_path: Path) -> bool:
    try:
        return is_sealed(file_path)
    except OSError as error:
        raise BookError(f"{file_path} cannot be read as a backup: {error}.") from error


def _unpack(archive_path: Path, folder: Path, named: Path | None = None) -> None:
    file_path = named or archive_path
    try:
        with zipfile.ZipFile(archive_path) as archive:
            names = set(archive.namelist())
            if BOOK_NAME not in names:
                raise BookError(f"{file_path} is no backup of a book: it holds no {BOOK_NAME}.")
            for name in (BOOK_NAME, *_KEYS, *_OLDER_KEYS):
                if name in names:
                    archive.extract(name, folder)
    except (zipfile.BadZipFile, zlib.error, EOFError, OSError) as error:
        raise BookError(f"{file_path} cannot be read as a backup: {error}.") from error
    for path in folder.rglob("*"):
        path.chmod(0o700 if path.is_dir() else 0o600)
