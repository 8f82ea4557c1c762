"""The usual cautions, for papers that lie where the work is done. The site's own rules and local code come first."""

from __future__ import annotations

from webapp.words.desk import Later

FIRST = Later("paper-cautions-the_sites_own_assessment_local")
STILL = Later("paper-cautions-hot_and_under_pressure_if")
VAPOUR = Later("paper-cautions-alcohol_vapour_burns_no_flame")
METHANOL = Later("paper-cautions-a_hydrometer_cannot_see_methanol")
TASTING = Later("paper-cautions-few_samples_small_and_diluted")
NO_HEADS = Later("paper-cautions-heads_are_never_tasted_nose")
GAS = Later("paper-cautions-carbon_dioxide_has_no_smell")
TANKS = Later("paper-cautions-nobody_enters_a_tank_or")
CASKS = Later("paper-cautions-a_full_cask_of_225")
ALONE = Later("paper-cautions-say_where_you_are_and")
