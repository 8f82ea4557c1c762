"""What an enclosure is, by its content: never by its name, nor by what its sender says of it.

Beginnings of files: PDF by ISO 32000-1, 7.5.2; Ogg by RFC 3533, 6; Matroska and WebM by RFC 8794, 11.2; MP4 by ISO/IEC
14496-12, 4.3 (`ftyp`). Pictures are what Pillow can decode, whole, in one of three formats.
"""

from __future__ import annotations

import io
import threading
from pathlib import Path
from typing import IO, TYPE_CHECKING, NamedTuple

from webapp.book.record.errors import BookError

if TYPE_CHECKING:
    from PIL import Image

PIXELS_MOST = 60_000_000  # decoded it is three bytes each
THUMB_PX = 240
DESK_PX = 2_400  # the longer side of a picture that is added at the desk
_HEAD_BYTES = 64
_decoding = threading.Lock()  # one picture at a time is in memory with all its points
_PICTURES = {"JPEG": "image/jpeg", "PNG": "image/png", "WEBP": "image/webp"}
NO_SORT = (
    "The book keeps pictures (JPEG, PNG, WebP), PDF and voice notes (Ogg, WebM, MP4). This file is none of them. Save "
    "it as one, then add it again."
)
_NO_PICTURE = "This picture cannot be read to its end. Take it again, or save it anew, then add it."
_TOO_MANY_PIXELS = f"This picture has more than {PIXELS_MOST // 1_000_000} million points. Make it smaller first."


class Sort(NamedTuple):
    """A sort of content: its media type, the ending of its files, the word for it, and how large one may be. [bytes]"""

    type: str
    ending: str
    word: str
    bytes_most: int


SORTS = {
    sort.type: sort
    for sort in (
        Sort("image/jpeg", "jpg", "picture", 12_000_000),
        Sort("image/png", "png", "picture", 12_000_000),
        Sort("image/webp", "webp", "picture", 12_000_000),
        Sort("application/pdf", "pdf", "PDF", 20_000_000),
        Sort("audio/ogg", "ogg", "voice note", 6_000_000),
        Sort("audio/webm", "webm", "voice note", 6_000_000),
        Sort("audio/mp4", "m4a", "voice note", 6_000_000),
    )
}
BYTES_MOST = max(sort.bytes_most for sort in SORTS.values())


class Refused(BookError):
    """What is no enclosure, with a sentence that says what to do. It stays refused however often it comes."""


def sort_of_head(head: bytes) -> Sort | None:
    """Return the sort of content that begins with these bytes, or None."""
    if head.startswith(b"\xff\xd8\xff"):
        return SORTS["image/jpeg"]
    if head.startswith(b"\x89PNG\r\n\x1a\n"):
        return SORTS["image/png"]
    if head[:4] == b"RIFF" and head[8:12] == b"WEBP":
        return SORTS["image/webp"]
    if head.startswith(b"%PDF-"):
        return SORTS["application/pdf"]
    if head.startswith(b"OggS"):
        return SORTS["audio/ogg"]
    if head.startswith(b"\x1a\x45\xdf\xa3") and b"webm" in head:
        return SORTS["audio/webm"]
    return SORTS["audio/mp4"] if head[4:8] == b"ftyp" else None


def check_content(path: Path) -> Sort:
    """Return the sort of a file by its content; raise Refused where the book keeps no such thing, or not so large."""
    with path.open("rb") as file:
        sort = sort_of_head(file.read(_HEAD_BYTES))
    if sort is None:
        raise Refused(NO_SORT)
    if path.stat().st_size > sort.bytes_most:
        raise Refused(too_large(sort))
    if sort.type.startswith("image/"):
        with path.open("rb") as file, _decoding, _open_picture(file) as picture:
            if _PICTURES.get(str(picture.format)) != sort.type:
                raise Refused(NO_SORT)
    return sort


def too_large(sort: Sort) -> str:
    """Return the sentence for what is larger than its sort may be."""
    return f"A {sort.word} has at most {sort.bytes_most // 1_000_000} MB. Make it smaller, then add it again."


def make_thumb(path: Path) -> bytes:
    """Return a small JPEG of a picture, upright."""
    with path.open("rb") as file, _decoding, _open_picture(file, THUMB_PX) as picture:
        return _as_jpeg(picture, THUMB_PX, 70)


def without_place(picture_bytes: bytes) -> bytes:
    """Return a picture drawn anew as a JPEG of DESK_PX at most: upright, without place, camera or any other words.

    Raises Refused where it cannot be read.
    """
    with _decoding, _open_picture(io.BytesIO(picture_bytes), DESK_PX) as picture:
        return _as_jpeg(picture, DESK_PX, 85)


def _open_picture(file: IO[bytes], px: int = 0) -> Image.Image:
    """Return a picture that has been decoded to its end; `px`: as small as it may be decoded."""
    from PIL import Image  # seldom: a start does without it

    # Pillow warns of many points as soon as a head is read; how many are too many is said below, before any is decoded.
    Image.MAX_IMAGE_PIXELS = None
    try:
        picture = Image.open(file, formats=tuple(_PICTURES))
        if picture.width * picture.height > PIXELS_MOST:
            raise Refused(_TOO_MANY_PIXELS)
        if px:
            picture.draft("RGB", (px, px))
        picture.load()
    except Refused:
        raise
    except Exception as error:  # a decoder answers a spoilt file with whatever it ran into
        raise Refused(_NO_PICTURE) from error
    return picture


def _as_jpeg(picture: Image.Image, px: int, quality: int) -> bytes:
    from PIL import Image, ImageOps

    if picture.mode not in ("RGB", "L", "RGBA"):
        picture = picture.convert("RGBA")
    picture.thumbnail((px, px))
    upright = ImageOps.exif_transpose(picture).convert("RGBA")
    # On a new sheet: what a file says beside its picture, such as a comment, does not come along.
    drawn = Image.new("RGB", upright.size, "white")
    drawn.paste(upright, mask=upright.getchannel("A"))
    made = io.BytesIO()
    drawn.save(made, "JPEG", quality=quality, optimize=True)
    return made.getvalue()
