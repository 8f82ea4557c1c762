"""The desk over a small house: one fermenter with a rising gravity, one run with its cuts, one cask."""

from datetime import UTC, datetime, timedelta

import pytest
from uuid6 import uuid7

from webapp import create_app
from webapp.book import intake
from webapp.book.house import devices, people, registry
from webapp.trade.marks import make_mark

START = datetime(2025, 9, 24, 6, 0, tzinfo=UTC)
F1, S1, R1, R2, R3, C1 = (make_mark(base) for base in ("F1", "S1", "R1", "R2", "R3", "C001"))
PASSWORD = "a long enough secret"


class House:
    """A book with people and vessels, and a phone that hands in."""

    def __init__(self, folder):
        self.app = create_app(folder, testing=True)
        self.book = self.app.extensions["book"]
        self.seq = 0
        registry.set_site(self.book, {"name": "Tarrowdene Orchard Stills", "units": "metric"}, by="OL")
        for code, access in (("NS", "floor"), ("IM", "distiller"), ("OL", "office")):
            people.put_person(self.book, {"code": code, "name": code, "roles": ["hand"], "access": access}, by="OL")
            people.set_password(self.book, code, PASSWORD)
        for mark, sort in ((F1, "fermenter"), (S1, "still"), (R1, "receiver"), (R2, "receiver"), (R3, "receiver")):
            registry.put_vessel(self.book, {"mark": mark, "sort": sort, "capacity_l": 2000}, by="OL")
        registry.put_vessel(self.book, {"mark": C1, "sort": "cask", "capacity_l": 200, "tare_kg": 46.3}, by="OL")
        token = devices.new_token(self.book, by="OL", name="PH-2")
        self.device, _ = devices.enrol_device(self.book, token, "PH-2", START)

    def log(self, kind, mark, minutes, /, **values):
        """Hand in one entry; values are raw, or (raw, unit). Returns the result."""
        self.seq += 1
        at = START + timedelta(minutes=minutes)
        pairs = {name: value if isinstance(value, tuple) else (value,) for name, value in values.items()}
        made = {name: dict(zip(("raw", "unit"), pair, strict=False)) for name, pair in pairs.items()}
        entry = {
            "id": str(uuid7()), "kind": kind, "kind_version": 1, "mark": mark, "mark_by": "scanned",
            "read_at": at.isoformat(), "typed_at": at.isoformat(), "person": "NS", "device": self.device["id"],
            "seq": self.seq, "values": made,
        }
        batch = {"now": at.isoformat(), "device": self.device["id"], "entries": [entry]}
        return intake.hand_in(self.book, batch, via="phone", now=at)["results"][0]

    def client(self, code):
        """Return a browser signed in as this person."""
        client = self.app.test_client()
        answer = client.post(
            "/sign-in", data={"code": code, "password": PASSWORD, "csrf_token": token(client, "/sign-in")}
        )
        assert answer.status_code == 302, answer.text
        return client


def token(client, path):
    """Return the form token that stands in a page."""
    return client.get(path).text.split('name="csrf_token"')[1].split('value="')[1].split('"')[0]


@pytest.fixture
def house(tmp_path):
    house = House(tmp_path)
    yield house
    house.book.close()


@pytest.fixture
def filled(house):
    """A fermenter with pears in it."""
    house.log(
        "fruit_intake", F1, -60, gross=("1700", "kg"), tare=("9", "kg"), material="pear", grower_lot="Ostrey Farm",
        sugar=("12.9", "Bx"), temp=("15", "degC"), rot=("1", "pct"),
    )


@pytest.fixture
def rising(house, filled):
    """Two gravities, the second above the first; returns the second's result."""
    house.log("ferment_reading", F1, 0, temp=("14.0", "degC"), gravity=("1.049", "SG"))
    return house.log("ferment_reading", F1, 1440, temp=("14.6", "degC"), gravity=("1.054", "SG"))
