"""The commands that look after the book: verify, rebuild, back up, restore, rehearse, export, import."""

from __future__ import annotations

import functools
import sqlite3
from collections.abc import Callable
from pathlib import Path
from typing import ParamSpec

import click

from webapp import signed_heads
from webapp.cli_parts import PATH, Sentence, data_option, need_book, open_at

P = ParamSpec("P")
# What a line of the book can raise that nobody wrote so: bytes that are no text, a text in the place of a number.
_UNREADABLE = (ValueError, TypeError, LookupError, AttributeError, ArithmeticError, RecursionError, sqlite3.Error)


def _damage_said(command: Callable[P, None]) -> Callable[P, None]:
    """Say of an error that the book is damaged, where reading it through finds that it is; else it is the program's."""

    @functools.wraps(command)
    def run(*args: P.args, **kwargs: P.kwargs) -> None:
        from webapp.backups import BOOK_NAME
        from webapp.book.record.damage import BookDamaged
        from webapp.keeping.wreck import find_damage

        try:
            command(*args, **kwargs)
        except _UNREADABLE as error:
            if wrong := find_damage(Path(str(kwargs["data_dir"])) / BOOK_NAME):
                raise BookDamaged(wrong) from error
            raise

    return run


_identity_option = click.option(
    "--identity", type=PATH, metavar="FILE", help="The private key, for a backup that is encrypted."
)


@click.command()
@data_option
@click.option("--heads", "noted_path", type=PATH, metavar="FILE", help="Heads noted earlier, to compare.")
@_damage_said
def verify(data_dir: Path, noted_path: Path | None) -> None:
    """Walk the chain of digests and sum up every account: has anything been changed, does anything not add up?"""
    from webapp.book import verification
    from webapp.book.enclosures import shelf
    from webapp.book.fold import judgings, unjudged
    from webapp.book.house import journal, proof
    from webapp.book.record import heads, log
    from webapp.book.record.damage import BookDamaged, examine
    from webapp.keeping import witnesses
    from webapp.keeping.schedule import read_plan

    text = noted_path.read_text("utf-8", errors="replace") if noted_path else ""
    noted, signed = heads.read_heads(text), signed_heads.read_signed(text)
    if noted_path and not noted and not signed:
        raise Sentence(f"There is no head in {noted_path}. Keep in it the lines that `cellarslate verify` prints.")
    plan = read_plan(data_dir)
    beside, others = _split_by_key(data_dir, plan.folder if plan else None)
    with open_at(data_dir) as book:
        if wrong := examine(book.path, is_quick=False):
            raise BookDamaged("; ".join(wrong))
        if words := unjudged.describe_progress(book):
            click.echo(f"{words} That comes first.")
            unjudged.judge_all(book, unjudged.PAUSE_S)  # the server may be at work
        troubles = [*verification.verify(book), *shelf.verify(book), *journal.verify(data_dir),
                    *heads.compare(book, noted)]
        witnessed = witnesses.kept_heads(data_dir)
        given_back = [one for kept in witnessed.values() for one in kept]
        troubles += signed_heads.compare(book, [*signed, *beside, *given_back])
        lost = witnesses.unsettled(book, data_dir)
        names = witnesses.name_witnesses(book, {*witnessed, *(one["who"] for one in lost)})
        troubles += [f"{names[one['who']]} had a head that is not of this book: {one['words']}" for one in lost]
        since = proof.proved_since(book)
        entry_count, digest = log.load_head(book)
        taken = heads.take_heads(book)
        judged = judgings.say_how_judged(book)
    if troubles:
        raise Sentence("\n".join(troubles))
    click.echo(f"{entry_count} entries, the chain holds, the accounts add up. Last digest: {digest}")
    click.echo(judged)
    if noted:
        click.echo(f"The book still begins as {len(noted)} noted heads say.")
    for line in (*signed_heads.describe(signed, f"in {noted_path}"), *signed_heads.describe(beside, "by the backups")):
        click.echo(line)
    for who, kept in witnessed.items():
        for line in signed_heads.describe(kept, f"of {names[who]}"):
            click.echo(line)
    click.echo(f"The registry is as its changes say, each row and column{f' since {since}' if since else ''}.")
    if others:
        click.echo(f"{others} heads by the backups are signed with another key than this folder's, as after a restore, "
                   "and were not compared. --heads FILE compares them.")
    if not (noted or signed or beside or witnessed):
        click.echo("It was held against no heads from outside: there are none by the backups, and none were named; "
                   "neither a phone nor the group gave any back.")
    click.echo("What came after the last of these heads is proved by none of them.")
    click.echo("Heads, to be noted outside the book:")
    for head in taken:
        click.echo(f"  {head}")


def _split_by_key(data_dir: Path, folder: Path | None) -> tuple[list[signed_heads.SignedHead], int]:
    """Return the heads beside the backups that bear this folder's key, and how many bear another."""
    try:
        found = signed_heads.read_beside(folder) if folder else []
    except OSError as error:
        raise Sentence(f"{folder} cannot be read: {error.strerror}. Put in its disk, or look at its rights.") from error
    key = signed_heads.find_key(data_dir)
    own = [one for one in found if one.key == key]
    return own, len(found) - len(own)


