"""The usual cautions, for papers that lie where the work is done. The site's own rules and local code come first."""

from __future__ import annotations

FIRST = (
    "The site's own assessment, local code and licensed people come first. Nothing on this paper says that a place or "
    "a spirit is safe."
)
STILL = (
    "Hot, and under pressure if a path blocks. Cold water into a hot closed still can crush it. Keep vents free; never "
    "leave a running still."
)
VAPOUR = (
    "Alcohol vapour burns. No flame, no spark, no ordinary phone inside the marked line; read at the safe, step back, "
    "then write."
)
METHANOL = (
    "A hydrometer cannot see methanol. Heads hold part of it, hearts and tails too; only a laboratory knows. Do not "
    "taste the first runnings."
)
TASTING = (
    "Few samples, small and diluted, and spit. Water and plain bread between. Nobody drives, or works at a still or a "
    "machine, after tasting."
)
NO_HEADS = (
    "Heads are never tasted, nose at most. A tasting never clears what is in a spirit: methanol, hydrogen cyanide and "
    "ethyl carbamate have no taste that tells."
)
GAS = (
    "Carbon dioxide has no smell and lies low. At 5000 ppm leave, ventilate, tell the supervisor; at 30 000 ppm out at "
    "once. A candle is no test."
)
TANKS = "Nobody enters a tank or vat alone or without a permit, a gas test and someone outside."
CASKS = "A full cask of 225 L (59 gal) weighs 220 to 260 kg (485 to 573 lb). Trolley, hoist or chock; never the back."
ALONE = "Say where you are and when you are back."
