"""The demo laid once for all tests of its doors, and copied for each that writes."""

import shutil
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient

from tests.desk.conftest import token
from webapp import create_app, demo


@pytest.fixture(scope="session")
def laid(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the demo laid for this moment. Copy it before anything writes into it."""
    folder = tmp_path_factory.mktemp("laid") / "demo"
    demo.load(folder, today=datetime.now(UTC).astimezone())
    return folder


@pytest.fixture
def demo_dir(laid: Path, tmp_path: Path) -> Path:
    """A copy of the demo's folder."""
    return Path(shutil.copytree(laid, tmp_path / "demo"))


@pytest.fixture
def app(demo_dir: Path) -> Iterator[Flask]:
    """The app as the command `demo` makes it."""
    made = create_app(demo_dir, testing=True, DEMO=True)
    yield made
    made.extensions["book"].close()


@pytest.fixture
def tap(app: Flask) -> Callable[..., tuple[FlaskClient, object]]:
    """A function that taps a button of the front page in a new browser, and returns that browser and the answer."""

    def tap_it(path: str, client: FlaskClient | None = None, **boxes: str) -> tuple[FlaskClient, object]:
        client = client or app.test_client()
        return client, client.post(path, data={"csrf_token": token(client, "/demo/"), **boxes})

    return tap_it
