"""The commands of the group: serve it, verify it, join it from a site, hand in."""

from __future__ import annotations

import time
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import click

from webapp.book.record.errors import BookError
from webapp.cli_parts import PATH, data_option, open_at
from webapp.places import get_user_data_dir

if TYPE_CHECKING:
    from flask import Flask

_group_data = click.option(
    "--data", "data_dir", type=PATH, envvar="CELLARSLATE_GROUP_DATA", default=lambda: get_user_data_dir() / "group",
    show_default="a group folder of its own", help="The folder for the group's keys, people and working books.",
)
_database = click.option(
    "--database", envvar="CELLARSLATE_GROUP_DATABASE", required=True,
    help="PostgreSQL address: postgresql://... A password belongs in the variable or in ~/.pgpass.",
)


@click.command(name="group-serve")
@_group_data
@_database
@click.option("--host", default="0.0.0.0", show_default=True, help="Address to listen at.")  # noqa: S104
@click.option("--port", type=click.IntRange(0, 65535), help="0 takes any free port.")
@click.option("--tls/--plain", "is_tls", default=None, help="TLS, unless only this computer can reach it.")
@click.option("--name", "names", multiple=True, help="A further host name of this computer; repeat for more.")
def group_serve(
    data_dir: Path, database: str, host: str, port: int | None, is_tls: bool | None, names: tuple[str, ...]
) -> None:
    """Serve the group book of several sites, on PostgreSQL."""
    _need_driver()
    from webapp.group.store import open_store
    from webapp.serving.site import choose_site, prepare_names, run_site

    site = choose_site(data_dir, host, port, is_tls=is_tls, trust_port=0)
    data_dir.mkdir(parents=True, exist_ok=True, mode=0o700)
    open_store(database).close()  # said now, in one sentence, not by a worker later
    if site.is_tls:
        prepare_names(site, names)
    run_site(site, greet, FACTORY="webapp.group.app:create_app", DATABASE=database)


@click.command(name="group-verify")
@_database
def group_verify(database: str) -> None:
    """Walk every site's chain in the group book: has anything been changed, taken out or put between?"""
    _need_driver()
    from webapp.group import sites
    from webapp.group.store import open_store

    store = open_store(database)
    try:
        troubles = []
        for row in store.query("SELECT site, name, effective FROM sites ORDER BY name, site"):
            found = sites.check(store, row["site"], row["effective"], datetime.now(UTC))
            place = sites.branches(store.connection(), row["site"])[row["effective"]]
            click.echo(f"{row['name']}: {place['cursor']} entries, last digest {place['digest']}")
            troubles += [f"{row['name']}: {words}" for words in found]
    finally:
        store.close()
    if troubles:
        raise BookError("\n".join(troubles))
    click.echo("Every chain holds.")


@click.command(name="group-copy")
@_database
@click.option("--site", "site_name", required=True, help="The site, by its name or the id of its book.")
@click.argument("file_path", metavar="FILE", type=PATH)
def group_copy(database: str, site_name: str, file_path: Path) -> None:
    """Write what the group has of a site's entries to a FILE, for `cellarslate salvage --rows` at that site."""
    _need_driver()
    from webapp.group import sites
    from webapp.group.store import open_store
    from webapp.keeping.copied_rows import write_rows

    store = open_store(database)
    try:
        found = store.query("SELECT site, effective FROM sites WHERE site = %s OR name = %s", (site_name, site_name))
        if len(found) != 1:
            raise BookError(f"{len(found)} sites go by {site_name[:80]}. `cellarslate group-verify` lists them all.")
        site, branch = str(found[0]["site"]), int(found[0]["effective"])
        count = write_rows(file_path, site, sites.walk(store, site, branch))
    finally:
        store.close()
    click.echo(f"{count} entries of {site} are in {file_path}. Take it to the site: cellarslate salvage --rows FILE")


@click.command(name="group-join")
@data_option
@click.option("--to", "url", required=True, help="The group's address, https://...")
@click.option("--code", required=True, help="The one-time code that the group's office made.")
@click.option("--fingerprint", default="", help="Of the group's own authority, as its Sites page shows it.")
def group_join(data_dir: Path, url: str, code: str, fingerprint: str) -> None:
    """Let this site's book into a group: from then on `serve` hands in to it."""
    from webapp.book.house import registry
    from webapp.group import way
    from webapp.group.sender import NoAnswer

    with open_at(data_dir) as book:
        name = registry.site(book).get("name")
        if not name:
            raise BookError("This book has no name yet, and papers between sites are joined by it. Set the house's "
                            "name under Settings, or with `cellarslate set-up`.")
        try:
            way.join(data_dir, url, code, name, fingerprint)
        except NoAnswer as error:
            raise BookError(str(error)) from error
        registry.set_site(book, {"group": url.rstrip("/")}, by="command line")
    click.echo("Joined. `cellarslate serve` hands in from its next start on; `cellarslate group-send` does so now.")


@click.command(name="group-send")
@data_option
@click.option("--to", "url", default="", help="The group's address; left out: the one that was joined.")
@click.option("--every", "every_s", type=click.FloatRange(1), help="Go on, every so many seconds.")
def group_send(data_dir: Path, url: str, every_s: float | None) -> None:
    """Hand in to the group what it has not got of this site's book. The server may go on meanwhile."""
    from webapp.group import way
    from webapp.group.sender import NoAnswer, send

    carrier = way.load_way(data_dir, url)
    if carrier is None:
        raise BookError("This book has not joined that group. Join with `cellarslate group-join` first.")
    with open_at(data_dir) as book:
        while True:
            try:
                report = send(book, carrier)
                click.echo(report.words)
                is_done = not report.troubles
            except NoAnswer as error:
                click.echo(str(error), err=True)
                is_done = False
            if every_s is None:
                raise SystemExit(0 if is_done else 1)
            time.sleep(every_s)


def greet(app: Flask) -> None:
    """In the group server's worker: say how to begin where nobody can sign in yet."""
    from webapp.access.pages import setup_code

    code = setup_code(app)
    if code:
        click.echo(f"Nobody can sign in yet. Open {app.config['SITE_URL']}set-up?code={code}")


def send_beside(app: Flask) -> None:
    """In a site's worker: hand in to the group beside serving, if the site's setting names one."""
    from webapp.book.house import registry

    book = app.extensions["book"]
    url = registry.site(book).get("group")
    if not url:
        return
    from webapp.group import way
    from webapp.group.sender import Sending

    carrier = way.load_way(Path(app.config["DATA_DIR"]), str(url))
    if carrier is None:
        click.echo(f"The site's setting names the group {url}, but this folder has not joined it. Join it anew.")
        return
    app.extensions["group_sender"] = Sending(book, carrier, witnesses=app.extensions["witnesses"])
    app.extensions["group_sender"].start()


def _need_driver() -> None:
    try:
        import psycopg  # noqa: F401
    except ImportError as error:
        words = "The group book needs one more part: pip install '.[group]', where you installed it."
        raise BookError(words) from error
