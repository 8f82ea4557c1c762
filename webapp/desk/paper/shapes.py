"""What is drawn on papers besides text: a QR symbol, the sign of a question, a box to tick."""

from __future__ import annotations

import qrcode
from reportlab.lib import colors
from reportlab.lib.units import mm
from reportlab.platypus.flowables import Flowable

INK, DUST, COPPER = (colors.HexColor(one) for one in ("#1b2327", "#56626a", "#98501f"))
RULE, TINT = (colors.HexColor(one) for one in ("#cfc7b8", "#f6f2ea"))


class Code(Flowable):
    """A QR symbol of an address, drawn as shapes. [pt]"""

    def __init__(self, address: str, side: float) -> None:
        super().__init__()
        self.width = self.height = side
        made = qrcode.QRCode(error_correction=qrcode.constants.ERROR_CORRECT_M, border=0)
        made.add_data(address)
        made.make(fit=True)
        self._rows = made.get_matrix()

    def draw(self) -> None:
        """Draw every black module as a square of one path."""
        module = self.width / len(self._rows)
        path = self.canv.beginPath()
        for y, row in enumerate(self._rows):
            for x, is_black in enumerate(row):
                if is_black:
                    path.rect(x * module, self.height - (y + 1) * module, module, module)
        self.canv.setFillColor(INK)
        self.canv.drawPath(path, stroke=0, fill=1)


class Sign(Flowable):
    """The sign of a question's weight: a square stops, a diamond asks, a ring notes. The word stands beside it."""

    def __init__(self, weight: str) -> None:
        super().__init__()
        self.width = self.height = 2.6 * mm
        self._weight = weight

    def draw(self) -> None:
        """Draw the sign."""
        side, canvas = self.width, self.canv
        canvas.setFillColor(INK)
        canvas.setStrokeColor(INK)
        canvas.setLineWidth(1)
        if self._weight == "stop":
            canvas.rect(0.1 * side, 0.1 * side, 0.8 * side, 0.8 * side, stroke=0, fill=1)
        elif self._weight == "ask":
            path = canvas.beginPath()
            path.moveTo(side / 2, 0)
            for x, y in ((side, side / 2), (side / 2, side), (0, side / 2)):
                path.lineTo(x, y)
            path.close()
            canvas.drawPath(path, stroke=0, fill=1)
        else:
            canvas.circle(side / 2, side / 2, 0.4 * side, stroke=1, fill=0)


class Box(Flowable):
    """An empty box to tick. [pt]"""

    def __init__(self, side: float = 4.5 * mm) -> None:
        super().__init__()
        self.width = self.height = side

    def draw(self) -> None:
        """Draw its outline."""
        self.canv.setStrokeColor(INK)
        self.canv.setLineWidth(0.8)
        self.canv.rect(0, 0, self.width, self.height)
