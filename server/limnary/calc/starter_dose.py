"""The ammonia that replaces the planned fish while a tank starts without them."""

from limnary.calc.nitrogen_load import nitrogen_load
from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants


def starter_dose(
    *,
    volume_l: float,
    tan_mg_n_l: float | None = None,
    feed_g_day: float | None = None,
    protein_fraction: float | None = None,
    ammonia_percent: float | None = None,
    ammonia_density_kg_l: float | None = None,
) -> dict:
    """Ammonium chloride, or household ammonia of a stated strength, for one dose.

    mass of nitrogen = tan_mg_n_l x volume;  ammonium chloride = 3.81887 x nitrogen;
    household ammonia = 1.21589 x nitrogen / (percent x density)

    Parameters: volume_l [L]; either tan_mg_n_l [mg N/L], or feed_g_day [g/day] with protein_fraction [1] for
    a dose of one day's load; ammonia_percent [% NH3 by mass, over 0]; ammonia_density_kg_l [kg/L], by default
    the handbook's for that strength at 20 °C.
    Returns tan_mg_n_l [mg N/L], tan_mg_n [mg N], ammonium_chloride_g [g] and, if the strength was given,
    household_ammonia_ml [mL] and density_kg_l [kg/L].
    Raises Refusal("density_alone") when a density comes without a strength.
    Source: iupac_atomic_weights, timmons_ebeling, perry_ammonia_water.

    >>> round(starter_dose(volume_l=100, tan_mg_n_l=2)["ammonium_chloride_g"], 3)
    0.764
    """
    notes = []
    if tan_mg_n_l is None:
        load = nitrogen_load(feed_g_day=feed_g_day, protein_fraction=protein_fraction, volume_l=volume_l)
        tan_mg_n_l = load["tan_mg_n_l_day"]
        notes.append("daily")
    if tan_mg_n_l > constants("starting_without_fish")["strong_tan_mg_n_l"]:
        notes.append("strong_dose")
    tan_mg_n = tan_mg_n_l * volume_l
    out = {
        "tan_mg_n_l": tan_mg_n_l,
        "tan_mg_n": tan_mg_n,
        "ammonium_chloride_g": tan_mg_n * constants("ammonium_chloride")["mass_per_n"] / 1000,
    }
    if ammonia_percent is None:
        if ammonia_density_kg_l is not None:
            raise Refusal("density_alone")
        return {**out, "notes": [*notes, "no_strength"]}
    density_kg_l = ammonia_density_kg_l if ammonia_density_kg_l is not None else _density_of(ammonia_percent)
    nh3_g = tan_mg_n * constants("nitrogen_species")["nh3_per_n"] / 1000
    out["household_ammonia_ml"] = nh3_g / (ammonia_percent / 100 * density_kg_l)
    out["density_kg_l"] = density_kg_l
    return {**out, "notes": notes}


def _density_of(ammonia_percent: float) -> float:
    water = constants("ammonia_water")
    return (
        water["density_0_kg_l"]
        + water["slope_kg_l"] * ammonia_percent
        + water["curve_kg_l"] * ammonia_percent * ammonia_percent
    )
