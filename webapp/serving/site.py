"""One running site: its address, its names, and the lines printed when it starts."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING
from urllib.parse import urlsplit

import click

from webapp.durable import write_whole
from webapp.serving.addresses import is_loopback, list_lan_addresses, list_own_names, write_url
from webapp.serving.behind import is_public_address
from webapp.serving.certificates import HouseCertificate, get_authority, is_permitted, list_site_names
from webapp.serving.named_certificate import BadCertificate, NamedCertificate
from webapp.serving.phone_trust import TRUST_PATH, start_trust_listener, write_fingerprint, write_groups
from webapp.serving.server import CannotServe, check_port, find_free_port, serve
from webapp.serving.terminal import print_qr

if TYPE_CHECKING:
    from flask import Flask

HTTPS_PORT = 8443
HTTP_PORT = 8080
_URL_NAME = "served-at.txt"
_EVERY_ADDRESS = ("0.0.0.0", "::")  # noqa: S104


@dataclass(frozen=True)
class Site:
    """Where the server listens; `trust_port` 0 means that no trust page is served.

    `public_url` is where a web server in front of it is reached, which speaks TLS for it; empty where there is none.
    `named` is a certificate of a name of the house's own, and `name` the one it is reached by; without, the house's own
    authority vouches for it.
    """

    data_dir: Path
    host: str
    port: int
    is_tls: bool
    trust_port: int = 0
    public_url: str = ""
    named: NamedCertificate | None = None
    name: str = ""

    def list_hosts(self) -> list[str]:
        """Return the names and addresses that reach this server, the best known first."""
        if self.named:
            return [self.name]
        if self.host not in _EVERY_ADDRESS:
            return [self.host]
        return [*list_lan_addresses(), *self._list_names(), "localhost", "127.0.0.1"]

    @property
    def url(self) -> str:
        """The address to type or scan."""
        if self.public_url:
            return self.public_url
        return write_url(self.list_hosts()[0], self.port, is_tls=self.is_tls)

    def list_origins(self) -> list[str]:
        """Return the origins of the names that are this server's own, as browsers write them."""
        if self.public_url:
            return [self.public_url.rstrip("/").lower()]
        names = [self.name] if self.named else [self.host] if self.host not in _EVERY_ADDRESS else self._list_names()
        if not self.named and (is_loopback(self.host) or self.host in _EVERY_ADDRESS):
            names = [*names, "localhost"]
        return [write_url(name, self.port, is_tls=self.is_tls).rstrip("/").lower() for name in names]

    @property
    def trust_url(self) -> str | None:
        """Where a new phone fetches the certificate, if it can."""
        if not self.trust_port:
            return None
        return write_url(self.list_hosts()[0], self.trust_port, is_tls=False).rstrip("/") + TRUST_PATH

    def _list_names(self) -> list[str]:
        return [*list_site_names(get_authority(self.data_dir)), *list_own_names()] if self.is_tls else []


@dataclass(frozen=True)
class Front:
    """Where the printed address leads, below the root of the site: `page`, and for phones `phone`.

    `here_port` is a port of plain http for this computer alone, beside one of TLS; 0 where there is none.
    """

    page: str = ""
    phone: str = ""
    here_port: int = 0


NO_FRONT = Front()


def choose_site(
    data_dir: Path, host: str, port: int | None, *, is_tls: bool | None, trust_port: int, public_url: str = ""
) -> Site:
    """Return the site for the options given; raise CannotServe where they do not go together.

    Plain http is for this computer alone: elsewhere phones refuse to work offline and to open the camera,
    and figures and passwords could be read on the way.
    """
    is_local = is_loopback(host)
    if public_url:
        if not is_local or is_tls:
            raise CannotServe("Behind another web server listen to that one only: --host 127.0.0.1, without --tls.")
        if not is_public_address(public_url):
            raise CannotServe("Give --behind-proxy the public address, such as https://log.stillhouse.example.")
        return Site(data_dir, host, port or HTTP_PORT, False, 0, public_url.rstrip("/") + "/")
    if is_tls is False and not is_local:
        raise CannotServe("Plain http is for this computer only. Leave --plain out, or use --host 127.0.0.1.")
    is_tls = not is_local if is_tls is None else is_tls
    if port is None:
        port = HTTPS_PORT if is_tls else HTTP_PORT
    return Site(
        data_dir, host, port or find_free_port(), is_tls, trust_port if is_tls and not is_local else 0
    )


