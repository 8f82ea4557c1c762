"""Customers and growers at the desk: added, changed, put out of use, with who did it."""

from webapp.book.house import parties

from .conftest import token


def test_somebody_is_added_changed_and_put_out_of_use(house):
    client = house.client("OL")
    said = {"name": " Ostrey Farm ", "role": "supplier", "address": "Hill 3", "number": "", "note": ""}

    def keep(path, **more):
        return client.post(path, data={**said, **more, "csrf_token": token(client, "/desk/parties/edit")})

    assert keep("/desk/parties/edit").status_code == 302
    again = keep("/desk/parties/edit")
    assert again.status_code == 422 and "there already as a supplier" in again.text
    assert keep("/desk/parties/edit", role="customer").status_code == 302, "who sells may buy too"
    own = "/desk/parties/edit?name=Ostrey+Farm&role=supplier"
    assert "Hill 3" in client.get(own).text
    # The name stays whatever is sent: papers call them by it.
    assert keep(own, name="Somebody Else", address="Hill 4", retired="y").status_code == 302
    kept = parties.party(house.book, "Ostrey Farm", "supplier")
    assert kept["address"] == "Hill 4" and kept["retired"] == 1
    assert parties.party(house.book, "Somebody Else", "supplier") is None
    assert parties.party(house.book, "Ostrey Farm", "customer")["retired"] == 0
    page = client.get("/desk/parties").text
    assert page.count("Ostrey Farm</a>") == 2 and 'class="struck"' in page
    assert [row["person"] for row in house.book.query("SELECT person FROM changes WHERE what = 'party'")] == ["OL"] * 3


def test_who_may_and_who_is_nobody(house):
    assert house.client("IM").get("/desk/parties/edit").status_code == 403
    client = house.client("OL")
    assert client.get("/desk/parties/edit?name=Nobody&role=customer").status_code == 404
    answer = client.post("/desk/parties/edit", data={
        "name": "   ", "role": "supplier", "csrf_token": token(client, "/desk/parties/edit"),
    })
    assert answer.status_code == 422
