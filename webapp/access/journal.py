"""What the journal of access is told of a request: who, from where, and what."""

from __future__ import annotations

from flask import Flask, Response, current_app, request

from webapp.access.guard import SAFE, current
from webapp.access.tries import Tries, network_of
from webapp.book.house import journal

# A line a minute for one address and page: what is refused without end fills no disk.
_DOORS = ("access.sign_in", "access.sign_in_by_passkey")  # they note themselves what they refuse
_again = Tries(most=1, window_s=60)


def note(sort: str, who: str = "", about: str = "") -> None:
    """Add a line about this request; `who` is the person signed in where nobody is named."""
    person = current.person
    journal.note(
        current_app.config["DATA_DIR"], sort, who or (person["code"] if person else ""),
        network_of(request.remote_addr), about,
    )


def note_once(sort: str, who: str = "", about: str = "") -> None:
    """Add a line about this request, unless the same came from the same address within the last minute."""
    key = f"{sort}\n{network_of(request.remote_addr)}\n{request.path}"
    if not _again.wait_s(key):
        _again.failed(key)
        note(sort, who, about)


def path_asked() -> str:
    """Return the path that was asked for; of an invitation without its token, which is as good as a password."""
    return "/invitation/…" if request.endpoint == "access.invitation" else request.path


def init_app(app: Flask) -> None:
    """Note what is taken out of the house as a file, and writes that are refused."""

    @app.after_request
    def _look(response: Response) -> Response:
        if response.status_code in (401, 403) and request.method not in SAFE and request.endpoint not in _DOORS:
            note_once("refused", about=f"{request.method} {path_asked()}")
        elif response.status_code == 403 and current.person:
            note_once("not_shown", about=path_asked())
        elif response.status_code == 200 and "attachment" in response.headers.get("Content-Disposition", ""):
            note("took_out", about=request.full_path.rstrip("?"))
        return response
