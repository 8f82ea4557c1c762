"""The command line: set up, serve, and look after the book."""

from pathlib import Path
from typing import Any

import click

from webapp import __version__
from webapp.places import get_user_data_dir

_PATH = click.Path(path_type=Path)
_data_option = click.option(
    "--data",
    "data_dir",
    type=_PATH,
    envvar="CELLARSLATE_DATA",
    default=lambda: get_user_data_dir() / "book",
    show_default="your own data folder",
    help="The folder that holds the book.",
)
_port_option = click.option("--port", type=click.IntRange(0, 65535), help="0 takes any free port.")
_trust_port_option = click.option(
    "--trust-port",
    type=click.IntRange(0, 65535),
    default=8081,
    show_default=True,
    help="Plain port where a new phone fetches the certificate; 0 for none.",
)


class Sentence(click.ClickException):
    """An error as one sentence that says what to do next."""

    exit_code = 2


class Commands(click.Group):
    """Commands whose foreseen errors end in one sentence and exit code 2."""

    def invoke(self, ctx: click.Context) -> Any:
        from webapp.serving.one_server import AlreadyServed
        from webapp.serving.server import CannotServe

        try:
            return super().invoke(ctx)
        except (CannotServe, AlreadyServed) as error:
            raise Sentence(str(error)) from error
        except PermissionError as error:
            raise Sentence(f"No permission to write {error.filename}. Choose another folder with --data.") from error


@click.group(cls=Commands, context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100})
@click.version_option(__version__, prog_name="cellarslate")
def main() -> None:
    """Cellarslate: a floor log for fruit distilleries that works where there is no signal."""


@main.command()
@_data_option
@click.option("--host", default="0.0.0.0", show_default=True, help="Address to listen at.")  # noqa: S104
@_port_option
@click.option("--tls/--plain", "is_tls", default=None, help="TLS, unless only this computer can reach it.")
@click.option("--name", "names", multiple=True, help="A further host name of this computer; repeat for more.")
@_trust_port_option
def serve(
    data_dir: Path, host: str, port: int | None, is_tls: bool | None, names: tuple[str, ...], trust_port: int
) -> None:
    """Serve the book to phones and desks on this network."""
    from webapp.serving.site import choose_site, prepare_names, run_site

    site = choose_site(data_dir, host, port, is_tls=is_tls, trust_port=trust_port)
    make_folder(data_dir)
    if site.is_tls:
        prepare_names(site, names)
    run_site(site)


def make_folder(data_dir: Path) -> None:
    """Make the data folder, for this person's eyes only; end with a sentence where that cannot be."""
    try:
        data_dir.mkdir(parents=True, exist_ok=True, mode=0o700)
    except OSError as error:
        raise Sentence(f"Cannot make the folder {data_dir}: {error.strerror}. Choose another with --data.") from error
