"""Files closed to all but the holder of one private key, in the age format (age-encryption.org/v1), by rage.

The public key of whoever may open the backups lies in the data folder; its private key never does.
"""

from __future__ import annotations

import os
from pathlib import Path

from webapp.book.record.errors import BookError
from webapp.durable import sync_file, sync_folder, write_whole

RECIPIENT_NAME = "backups.recipient"
_MAGIC = b"age-encryption.org/"
_SECRET = "AGE-SECRET-KEY-"  # noqa: S105 -- how such a line begins, no secret


def is_sealed(path: Path) -> bool:
    """Say whether this file is in the age format, by its first bytes. OSError where it cannot be read."""
    with path.open("rb") as file:
        return file.read(len(_MAGIC)) == _MAGIC


def recipient_of(data_dir: Path) -> str:
    """Return the public key that the backups of this folder are closed to, or an empty text."""
    try:
        return (data_dir / RECIPIENT_NAME).read_text("utf-8").strip()
    except FileNotFoundError:
        return ""


def keep_recipient(data_dir: Path, recipient: str) -> None:
    """Close the backups of this folder to this public key (age1…) from now on. BookError where it is none."""
    _recipient(recipient)
    write_whole(data_dir / RECIPIENT_NAME, f"{recipient.strip()}\n".encode())


def make_key(path: Path) -> str:
    """Write a new private key to a file of its own, for its owner alone, and return its public key.

    BookError where the file exists: a key that opens backups is never overwritten.
    """
    from pyrage import x25519

    identity = x25519.Identity.generate()
    public = str(identity.to_public())
    try:
        handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    except FileExistsError:
        raise BookError(f"{path} exists already and is left as it is. Give the key another name.") from None
    with os.fdopen(handle, "w", encoding="utf-8", newline="\n") as file:
        file.write(f"# Opens the backups of a Cellarslate book. Public key: {public}\n{identity}\n")
        sync_file(file)
    sync_folder(path.parent)
    return public


def seal(plain: Path, sealed: Path, recipient: str) -> None:
    """Write the content of `plain` to the file `sealed`, closed to this public key. BookError where it is none."""
    import pyrage

    with plain.open("rb") as source, sealed.open("wb") as target:
        pyrage.encrypt_io(source, target, [_recipient(recipient)])
        sync_file(target)


def unseal(sealed: Path, plain: Path, key_path: Path | None) -> None:
    """Open a closed file with the private key in another file, into `plain`.

    BookError with a sentence where there is no key, where it is the wrong one, or where the file is cut off or damaged;
    neither file is changed, and nothing is left of `plain`.
    """
    import pyrage
    from pyrage import x25519

    if key_path is None:
        raise BookError(f"{sealed} is encrypted. Give the file with its private key: --identity FILE.")
    try:
        lines = [line.strip() for line in key_path.read_text("utf-8").splitlines()]
        keys = [x25519.Identity.from_str(line) for line in lines if line.startswith(_SECRET)]
    except OSError as error:
        raise BookError(f"The key {key_path} cannot be read: {error.strerror}. Put in its disk, or name it.") from error
    except (UnicodeDecodeError, pyrage.IdentityError) as error:
        raise BookError(f"{key_path} holds no key that can be read. Take another copy of it.") from error
    if not keys:
        raise BookError(f"{key_path} holds no private key; it has a line that begins with {_SECRET}. Name that file.")
    try:
        with sealed.open("rb") as source, plain.open("wb") as target:
            pyrage.decrypt_io(source, target, keys)
    except (pyrage.DecryptError, OSError) as error:
        plain.unlink(missing_ok=True)
        # A body that does not hold comes as an OSError without a number; one of the disk has one.
        if isinstance(error, OSError) and error.errno is not None:
            raise BookError(f"{sealed} could not be read: {error}. Look at the disk, or take another copy.") from error
        # The library's word where no key opens the header; all else is a header or a body that does not hold.
        if "No matching keys" in str(error):
            raise BookError(
                f"{key_path} does not open {sealed}: it was closed to another key, or its first lines are damaged. "
                "Look for the key of that day, or take another copy."
            ) from error
        raise BookError(f"{sealed} is cut off or damaged and was not opened. Take another copy of it.") from error


def _recipient(text: str) -> object:
    import pyrage
    from pyrage import x25519

    try:
        return x25519.Recipient.from_str(text.strip())
    except pyrage.RecipientError:
        raise BookError("This is no public key of the age format: it begins with age1. Copy the whole of it.") from None
