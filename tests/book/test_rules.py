"""Other rules put the whole book on the list; worked off amid hand-ins it is what a rebuild gives, and it says so."""

from __future__ import annotations

import ast
import random
import tempfile
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, example, given, settings
from hypothesis import strategies as st

from tests.book import oracle
from tests.book.conftest import C1, F1, NOW, T1, VESSELS, answer, fill_world, gauge, reading, send
from tests.book.test_convergence import SKEWS, check_book, make_story
from tests.book.test_unjudged import CHANGES
from webapp.book import checks, verification
from webapp.book.before.limits import LIMITS
from webapp.book.fold import differences, families, fold, judgings, replay, rules, unjudged
from webapp.book.fold.evaluate import FAULT
from webapp.book.opening import open_book
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.kinds.message import as_said

# What the fold imports and what decides nothing: the file itself, what is held in memory, what is noted beside.
PLUMBING = {
    "book/__init__.py", "book/fold/__init__.py", "book/fold/differences.py", "book/fold/judgings.py",
    "book/fold/rules.py", "book/record/__init__.py", "book/record/changes.py", "book/record/errors.py",
    "book/record/enclosed.py", "book/record/memory.py", "book/record/seals.py", "book/record/store.py", "__init__.py",
}


SENTENCES = "words/"  # the fold keeps what is meant; how it is said in a language is no rule


def imported_by(path: Path) -> Iterator[Path]:
    """Yield the files of the program that a file imports."""
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        names = []
        if isinstance(node, ast.ImportFrom) and node.module:
            names = [node.module, *(f"{node.module}.{alias.name}" for alias in node.names)]
        elif isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        for name in names:
            base = rules.WEBAPP_DIR.parent.joinpath(*name.split("."))
            if name.startswith("webapp.") and base.with_suffix(".py").is_file():
                yield base.with_suffix(".py")
            elif name.startswith("webapp.") and (base / "__init__.py").is_file():
                yield base / "__init__.py"


def test_all_that_the_fold_imports_is_of_its_rules_or_is_known_to_decide_nothing() -> None:
    seen: set[Path] = set()
    todo = [rules.WEBAPP_DIR / "book/fold/fold.py"]
    while todo:
        path = todo.pop()
        name = path.relative_to(rules.WEBAPP_DIR).as_posix()
        if path not in seen and name not in PLUMBING and not name.startswith(SENTENCES):
            seen.add(path)
            todo += imported_by(path)
    hashed = {file for part in rules.PARTS for file in rules.files_of(part)}
    assert seen - hashed == set()
    assert {path.suffix for path in hashed} == {".py", ".json"}, "the tables are rules too"


