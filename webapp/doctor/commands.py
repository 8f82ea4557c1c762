"""The command `doctor`: look at all that phones and the book depend on, and say the next step for each trouble."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import click

from webapp.cli_parts import data_option
from webapp.doctor.finding import Weight

_SIGNS = {Weight.WELL: "ok  ", Weight.LOOK: "look", Weight.BAD: "BAD "}


@click.command()
@data_option
@click.option("--url", help="The server's address; left out: where it last ran.")
def doctor(data_dir: Path, url: str | None) -> None:
    """Look at name, address, port, clock, certificate, router, disk and backup, and say what to do.

    Ends with 1 where something is bad, so that a monitor can call it. The server may go on.
    """
    from webapp.doctor.examine import examine
    from webapp.serving.site import read_last_url

    findings = examine(data_dir, url or read_last_url(data_dir), datetime.now(UTC))
    for finding in findings:
        click.echo(f"{_SIGNS[finding.weight]}  {finding.about:<12} {finding.words}")
        if finding.step:
            click.echo(f"{'':<18} -> {finding.step}")
    if any(finding.weight is Weight.BAD for finding in findings):
        raise SystemExit(1)
