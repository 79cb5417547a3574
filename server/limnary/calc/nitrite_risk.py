"""How dangerous nitrite is at the water's chloride, and the chloride that protects against it."""

from limnary.calc.nitrite_limits import nitrite_limits
from limnary.calc.tables import constants, table

# Below this, far under any test, there is no chloride-to-nitrite ratio: it would mean nothing and may overflow.
_NIL_MG_L = 1e-9


def nitrite_risk(*, nitrite_mg_n_l: float, chloride_mg_l: float = 0.0, volume_l: float | None = None) -> dict:
    """Limits of nitrite at this chloride, where the reading lies, and the salt for ten times as much chloride.

    limits by chloride: a step function, as printed;
    chloride to add = max(0, 10 x nitrite as NO2 - chloride), salt = that x 58.44 / 35.45.

    Parameters: nitrite_mg_n_l [mg N/L], chloride_mg_l [mg/L], volume_l [L].
    Returns risk ("below_both", "between", "above_both"), mean_limit_mg_n_l (30-day mean), maximum_limit_mg_n_l
    (at any time) [mg N/L], nitrite_mg_l [mg NO2/L], chloride_per_nitrite [1] unless nitrite is zero,
    chloride_to_add_mg_l, salt_mg_l [mg/L], and with volume_l salt_g [g]; notes.
    Source: bc_nitrogen_2009, srac_462.

    >>> round(nitrite_risk(nitrite_mg_n_l=0.6089, chloride_mg_l=10)["salt_mg_l"], 1)
    16.5
    """
    nitrite_mg_l = nitrite_mg_n_l * constants("nitrogen_species")["no2_per_n"]
    limits = nitrite_limits(chloride_mg_l)
    mean, maximum = limits["mean_mg_n_l"], limits["maximum_mg_n_l"]
    to_add_mg_l = max(0.0, constants("chloride_shield")["chloride_per_nitrite"] * nitrite_mg_l - chloride_mg_l)
    salts = table("salts")
    salt_mg_l = to_add_mg_l * salts["rows"]["sodium_chloride"]["g_mol"] / salts["ions"]["cl"]["g_mol"]
    risk = "below_both" if nitrite_mg_n_l <= mean else "between" if nitrite_mg_n_l <= maximum else "above_both"
    answer = {
        "risk": risk,
        "mean_limit_mg_n_l": mean,
        "maximum_limit_mg_n_l": maximum,
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
