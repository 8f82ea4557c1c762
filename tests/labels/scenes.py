"""Pictures of printed labels as a phone's camera sees them in a cellar: seeded, made with OpenCV, no photographs.

Each kind bends, darkens, blurs or wets the rendered print. They are models, harder than most days on the floor; they
serve to compare decoders and payloads on equal terms.
"""

from collections.abc import Callable

import cv2
import numpy as np
import pypdfium2

from webapp.labels import LabelItem, Layout, plan_label, render_labels

WIDTH, HEIGHT = 1280, 720
PRINT_PX_MM = 12.0
COLUMNS, ROWS = np.meshgrid(np.arange(WIDTH, dtype=np.float32), np.arange(HEIGHT, dtype=np.float32))
Picture = np.ndarray


def printed_label(item: LabelItem, layout: Layout, host: str | None) -> tuple[Picture, float, tuple[float, float]]:
    """Return a label as printed, in grey; the side of its symbol; and the symbol's middle. [px of the print]"""
    document = pypdfium2.PdfDocument(render_labels([item], layout, host=host))
    picture = document[0].render(scale=PRINT_PX_MM * 25.4 / 72, grayscale=True).to_numpy()
    document.close()
    plan = plan_label(item, layout, host)
    side = plan.module_mm * plan.symbol.modules * PRINT_PX_MM
    middle = plan.symbol_mm / 2
    centre = ((plan.symbol_left_mm + middle) * PRINT_PX_MM, (plan.symbol_top_mm + middle) * PRINT_PX_MM)
    return np.ascontiguousarray(picture.reshape(picture.shape[:2])), side, centre


