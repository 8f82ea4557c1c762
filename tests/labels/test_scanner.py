"""The scanner end to end: a printed label before a fake camera, through getUserMedia, to its mark on the page."""

import itertools

import cv2
import numpy as np
import pytest
import qrcode

from tests.labels.browser import ROOT, launch, serve, watch
from tests.labels.camera_feed import blank_frame, camera_flags, make_camera_feed, picture_of_mark
from tests.labels.scenes import HEIGHT, WIDTH
from webapp.trade.marks import make_mark

PAGE = (ROOT / "tests" / "labels" / "scan_page.html").read_bytes()
MARKS = [make_mark("F3"), make_mark("C031")]


class Scan:
    """A browser with a fake camera on the scan page."""

    def __init__(self, playwright, origin, flags, *, init="", permissions=("camera",), path="/scan"):
        self.browser = launch(playwright, flags)
        self.context = self.browser.new_context(permissions=list(permissions))
        if init:
            self.context.add_init_script(init)
        self.page = self.context.new_page()
        self.requests = []
        self.page.on("request", lambda request: self.requests.append(request.url))
        self.faults = watch(self.page, origin)
        self.page.goto(origin + path)

    def wait(self, kind, count=1, timeout_ms=45_000):
        lines = self.page.locator(f"#told .{kind}")
        lines.nth(count - 1).wait_for(timeout=timeout_ms)
        return lines.all_inner_texts()

    def told(self, kind):
        return self.page.locator(f"#told .{kind}").all_inner_texts()


@pytest.fixture(scope="module")
def origin():
    with serve({"/scan": ("text/html", PAGE)}) as origin:
        yield origin


@pytest.fixture
def open_scan(origin, playwright):
    opened = []

    def start(flags, **options):
        scan = Scan(playwright, origin, flags, **options)
        opened.append(scan)
        return scan

    yield start
    for scan in opened:
        scan.browser.close()
        assert scan.faults == []


def symbol_picture(text: str) -> np.ndarray:
    """Return a picture with any QR symbol in its middle."""
    code = qrcode.QRCode(border=4)
    code.add_data(text)
    code.make()
    small = np.where(np.array(code.get_matrix()), 20, 235).astype(np.uint8)
    side = small.shape[0] * 8
    picture = blank_frame()
    top, left = (HEIGHT - side) // 2, (WIDTH - side) // 2
    picture[top : top + side, left : left + side] = cv2.resize(small, (side, side), interpolation=cv2.INTER_NEAREST)
    return picture


@pytest.mark.parametrize("host", [None, "ELSEWHERE.EXAMPLE:8443"])
def test_a_printed_label_before_the_camera_gives_its_mark(open_scan, tmp_path, host):
    feed = make_camera_feed([blank_frame(), MARKS[0]], tmp_path / "camera.mjpeg", host=host, repeat=30)
    scan = open_scan(camera_flags(feed))
    assert scan.wait("mark") == [MARKS[0]]
    assert scan.told("foreign") == []
    # The address on the label was read, and never asked for: nothing but this site's own files was fetched.
    assert not [url for url in scan.requests if "ELSEWHERE" in url.upper()]
    assert any(url.endswith("zxing_reader.wasm") for url in scan.requests)
    assert scan.page.url.endswith("/scan")


def test_a_mark_that_stays_in_view_is_told_once_and_the_next_one_follows(open_scan, tmp_path):
    feed = make_camera_feed(MARKS, tmp_path / "camera.mjpeg", repeat=45)
    scan = open_scan(camera_flags(feed))
    told = scan.wait("mark", count=3)
    assert set(told) == set(MARKS)
    assert all(one != following for one, following in itertools.pairwise(told))


def test_a_wet_curved_label_is_found_in_a_live_view(open_scan, tmp_path):
    frames = [picture_of_mark(MARKS[1], kind="curved, wet, glare", seed=seed) for seed in range(200, 204)]
    scan = open_scan(camera_flags(make_camera_feed(frames, tmp_path / "camera.mjpeg", repeat=20)))
    assert scan.wait("mark")[0] == MARKS[1]


@pytest.mark.parametrize(
    "text",
    [
        "https://shop.example/offer?id=1",
        "HTTPS://BOOK.EXAMPLE/M/F3-9",
        "F3-9",
        "javascript:alert(1)",
        "WIFI:T:WPA;S:cellar;P:secret;;",
        "<img src=x onerror=alert(1)>",
    ],
)
def test_a_foreign_code_is_reported_and_never_followed(open_scan, tmp_path, text):
    feed = make_camera_feed([symbol_picture(text)], tmp_path / "camera.mjpeg")
    scan = open_scan(camera_flags(feed))
    assert "not one of ours" in scan.wait("foreign")[0]
    scan.page.wait_for_timeout(700)
    assert len(scan.told("foreign")) == 1
    assert scan.told("mark") == []
    assert scan.page.url.endswith("/scan")


