"""What is left of a substance after partial water changes, and the change that reaches a target."""

import math

from limnary.calc.refusal import Refusal

# A level counts as settled when this share of the way is left (assumption).
SETTLED_SHARE = 0.05


def dilution(
    *,
    before_mg_l: float,
    source_mg_l: float = 0.0,
    fractions: list[float] = (),
    target_mg_l: float | None = None,
    load_mg_l_day: float | None = None,
    every_days: float | None = None,
    routine_fraction: float | None = None,
) -> dict:
    """The level after successive changes; with a target, the one further change that reaches it.

    after = before (1 - f) + source f, change by change;  needed = (after - target) / (after - source)
    routine: just before a change the level settles at source + load x days / f, just after it load x days lower;
    the distance to it shrinks by (1 - f) at each change, to a twentieth after ln(0.05) / ln(1 - f) changes.

    Parameters: before_mg_l, source_mg_l, target_mg_l [mg/L]; fractions of the water in the tank [1];
    load_mg_l_day [mg/L a day], every_days [days], routine_fraction [1], all three or none.
    Returns after_mg_l and, if there are changes, after_each_mg_l [mg/L]; fraction_needed [1] with a target;
    with a routine settles_before_mg_l, settles_after_mg_l [mg/L], settles_in_days [days]; notes.
    Raises Refusal("source_above_target") when no change with this water can get there.
    Source: mass_balance.

    >>> dilution(before_mg_l=40, fractions=[0.5, 0.5])["after_mg_l"]
    10.0
    """
    after_mg_l = before_mg_l
    after_each_mg_l = []
    for fraction in fractions:
        after_mg_l = after_mg_l * (1 - fraction) + source_mg_l * fraction
        after_each_mg_l.append(after_mg_l)
    answer = {"after_mg_l": after_mg_l}
    if after_each_mg_l:
        answer["after_each_mg_l"] = after_each_mg_l
    if target_mg_l is not None:
        answer["fraction_needed"] = _needed(after_mg_l, source_mg_l, target_mg_l)
    if load_mg_l_day is not None:
        rise_mg_l = load_mg_l_day * every_days
        before_change_mg_l = source_mg_l + rise_mg_l / routine_fraction
        answer["settles_before_mg_l"] = before_change_mg_l
        answer["settles_after_mg_l"] = before_change_mg_l - rise_mg_l
        answer["settles_in_days"] = math.log(SETTLED_SHARE) / math.log(1 - routine_fraction) * every_days
    answer["notes"] = ["source_raises"] if source_mg_l > before_mg_l else []
    return answer


def _needed(level_mg_l: float, source_mg_l: float, target_mg_l: float) -> float:
    if level_mg_l <= target_mg_l:
        return 0.0
    if source_mg_l > target_mg_l:
        raise Refusal("source_above_target")
    return (level_mg_l - target_mg_l) / (level_mg_l - source_mg_l)
