"""The command line: set up, serve, and look after the book."""

from __future__ import annotations

import sys
from datetime import UTC, datetime, timedelta
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

import click

from webapp import __version__
from webapp.cli_parts import PATH, Sentence, data_option, open_at
from webapp.doctor.commands import doctor, sbom
from webapp.group.commands import group_copy, group_join, group_send, group_serve, group_verify, send_beside
from webapp.keeping import commands as keeping_commands
from webapp.places import get_user_data_dir
from webapp.sheets.commands import take_sheet

if TYPE_CHECKING:
    from flask import Flask

    from webapp.book.house.devices import DeviceReport

# Who stands beside a change that was made at the command line.
BY_COMMAND_LINE = "command line"

_port_option = click.option("--port", type=click.IntRange(0, 65535), help="0 takes any free port.")
_name_option = click.option(
    "--name", "names", multiple=True, help="A further host name of this computer; repeat for more."
)
_trust_port_option = click.option(
    "--trust-port",
    type=click.IntRange(0, 65535),
    default=8081,
    show_default=True,
    help="Plain port where a new phone fetches the certificate; 0 for none.",
)


class Commands(click.Group):
    """Commands whose foreseen errors end in one sentence and exit code 2."""

    def invoke(self, ctx: click.Context) -> object:
        try:
            return super().invoke(ctx)
        except (click.exceptions.Exit, click.ClickException):  # click's own: said already
            raise
        except PermissionError as error:
            raise Sentence(f"No permission for {error.filename}. Choose another place.") from error
        except OSError as error:
            if error.filename is None:  # no file: a pipe that nobody reads any more is click's own affair
                raise
            raise Sentence(f"{error.filename}: {error.strerror}. Choose another place.") from error
        except Exception as error:
            if sentence := _foreseen(error):
                raise Sentence(sentence) from error
            raise


def _foreseen(error: Exception) -> str:
    """Return the sentence of an error that a room foresees, "" of any other. The rooms are loaded only here."""
    from webapp.book.record.damage import BookDamaged, is_damage
    from webapp.book.record.errors import BookError
    from webapp.keeping.folder_lock import AlreadyServed
    from webapp.serving.named_certificate import BadCertificate
    from webapp.serving.server import CannotServe

    if is_damage(error):
        return str(BookDamaged(error))
    return str(error) if isinstance(error, AlreadyServed | BadCertificate | BookError | CannotServe) else ""


@click.group(cls=Commands, context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100})
@click.version_option(__version__, prog_name="cellarslate")
def main() -> None:
    """Cellarslate: a floor log for fruit distilleries that works where there is no signal."""


@main.command()
@data_option
@click.option("--host", default="0.0.0.0", show_default=True, help="Address to listen at.")  # noqa: S104
@_port_option
@click.option("--tls/--plain", "is_tls", default=None, help="TLS, unless only this computer can reach it.")
@_name_option
@_trust_port_option
@click.option(
    "--behind-proxy", "public_url", default="", metavar="URL",
    help="Another web server on this computer speaks TLS and passes on: the public https address.",
)
@click.option("--certificate", "certificate_path", type=PATH, metavar="FILE", help="Certificate of your own name: PEM.")
@click.option("--key", "key_path", type=PATH, metavar="FILE", help="Its private key: PEM, without a password.")
@click.option("--backup-to", type=PATH, metavar="FOLDER", help="Back up by itself, into this folder on another disk.")
@click.option("--backup-every", type=click.IntRange(1, 720), default=24, show_default=True, help="Hours between two.")
@click.option("--backup-keep", type=click.IntRange(1, 1000), default=14, show_default=True, help="How many are kept.")
@click.option("--backup-identity", type=PATH, metavar="FILE", help="Their private key: each is then opened as well.")
def serve(
    data_dir: Path, host: str, port: int | None, is_tls: bool | None, names: tuple[str, ...], trust_port: int,
    public_url: str, certificate_path: Path | None, key_path: Path | None,
    backup_to: Path | None, backup_every: int, backup_keep: int, backup_identity: Path | None,
) -> None:
    """Serve the book to phones and desks on this network."""
    from dataclasses import replace

    from webapp.keeping.schedule import Plan, read_plan
    from webapp.serving.site import choose_named_site, choose_site, prepare_names, run_site

    if bool(certificate_path) != bool(key_path):
        raise Sentence("A certificate and its key go together: give --certificate and --key.")
    if certificate_path and key_path:
        if public_url or is_tls is False:
            raise Sentence("With --certificate this server speaks TLS itself: leave --behind-proxy and --plain out.")
        site = choose_named_site(data_dir, host, port, certificate_path.absolute(), key_path.absolute(), names)
    else:
        site = choose_site(data_dir, host, port, is_tls=is_tls, trust_port=trust_port, public_url=public_url)
    _make_folder(data_dir)
    if site.is_tls and not site.named:
        prepare_names(site, names)
    plan = Plan(backup_to.absolute(), timedelta(hours=backup_every), backup_keep) if backup_to else read_plan(data_dir)
    if plan and backup_identity:
        plan = replace(plan, identity=backup_identity.absolute())
    run_site(site, _greet, BACKUPS=plan)


