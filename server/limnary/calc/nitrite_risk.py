"""How dangerous nitrite is at the water's chloride, and the chloride that protects against it."""

from itertools import pairwise

from limnary.calc.tables import constants, table

# Below this, far under any test, there is no chloride-to-nitrite ratio: it would mean nothing and may overflow.
_NIL_MG_L = 1e-9


def nitrite_risk(*, nitrite_mg_n_l: float, chloride_mg_l: float = 0.0, volume_l: float | None = None) -> dict:
    """Limits of nitrite at this chloride, where the reading lies, and the salt for ten times as much chloride.

    limit by chloride: linear between the printed points, constant beyond the first and the last;
    chloride to add = max(0, 10 x nitrite as NO2 - chloride), salt = that x 58.44 / 35.45.

    Parameters: nitrite_mg_n_l [mg N/L], chloride_mg_l [mg/L], volume_l [L].
    Returns risk ("below_both", "between", "above_both"), sensitive_limit_mg_n_l, other_limit_mg_n_l [mg N/L],
    nitrite_mg_l [mg NO2/L], chloride_per_nitrite [1] unless nitrite is zero, chloride_to_add_mg_l, salt_mg_l
    [mg/L], and with volume_l salt_g [g]; notes.
    Source: eifac_1984 (figures from memory), srac_462.

    >>> round(nitrite_risk(nitrite_mg_n_l=0.6089, chloride_mg_l=10)["salt_mg_l"], 1)
    16.5
    """
    nitrite_mg_l = nitrite_mg_n_l * constants("nitrogen_species")["no2_per_n"]
    points = table("limits")["nitrite_by_chloride"]["points"]
    sensitive = _between(points, chloride_mg_l, "sensitive_mg_n_l")
    other = _between(points, chloride_mg_l, "other_mg_n_l")
    to_add_mg_l = max(0.0, constants("chloride_shield")["chloride_per_nitrite"] * nitrite_mg_l - chloride_mg_l)
    salts = table("salts")
    salt_mg_l = to_add_mg_l * salts["rows"]["sodium_chloride"]["g_mol"] / salts["ions"]["cl"]["g_mol"]
    risk = "below_both" if nitrite_mg_n_l <= sensitive else "between" if nitrite_mg_n_l <= other else "above_both"
    answer = {
        "risk": risk,
        "sensitive_limit_mg_n_l": sensitive,
        "other_limit_mg_n_l": other,
        "nitrite_mg_l": nitrite_mg_l,
        "chloride_to_add_mg_l": to_add_mg_l,
        "salt_mg_l": salt_mg_l,
        "notes": ["change_first"] if risk == "above_both" else [],
    }
    if nitrite_mg_l > _NIL_MG_L:
        answer["chloride_per_nitrite"] = chloride_mg_l / nitrite_mg_l
    if volume_l is not None:
        answer["salt_g"] = salt_mg_l * volume_l / 1000
    return answer


def _between(points: list[dict], chloride_mg_l: float, column: str) -> float:
    """The value of `column` at this chloride, linear between the points."""
    if chloride_mg_l <= points[0]["chloride_mg_l"]:
        return points[0][column]
    for low, high in pairwise(points):
        if chloride_mg_l <= high["chloride_mg_l"]:
            share = (chloride_mg_l - low["chloride_mg_l"]) / (high["chloride_mg_l"] - low["chloride_mg_l"])
            return low[column] + share * (high[column] - low[column])
    return points[-1][column]
