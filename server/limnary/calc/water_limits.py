"""The working limits of one water: total ammonia, nitrite and nitrate to keep, and to act on at once."""

from limnary.calc.ammonia_limits import ammonia_limits
from limnary.calc.nitrite_limits import nitrite_limits
from limnary.calc.tables import constants, table


def water_limits(*, ph: float, temperature_c: float, chloride_mg_l: float | None = None) -> dict:
    """The limits that advice and forecasts hold a tank to.

    tan = min(EIFAC, EPA chronic);  tan_act = min(EPA acute, TAN at which free ammonia is 0.05 mg NH3/L);
    free ammonia at tan = fraction x tan;  nitrite by chloride as a step function.
    tan_act is never below tan: 0.05 is twice EIFAC's 0.025, and the acute criterion lies above the chronic one.

    Parameters: ph, temperature_c [°C], chloride_mg_l [mg/L]; without it the step of
    `unknown_chloride_mg_l` is taken and the answer has the note `chloride_unknown`.
    Returns tan_mg_n_l, tan_by ("eifac" or "chronic"), tan_act_mg_n_l, nh3_mg_n_l (at tan_mg_n_l),
    nitrite_mg_n_l (30-day mean), nitrite_act_mg_n_l (maximum), nitrate_mg_n_l [all mg N/L]; notes.
    Source: epa_2013, eifac_1970 (value from memory), bc_nitrogen_2009, camargo_2005.

    >>> found = water_limits(ph=8, temperature_c=25, chloride_mg_l=3)
    >>> round(found["tan_mg_n_l"], 2), found["tan_by"], found["nitrite_mg_n_l"]
    (0.38, 'eifac', 0.04)
    """
    ammonia = ammonia_limits(ph=ph, temperature_c=temperature_c)
    eifac, chronic = ammonia["eifac_tan_mg_n_l"], ammonia["chronic_tan_mg_n_l"]
    limits = table("limits")
    tan_mg_n_l = min(eifac, chronic)
    known = chloride_mg_l is not None
    nitrite = nitrite_limits(chloride_mg_l if known else limits["nitrite_by_chloride"]["unknown_chloride_mg_l"])
    act_nh3_mg_n_l = limits["limits"]["free_ammonia_act_mg_l"]["value"] / constants("nitrogen_species")["nh3_per_n"]
    return {
        "tan_mg_n_l": tan_mg_n_l,
        "tan_by": "eifac" if eifac <= chronic else "chronic",
        "tan_act_mg_n_l": min(ammonia["acute_tan_mg_n_l"], act_nh3_mg_n_l / ammonia["fraction"]),
        "nh3_mg_n_l": ammonia["fraction"] * tan_mg_n_l,
        "nitrite_mg_n_l": nitrite["mean_mg_n_l"],
        "nitrite_act_mg_n_l": nitrite["maximum_mg_n_l"],
        "nitrate_mg_n_l": limits["limits"]["nitrate_mg_n_l"]["value"],
        "notes": ammonia["notes"] + ([] if known else ["chloride_unknown"]),
    }