@main.command()
@click.option(
    "--data",
    "data_dir",
    type=PATH,
    default=lambda: get_user_data_dir() / "demo",
    show_default="a demo folder of its own",
    help="The folder for the demo's book.",
)
@_port_option
@click.option("--lan", "is_lan", is_flag=True, help="Let phones on this network in, over TLS.")
@click.option("--fresh", "is_fresh", is_flag=True, help="Lay the demo anew, for today; what was typed in it goes.")
@_trust_port_option
def demo(data_dir: Path, port: int | None, is_lan: bool, is_fresh: bool, trust_port: int) -> None:
    """Open an invented distillery, a year and a half of it, to look around and try."""
    from webapp.demo import own
    from webapp.serving.server import check_folder, check_port, find_free_port
    from webapp.serving.site import Front, choose_site, run_site

    host = "0.0.0.0" if is_lan else "127.0.0.1"  # noqa: S104
    site = choose_site(data_dir, host, port, is_tls=None, trust_port=trust_port)
    _make_folder(data_dir)
    # Said before the minute of loading, not after it.
    check_port(site.host, site.port)
    check_folder(data_dir)
    if is_fresh:
        own.clear(data_dir)
    click.echo(_load_demo(data_dir))
    here = 0
    if is_lan:
        here = find_free_port()
        click.echo("Whoever is on this network can come in by its doors: no figure of a real house belongs into it.")
        click.echo("A phone that has tried it: take the certificate off again. It is the demo's own.")
    else:
        click.echo("With --lan at the end, phones on this network can try it too.")
    run_site(site, partial(_open_here, port=here) if here else None, front=Front("demo", "demo/join", here), DEMO=True)


@main.command(name="set-up")
@data_option
@_name_option
def set_up(data_dir: Path, names: tuple[str, ...]) -> None:
    """Begin a book: the house, the first person, and the certificate that phones will trust."""
    from webapp.book.house import people, registry
    from webapp.book.house.passwords import refuse_guessable
    from webapp.serving.certificates import get_authority

    _make_folder(data_dir)
    with open_at(data_dir, must_exist=False) as book:
        if people.people(book):
            raise Sentence(f"The book in {data_dir} is set up already. Serve it with `cellarslate serve`.")
        house = click.prompt("Name of the distillery")
        units = click.prompt("Units", type=click.Choice(["metric", "us"]), default="metric")
        name = click.prompt("Your name")
        code = click.prompt("Your code, as it stands beside entries (2 to 4 letters)").strip().upper()
        password = click.prompt("Password", hide_input=True, confirmation_prompt=True)
        refuse_guessable(password, [code, *name.split(), *house.split()])
        with book.write():
            registry.set_site(book, {"name": house, "units": units}, by=code)
            row = {"code": code, "name": name, "roles": ["master distiller"], "access": "office"}
            people.put_person(book, row, by=code)
            people.set_password(book, code, password)
    get_authority(data_dir, list(names))
    click.echo(f"The book is in {data_dir}. Next: cellarslate serve --data {data_dir}")


