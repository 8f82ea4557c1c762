"""A kind is declared once: what is made of it agrees, and a new kind needs one file and one line, nothing else."""

import csv
import io
import json

import pytest
from flask import Flask

import webapp.kinds
from webapp.kinds import as_data, as_docs, as_form, as_openapi, as_schema
from webapp.kinds.read import read_entry
from webapp.kinds.spec import Field, Figure, Kind
from webapp.places import STATIC_DIR
from webapp.shipping import assets

BROTH = Kind(
    name="broth_check",
    version=1,
    title="Broth check",
    about="A kind that exists in this test only.",
    vessels=("fermenter",),
    fields=(
        Field("warmth", "Warmth of the broth", units=("degC", "degF"), usual=(10, 30), possible=(0, 60),
              required=True, decimals=1),
        Field("colour", "Colour", "choice", choices=(("amber", "amber"), ("green", "green"))),
    ),
    figures=(Figure("twice", "twice", "kg", "net_mass", {"gross": ("=3",), "tare": ("=1",)}),),
    summary="{warmth}",
)


@pytest.fixture
def with_new_kind(monkeypatch):
    # Kinds never change while a server runs, so it reads them once; here they do.
    monkeypatch.setattr(assets, "_data_files", assets._data_files.__wrapped__)
    monkeypatch.setattr(webapp.kinds, "ALL", [*webapp.kinds.ALL, BROTH])


def entry(kind, **values):
    """Return the least of an entry that reading needs."""
    return {"id": "x", "kind": kind.name, "mark": "F1-X", "values": values}


def test_a_new_kind_appears_everywhere(with_new_kind):
    with Flask("test").test_request_context():
        form = as_form.form_class(BROTH)(meta={"csrf": False})
        assert {"warmth", "warmth_unit", "colour", "read_at", "remark"} <= set(form._fields)
    schema = as_schema.values_schema(BROTH)()
    assert schema.validate({}) == {"warmth": ["Missing data for required field."]}
    assert "unit" in schema.validate({"warmth": {"raw": "1", "unit": "kg"}})["warmth"]
    phone = json.loads(json.dumps(as_data.kinds_data()))
    assert phone["kinds"][-1]["fields"][0]["label"] == "Warmth of the broth"
    described = as_openapi.spec()
    assert "BrothCheckValues" in described["components"]["schemas"]
    assert "broth_check" in described["components"]["schemas"]["Entry"]["properties"]["kind"]["enum"]
    assert {"warmth_as_read", "warmth_unit", "warmth_degC", "colour", "twice_kg"} <= set(as_data.csv_heads(BROTH))
    assert "## Broth check" in as_docs.kinds_page()
    read = read_entry(BROTH, entry(BROTH, warmth={"raw": "68", "unit": "degF"}))
    assert read.get("warmth") == pytest.approx(20.0)
    assert not read.problems
    assert as_data.summary(read) == "68 °F"


def test_a_new_kind_is_served_on_the_floor_and_at_the_desk(with_new_kind, tmp_path):
    from webapp import create_app

    app = create_app(tmp_path, testing=True)
    try:
        floor = app.test_client().get("/shell/log/broth_check")
        assert floor.status_code == 200
        assert "Warmth of the broth" in floor.text
        assert "broth_check" in app.test_client().get("/data/kinds.json").text
        assert "broth_check" in app.test_client().get("/api/openapi.json").text
    finally:
        app.extensions["book"].close()


def test_what_is_left_out_for_a_phone_is_what_is_plain():
    phone = json.loads(json.dumps(as_data.kinds_data()))
    for kind, short in zip(webapp.kinds.ALL, phone["kinds"], strict=True):
        parts = {part: [said | one for one in short[part]] for part, said in phone["plain"].items()}
        assert short | parts == as_data.kind_data(kind), kind.name


def test_the_phones_data_changes_its_version_with_any_kind(monkeypatch):
    before = as_data.kinds_data()["version"]
    monkeypatch.setattr(webapp.kinds, "ALL", [*webapp.kinds.ALL, BROTH])
    assert as_data.kinds_data()["version"] != before


