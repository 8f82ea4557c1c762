"""The command that takes a spreadsheet: it looks it over, and puts it in where it is told to."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import click

from webapp.cli_parts import PATH, Sentence, data_option, open_at

if TYPE_CHECKING:
    from webapp.sheets.lookover import Look


@click.command(name="take-sheet")
@data_option
@click.argument("file_path", metavar="FILE", type=PATH)
@click.option("--put", "is_put", is_flag=True, help="Put what fits in the book. Without it nothing is written.")
@click.option("--by", "person", default="", metavar="CODE", help="The person who takes it. Needed with --put.")
@click.option("--days", type=click.Choice(["dmy", "mdy"]), help="The order of day and month in days such as 5/3/2022.")
def take_sheet(data_dir: Path, file_path: Path, is_put: bool, person: str, days: str | None) -> None:
    """Look a spreadsheet FILE over (CSV, XLSX, ODS): every row as it would stand; with --put, put what fits in."""
    from webapp.book.house import people, registry
    from webapp.book.record.errors import BookError
    from webapp.sheets.entering import Stamp
    from webapp.sheets.judge import look_over
    from webapp.sheets.lookover import Told
    from webapp.sheets.putting import put_in
    from webapp.sheets.reading import MOST_BYTES, NoSheet
    from webapp.words import sentence

    try:
        with file_path.open("rb") as file:
            content = file.read(MOST_BYTES + 1)
    except OSError as error:
        raise Sentence(f"{file_path} cannot be read: {error.strerror}.") from error
    told = Told(orders=dict.fromkeys(range(20), days) if days else {})
    with open_at(data_dir) as book:
        known = people.person(book, person.upper()) if person else None
        if (is_put or person) and known is None:
            raise Sentence("Say who takes the sheet: --by with the code of somebody in the book.")
        role = known["roles"][0] if known and known["roles"] else ""
        stamp = Stamp(known["code"] if known else "", role, datetime.now(UTC))
        site = registry.site(book)
        try:
            if not is_put:
                look = look_over(book, file_path.name, content, told, stamp, site)
                click.echo("\n".join(describe(look)))
                click.echo("Nothing was written. Say --put, and --by whom, to put what fits in the book.")
                return
            no, look = put_in(book, file_path.name, content, told, stamp, site)
        except NoSheet as error:
            raise Sentence(sentence(error.said)) from error
        except BookError as error:
            raise Sentence(str(error)) from error
    click.echo("\n".join(describe(look)))
    if no is None:
        click.echo("Nothing in this sheet is new. Nothing was changed.")
    else:
        click.echo(f"Put in as sheet {no}. It can be taken back as a whole at the desk.")


def describe(look: Look) -> list[str]:
    """Return the outcome of a file in lines: each table with its counts, then what does not fit."""
    from webapp.words import sentence

    lines = []
    for part in look.parts:
        called = part.heads.target.title if part.heads else part.name
        counts = [f"{part.count(state)} {word}" for state, word in (
            ("new", "fit"), ("ask", "odd"), ("stop", "do not fit"), ("known", "known already")) if part.count(state)]
        lines.append(f"{called}: {', '.join(counts) or 'no rows'}.")
        lines += [f"  {sentence(said)}" for said in (*part.faults, *part.asks)]
        for row in part.rows:
            for fault in row.faults:
                head = part.heads.of(fault.column) if part.heads else None
                where = f"row {row.number}" + (f", “{head.text}”" if head else "")
                lines.append(f"  {fault.weight} {where}: {sentence(fault.said)}")
    return lines
