"""Limits of total ammonia at a pH and temperature: the 2013 United States criteria and the European one."""

from limnary.calc.free_ammonia import free_ammonia
from limnary.calc.tables import constants, table

PUBLISHED_PH = (6.5, 9.0)
PUBLISHED_TEMPERATURE_C = (0.0, 30.0)


def ammonia_limits(*, ph: float, temperature_c: float) -> dict:
    """Acute and chronic criteria as total ammonia nitrogen, and the EIFAC limit converted to the same basis.

    g(a, b, c) = a / (1 + 10^(c - pH)) + b / (1 + 10^(pH - c))
    acute = k g min(cap, m 10^(0.036 (20 - T)));  with salmon or trout: at most the g of salmonids;
    chronic = k g m 10^(0.028 (20 - max(T, 7)));  EIFAC = 0.025 mg NH3/L / 1.21589 / fraction.

    Parameters: ph, temperature_c [°C]. Published for pH 6.5 to 9 and 0 to 30 °C; outside these ranges
    the same formula is used and the answer has the note `extended`.
    Returns acute_tan_mg_n_l (one hour), acute_salmonid_tan_mg_n_l (one hour), chronic_tan_mg_n_l
    (30-day mean), eifac_tan_mg_n_l [mg N/L], fraction [1]; notes.
    Source: epa_2013; eifac_1970 (value from memory) with emerson_1975.

    >>> round(ammonia_limits(ph=7, temperature_c=20)["chronic_tan_mg_n_l"], 1)
    1.9
    """
    epa = constants("epa_2013")
    animals = epa["acute_scale"] * _by_ph(epa, "acute", ph)
    acute_by_heat = epa["acute_at_20c"] * 10 ** (epa["acute_per_c"] * (20 - temperature_c))
    chronic_by_heat = epa["chronic_at_20c"] * 10 ** (
        epa["chronic_per_c"] * (20 - max(temperature_c, epa["chronic_coldest_c"]))
    )
    fraction = free_ammonia(tan_mg_n_l=1, ph=ph, temperature_c=temperature_c)["fraction"]
    free_limit_mg_l = table("limits")["limits"]["free_ammonia_mg_l"]["value"]
    published = (
        PUBLISHED_PH[0] <= ph <= PUBLISHED_PH[1]
        and PUBLISHED_TEMPERATURE_C[0] <= temperature_c <= PUBLISHED_TEMPERATURE_C[1]
    )
    return {
        "acute_tan_mg_n_l": animals * min(epa["acute_cap"], acute_by_heat),
        "acute_salmonid_tan_mg_n_l": min(_by_ph(epa, "salmonid", ph), animals * acute_by_heat),
        "chronic_tan_mg_n_l": epa["chronic_scale"] * _by_ph(epa, "chronic", ph) * chronic_by_heat,
        "eifac_tan_mg_n_l": free_limit_mg_l / constants("nitrogen_species")["nh3_per_n"] / fraction,
        "fraction": fraction,
        "notes": [] if published else ["extended"],
    }


def _by_ph(epa, kind: str, ph: float) -> float:
    """g of one criterion: how it falls with pH."""
    turn = epa[f"{kind}_turn_ph"]
    return epa[f"{kind}_un_ionised"] / (1 + 10 ** (turn - ph)) + epa[f"{kind}_ionised"] / (1 + 10 ** (ph - turn))