def test_two_kinds_of_one_name_are_refused(monkeypatch):
    monkeypatch.setattr(webapp.kinds, "ALL", [BROTH, BROTH])
    with pytest.raises(AssertionError, match="share a name"):
        webapp.kinds.by_name()


@pytest.mark.parametrize("kind", webapp.kinds.ALL, ids=lambda kind: kind.name)
def test_each_kind_is_sound(kind):
    from webapp.book.checks import CHECKS
    from webapp.trade import sums, units

    names = [spec.name for spec in kind.fields]
    assert len(set(names)) == len(names)
    assert set(kind.checks) <= set(CHECKS), "a check is named that does not exist"
    for spec in kind.fields:
        assert (spec.sort == "number") == bool(spec.units), spec.name
        for unit in spec.units:
            assert units.symbol(unit) is not None
        for low, high in (spec.usual, spec.possible):
            assert low is None or high is None or low < high
        if spec.usual != (None, None) and spec.possible != (None, None):
            assert spec.possible[0] is None or spec.usual[0] >= spec.possible[0]
            assert spec.possible[1] is None or spec.usual[1] <= spec.possible[1]
    earlier: set[str] = set()
    for figure in kind.figures:
        assert set(figure.inputs) <= set(sums.SUMS[figure.sum].inputs), figure.name
        for sources in figure.inputs.values():
            assert all(s[0] in "@=" or s in names or s in earlier for s in sources), (figure.name, sources)
        earlier.add(figure.name)
    for rule in kind.rules:
        for side in (rule.left, rule.right):
            assert set(side.split("=")[0].split("|")) <= {*names, *earlier}


@pytest.mark.parametrize("kind", webapp.kinds.ALL, ids=lambda kind: kind.name)
def test_form_schema_and_data_name_the_same_fields(kind):
    names = [spec.name for spec in kind.fields]
    with Flask("test").test_request_context():
        form = as_form.form_class(kind)(meta={"csrf": False})
    assert set(names) <= set(form._fields)
    assert list(as_schema.values_schema(kind)().fields) == names
    assert [spec["name"] for spec in as_data.kind_data(kind)["fields"]] == names
    row = as_data.csv_row(kind, read_entry(kind, entry(kind)), {})
    assert len(row) == len(as_data.csv_heads(kind))


def test_the_reference_page_is_up_to_date():
    page = STATIC_DIR.parent / "docs" / "kinds.md"
    assert page.read_text(encoding="utf-8") == as_docs.kinds_page(), "run: cellarslate write-docs"


def test_a_cell_that_a_spreadsheet_would_run_is_made_text():
    kind = webapp.kinds.get("shift_note")
    for evil in ("=1+1", "+cmd|' /C calc'!A0", "-2+3+cmd", "@SUM(A1)", "\t=1", "\r=1"):
        read = read_entry(kind, entry(kind, text={"raw": evil}))
        out = io.StringIO()
        csv.writer(out).writerow(as_data.csv_row(kind, read, {}))
        cells = next(csv.reader(io.StringIO(out.getvalue())))
        assert not any(cell[:1] in "=+-@\t\r" and cell for cell in cells), cells
    kind = webapp.kinds.get("gauge")
    read = read_entry(kind, entry(kind, temp={"raw": "-3,5", "unit": "degC"}))
    row = dict(zip(as_data.csv_heads(kind), as_data.csv_row(kind, read, {}), strict=True))
    assert row["temp_as_read"] == "-3,5"
    assert row["temp_degC"] == "-3.5"


def test_a_summary_leaves_out_what_was_not_read():
    kind = webapp.kinds.get("cut")
    assert as_data.summary(read_entry(kind, entry(kind, event={"raw": "heat_on"}))) == "heat on"
    kind = webapp.kinds.get("loss")
    gone = entry(kind, cause={"raw": kind.field("cause").choices[0][0]}, whole={"raw": "yes"})
    assert as_data.summary(read_entry(kind, gone)) == kind.field("cause").choices[0][1]
