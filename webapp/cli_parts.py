"""What the commands share: the option for the data folder, sentences as errors, and how a book is opened."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from webapp.places import get_user_data_dir

if TYPE_CHECKING:
    from webapp.book.record.store import Book

PATH = click.Path(path_type=Path)
data_option = click.option(
    "--data",
    "data_dir",
    type=PATH,
    envvar="CELLARSLATE_DATA",
    default=lambda: get_user_data_dir() / "book",
    show_default="your own data folder",
    help="The folder that holds the book.",
)


class Sentence(click.ClickException):
    """An error as one sentence that says what to do next."""

    exit_code = 2


def open_at(data_dir: Path, *, must_exist: bool = True) -> Book:
    """Open the book in that folder; a sentence where there is none."""
    from webapp.backups import BOOK_NAME
    from webapp.book.opening import open_book

    if must_exist:
        need_book(data_dir)
    return open_book(data_dir / BOOK_NAME)


def need_book(data_dir: Path) -> None:
    """Raise a sentence where there is no book in that folder."""
    from webapp.backups import BOOK_NAME

    if not (data_dir / BOOK_NAME).is_file():
        raise Sentence(f"There is no book in {data_dir}. Name its folder with --data.")
