"""Density, vapour pressure and latent heat of fresh water."""

import math

from limnary.calc.tables import constants


def density_kg_m3(temperature_c: float) -> float:
    """Density of air-free water [kg/m³] at `temperature_c` [°C, 0 to 40 as published].

    rho = 999.97495 [1 - (t - 3.983035)² (t + 301.797) / (522528.9 (t + 69.34881))]
    Source: tanaka_2001.

    >>> round(density_kg_m3(25), 3)
    997.047
    """
    tanaka = constants("tanaka_2001")
    away = temperature_c - tanaka["t_max_c"]
    bend = away * away * (temperature_c + tanaka["a_c"]) / (tanaka["b_c2"] * (temperature_c + tanaka["d_c"]))
    return tanaka["rho_max_kg_m3"] * (1 - bend)


def saturation_kpa(temperature_c: float) -> float:
    """Vapour pressure [kPa] of air saturated over water at `temperature_c` [°C, 0 to 50].

    p = 0.61094 exp(17.625 t / (t + 243.04))
    Source: alduchov_eskridge_1996.

    >>> round(saturation_kpa(25), 3)
    3.162
    """
    magnus = constants("alduchov_1996")
    return magnus["p0_kpa"] * math.exp(magnus["slope"] * temperature_c / (temperature_c + magnus["offset_c"]))


def latent_heat_kj_kg(temperature_c: float) -> float:
    """Heat of evaporation [kJ/kg] of water at `temperature_c` [°C]: 2501 - 2.361 t. Source: harrison_1963.

    >>> round(latent_heat_kj_kg(25), 1)
    2442.0
    """
    harrison = constants("harrison_1963")
    return harrison["latent_0_kj_kg"] - harrison["slope_kj_kg_k"] * temperature_c
