"""A plan that takes newcomers from the water in their bag to the tank's water, by drip or by swaps."""

import math

from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants
from limnary.calc.tolerance import TOLERANCE


def acclimation(
    *,
    bag_l: float,
    bag_temperature_c: float,
    tank_temperature_c: float,
    bag_ph: float | None = None,
    tank_ph: float | None = None,
    bag_gh_dgh: float | None = None,
    tank_gh_dgh: float | None = None,
    method: str = "drip",
    vessel_l: float | None = None,
    hours_in_bag: float = 0.0,
) -> dict:
    """Minutes to float the bag, then the tank water to add at each step.

    The share r of bag water falls in equal steps from 1 to its final value. A drip adds
    V (r_before / r_after - 1), a swap replaces V (1 - r_after / r_before). A property of the mix is then
    tank + r (bag - tank), which is only approximate for pH.

    Parameters: bag_l [L], bag_temperature_c and tank_temperature_c [°C], bag_ph with tank_ph [1], bag_gh_dgh with
    tank_gh_dgh [°dGH], method ("drip" | "steps"), vessel_l [L], hours_in_bag [h].
    Returns float_minutes, mix_minutes, total_minutes [min], tank_water_l, vessel_at_most_l [L],
    bag_share_left [1], plan: a list of {minute, pour_off_l, add_l, ph, gh_dgh} in order of time; a drip also has
    ml_minute and, while drops can be counted, drops_s.
    Raises Refusal("vessel_too_small").
    Source: fao_589 (fifteen minutes each, a day for pH); keepers_practice for the rest; pharmacopoeia_dropper.

    >>> acclimation(bag_l=1, bag_temperature_c=22, tank_temperature_c=25)["total_minutes"]
    30.0
    """
    ph_gap = abs(bag_ph - tank_ph) if bag_ph is not None else None
    gh_gap = abs(bag_gh_dgh - tank_gh_dgh) if bag_gh_dgh is not None else None
    float_minutes = _minutes_to_float(abs(bag_temperature_c - tank_temperature_c))
    steps, step_minutes = _steps_for(_minutes_to_mix(ph_gap, gh_gap))
    left = _share_left(ph_gap, gh_gap)
    plan = _plan_rows(bag_l, vessel_l, method, steps, step_minutes, left)
    most_l = max(row.pop("after_l") for row in plan)
    for row in plan:
        share = row.pop("share")
        if ph_gap is not None:
            row["ph"] = tank_ph + share * (bag_ph - tank_ph)
        if gh_gap is not None:
            row["gh_dgh"] = tank_gh_dgh + share * (bag_gh_dgh - tank_gh_dgh)
    return {
        "float_minutes": float_minutes,
        "mix_minutes": steps * step_minutes,
        "total_minutes": float_minutes + steps * step_minutes,
        "tank_water_l": sum(row["add_l"] for row in plan),
        "vessel_at_most_l": most_l,
        "bag_share_left": left,
        "plan": plan,
        "notes": _notes_on(ph_gap, gh_gap, hours_in_bag),
    }


def _minutes_to_float(gap_c: float) -> float:
    practice = constants("acclimation_practice")
    if gap_c <= practice["close_c"] + TOLERANCE:
        return 0.0
    return float(max(constants("acclimation_fao")["float_least_minutes"], gap_c * practice["float_minutes_per_c"]))


def _minutes_to_mix(ph_gap: float | None, gh_gap: float | None) -> float:
    fao = constants("acclimation_fao")
    minutes = max(fao["mix_least_minutes"], (gh_gap or 0.0) * constants("acclimation_practice")["mix_minutes_per_dgh"])
    return max(minutes, fao["ph_far_minutes"]) if _is_ph_far(ph_gap) else minutes


def _is_ph_far(ph_gap: float | None) -> bool:
    return ph_gap is not None and ph_gap > constants("acclimation_fao")["ph_far"] + TOLERANCE


def _steps_for(minutes: float) -> tuple[int, int]:
    """(number of steps, minutes of each): steps of 5 minutes up to 1 h, of 15 up to 4 h, else of 60."""
    length = 5 if minutes <= 60 + TOLERANCE else 15 if minutes <= 240 + TOLERANCE else 60
    return math.ceil(minutes / length - TOLERANCE), length


def _share_left(ph_gap: float | None, gh_gap: float | None) -> float:
    practice = constants("acclimation_practice")
    left = practice["bag_share_left"]
    for gap, close in ((ph_gap, practice["close_ph"]), (gh_gap, practice["close_dgh"])):
        if gap is not None and gap * left > close:
            left = close / gap
    return left


def _plan_rows(
    bag_l: float, vessel_l: float | None, method: str, steps: int, step_minutes: int, left: float
) -> list[dict]:
    rows, now_l, share = [], bag_l, 1.0
    for step in range(1, steps + 1):
        after = 1 - step * (1 - left) / steps
        pour_off_l = 0.0
        if method == "steps":
            pour_off_l = add_l = now_l * (1 - after / share)
        else:
            if _spills(now_l * share / after, vessel_l):
                pour_off_l = now_l - bag_l
                now_l = bag_l
            add_l = now_l * (share / after - 1)
            now_l += add_l
        if _spills(now_l, vessel_l):
            raise Refusal("vessel_too_small")
        row = {"minute": step * step_minutes, "pour_off_l": pour_off_l, "add_l": add_l}
        if method == "drip":
            row |= _flow(add_l * 1000 / step_minutes)
        rows.append({**row, "share": after, "after_l": now_l})
        share = after
    return rows


def _flow(ml_minute: float) -> dict:
    drops = constants("drops")
    drops_s = ml_minute * drops["drops_per_ml"] / 60
    countable = {"drops_s": drops_s} if drops_s <= drops["countable_s"] else {}
    return {"ml_minute": ml_minute, **countable}


def _spills(litres: float, vessel_l: float | None) -> bool:
    return vessel_l is not None and litres > vessel_l + TOLERANCE


def _notes_on(ph_gap: float | None, gh_gap: float | None, hours_in_bag: float) -> list[str]:
    practice = constants("acclimation_practice")
    notes = ["long_in_bag"] if hours_in_bag >= practice["long_in_bag_hours"] else []
    if _is_ph_far(ph_gap):
        notes.append("ph_far")
    if gh_gap is not None and gh_gap > practice["far_dgh"] + TOLERANCE:
        notes.append("gh_far")
    if ph_gap is None and gh_gap is None:
        notes.append("nothing_measured")
    return notes
