"""Two-step nitrification with plants: one stable step of the outlook's model, for a whole cloud of draws.

    dn1/dt = p - e1 C1 n1/(K1+n1) - u n1/(Ku+n1)
    dn2/dt = e1 C1 n1/(K1+n1) - e2 C2 n2/(K2+n2)
    dn3/dt = e2 C2 n2/(K2+n2) - (the uptake that ammonia did not cover) n3/(Kn+n3)
    dC1/dt = C1 (e1 m1 n1/(K1+n1) - d b),   dC2/dt likewise with n2

n: total ammonia, nitrite, nitrate [mg N/L]; p: input [mg N/L/day]; u: plant uptake [mg N/L/day];
C: capacity of the ammonia (1) and nitrite (2) oxidisers at saturation, 20 °C and pH 7.2 [mg N/L/day];
m: growth [1/day]; b: decay [1/day]; e and d: factors of the current water (see `conditions`).
Sources: metcalf_eddy_2014, ekama_wentzel_2008.
"""

from functools import cache
from types import MappingProxyType

import numpy as np

from limnary.calc.tables import constants

# One row per quantity, one column per draw.
TAN, NITRITE, NITRATE, CAPACITY_1, CAPACITY_2, INPUT, UPTAKE = range(7)
GROWTH_1, GROWTH_2, HALF_1, HALF_2, DECAY, PH_OFFSET, APPETITE = range(7, 14)
ROWS = 14
_GROUPS = (
    "metcalf_eddy_2014",
    "metcalf_eddy_nitrite_oxidisers",
    "nitrifier_water",
    "timmons_ebeling",
    "belief_prior",
    "belief_walk",
    "belief_reading",
    "belief_drift",
    "outlook",
)


@cache
def settings() -> MappingProxyType:
    """Every constant of the outlook by name; tables/constants.json has units and provenance."""
    return MappingProxyType({name: value for group in _GROUPS for name, value in constants(group).items()})


def conditions(c: dict, temperature_c: float, ph: float, kh_dkh: float | None) -> tuple[float, float, float]:
    """(e1, e2, d): factors of this water on the growth of both groups and on their decay [1].

    e = theta^(T-20) x 2.35^(min(pH, 7.2) - 7.2) x 1.13 (9.5 - pH)/(9.8 - pH) x KH term, never below 0.02.
    Sources: metcalf_eddy_2014 (theta), ekama_wentzel_2008 (pH), henze_2000 (alkalinity).
    """
    factor = c["ph_base"] ** min(ph - c["ph_cap"], 0.0)
    factor *= c["ph_high"] * (c["ph_zero"] - min(ph, c["ph_zero"])) / (c["ph_pole"] - min(ph, c["ph_zero"]))
    if kh_dkh is not None:
        factor *= kh_dkh / (c["half_kh_dkh"] + kh_dkh)
    factor = max(factor, c["least_activity"])
    warm = temperature_c - 20.0
    return factor * c["theta_growth_1"] ** warm, factor * c["theta_growth_2"] ** warm, c["theta_decay"] ** warm


def step(cloud: np.ndarray, days: float, base: float, released: float, water: tuple, c: dict) -> None:
    """Move `cloud`, shape (ROWS, N), forward by `days` in place; semi-implicit, so stable at any rate.

    `base`: nominal input [mg N/L/day]; `released`: what meals release during the step [mg N/L]; each draw scales
    both by its own INPUT and by APPETITE, its random factor for the current 12 h. `water`: from `conditions`.
    """
    e1, e2, d = water
    n1, n2, n3 = cloud[TAN], cloud[NITRITE], cloud[NITRATE]
    rate_1 = (days * e1) * cloud[CAPACITY_1] / (cloud[HALF_1] + n1)
    rate_u = days * cloud[UPTAKE] / (c["half_uptake"] + n1)
    n1 = (n1 + cloud[INPUT] * cloud[APPETITE] * (days * base + released)) / (1.0 + rate_1 + rate_u)
    oxidised_1 = rate_1 * n1
    rate_2 = (days * e2) * cloud[CAPACITY_2] / (cloud[HALF_2] + n2)
    n2 = (n2 + oxidised_1) / (1.0 + rate_2)
    oxidised_2 = rate_2 * n2
    spare = np.maximum(days * cloud[UPTAKE] - rate_u * n1, 0.0)
    cloud[NITRATE] = (n3 + oxidised_2) / (1.0 + spare / (c["half_nitrate"] + n3))
    cloud[TAN], cloud[NITRITE] = n1, n2
    kept = 1.0 + (days * d) * cloud[DECAY]
    cloud[CAPACITY_1] = (cloud[CAPACITY_1] + cloud[GROWTH_1] * oxidised_1) / kept
    cloud[CAPACITY_2] = (cloud[CAPACITY_2] + cloud[GROWTH_2] * oxidised_2) / kept


def processed(cloud: np.ndarray, water: tuple, c: dict, tan_mg_n_l: float, nitrite_mg_n_l: float) -> np.ndarray:
    """What each draw's tank processes [mg N/L/day] while ammonia and nitrite stay at these concentrations.

    It is the lesser of the two groups' rates plus the plants' uptake. Shape (N,).
    """
    first = water[0] * cloud[CAPACITY_1] * tan_mg_n_l / (cloud[HALF_1] + tan_mg_n_l)
    second = water[1] * cloud[CAPACITY_2] * nitrite_mg_n_l / (cloud[HALF_2] + nitrite_mg_n_l)
    return np.minimum(first, second) + cloud[UPTAKE] * tan_mg_n_l / (c["half_uptake"] + tan_mg_n_l)
