"""What a page needs seldom is loaded for it alone: starting costs memory on a small computer, every day."""

import subprocess
import sys
from pathlib import Path

SELDOM = ("highspy", "reportlab")

_OPEN_A_PAGE = """
import sys
from webapp import create_app
client = create_app("book", testing=True).test_client()
assert client.get("/shell/today").status_code == 200
assert client.get("/sw.js").status_code == 200
print(*(name for name in sys.argv[1:] if name in sys.modules))
"""


def test_no_floor_page_loads_the_optimiser_or_the_printer(tmp_path: Path) -> None:
    command = [sys.executable, "-c", _OPEN_A_PAGE, *SELDOM]
    done = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, check=True)
    assert done.stdout.split() == []
