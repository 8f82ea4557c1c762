"""A disk that keeps account: what SQLite writes, cuts off and syncs, in order, and what a power cut could leave of it.

Python's own SQLite is asked for its way to the disk (its VFS, sqlite.org/c3ref/vfs.html), and a way that notes each
write and then does the same is put before it as the default. So the program under test runs unchanged, with the very
library it ships with. Where that library cannot be reached from outside (it is linked into Python and hides its
functions), `install` raises CannotRecord with a word.

What a power cut leaves, as modelled: of each file all that was written before its last sync, and of what was written
since then, for each sector of 512 bytes by itself, any version there was: so writes are lost, come in another order,
and are torn within a page. A file that grew may have its new length without its new content. A file that was made or
deleted may be there or not, until a sync of its folder. Not modelled: a disk that says it has synced and has not, and
sectors that are torn in themselves.
"""

from __future__ import annotations

import _sqlite3
import ctypes
import random
import sys
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

SECTOR = 512
OK, READONLY, FULL, IOERR_WRITE, IOERR_FSYNC = 0, 8, 13, 10 | 3 << 8, 10 | 4 << 8  # sqlite.org/rescode.html
_READ_ONLY, _READ_WRITE, _CREATE = 1, 2, 4
_MAIN_JOURNAL, _WAL = 0x800, 0x80000  # flags of xOpen, sqlite.org/c3ref/c_open_autoproxy.html
_KEPT_KINDS = 0x100 | _MAIN_JOURNAL | _WAL  # files that outlive a process: database, journal, write-ahead log
P = ctypes.c_void_p


class CannotRecord(Exception):
    """The SQLite of this Python cannot be reached."""


@dataclass(frozen=True)
class Event:
    """Something that happened to a file, by its name. `what`: make, write, cut, sync, delete, or a mark of the test."""

    what: str
    name: str = ""
    at: int = 0
    data: bytes = b""
    mark: Any = None


class _Vfs(ctypes.Structure):
    pass


class _Methods(ctypes.Structure):
    pass


class _File(ctypes.Structure):
    _fields_ = [("methods", ctypes.POINTER(_Methods))]


_F = ctypes.POINTER(_File)
# The name is passed on as the pointer it is: SQLite keeps it, and looks at what lies before it.
_OPEN = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(_Vfs), P, _F, ctypes.c_int, P)
_DELETE = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(_Vfs), ctypes.c_char_p, ctypes.c_int)
_CLOSE = ctypes.CFUNCTYPE(ctypes.c_int, _F)
_WRITE = ctypes.CFUNCTYPE(ctypes.c_int, _F, P, ctypes.c_int, ctypes.c_int64)
_CUT = ctypes.CFUNCTYPE(ctypes.c_int, _F, ctypes.c_int64)
_SYNC = ctypes.CFUNCTYPE(ctypes.c_int, _F, ctypes.c_int)
# sqlite3_vfs, version 3, and sqlite3_io_methods, version 3: their first parts are fixed for ever.
_Vfs._fields_ = [
    ("version", ctypes.c_int), ("file_size", ctypes.c_int), ("path_most", ctypes.c_int), ("next", P),
    ("name", ctypes.c_char_p), ("app_data", P), ("open", _OPEN), ("delete", _DELETE),
    *((name, P) for name in ("access", "full", "dl_open", "dl_error", "dl_sym", "dl_close", "random", "sleep",
                             "time", "last_error", "time64", "set_call", "get_call", "next_call")),
]
_Methods._fields_ = [
    ("version", ctypes.c_int), ("close", _CLOSE), ("read", P), ("write", _WRITE), ("cut", _CUT), ("sync", _SYNC),
    *((name, P) for name in ("size", "lock", "unlock", "reserved", "control", "sector", "traits", "shm_map",
                             "shm_lock", "shm_barrier", "shm_unmap", "fetch", "unfetch")),
]


