"""The command `doctor`: look at all that phones and the book depend on, and say the next step for each trouble."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from pathlib import Path

import click

from webapp.cli_parts import PATH, Sentence, data_option
from webapp.doctor.finding import Weight

_SIGNS = {Weight.WELL: "ok  ", Weight.LOOK: "look", Weight.BAD: "BAD "}


@click.command()
@data_option
@click.option("--url", help="The server's address; left out: where it last ran.")
@click.option("--audit", "audit_path", type=PATH, metavar="FILE", help="A report of pip-audit, as JSON: known holes.")
def doctor(data_dir: Path, url: str | None, audit_path: Path | None) -> None:
    """Look at name, address, port, clock, certificate, router, disk and backup, and say what to do.

    Ends with 1 where something is bad, so that a monitor can call it. The server may go on.
    """
    from webapp.doctor.examine import examine
    from webapp.doctor.libraries import look_at_libraries
    from webapp.serving.site import read_last_url

    # Read first: a report that cannot be read is said before a minute of looking.
    audited = look_at_libraries(audit_path) if audit_path else []
    findings = [*examine(data_dir, url or read_last_url(data_dir), datetime.now(UTC)), *audited]
    for finding in findings:
        click.echo(f"{_SIGNS[finding.weight]}  {finding.about:<12} {finding.words}")
        if finding.step:
            click.echo(f"{'':<18} -> {finding.step}")
    if any(finding.weight is Weight.BAD for finding in findings):
        raise SystemExit(1)


@click.command()
@click.argument("file_path", metavar="FILE", type=PATH)
def sbom(file_path: Path) -> None:
    """Write the list of all libraries that this installation runs on to FILE, as CycloneDX JSON."""
    from webapp.doctor.libraries import bill_of_materials

    made = json.dumps(bill_of_materials(datetime.now(UTC)), indent=1) + "\n"
    try:
        with file_path.open("x", encoding="utf-8", newline="\n") as file:
            file.write(made)
    except FileExistsError:
        raise Sentence(f"{file_path} exists already and is left as it is. Give the list another name.") from None
    click.echo(f"Written: {file_path}")