@main.command(name="new-phone")
@data_option
@click.option("--url", help="The server's address; left out: where it last ran.")
@click.argument("phone_name")
def new_phone(data_dir: Path, url: str | None, phone_name: str) -> None:
    """Make a one-time code that lets a phone in: scan it with that phone, or type the short one."""
    from webapp.book.house import codes, devices
    from webapp.serving.site import read_last_url
    from webapp.serving.terminal import print_qr

    url = url or read_last_url(data_dir)
    if url is None:
        raise Sentence("This book was not served yet. Start `cellarslate serve` first, or give --url.")
    with open_at(data_dir) as book:
        grant = devices.new_grant(book, by=BY_COMMAND_LINE, name=phone_name)
    root = url.rstrip("/")
    address = f"{root}/enrol/{grant.token}"
    click.echo("Scan this once, with the phone itself:")
    print_qr(address)
    click.echo(address)
    click.echo(f"A phone whose camera does not scan: open {root}/start on it, and type {codes.show_code(grant.code)}")
    click.echo(f"(within {codes.MINUTES} minutes; either way it is good for one phone).")


@main.command()
@data_option
@click.option("--url", help="The server's address; left out: where it last ran.")
@click.argument("code")
def invite(data_dir: Path, url: str | None, code: str) -> None:
    """Make an invitation: a link by which the person of this CODE sets a password of their own."""
    from webapp.book.house import invitations, journal
    from webapp.serving.site import read_last_url

    url = url or read_last_url(data_dir)
    if url is None:
        raise Sentence("This book was not served yet. Start `cellarslate serve` first, or give --url.")
    code = code.strip().upper()
    with open_at(data_dir) as book:
        token = invitations.invite(book, data_dir, code, BY_COMMAND_LINE, datetime.now(UTC))
    journal.note(data_dir, "invited", origin="command", about=code)
    click.echo(f"Good once, for {invitations.GOOD_FOR.days} days. Whoever opens it sets the password of {code}:")
    click.echo(f"{url.rstrip('/')}/invitation/{token}")