class Disk:
    """What was noted of the files below one folder. `refuse`: asked before each open, write, sync; says a code or 0."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.events: list[Event] = []
        self.refuse: Callable[[str], int] = lambda _what: OK
        self._lock = threading.Lock()

    def note(self, what: str, name: str = "", at: int = 0, data: bytes = b"", mark: Any = None) -> None:
        """Add an event; a test adds its own marks so."""
        with self._lock:
            self.events.append(Event(what, name, at, data, mark))


@contextmanager
def install(folder: Path) -> Iterator[Disk]:
    """Note what SQLite does to files below this folder, until the end of the block. Open no book across its borders."""
    library = _library()
    library.sqlite3_vfs_find.restype = ctypes.POINTER(_Vfs)
    library.sqlite3_vfs_find.argtypes = [ctypes.c_char_p]
    library.sqlite3_vfs_register.argtypes = [ctypes.POINTER(_Vfs), ctypes.c_int]
    library.sqlite3_vfs_unregister.argtypes = [ctypes.POINTER(_Vfs)]
    found = library.sqlite3_vfs_find(None)
    if not found:
        raise CannotRecord("SQLite names no way to the disk.")
    disk = Disk(folder.resolve())
    shim = _Shim(disk, found)
    _KEPT.append(shim)
    assert library.sqlite3_vfs_register(ctypes.byref(shim.vfs), 1) == OK
    try:
        yield disk
    finally:
        library.sqlite3_vfs_unregister(ctypes.byref(shim.vfs))
        assert library.sqlite3_vfs_register(found, 1) == OK


# Never let go: a connection that nobody closed is closed by the collector, whenever it likes, by this way.
_KEPT: list[_Shim] = []


def _library() -> Any:
    """Return the SQLite that Python's own module uses, not another one that may be on the computer."""
    try:
        if sys.platform == "win32":
            return _with_functions(ctypes.CDLL(str(Path(_sqlite3.__file__).with_name("sqlite3.dll"))))
        # Functions are looked for in the module and in what it was linked with. [dlsym(3)]
        return _with_functions(ctypes.CDLL(_sqlite3.__file__))
    except (OSError, AttributeError) as error:
        raise CannotRecord(f"Python's own SQLite cannot be reached here ({error}).") from error


def _with_functions(library: Any) -> Any:
    for name in ("sqlite3_vfs_find", "sqlite3_vfs_register", "sqlite3_vfs_unregister"):
        getattr(library, name)
    return library


class _Shim:
    """The way that notes. It holds all that C points to, for as long as it is registered."""

    def __init__(self, disk: Disk, found: Any) -> None:
        self._disk, self._real = disk, found
        self._tables: dict[int, _Methods] = {}  # one for each table of the real way
        self._real_tables: dict[int, Any] = {}
        self._files: dict[int, tuple[str, int]] = {}
        self.vfs = _Vfs()
        ctypes.memmove(ctypes.byref(self.vfs), found, ctypes.sizeof(_Vfs))
        self._real_open, self._real_delete = found.contents.open, found.contents.delete
        self.vfs.next, self.vfs.name = None, b"recording"
        self.vfs.open, self.vfs.delete = _OPEN(self._open), _DELETE(self._delete)
        self._write_c, self._cut_c = _WRITE(self._write), _CUT(self._cut)
        self._sync_c, self._close_c = _SYNC(self._sync), _CLOSE(self._close)

    def _name(self, path: int | None, flags: int) -> str:
        """Return the name below the folder; an empty text for files of others and for those that go with a process."""
        if not path or not flags & _KEPT_KINDS:
            return ""
        whole = Path(ctypes.string_at(path).decode())
        return whole.relative_to(self._disk.folder).as_posix() if whole.is_relative_to(self._disk.folder) else ""

    def _open(self, vfs: Any, path: int | None, file: Any, flags: int, out: Any) -> int:
        name = self._name(path, flags)
        if name and self._disk.refuse("open"):  # as a disk that is mounted read-only: SQLite then opens to read alone
            flags = flags & ~(_READ_WRITE | _CREATE) | _READ_ONLY
        is_new = bool(name) and not (self._disk.folder / name).exists()
        code = int(self._real_open(self._real, path, file, flags, out))
        if code or not name or not file.contents.methods:
            return code
        if is_new:
            self._disk.note("make", name)
        table = ctypes.addressof(file.contents.methods.contents)
        if table not in self._tables:
            made = _Methods()
            ctypes.memmove(ctypes.byref(made), table, ctypes.sizeof(_Methods))
            made.write, made.cut, made.sync, made.close = self._write_c, self._cut_c, self._sync_c, self._close_c
            self._tables[table] = made
        at = ctypes.addressof(file.contents)
        self._real_tables[at] = file.contents.methods.contents
        self._files[at] = (name, flags)
        file.contents.methods = ctypes.pointer(self._tables[table])
        return code

    def _delete(self, vfs: Any, path: bytes, sync_folder: int) -> int:
        whole = Path(path.decode())
        code = int(self._real_delete(self._real, path, sync_folder))
        if not code and whole.is_relative_to(self._disk.folder):
            self._disk.note("delete", whole.relative_to(self._disk.folder).as_posix(), at=sync_folder)
        return code

    def _write(self, file: Any, data: int, size: int, at: int) -> int:
        key = ctypes.addressof(file.contents)
        if code := self._disk.refuse("write"):
            return code
        code = int(self._real_tables[key].write(file, data, size, at))
        if not code:
            self._disk.note("write", self._files[key][0], at, ctypes.string_at(data, size))
        return code

    def _cut(self, file: Any, size: int) -> int:
        key = ctypes.addressof(file.contents)
        code = int(self._real_tables[key].cut(file, size))
        if not code:
            self._disk.note("cut", self._files[key][0], size)
        return code

    def _sync(self, file: Any, flags: int) -> int:
        key = ctypes.addressof(file.contents)
        if code := self._disk.refuse("sync"):
            return code
        code = int(self._real_tables[key].sync(file, flags))
        if not code:
            name, kind = self._files[key]
            # A journal that is new has its folder synced with it. [os_unix.c, UNIXFILE_DIRSYNC]
            self._disk.note("sync", name, at=int(bool(kind & (_MAIN_JOURNAL | _WAL))))
        return code

    def _close(self, file: Any) -> int:
        key = ctypes.addressof(file.contents)
        real = self._real_tables.pop(key)
        del self._files[key]
        return int(real.close(file))