def test_two_marks_in_one_view_are_not_guessed_between(open_scan, tmp_path):
    pictures = [picture_of_mark(mark) for mark in MARKS]
    both = np.hstack([cv2.resize(picture, (WIDTH // 2, HEIGHT // 2)) for picture in pictures])
    frame = blank_frame()
    frame[: HEIGHT // 2] = both
    scan = open_scan(camera_flags(make_camera_feed([frame], tmp_path / "camera.mjpeg")))
    scan.page.locator("#told .status", has_text="Several marks are in view").wait_for(timeout=45_000)
    assert scan.told("mark") == []


def test_the_camera_stops_when_the_page_is_hidden(open_scan, tmp_path):
    feed = make_camera_feed([blank_frame()], tmp_path / "camera.mjpeg")
    scan = open_scan(camera_flags(feed))
    scan.wait("ready")
    live = scan.page.evaluate(
        """() => {
          const [track] = document.querySelector("video").srcObject.getTracks();
          const before = track.readyState;
          Object.defineProperty(document, "hidden", { value: true });
          document.dispatchEvent(new Event("visibilitychange"));
          return [before, track.readyState, document.querySelector("video").srcObject];
        }"""
    )
    assert live == ["live", "ended", None]
    assert any("Tap scan to start again" in line for line in scan.told("status"))


def test_stop_gives_the_camera_back_and_the_torch_is_known_by_the_track(open_scan, tmp_path):
    feed = make_camera_feed([blank_frame()], tmp_path / "camera.mjpeg")
    scan = open_scan(camera_flags(feed))
    scan.wait("ready")
    answer = scan.page.evaluate(
        """async () => {
          const [track] = document.querySelector("video").srcObject.getTracks();
          const torch = [scan.torch.available, await scan.torch.set(true)];
          scan.stop();
          return [torch, track.readyState, document.querySelector("video").playsInline];
        }"""
    )
    assert answer == [[False, False], "ended", True]


TORCH = """
  MediaStreamTrack.prototype.getCapabilities = () => ({ torch: true });
  MediaStreamTrack.prototype.applyConstraints = async (wish) => { globalThis.wish = wish; };
"""


def test_the_torch_is_lit_where_the_track_has_one(open_scan, tmp_path):
    feed = make_camera_feed([blank_frame()], tmp_path / "camera.mjpeg")
    scan = open_scan(camera_flags(feed), init=TORCH)
    scan.wait("ready")
    assert scan.page.evaluate("async () => [scan.torch.available, await scan.torch.set(true)]") == [True, True]
    assert scan.page.evaluate("globalThis.wish") == {"advanced": [{"torch": True}]}


@pytest.mark.parametrize(("tone", "told"), [(12, ["once"]), (90, [])])
def test_too_dark_a_picture_is_told_once_and_a_lit_one_never(tone, told, open_scan, tmp_path):
    feed = make_camera_feed([blank_frame(tone)], tmp_path / "camera.mjpeg")
    scan = open_scan(camera_flags(feed))
    scan.wait("ready")
    scan.page.wait_for_timeout(2500)
    assert scan.told("dark") == told


def refusing(name: str) -> str:
    return f"navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('x', '{name}'));"


@pytest.mark.parametrize(
    ("init", "code", "sentence"),
    [
        (refusing("NotAllowedError"), "refused", "Allow it in the browser's settings"),
        (refusing("NotFoundError"), "none", "No camera was found"),
        (refusing("NotReadableError"), "busy", "Another app is using the camera"),
        (refusing("UnknownError"), "other", "did not start"),
        ("Object.defineProperty(navigator, 'mediaDevices', { value: undefined });", "unsupported", "no camera"),
        ("Object.defineProperty(globalThis, 'isSecureContext', { value: false });", "insecure", "https"),
    ],
)
def test_a_camera_that_fails_says_what_to_do(open_scan, init, code, sentence):
    scan = open_scan([], init=init)
    assert scan.wait("refused") == [code]
    (status,) = scan.told("status")
    assert sentence in status
    assert "type the mark" in status.lower()


NATIVE = """
  globalThis.BarcodeDetector = class {
    static async getSupportedFormats() { return %s; }
    async detect() { return [{ rawValue: "%s" }]; }
  };
"""


def test_the_browsers_own_detector_is_used_only_where_it_names_qr_codes(open_scan, tmp_path):
    feed = make_camera_feed([MARKS[0]], tmp_path / "camera.mjpeg")
    own = open_scan(camera_flags(feed), init=NATIVE % ('["qr_code"]', MARKS[1]))
    assert own.wait("mark") == [MARKS[1]]
    assert not any(url.endswith(".wasm") for url in own.requests)
    empty = open_scan(camera_flags(feed), init=NATIVE % ("[]", MARKS[1]))
    assert empty.wait("mark") == [MARKS[0]]


def test_without_the_reader_the_scanner_says_to_type_the_mark(open_scan, tmp_path, origin):
    feed = make_camera_feed([MARKS[0]], tmp_path / "camera.mjpeg")
    scan = open_scan(camera_flags(feed), init="", path="/tests/labels/browser.py")  # Any page of this site.
    scan.context.route("**/*.wasm", lambda route: route.abort())
    scan.page.goto(origin + "/scan")
    scan.page.locator("#told .status", has_text="Type the mark, or scan once").wait_for(timeout=45_000)
