"""Dechlorinator for a water change: by the label, as two plain chemicals, and the ammonia freed from chloramine."""

from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants


def dechlorinator_dose(
    *,
    change_l: float,
    tank_l: float | None = None,
    basis: str = "new_water",
    label_ml: float | None = None,
    label_per_l: float | None = None,
    disinfectant: str | None = None,
    disinfectant_mg_l: float | None = None,
) -> dict:
    """The dose by the keeper's own label, and by chemistry for a known level of disinfectant.

    label dose = label_ml x litres / label_per_l, litres of new water or of the whole tank as the label says;
    chemical = ratio x disinfectant x change_l;  freed ammonia = 14.007 / 70.90 x chloramine as Cl2.

    Parameters: change_l, tank_l [L]; basis "new_water" or "whole_tank"; label_ml [ml, or g of a powder]
    for each label_per_l [L]; disinfectant "chlorine" or "chloramine" with disinfectant_mg_l [mg/L as Cl2].
    Returns label_dose_ml; thiosulfate_pentahydrate_mg (field ratio), thiosulfate_pentahydrate_safe_mg
    (upper bound), ascorbic_acid_mg [mg]; freed_ammonia_mg_n_l in the new water and, when tank_l is known,
    freed_ammonia_in_tank_mg_n_l once mixed [mg N/L]; treated_l [L]; each only if its inputs are given; notes.
    Raises Refusal: nothing_to_work_from, tank_needed, change_above_tank.
    Source: awwa_dechlorination, iupac_atomic_weights, thiosulfate_laboratory.

    >>> dechlorinator_dose(change_l=30, label_ml=5, label_per_l=40)["label_dose_ml"]
    3.75
    """
    if label_ml is None and disinfectant is None:
        raise Refusal("nothing_to_work_from")
    if tank_l is None and basis == "whole_tank":
        raise Refusal("tank_needed")
    if tank_l is not None and change_l > tank_l:
        raise Refusal("change_above_tank")
    treated_l = tank_l if basis == "whole_tank" else change_l
    answer = {"treated_l": treated_l, "notes": []}
    if label_ml is not None:
        answer["label_dose_ml"] = label_ml * treated_l / label_per_l
    if disinfectant is not None:
        ratio = constants("dechlorination")
        chlorine_mg = disinfectant_mg_l * change_l
        answer["thiosulfate_pentahydrate_mg"] = ratio["thiosulfate_field"] * chlorine_mg
        answer["thiosulfate_pentahydrate_safe_mg"] = ratio["thiosulfate_safe"] * chlorine_mg
        answer["ascorbic_acid_mg"] = ratio["ascorbic_acid"] * chlorine_mg
        frees = disinfectant == "chloramine"
        freed_mg_n_l = ratio["chloramine_n"] * disinfectant_mg_l if frees else 0.0
        answer["freed_ammonia_mg_n_l"] = freed_mg_n_l
        if tank_l is not None:
            answer["freed_ammonia_in_tank_mg_n_l"] = freed_mg_n_l * change_l / tank_l
        if freed_mg_n_l > 0:
            answer["notes"].append("ammonia_freed")
    return answer
