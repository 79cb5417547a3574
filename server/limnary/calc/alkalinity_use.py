"""How fast nitrification uses up carbonate hardness, and whether water changes keep up with it."""

import math

from limnary.calc.nitrogen_load import nitrogen_load
from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants, table

# Nobody plans further ahead: a floor that is not reached in ten years is not reached.
FAR_DAYS = 3650.0
# Tolerance for float rounding at the floor.
ROUNDING = 1e-9


def alkalinity_use(
    *,
    kh_dkh: float,
    nitrogen_mg_n_l_day: float | None = None,
    feed_g_day: float | None = None,
    protein_fraction: float | None = None,
    volume_l: float | None = None,
    floor_kh_dkh: float = 1.0,
    source_kh_dkh: float | None = None,
    change_fraction: float | None = None,
    every_days: float | None = None,
) -> dict:
    """Carbonate hardness used up a day, and the days until a floor is reached.

    NH4+ + 2 O2 -> NO3- + H2O + 2 H+: two equivalents of alkalinity for each mole of nitrogen (7.14 mg CaCO3/mg N);
    with a routine, KH just before a change settles at source - use x days / fraction.

    Parameters: kh_dkh, floor_kh_dkh, source_kh_dkh [°d]; nitrogen_mg_n_l_day nitrified [mg N/L/day], or feed_g_day
    [g/day], protein_fraction [1] and volume_l [L], whose ammonia is taken to be nitrified in full;
    change_fraction [1] and every_days [days] with source_kh_dkh.
    Returns kh_dkh_per_day [°d/day], the intermediate nitrified_mg_n_l_day [mg N/L/day]; days_to_floor [days] unless
    it lies beyond ten years; with a routine steady_kh_dkh [°d] (just before a change, once settled; not where it
    would be below zero) and fraction_needed [1] (the least that holds the floor, where one does); notes.
    Raises Refusal: no_source_kh.
    Source: iupac_atomic_weights (stoichiometry), timmons_ebeling for food.

    >>> round(alkalinity_use(kh_dkh=3, nitrogen_mg_n_l_day=0.5)["days_to_floor"], 1)
    10.0
    """
    nitrified_mg_n_l_day = _nitrified(nitrogen_mg_n_l_day, feed_g_day, protein_fraction, volume_l)
    acid_mmol_l_day = (
        nitrified_mg_n_l_day / constants("molar_mass")["n_g_mol"] * constants("nitrification")["acid_mol_per_mol_n"]
    )
    use = acid_mmol_l_day / (2 * table("hardness_scales")["scales"]["dh"]["mmol_l"])
    answer = {"kh_dkh_per_day": use, "nitrified_mg_n_l_day": nitrified_mg_n_l_day}
    notes = ["at_floor"] if kh_dkh <= floor_kh_dkh else []
    if change_fraction is None:
        days = _days_without_changes(kh_dkh, floor_kh_dkh, use)
    else:
        if source_kh_dkh is None:
            raise Refusal("no_source_kh")
        used_between = use * every_days
        days = _days_with_changes(kh_dkh, floor_kh_dkh, used_between, source_kh_dkh, change_fraction, every_days)
        steady = source_kh_dkh - used_between / change_fraction
        if steady >= 0:
            answer["steady_kh_dkh"] = steady
        if steady < floor_kh_dkh - ROUNDING:
            notes.append("not_held")
        spare = source_kh_dkh - floor_kh_dkh
        if spare > 0 and used_between <= spare:
            answer["fraction_needed"] = used_between / spare
    if days <= FAR_DAYS:
        answer["days_to_floor"] = days
    return {**answer, "notes": notes}


def _nitrified(
    nitrogen_mg_n_l_day: float | None, feed_g_day: float | None, protein_fraction: float | None, volume_l: float | None
) -> float:
    """The nitrogen as given, or the ammonia of the food [mg N/L/day]."""
    if feed_g_day is None:
        return nitrogen_mg_n_l_day
    load = nitrogen_load(feed_g_day=feed_g_day, protein_fraction=protein_fraction, volume_l=volume_l)
    return load["tan_mg_n_l_day"]


def _days_without_changes(kh_dkh: float, floor_kh_dkh: float, use: float) -> float:
    """Days until the floor at a steady use; infinite if nothing is used."""
    if kh_dkh <= floor_kh_dkh:
        return 0.0
    return (kh_dkh - floor_kh_dkh) / use if use > 0 else math.inf


def _days_with_changes(
    kh_dkh: float, floor_kh_dkh: float, used_between: float, source_kh_dkh: float, fraction: float, every_days: float
) -> float:
    """Days until the floor, from change to change; infinite if it is not reached within FAR_DAYS."""
    if kh_dkh <= floor_kh_dkh:
        return 0.0
    day = 0.0
    while day < FAR_DAYS:
        if kh_dkh < floor_kh_dkh - ROUNDING:
            return day
        lowest = kh_dkh - used_between
        if lowest < floor_kh_dkh - ROUNDING:
            return day + (kh_dkh - floor_kh_dkh) / used_between * every_days
        kh_dkh = lowest * (1 - fraction) + source_kh_dkh * fraction
        day += every_days
    return math.inf
