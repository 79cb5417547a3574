"""Ammonia from food, and what its oxidation to nitrate takes from the water."""

from limnary.calc.tables import constants


def nitrogen_load(
    *, feed_g_day: float, protein_fraction: float, volume_l: float, uneaten_fraction: float = 0.0
) -> dict:
    """Total ammonia from a day's food, and the nitrate, alkalinity and oxygen of its oxidation.

    TAN = feed x protein x [(1 - uneaten) x 0.092 + uneaten x 0.16]

    Parameters: feed_g_day [g/day], protein_fraction [1], volume_l [L, over 0], uneaten_fraction [1].
    Returns tan_mg_n_day [mg N/day], tan_mg_n_l_day [mg N/L/day], nitrate_mg_l_day [mg NO3/L/day],
    kh_drop_dkh_day [°dKH/day], oxygen_mg_day [mg O2/day]; the last three assume complete oxidation.
    Source: timmons_ebeling; jones_1931 for uneaten food; ebeling_2006 for the oxidation.

    >>> round(nitrogen_load(feed_g_day=1, protein_fraction=0.45, volume_l=100)["tan_mg_n_day"], 6)
    41.4
    """
    eaten = (1 - uneaten_fraction) * constants("timmons_ebeling")["tan_per_protein"]
    left = uneaten_fraction * constants("feed_nitrogen")["n_per_protein"]
    tan_mg_n_day = feed_g_day * 1000 * protein_fraction * (eaten + left)
    tan_mg_n_l_day = tan_mg_n_day / volume_l
    oxidation = constants("ebeling_2006")
    caco3_mg_l_day = tan_mg_n_l_day * oxidation["alkalinity_caco3_per_n"]
    return {
        "tan_mg_n_day": tan_mg_n_day,
        "tan_mg_n_l_day": tan_mg_n_l_day,
        "nitrate_mg_l_day": tan_mg_n_l_day * oxidation["nitrate_n_per_n"] * constants("nitrogen_species")["no3_per_n"],
        "kh_drop_dkh_day": caco3_mg_l_day / constants("degree_of_hardness")["caco3_mg_l"],
        "oxygen_mg_day": tan_mg_n_day * oxidation["oxygen_per_n"],
    }