@main.command()
@data_option
def phones(data_dir: Path) -> None:
    """List the phones: when each was last heard, and what it has not handed in."""
    from webapp.book.house import devices

    with open_at(data_dir) as book:
        rows = [_write_phone(row) for row in devices.report_devices(book)]
    table = [("name", "state", "last heard, UTC", "clock off, s", "entries", "not handed in"), *rows]
    widths = [max(map(len, column)) for column in zip(*table, strict=True)]
    for row in table:
        click.echo("  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip())


_GROUP = (group_serve, group_verify, group_copy, group_join, group_send)
for _command in (*keeping_commands.ALL, doctor, sbom, take_sheet, *_GROUP):
    main.add_command(_command)


@main.command(name="write-docs")
@click.option(
    "--check", "is_check", is_flag=True, help="Write nothing; fail if a page is not as it should be."
)
def write_docs(is_check: bool) -> None:
    """Write docs/kinds.md and docs/checks.md from the declarations; for a checkout of the source."""
    from webapp.book.as_docs import checks_page
    from webapp.kinds.as_docs import kinds_page

    folder = Path(__file__).resolve().parent.parent / "docs"
    if not folder.is_dir():
        raise Sentence("There is no docs folder here: this is for a checkout of the source.")
    checks = folder / "checks.md"
    before = checks.read_text("utf-8") if checks.exists() else ""
    for name, page in (("kinds.md", kinds_page()), ("checks.md", checks_page(before))):
        path = folder / name
        if is_check and (not path.exists() or path.read_text("utf-8") != page):
            raise Sentence(f"docs/{name} is not what the declarations say. Run `cellarslate write-docs`.")
        if not is_check:
            path.write_text(page, "utf-8", newline="\n")
            click.echo(f"Written: {path}")


@main.command()
@click.argument("language")
@click.option("--all", "is_all", is_flag=True, help="Write every message in English, not only what is missing.")
def words(language: str, *, is_all: bool) -> None:
    """What the catalogue of a language (de, fr, ...) has wrong, and what it lacks, in English."""
    from webapp.words.catalogue import DESK, ENGLISH, desk_text, messages_in
    from webapp.words.needed import NoCatalogue, look_at, needed

    try:
        found = [] if is_all else look_at(language)
    except NoCatalogue as error:
        raise Sentence(str(error)) from error
    wrong = [one for one in found if one.sort != "missing"]
    for one in wrong:
        click.echo(one.shown(language), err=True)
    said: set[str] = set()
    wanted = needed() if is_all else {one.id: one.words for one in found if one.sort == "missing"}
    for_desk = messages_in(desk_text(ENGLISH))
    for id_, text in wanted.items():
        if id_ in for_desk and DESK not in said:
            said.add(DESK)
            click.echo(f"\n{DESK}\n")
        click.echo(f"{id_} = {text}")
    click.echo(f"{language}: {len(wrong)} to put right, {len(wanted)} of {len(needed())} to say.", err=True)
    if found:
        sys.exit(1)


@main.command(name="write-pack")
def write_pack() -> None:
    """Pack the phone's scripts and sheets anew; for a checkout of the source, with Node."""
    from webapp.shipping import build, built

    try:
        build.write_pack()
    except build.CannotBuild as error:
        raise Sentence(str(error)) from error
    click.echo(f"Written: {built.FOLDER}")


def _make_folder(data_dir: Path) -> None:
    """Make the data folder, for this person's eyes only."""
    try:
        data_dir.mkdir(parents=True, exist_ok=True, mode=0o700)
    except OSError as error:
        raise Sentence(
            f"Cannot make the folder {data_dir}: {error.strerror}. Choose another with --data."
        ) from error


def _greet(app: Flask) -> None:
    """In the server's worker: say how to begin where the book knows nobody yet."""
    from webapp.access.pages import setup_code

    code = setup_code(app)
    if code:
        click.echo(f"Nobody is in this book yet. Open {app.config['SITE_URL']}set-up?code={code}")
    send_beside(app)


def _open_here(app: Flask, *, port: int) -> None:
    """In the server's worker: answer this computer itself in plain http too, where no certificate is wanted."""
    import threading

    from werkzeug.serving import make_server

    server = make_server("127.0.0.1", port, app, threaded=True)
    threading.Thread(target=server.serve_forever, name="this computer", daemon=True).start()


def _load_demo(data_dir: Path) -> str:
    """Load the invented distillery unless the folder has it already; return how to sign in."""
    from webapp import demo

    is_read = sys.stderr.isatty()  # in a log the bar would only be noise
    with click.progressbar(length=1, label="Opening the demo", file=sys.stderr, hidden=not is_read) as bar:

        def progress(done: int, total: int, words: str) -> None:
            bar.length, bar.label = total, words
            bar.update(done - bar.pos)

        return demo.load(data_dir, progress, today=datetime.now(UTC).astimezone())


def _write_phone(row: DeviceReport) -> tuple[str, ...]:
    gaps = [str(first) if first == last else f"{first} to {last}" for first, last in row["gaps"]]
    return (
        row["name"],
        "shut out" if row["revoked_at"] else "let in",
        row["heard_at"][:16].replace("T", " ") if row["heard_at"] else "never",
        "" if row["skew_s"] is None else f"{row['skew_s']:+.0f}",
        str(row["entries"]),
        ", ".join(gaps),
    )