class _Sectors:
    """One file as the disk may have it: what is durable, and for each sector what else may be there after a cut."""

    def __init__(self) -> None:
        self.durable = bytearray()
        self.now = bytearray()
        self.sizes: list[int] = []  # each length that it had since the last sync
        self.versions: dict[int, list[bytes]] = {}  # by sector: each content that it had since the last sync

    def write(self, at: int, data: bytes) -> None:
        end = at + len(data)
        if len(self.now) < end:
            self.now.extend(bytes(end - len(self.now)))
            self.sizes.append(end)
        self.now[at:end] = data
        for sector in range(at // SECTOR, (end + SECTOR - 1) // SECTOR):
            content = bytes(self.now[sector * SECTOR : (sector + 1) * SECTOR])
            self.versions.setdefault(sector, []).append(content)

    def cut(self, size: int) -> None:
        del self.now[size:]
        self.sizes.append(size)

    def sync(self) -> None:
        self.durable = bytearray(self.now)
        self.sizes, self.versions = [], {}

    def after_a_cut(self, chance: random.Random, mood: str) -> bytes:
        """Return the bytes of the file after the cut, with `none`, `some` or `all` of its unsynced writes."""
        if mood == "none":
            return bytes(self.durable)
        if mood == "all":
            return bytes(self.now)
        size = chance.choice([len(self.durable), *self.sizes])
        left = bytearray(self.durable[:size].ljust(size, b"\0"))
        kept = chance.random()  # few of them, or most
        for sector, contents in self.versions.items():
            if chance.random() < kept:
                at, content = sector * SECTOR, chance.choice(contents)
                if at < size:
                    left[at : at + len(content)] = content
        return bytes(left[:size])


class Replay:
    """Plays events one after the other, and says at any point what a power cut would leave."""

    def __init__(self) -> None:
        self._files: dict[str, _Sectors] = {}
        self._there: dict[str, _Sectors] = {}  # by name, as the folder has them durably
        self._unsure: dict[str, list[_Sectors | None]] = {}  # by name, what else the folder may say

    def play(self, event: Event) -> None:
        """Take one more event."""
        name = event.name
        if event.what == "make":
            self._files[name] = _Sectors()
            self._unsure.setdefault(name, []).append(self._files[name])
        elif event.what == "write":
            self._of(name).write(event.at, event.data)
        elif event.what == "cut":
            self._of(name).cut(event.at)
        elif event.what == "delete":
            self._files.pop(name, None)
            self._unsure.setdefault(name, []).append(None)
            if event.at:
                self._sync_folder()
        elif event.what == "sync":
            self._of(name).sync()
            if event.at:
                self._sync_folder()

    def _of(self, name: str) -> _Sectors:
        """Return a file; one that Python made before SQLite opened it is noted here."""
        if name not in self._files:
            self.play(Event("make", name))
        return self._files[name]

    def _sync_folder(self) -> None:
        self._there = dict(self._files)
        self._unsure = {}

    def leave(self, folder: Path, chance: random.Random, mood: str) -> None:
        """Write into an empty folder what a power cut at this point leaves."""
        names = {**self._there, **dict.fromkeys(self._unsure)}
        for name in names:
            said: list[_Sectors | None] = [self._there.get(name), *self._unsure.get(name, [])]
            file = said[0] if mood == "none" else said[-1] if mood == "all" else chance.choice(said)
            if file is not None:
                path = folder / name
                path.parent.mkdir(parents=True, exist_ok=True)
                path.write_bytes(file.after_a_cut(chance, mood))