def choose_named_site(
    data_dir: Path, host: str, port: int | None, certificate_path: Path, key_path: Path, names: tuple[str, ...] = ()
) -> Site:
    """Return the site that is served under a certificate of the house's own name; raise CannotServe where it is none.

    The first of `names` is the one it is reached by, else the first that the certificate names in full. No trust page:
    phones trust such a certificate as it is.
    """
    named = NamedCertificate(certificate_path, key_path)
    try:
        said = named.read()
    except BadCertificate as error:
        raise CannotServe(str(error)) from error
    outside = [name for name in names if not said.covers(name)]
    if outside:
        raise CannotServe(f"The certificate is for {', '.join(said.names)}, not for {outside[0]}. Have it made anew.")
    in_full = [*names, *(name for name in said.names if not name.startswith("*."))]
    if not in_full:
        raise CannotServe(f"The certificate is for {said.names[0]}. Say by --name which of these phones are to use.")
    return Site(data_dir, host, port or HTTPS_PORT, True, named=named, name=in_full[0].lower().rstrip("."))


def prepare_names(site: Site, names: tuple[str, ...]) -> None:
    """Make the site's authority for these names, or check that the existing one covers them."""
    authority = get_authority(site.data_dir, list(names))
    if site.host not in _EVERY_ADDRESS and not is_permitted(authority, site.host):
        raise CannotServe(
            f"The site's own certificate covers private networks, and {site.host} is none."
            " For a public address put a web server that has a public certificate in front, and use"
            " --host 127.0.0.1 here."
        )
    unknown = [name for name in names if not is_permitted(authority, name)]
    if unknown:
        raise CannotServe(
            f"This site's certificate authority was made without the name {unknown[0]}. To add it, move the"
            f" folder {site.data_dir / 'tls'} away and start again; each phone must then trust the new one."
        )


def run_site(
    site: Site, greet: Callable[[Flask], None] | None, *, front: Front = NO_FRONT, **config: object
) -> None:
    """Print the site's addresses, then serve it until asked to stop."""
    check_port(site.host, site.port)
    listener = None
    if site.trust_port:
        try:
            listener = start_trust_listener(site.data_dir, site.url + front.phone, site.host, site.trust_port)
        except OSError as error:
            raise CannotServe(
                f"Port {site.trust_port} for the trust page is in use. Set --trust-port; 0 is none."
            ) from error
    announce_site(site, front, read_last_url(site.data_dir))
    write_whole(site.data_dir / _URL_NAME, site.url.encode())
    config = {
        "TLS": site.is_tls or bool(site.public_url),
        "BEHIND_PROXY": bool(site.public_url),
        "PUBLIC_HOST": None if is_loopback(site.host) and not site.public_url else urlsplit(site.url).netloc,
        "SITE_URL": site.url,
        "PASSKEY_ORIGINS": frozenset(site.list_origins()),
        "TRUST_URL": site.trust_url,
        "CERTIFICATE_FILE": site.named.certificate_path if site.named else None,
        **config,
    }
    try:
        serve(
            site.data_dir,
            site.host,
            site.port,
            site.named or (HouseCertificate(site.data_dir, site.list_hosts) if site.is_tls else None),
            greet,
            config=config,
        )
    finally:
        if listener is not None:
            listener.shutdown()
            listener.server_close()


def read_last_url(data_dir: Path) -> str | None:
    """Return the address at which the book was last served, or None if it never was."""
    path = data_dir / _URL_NAME
    return path.read_text("utf-8").strip() if path.exists() else None


def announce_site(site: Site, front: Front = NO_FRONT, last_url: str | None = None) -> None:
    """Print where the site answers, a QR code for phones, and a warning where `last_url` was another."""
    click.echo(f"Book:    {site.data_dir}")
    if front.here_port:
        here = write_url("localhost", front.here_port, is_tls=False)
        click.echo(f"Here:    {here}{front.page} (this computer alone)")
    click.echo(f"Address: {site.url}{front.page}")
    if last_url and last_url != site.url and not is_loopback(urlsplit(last_url).hostname or ""):
        click.echo(f"Before:  {last_url}")
        click.echo(
            "To a phone another address is another book: what waits on it was written for the one before. Where phones"
            " still have that one open, serve it there again, let each hand in, and only then move."
        )
    if site.public_url:
        click.echo(f"The web server in front passes on to http://{site.host}:{site.port}/")
    hosts = [] if site.public_url else site.list_hosts()[1:]
    others = [write_url(host, site.port, is_tls=site.is_tls) for host in hosts]
    if others:
        click.echo(f"Also:    {' '.join(others)}")
    if site.trust_url:
        click.echo(
            "A phone scans this: it learns to trust this computer, and is then let in:" if front.phone else
            "A phone that is new here scans this first, trusts the certificate, then opens the address:"
        )
        print_qr(site.trust_url)
        click.echo(site.trust_url)
        click.echo(f"To compare with what the phone shows: {write_groups(site.data_dir)}")
        click.echo(f"The whole fingerprint: {write_fingerprint(site.data_dir)}")
    click.echo("Stop with Ctrl+C.")
