"""The journal of access: who came in, who was sent away, and what left the house. For the office alone."""

from __future__ import annotations

import json
from collections.abc import Iterator

from flask import Response, current_app, render_template, request

from webapp.access import needs
from webapp.access.again import fresh
from webapp.book.house import journal
from webapp.desk.blueprint import bp

_MOST = 300


@bp.get("/access")
@needs("office")
def access_page() -> str:
    """List the newest lines; of one sort or one person where they are asked for."""
    sort, who = request.args.get("sort", ""), request.args.get("who", "").strip().upper()
    folder = current_app.config["DATA_DIR"]
    return render_template(
        "desk/house/access.html", lines=journal.lines(folder, most=_MOST, sort=sort, who=who), sorts=journal.SORTS,
        sort=sort, who=who, most=_MOST, days=journal.KEPT_DAYS,
    )


@bp.get("/access.jsonl")
@needs("office")
@fresh
def access_lines() -> Response:
    """Send all lines, oldest first, each as JSON: what a collector of logs reads."""
    folder = current_app.config["DATA_DIR"]

    def told() -> Iterator[str]:
        for line in journal.all_lines(folder):
            yield json.dumps(line, ensure_ascii=False) + "\n"

    headers = {"Content-Disposition": 'attachment; filename="cellarslate-access.jsonl"'}
    return Response(told(), mimetype="application/jsonl", headers=headers)
