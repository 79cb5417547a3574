"""Where a substance settles under feeding or dosing, water changes, evaporation and topping up, in the long run."""

import math

from limnary.calc.dilution import SETTLED_SHARE

# Tolerance for float rounding at the ceiling.
ROUNDING = 1e-9
# Less than this is none: by it no number of days is finite (assumption).
LEAST_RISE_MG_L_DAY = 1e-12


def steady_routine(
    *,
    add_mg_l_day: float,
    change_fraction: float,
    every_days: float,
    source_mg_l: float = 0.0,
    evaporation_fraction_day: float = 0.0,
    top_up_mg_l: float = 0.0,
    ceiling_mg_l: float | None = None,
) -> dict:
    """The level just before and just after a change, once a routine has run long enough.

    rise a day = add + evaporation x top-up (what evaporates leaves its salts behind, what replaces it brings its
    own);  before a change = source + rise x days / fraction;  after it = that less rise x days.

    Parameters: add_mg_l_day [mg/L/day], source_mg_l, top_up_mg_l, ceiling_mg_l [mg/L] (any one unit will do),
    change_fraction [1] every every_days [days], evaporation_fraction_day [1/day, replaced each day].
    Returns before_change_mg_l, after_change_mg_l, rise_mg_l_day [mg/L, mg/L/day], days_to_settle [days, until a
    twentieth of the way is left]; with a ceiling fraction_needed [1] as often, every_days_needed [days] with this
    fraction, where there is one; notes.
    Source: mass_balance.

    >>> steady_routine(add_mg_l_day=2, change_fraction=0.25, every_days=7, source_mg_l=5)["before_change_mg_l"]
    61.0
    """
    rise_mg_l_day = add_mg_l_day + evaporation_fraction_day * top_up_mg_l
    rise_mg_l = rise_mg_l_day * every_days
    before_change_mg_l = source_mg_l + rise_mg_l / change_fraction
    answer = {
        "before_change_mg_l": before_change_mg_l,
        "after_change_mg_l": before_change_mg_l - rise_mg_l,
        "days_to_settle": math.log(SETTLED_SHARE) / math.log(1 - change_fraction) * every_days,
        "rise_mg_l_day": rise_mg_l_day,
        "notes": [],
    }
    if ceiling_mg_l is None:
        return answer
    spare_mg_l = ceiling_mg_l - source_mg_l
    if before_change_mg_l > ceiling_mg_l * (1 + ROUNDING):
        answer["notes"] = ["above_ceiling" if spare_mg_l > 0 else "source_above_ceiling"]
    if spare_mg_l > 0 and rise_mg_l_day > LEAST_RISE_MG_L_DAY:
        answer["every_days_needed"] = spare_mg_l * change_fraction / rise_mg_l_day
        if rise_mg_l <= spare_mg_l:
            answer["fraction_needed"] = rise_mg_l / spare_mg_l
    return answer