@pytest.fixture
def source(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A program of one file."""
    path = tmp_path / "kinds" / "gauge.py"
    path.parent.mkdir()
    text = '"""A gauge."""\n\ndef check(x):\n    """Say whether it is."""\n    return x > 3  # usual\n'
    text += "\n\nclass Scale:\n    most = 5\n\n\ndef warn():\n    ring()\n"
    path.write_text(text, "utf-8")
    monkeypatch.setattr(rules, "WEBAPP_DIR", tmp_path)
    monkeypatch.setattr(rules, "PARTS", {"kinds": ("kinds",)})
    return path


def fresh() -> rules.Rules:
    return rules.current_rules.__wrapped__()


@pytest.mark.parametrize(("old", "new", "is_same"), [
    ("# usual", "# trade practice", True), ("A gauge.", "A gauge of a tank.", True), ("\n\n", "\n\n\n\n", True),
    ("\n", "\r\n", True), ("Say whether it is.", "Say if it is.", True), ("> 3", ">= 3", False), ("3", "4", False),
    ("most = 5", "most = 6", False), ("ring()", "blink()", False),
])
def test_comments_docstrings_and_layout_are_no_rules(source: Path, old: str, new: str, is_same: bool) -> None:
    before = fresh()
    digest = before.digest
    source.write_bytes(source.read_bytes().replace(old.encode(), new.encode()))
    assert fresh().source != before.source
    assert (fresh().digest == digest) is is_same


def test_a_number_counted_up_by_hand_makes_other_rules(source: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    digest = fresh().digest
    monkeypatch.setattr(rules, "NUMBER", rules.NUMBER + 1)
    assert fresh().digest != digest


class Program:
    """Programs of several versions on one book, one after the other."""

    def __init__(self, path: Path, patch: pytest.MonkeyPatch) -> None:
        self._path, self._patch = path, patch

    def open(self, name: str) -> Book:
        """Open the book as the program of that name."""
        made = rules.Rules(rules.NUMBER, name)
        made.__dict__["parts"] = {"checks": name, "kinds": "same"}
        self._patch.setattr(rules, "current_rules", lambda: made)
        return open_book(self._path)

    def ask(self, code: str, weight: str = "stop") -> None:
        """From now on every reading of this program is asked something new."""

        def new_check(read: Any, view: Any) -> Any:
            if read.kind.name == "gauge":
                yield checks.Query(code, weight, "", as_said("Is that so?"))

        self._patch.setitem(checks.CHECKS, "instrument", new_check)


@pytest.fixture
def program(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Program:
    monkeypatch.setattr(replay, "SLICE_S", 0.0)
    monkeypatch.setattr(replay, "SLICE_LEAST", 1)
    made = Program(tmp_path / "book.db", monkeypatch)
    with made.open("old") as book:
        fill_world(book)
        send(book, *[gauge(T1, "300", seq=n, read_at=NOW - timedelta(days=9 - n)) for n in range(1, 5)])
        send(book, *[reading(F1, f"1.04{9 - n}", seq=10 + n, read_at=NOW - timedelta(days=9 - n)) for n in range(4)])
    return made


def test_a_book_opened_by_the_same_program_has_nothing_to_judge(program: Program) -> None:
    with program.open("old") as book:
        assert unjudged.count_left(book) == 0
        (only,) = judgings.judgings(book)
        assert only.done_at and differences.count_unread(book) == {}


def test_a_comment_changed_is_noted_and_nothing_is_judged(program: Program, monkeypatch: pytest.MonkeyPatch) -> None:
    with program.open("old"):
        pass
    told = rules.Rules(rules.NUMBER, "with another comment")
    told.__dict__["parts"] = {"checks": "old", "kinds": "same"}
    monkeypatch.setattr(rules, "current_rules", lambda: told)
    with open_book(program._path) as book:
        assert unjudged.count_left(book) == 0
        assert [one.source for one in judgings.judgings(book)] == ["with another comment"]


def test_other_rules_put_everything_on_the_list_and_a_kill_loses_nothing(program: Program) -> None:
    program.ask("strange_gauge")
    with program.open("new") as book:
        assert unjudged.count_left(book) == 8
        unjudged.judge_slice(book)
        assert 0 < unjudged.count_left(book) < 8
    with program.open("new") as book:  # it goes on where it was
        assert 0 < unjudged.count_left(book) < 8
        assert judgings.judgings(book)[0].done_at is None
        unjudged.judge_all(book)
        assert judgings.judgings(book)[0].done_at is not None
        kept = fold.dump(book)
        fold.rebuild(book)
        assert fold.dump(book) == kept
        assert verification.verify(book) == []


def test_an_older_program_judges_all_by_its_own_rules_again(program: Program, monkeypatch: pytest.MonkeyPatch) -> None:
    with program.open("old") as book:
        before = fold.dump(book)
    with monkeypatch.context() as patch:
        Program(program._path, patch).ask("strange_gauge")
        with Program(program._path, patch).open("new") as book:
            unjudged.judge_all(book)
            assert fold.dump(book) != before
    with program.open("old") as book:
        assert unjudged.count_left(book) == 8
        unjudged.judge_all(book)
        assert fold.dump(book) == before
        assert [one.source for one in judgings.judgings(book)] == ["old", "new", "old"]


def test_what_came_out_otherwise_is_said_entry_by_entry_until_somebody_has_read_it(program: Program) -> None:
    program.ask("strange_gauge")
    with program.open("new") as book:
        assert differences.count_unread(book) == {}, "not before all is judged"
        unjudged.judge_all(book)
        judging = judgings.judgings(book)[0]
        assert differences.count_unread(book) == {judging.no: 4}
        found = differences.list_differences(book, judging)
        assert [[one.code for one in each.came] for each in found] == [["strange_gauge"]] * 4
        changed = [each for each in found if each.is_sum_changed]
        assert changed[0].before.moved and all(each.after.moved == () for each in changed), "a stop moves no stock"
        assert judgings.changed_parts(book, judging) == ["checks"]
        with pytest.raises(BookError):
            differences.note_read(book, 1, "JK", NOW)
        differences.note_read(book, judging.no, "JK", NOW)
        assert differences.count_unread(book) == {}
        last = judgings.judgings(book)[0]
        assert (last.read_by, last.read_at) == ("JK", "2025-09-24T12:00:00Z")
        assert len(differences.list_differences(book, last)) == 4, "it stays on record"


def test_a_hand_in_meanwhile_is_judged_by_the_new_rules_and_is_no_difference(program: Program) -> None:
    program.ask("strange_gauge", "ask")
    with program.open("new") as book:
        late = gauge(T1, "280", seq=90, read_at=NOW - timedelta(days=20))
        results = send(book, late)["results"]
        send(book, answer(late["id"], seq=91))
        assert {one["code"] for one in results[0]["queries"]} >= {"strange_gauge"}
        unjudged.judge_all(book)
        judging = judgings.judgings(book)[0]
        assert late["id"] not in {each.entry for each in differences.list_differences(book, judging)}


def test_a_rebuild_amid_a_judging_says_what_came_out_otherwise_too(program: Program) -> None:
    program.ask("strange_gauge")
    with program.open("new") as book:
        unjudged.judge_slice(book)
        fold.rebuild(book)
        assert list(differences.count_unread(book).values()) == [4] and unjudged.count_left(book) == 0


def test_a_program_left_running_puts_what_it_judges_on_the_list_of_the_newer_one(program: Program) -> None:
    with program.open("old") as old:
        mine = rules.current_rules()
        with program.open("new") as new:
            unjudged.judge_all(new)
            newer = rules.current_rules()
            program._patch.setattr(rules, "current_rules", lambda: mine)
            send(old, gauge(T1, "280", seq=90, read_at=NOW))
            assert unjudged.count_left(old) == 1 and not unjudged.judge_slice(old)
            program._patch.setattr(rules, "current_rules", lambda: newer)
            unjudged.judge_all(new)
            assert unjudged.count_left(new) == 0


# Programs with other defaults, another check, and another rule for where an entry has its place.
VERSIONS: list[dict[str, Any]] = [
    {}, {"limit": ("source_short_pct", 400.0)}, {"limit": ("wash_stop_pct", 5.0), "check": ("late", "stop")},
    {"skew": 0}, {"limit": ("cask_brim", 0.5), "check": ("clock", "stop")},
]


class Versions:
    """Programs of several versions, one of which runs."""

    def __init__(self, patch: pytest.MonkeyPatch) -> None:
        self._patch = patch

    def run(self, n: int) -> None:
        """Run the program of that number."""
        self._patch.undo()
        self._patch.setattr(replay, "SLICE_S", 0.0)
        self._patch.setattr(replay, "SLICE_LEAST", 1)
        told = rules.Rules(n + 1, f"version {n}")
        told.__dict__["parts"] = {}
        self._patch.setattr(rules, "current_rules", lambda: told)
        version = VERSIONS[n]
        if "limit" in version:
            name, value = version["limit"]
            self._patch.setitem(LIMITS, name, replace(LIMITS[name], default=value))
        if "check" in version:
            name, weight = version["check"]
            plain = checks.CHECKS[name]
            heavy = lambda read, view: [checks.Query(q.code, weight, q.field, q.message) for q in plain(read, view)]  # noqa: E731
            self._patch.setitem(checks.CHECKS, name, heavy)
        if "skew" in version:
            for module in (families, oracle):
                self._patch.setattr(module, "order_skew", lambda skew_s: version["skew"])


def live(path: Path, story: list[dict[str, Any]], chance: random.Random, versions: Versions) -> bytes:
    """Hand a story in while programs come and go, slices are worked off, and limits change; return the dump."""
    order, changes = story + chance.sample(story, len(story) // 4), list(CHANGES[:4])
    chance.shuffle(order)
    versions.run(0)
    book = open_book(path)
    fill_world(book, but=chance.sample([row["mark"] for row in VESSELS if row["mark"] != C1], 2))
    while order:
        if changes and chance.random() < 0.2:
            changes.pop(0)(book)
        device = chance.choice(sorted({e["device"] for e in order}))
        batch = [e for e in order if e["device"] == device][: chance.choice((1, 2, 5, 40))]
        send(book, *batch, skew_s=SKEWS[device], device=device)
        for one in batch:
            order.remove(one)
        for _ in range(chance.choice((0, 1, 4))):
            unjudged.judge_slice(book)
        assert book.query("SELECT * FROM queries WHERE code = ?", (FAULT,)) == []
        if chance.random() < 0.3:
            book.close()
            versions.run(chance.randrange(len(VERSIONS)))
            book = open_book(path)
    for change in changes:
        change(book)
    fill_world(book)
    book.close()
    versions.run(len(story) % len(VERSIONS))
    with open_book(path) as book:
        unjudged.judge_all(book)
        assert unjudged.describe_progress(book) == "" and judgings.judgings(book)[0].done_at
        return check_book(book, story)


@settings(
    max_examples=8, deadline=None, phases=(Phase.explicit, Phase.reuse, Phase.generate),
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(seed=st.integers(0, 2**32), size=st.integers(1, 40))
@example(seed=446, size=28)  # a place left on the list by rules before the last
@example(seed=251, size=29)  # a family whose new place lies beyond a seam
def test_programs_that_come_and_go_amid_arrivals_leave_the_fold_of_a_rebuild(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, seed: int, size: int
) -> None:
    story = make_story(random.Random(seed), size)
    dumps = set()
    for way in range(2):
        with tempfile.TemporaryDirectory(dir=tmp_path) as folder:
            dumps.add(live(Path(folder) / "book.db", story, random.Random(seed * 31 + way), Versions(monkeypatch)))
    assert len(dumps) == 1, seed


@settings(
    max_examples=8, deadline=None, phases=(Phase.explicit, Phase.reuse, Phase.generate),
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(seed=st.integers(0, 2**32), size=st.integers(5, 60), new=st.integers(1, len(VERSIONS) - 1))
def test_the_differences_are_those_between_the_two_folds(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, seed: int, size: int, new: int
) -> None:
    """Worked off in slices or folded anew at once: what is listed is what a plain look at both folds finds."""
    story = make_story(random.Random(seed), size)
    with tempfile.TemporaryDirectory(dir=tmp_path) as folder:
        path, versions = Path(folder) / "book.db", Versions(monkeypatch)
        versions.run(0)
        with open_book(path) as book:
            fill_world(book)
            for device, skew_s in SKEWS.items():
                for n in range(0, len(mine := [e for e in story if e["device"] == device]), 40):
                    send(book, *mine[n : n + 40], skew_s=skew_s, device=device)
            before = plain_look(book)
        versions.run(new)
        with open_book(path) as book:
            if seed % 2:
                unjudged.judge_all(book)
            else:
                unjudged.judge_slice(book)
                fold.rebuild(book)
            after = plain_look(book)
            unlike = {entry for entry in {*before, *after} if before.get(entry) != after.get(entry)}
            found = differences.list_differences(book, judgings.judgings(book)[0])
            assert {each.entry for each in found} == unlike


def plain_look(book: Book) -> dict[str, tuple[list[Any], list[Any]]]:
    """Return of each entry its questions by code and weight, and its flows."""
    looked: dict[str, tuple[list[Any], list[Any]]] = {}
    for row in book.query("SELECT entry, name, code, weight FROM queries ORDER BY entry, name"):
        looked.setdefault(row.pop("entry"), ([], []))[0].append(tuple(row.values()))
    for row in book.query("SELECT * FROM flows ORDER BY entry, n"):
        row.pop("n")
        looked.setdefault(row.pop("entry"), ([], []))[1].append(tuple(row.values()))
    return looked