@click.command()
@data_option
@click.option("--compare", "is_compare", is_flag=True, help="Say whether the fold came out as it was.")
@_damage_said
def rebuild(data_dir: Path, is_compare: bool) -> None:
    """Fold the whole book anew from its entries; stop the server first.

    Broken off, it loses nothing: the server goes on with what is left as soon as it runs.
    """
    from webapp.book.fold import fold, unjudged
    from webapp.book.search import keeping as search
    from webapp.keeping.folder_lock import hold_folder

    need_book(data_dir)
    with hold_folder(data_dir), open_at(data_dir) as book:
        if is_compare:
            unjudged.judge_all(book)
        before = fold.dump(book) if is_compare else b""
        with click.progressbar(length=1000, label="Folding anew") as bar:
            fold.rebuild(book, lambda done, many: bar.update(done * 1000 // max(many, 1) - bar.pos))
        is_same = is_compare and fold.dump(book) == before
        search.rebuild(book)
    if is_compare and not is_same:
        raise Sentence("Folded anew, and it came out otherwise than it was kept. Look at queries and stock.")
    click.echo("Folded anew." + (" It came out as it was." if is_same else ""))


@click.command()
@data_option
@click.argument("file_path", metavar="FILE", type=PATH)
@_damage_said
def backup(data_dir: Path, file_path: Path) -> None:
    """Write the book to one FILE, and verify it. The server may go on. It is encrypted once there is a backup key."""
    from webapp.backups import write_with_heads
    from webapp.book.enclosures.shelf import FOLDER
    from webapp.book.house import journal
    from webapp.sealed import recipient_of

    entry_count, signed = write_with_heads(data_dir, file_path)
    journal.note(data_dir, "backup", origin="command", about=str(file_path))
    said = "Encrypted to the backup key." if recipient_of(data_dir) else (
        "It is not encrypted: keep it where the book may be kept, or make a key first, cellarslate backup-key."
    )
    click.echo(f"{entry_count} entries, verified, in {file_path}. {said}")
    if (beside := file_path.parent / FOLDER).is_dir():
        click.echo(f"Pictures and papers lie beside it in {beside}, each once: take both along.")
    click.echo(f"Its heads, to be noted elsewhere, are signed with the key {signed_heads.shorten(signed[0].key)}:")
    for one in signed:
        click.echo(f"  {one.head.size} {one.head.name}: {signed_heads.shorten(one.head.root)}")


@click.command(name="backup-key")
@data_option
@click.option("--recipient", metavar="AGE1…", help="The public key of a pair that you have already.")
@click.argument("file_path", metavar="[FILE]", type=PATH, required=False)
def backup_key(data_dir: Path, file_path: Path | None, recipient: str | None) -> None:
    """Make the key that opens backups, in a FILE on a stick; every backup from now on is closed to it."""
    from webapp.book.house import journal
    from webapp.sealed import keep_recipient, make_key

    open_at(data_dir).close()
    if bool(file_path) == bool(recipient):
        raise Sentence("Name the FILE for the private key, on a stick; or give --recipient, the public key you have.")
    if file_path:
        if file_path.absolute().resolve().is_relative_to(data_dir.absolute().resolve()):
            raise Sentence("The key must not lie beside the book, or it is lost and stolen with it. Put it on a stick.")
        recipient = make_key(file_path)
        click.echo(f"The private key is in {file_path}. Keep two copies of it, away from this computer and from the")
        click.echo("backups. Whoever has it reads every backup; without it no backup can be opened by anybody.")
    keep_recipient(data_dir, str(recipient))
    journal.note(data_dir, "person", origin="command", about=f"backups are closed to {recipient}")
    click.echo(f"Backups from now on are closed to {recipient}. Older ones stay as they are.")


@click.command(name="authority-key")
@data_option
@click.option("--put-back", "is_back", is_flag=True, help="Put it back into the folder, after a restore.")
@click.option("--identity", type=PATH, metavar="FILE", help="The private key that opens it.")
@click.argument("file_path", metavar="FILE", type=PATH)
def authority_key(data_dir: Path, file_path: Path, identity: Path | None, is_back: bool) -> None:
    """Write the key of the house's own authority to a FILE of its own: no backup holds it."""
    from webapp.backups import keep_authority, put_authority_back
    from webapp.book.house import journal

    if is_back:
        put_authority_back(data_dir, file_path, identity)
        journal.note(data_dir, "restored", origin="command", about="key of the authority")
        click.echo("The authority's key is back. The server renews its certificate by itself.")
        return
    is_encrypted = keep_authority(data_dir, file_path)
    journal.note(data_dir, "took_out", origin="command", about=f"key of the authority to {file_path}")
    closed = "closed to the backup key" if is_encrypted else "not encrypted: whoever has it can pose as this server"
    click.echo(f"The authority's key is in {file_path}, {closed}. Keep it apart from the backups.")


@click.command()
@data_option
@_identity_option
@click.argument("file_path", metavar="FILE", type=PATH)
def restore(data_dir: Path, file_path: Path, identity: Path | None) -> None:
    """Put a backup FILE into a new data folder, and verify it there."""
    from webapp.backups import AUTHORITY_KEY, restore_backup
    from webapp.book.enclosures.shelf import count_lost
    from webapp.book.house import journal

    entry_count = restore_backup(file_path, data_dir, identity)
    journal.note(data_dir, "restored", origin="command", about=str(file_path))
    click.echo(f"{entry_count} entries, verified, in {data_dir}. Phones hand in again what it has not got.")
    with open_at(data_dir) as book:
        lost = count_lost(book)
    if lost:
        click.echo(f"{lost} pictures and papers are not beside the backup. Phones keep theirs for 30 days.")
    click.echo("Whoever was signed in at the desk signs in again.")
    if (data_dir / "tls" / "authority.pem").is_file() and not (data_dir / AUTHORITY_KEY).is_file():
        click.echo(f"The authority's key is kept apart: cellarslate authority-key FILE --put-back --data {data_dir}")


@click.command()
@click.option("--into", "data_dir", type=PATH, metavar="NEW", required=True, help="A new folder for the new book.")
@click.option("--backup", "backups", type=PATH, metavar="FILE", multiple=True, help="A backup; repeat, newest first.")
@click.option("--rows", "copies", type=PATH, metavar="FILE", multiple=True, help="What `group-copy` wrote; repeat.")
@_identity_option
@click.argument("wreck", metavar="BOOK", type=PATH)
def salvage(
    wreck: Path, data_dir: Path, backups: tuple[Path, ...], copies: tuple[Path, ...], identity: Path | None
) -> None:
    """Make a NEW book of what is left of a damaged BOOK and of backups. The damaged one is only read; stop its server.

    BOOK is its file or its folder.
    """
    from webapp.book.house import journal
    from webapp.keeping.salvage import describe
    from webapp.keeping.salvage import salvage as make_book

    said = make_book(wreck, data_dir, backups, identity, copies)
    journal.note(data_dir, "restored", origin="command", about=f"salvaged from {wreck}")
    click.echo("\n".join(describe(said)))


@click.command()
@data_option
@_identity_option
@click.argument("file_path", metavar="FILE", type=PATH)
def rehearse(data_dir: Path, file_path: Path, identity: Path | None) -> None:
    """Try a backup FILE out: restore it aside, verify it, and say what the book has that it has not."""
    from webapp.keeping.rehearsal import rehearse as try_out

    click.echo("\n".join(try_out(file_path, data_dir, identity)))


@click.command()
@data_option
@click.argument("folder", metavar="FOLDER", type=PATH)
@_damage_said
def export(data_dir: Path, folder: Path) -> None:
    """Write the whole book to a new FOLDER as open files, without secrets. The server may go on."""
    from webapp.backups import BOOK_NAME
    from webapp.book.house import journal
    from webapp.keeping.export import export_book

    open_at(data_dir).close()
    said = export_book(data_dir / BOOK_NAME, folder)
    journal.note(data_dir, "took_out", origin="command", about=f"export to {folder}")
    click.echo(f"{said['entries']} entries in {folder}. Its README.txt says how to read it.")
    click.echo(f"Last digest: {said['last_digest']}")


@click.command(name="import")
@data_option
@click.argument("folder", metavar="FOLDER", type=PATH)
def take_in(data_dir: Path, folder: Path) -> None:
    """Make a book of an exported FOLDER in a new data folder, and verify it there."""
    from webapp.book.house import journal
    from webapp.keeping.take_in import take_in as make_book

    said = make_book(folder, data_dir)
    journal.note(data_dir, "restored", origin="command", about=f"export in {folder}")
    same = "Stock and queries came out as they were."
    if not said["is_same_fold"]:
        same = f"Version {said['version']} wrote it; this one works some stock or queries out otherwise. Look at them."
    click.echo(f"{said['entries']} entries, verified, in {data_dir}. {same}")
    click.echo(f"Nobody can sign in yet: cellarslate set-password CODE --data {data_dir}. Let each phone in anew.")


@click.command(name="set-password")
@data_option
@click.argument("code")
def set_password(data_dir: Path, code: str) -> None:
    """Set the password of the person with that CODE, for whoever keeps this computer: the first person, or the last.

    Everybody else sets their own, by an invitation.
    """
    from webapp.book.house import journal, passkeys, people
    from webapp.book.house.passwords import choose_password

    code = code.strip().upper()
    with open_at(data_dir) as book:
        if people.person(book, code) is None:
            raise Sentence(f"There is nobody with the code {code[:12]} in this book. Look under People.")
        password = click.prompt("Password", hide_input=True, confirmation_prompt=True)
        choose_password(book, code, password, by="command line")
        passkeys.end_passkeys(book, code, by="command line")
    journal.note(data_dir, "password", code, "command", "typed at the server")
    click.echo(f"{code} can sign in with it now. Sessions under the old one, and passkeys, have ended.")


ALL = (verify, rebuild, backup, backup_key, authority_key, restore, salvage, rehearse, export, take_in, set_password)