def wall(random: np.random.Generator) -> Picture:
    """Return a cellar wall: blotches of middle grey."""
    coarse = random.normal(0.35, 0.08, (18, 32)).astype(np.float32)
    fine = random.normal(0, 0.02, (HEIGHT // 2, WIDTH // 2)).astype(np.float32)
    size = (WIDTH, HEIGHT)
    return np.clip(cv2.resize(coarse, size, interpolation=cv2.INTER_CUBIC) + cv2.resize(fine, size), 0.02, 0.9)


def place(
    label: Picture,
    side: float,
    centre: tuple[float, float],
    random: np.random.Generator,
    *,
    symbol_px: float = 230,
    tilt: float = 0.0,
    turn_deg: float = 6.0,
    bend_deg: float = 0.0,
) -> tuple[Picture, tuple[float, float], float]:
    """Return the label before the wall, 0 to 1; where its symbol is; and the side it has. [px of the picture]

    `symbol_px` is the side of the symbol, `tilt` the perspective (0 to 0.5), `bend_deg` how far the left and right
    edges of the symbol lie round a standing cylinder.
    """
    scale = symbol_px / side
    x_mid = WIDTH / 2 + random.uniform(-90, 90)
    y_mid = HEIGHT / 2 + random.uniform(-60, 60)
    angle = np.deg2rad(random.uniform(-turn_deg, turn_deg))
    x, y = COLUMNS - x_mid, ROWS - y_mid
    x, y = x * np.cos(angle) + y * np.sin(angle), -x * np.sin(angle) + y * np.cos(angle)
    lean, nod = tilt * random.choice([-1, 1]), tilt * random.uniform(-0.6, 0.6)
    depth = 1 + (lean * x + nod * y) / 600
    x, y = x / depth * (1 + abs(lean) * 0.6), y / depth
    shade = np.ones_like(x)
    if bend_deg:
        radius = symbol_px / 2 / np.deg2rad(bend_deg)
        reach = np.clip(x / radius, -0.999, 0.999)
        # Seen from near, the flanks also fall away upwards: the rows of a bent label are arcs.
        y = y * (1 + 0.10 * (1 - np.sqrt(1 - reach**2)))
        shade = 0.35 + 0.65 * np.sqrt(1 - reach**2)
        x = np.where(np.abs(x) < 0.999 * radius, radius * np.arcsin(reach), 1e6)
    map_x = (x / scale + centre[0]).astype(np.float32)
    map_y = (y / scale + centre[1]).astype(np.float32)
    # The print is blurred before it shrinks, as a lens does, or its edges would alias.
    soft = cv2.GaussianBlur(label, (0, 0), max(0.45 / scale, 0.3)).astype(np.float32) / 255
    shown = cv2.remap(soft, map_x, map_y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_CONSTANT, borderValue=-1)
    paper = 0.06 + 0.74 * shown
    on_label = cv2.remap(np.ones_like(soft), map_x, map_y, cv2.INTER_LINEAR, borderValue=0)
    scene = on_label * paper * shade + (1 - on_label) * wall(random)
    return scene.astype(np.float32), (x_mid, y_mid), symbol_px


def noise(scene: Picture, random: np.random.Generator, level: float = 0.012) -> Picture:
    return scene + random.normal(0, level, scene.shape).astype(np.float32)


def glare(
    scene: Picture, at: tuple[float, float], spread: tuple[float, float], strength: float, turn_deg: float
) -> Picture:
    """Return the scene with a reflection added: a soft ellipse that bleaches its middle."""
    angle = np.deg2rad(turn_deg)
    x, y = COLUMNS - at[0], ROWS - at[1]
    along, across = x * np.cos(angle) + y * np.sin(angle), -x * np.sin(angle) + y * np.cos(angle)
    return scene + strength * np.exp(-((along / spread[0]) ** 2) - (across / spread[1]) ** 2)


def wet(scene: Picture, at: tuple[float, float], side: float, random: np.random.Generator, drops: int = 45) -> Picture:
    """Return the scene under drops of water: each magnifies what is behind it, and carries a spark of light."""
    map_x, map_y = COLUMNS.copy(), ROWS.copy()
    sparks = np.zeros_like(scene)
    for _ in range(drops):
        x, y = at[0] + random.uniform(-0.6, 0.6) * side, at[1] + random.uniform(-0.6, 0.6) * side
        size = random.uniform(0.012, 0.045) * side
        # The square around the drop is enough, and much faster than the whole picture.
        left, top = (max(0, int(middle - 3 * size)) for middle in (x, y))
        spot = np.s_[top : int(y + 3 * size) + 2, left : int(x + 3 * size) + 2]
        dx, dy = COLUMNS[spot] - x, ROWS[spot] - y
        pull = 0.55 * np.sqrt(np.clip(1 - np.hypot(dx, dy) ** 2 / size**2, 0, 1))
        map_x[spot] -= pull * dx
        map_y[spot] -= pull * dy
        spark = np.hypot(dx + 0.3 * size, dy + 0.3 * size) / (0.35 * size)
        sparks[spot] += 0.8 * np.exp(-(spark**2))
    return cv2.remap(scene, map_x, map_y, cv2.INTER_LINEAR) + sparks


def motion(scene: Picture, length_px: int, angle_deg: float) -> Picture:
    kernel = np.zeros((length_px, length_px), np.float32)
    kernel[length_px // 2] = 1
    turn = cv2.getRotationMatrix2D(((length_px - 1) / 2, (length_px - 1) / 2), angle_deg, 1)
    kernel = cv2.warpAffine(kernel, turn, (length_px, length_px))
    return cv2.filter2D(scene, -1, kernel / kernel.sum())


def _clean(label, side, centre, random):
    return noise(place(label, side, centre, random)[0], random)


def _perspective(label, side, centre, random):
    return noise(place(label, side, centre, random, tilt=0.45, turn_deg=20)[0], random)


def _blur(label, side, centre, random):
    scene = place(label, side, centre, random, tilt=0.3, turn_deg=15)[0]
    return noise(cv2.GaussianBlur(scene, (0, 0), random.uniform(2.0, 3.0)), random)


def _small(label, side, centre, random):
    return noise(place(label, side, centre, random, symbol_px=random.uniform(60, 80))[0], random)


def _dark(label, side, centre, random):
    scene = place(label, side, centre, random, tilt=0.2)[0]
    return noise(0.02 + scene * random.uniform(0.05, 0.09), random, 0.016)


def _motion(label, side, centre, random):
    scene = place(label, side, centre, random, tilt=0.15)[0]
    return noise(motion(scene, int(random.integers(11, 17)), random.uniform(0, 180)), random)


def _glare(label, side, centre, random):
    scene, (x, y), size = place(label, side, centre, random, tilt=0.25)
    spot = (x + random.uniform(-0.35, 0.35) * size, y + random.uniform(-0.35, 0.35) * size)
    scene = glare(scene, spot, (0.45 * size, 0.2 * size), random.uniform(0.8, 1.1), random.uniform(0, 180))
    return noise(scene, random)


def _curved(label, side, centre, random):
    return noise(place(label, side, centre, random, bend_deg=random.uniform(48, 62))[0], random)


def _curved_wet_glare(label, side, centre, random):
    scene, at, size = place(label, side, centre, random, bend_deg=random.uniform(45, 60))
    scene = wet(scene, at, size, random)
    # On a wet pipe the lamp is a bright stripe along the pipe.
    stripe = (at[0] + random.uniform(-0.25, 0.25) * size, at[1])
    scene = glare(scene, stripe, (0.9 * size, 0.07 * size), random.uniform(0.6, 0.9), 90)
    return noise(cv2.GaussianBlur(scene, (0, 0), 1.0), random, 0.015)


def _near_black(label, side, centre, random):
    scene = place(label, side, centre, random, tilt=0.2)[0]
    return noise(0.01 + scene * random.uniform(0.02, 0.035), random, 0.010)


def _steep(label, side, centre, random):
    return noise(place(label, side, centre, random, tilt=1.15, turn_deg=35)[0], random)


def _half_shadow(label, side, centre, random):
    scene, (x, y), size = place(label, side, centre, random, tilt=0.25, turn_deg=15)
    angle = np.deg2rad(random.uniform(0, 180))
    across = (COLUMNS - x) * np.cos(angle) + (ROWS - y) * np.sin(angle) - random.uniform(-0.2, 0.2) * size
    return noise(scene * (0.12 + 0.88 / (1 + np.exp(-across / 4))), random, 0.014)


def _torch_on_a_curve(label, side, centre, random):
    scene, (x, y), size = place(label, side, centre, random, bend_deg=random.uniform(40, 55))
    lit = 0.12 + 0.55 * np.exp(-(((COLUMNS - x) / (1.1 * size)) ** 2 + ((ROWS - y) / (1.1 * size)) ** 2))
    spot = (x + random.uniform(-0.3, 0.3) * size, y + random.uniform(-0.3, 0.3) * size)
    scene = glare(scene * lit * 1.5, spot, (0.16 * size, 0.16 * size), random.uniform(1.0, 1.6), 0)
    return noise(scene, random, 0.014)


KINDS: dict[str, Callable[..., Picture]] = {
    "clean": _clean,
    "perspective": _perspective,
    "blur": _blur,
    "small": _small,
    "dark": _dark,
    "motion": _motion,
    "glare": _glare,
    "curved": _curved,
    "curved, wet, glare": _curved_wet_glare,
    "near black": _near_black,
    "steep": _steep,
    "half shadow": _half_shadow,
    "torch on a curve": _torch_on_a_curve,
}


def photograph(kind: str, label: tuple[Picture, float, tuple[float, float]], seed: int) -> Picture:
    """Return one picture of a label, 720 x 1280, grey, 0 to 255. The same seed gives the same picture."""
    random = np.random.default_rng([seed, list(KINDS).index(kind)])
    scene = KINDS[kind](*label, random)
    return (np.clip(scene, 0, 1) * 255).astype(np.uint8)
