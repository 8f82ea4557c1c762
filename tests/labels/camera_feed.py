"""A fake camera for Chromium: frames or marks into an MJPEG file, which is JPEG pictures one after another.

    make_camera_feed(["F3-8"], tmp_path / "camera.mjpeg")
    launch(playwright, camera_flags(tmp_path / "camera.mjpeg"))
    browser.new_context(permissions=["camera"])

Chromium shows the frames in order, about 30 a second, and starts again at the end.
"""

from collections.abc import Iterable
from pathlib import Path

import cv2
import numpy as np

from tests.labels.scenes import HEIGHT, WIDTH, photograph, printed_label
from webapp.labels import LAYOUTS, LabelItem

QUALITY = 92


def make_camera_feed(
    frames: Iterable[str | np.ndarray], path: Path, *, host: str | None = None, repeat: int = 6, kind: str = "clean"
) -> Path:
    """Write an MJPEG file of frames, each shown `repeat` times; returns its absolute path.

    A frame is a picture (rows, columns) or (rows, columns, 3) of bytes, blue green red, all of one size; or a mark, for
    which its label is printed and photographed in one of the kinds of tests/labels/scenes.py. A host makes it a flat
    label that carries the web address.
    """
    path = Path(path).absolute()
    with path.open("wb") as file:
        for number, frame in enumerate(frames):
            picture = picture_of_mark(frame, host, kind, number) if isinstance(frame, str) else frame
            if picture.ndim == 2:
                picture = cv2.cvtColor(picture, cv2.COLOR_GRAY2BGR)  # Chromium's reader wants three colours.
            settings = [cv2.IMWRITE_JPEG_QUALITY, QUALITY]
            settings += [cv2.IMWRITE_JPEG_SAMPLING_FACTOR, cv2.IMWRITE_JPEG_SAMPLING_FACTOR_420]
            is_done, jpeg = cv2.imencode(".jpg", picture, settings)
            assert is_done
            file.write(jpeg.tobytes() * repeat)
    return path


def picture_of_mark(mark: str, host: str | None = None, kind: str = "clean", seed: int = 0) -> np.ndarray:
    """Return a picture of the printed label of a mark, 720 x 1280, grey, 0 to 255."""
    item = LabelItem(mark, f"Vessel {mark}", "Cellar", curved=host is None)
    return photograph(kind, printed_label(item, LAYOUTS["roll-76x51"], host), seed)


def blank_frame(tone: int = 90) -> np.ndarray:
    """Return a picture with nothing in it."""
    return np.full((HEIGHT, WIDTH), tone, np.uint8)


def camera_flags(path: Path) -> list[str]:
    """Return the flags that make Chromium take the file for its camera, and allow it unasked."""
    return [
        "--use-fake-ui-for-media-stream",
        "--use-fake-device-for-media-stream",
        f"--use-file-for-fake-video-capture={Path(path).absolute()}",
    ]
