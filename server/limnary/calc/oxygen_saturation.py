"""How much oxygen water holds in equilibrium with air, by temperature and altitude or barometer."""

import math

from limnary.calc.tables import constants

KPA_PER_ATM = 101.325


def oxygen_saturation(
    *,
    temperature_c: float,
    altitude_m: float | None = None,
    pressure_kpa: float | None = None,
    oxygen_mg_l: float | None = None,
) -> dict:
    """Saturation of fresh water, and a measured oxygen as a share of it.

    Parameters: temperature_c [°C, 0 to 40 as published]; altitude_m [m] or pressure_kpa (station pressure,
    not reduced to sea level) [kPa], sea level when neither is given; oxygen_mg_l measured [mg/L].
    Returns saturation_mg_l [mg/L]; saturation_percent [%] with a measurement; air_pressure_kpa [kPa].
    Source: benson_krause_1984; iso_2533 for the pressure at an altitude.

    >>> round(oxygen_saturation(temperature_c=20)["saturation_mg_l"], 3)
    9.092
    """
    air_pressure_kpa = pressure_kpa if pressure_kpa is not None else pressure_at_kpa(altitude_m or 0.0)
    saturation_mg_l = saturation_at_mg_l(temperature_c, air_pressure_kpa)
    answer = {"saturation_mg_l": saturation_mg_l, "air_pressure_kpa": air_pressure_kpa}
    if oxygen_mg_l is not None:
        answer["saturation_percent"] = oxygen_mg_l / saturation_mg_l * 100
    return answer


def pressure_at_kpa(altitude_m: float) -> float:
    """Pressure of the standard atmosphere [kPa] at an altitude [m]: P0 (1 - 2.25577e-5 h)^5.25588.

    >>> round(pressure_at_kpa(1000), 2)
    89.87
    """
    air = constants("iso_2533")
    return KPA_PER_ATM * (1 - air["lapse_per_m"] * altitude_m) ** air["exponent"]


def saturation_at_mg_l(temperature_c: float, pressure_kpa: float) -> float:
    """Oxygen in fresh water in equilibrium with moist air [mg/L].

    ln C = a0 + a1/T + a2/T^2 + a3/T^3 + a4/T^4, T in kelvin, at one atmosphere;
    C P (1 - u/P)(1 - th P) / ((1 - u)(1 - th)) at P atmospheres, u the vapour pressure of water and
    th = 0.000975 - 1.426e-5 t + 6.436e-8 t^2 with t in degrees Celsius (some public codes feed it kelvin).
    """
    bk = constants("benson_krause_1984")
    t = temperature_c + constants("kelvin")["zero_celsius_k"]
    at_one = math.exp(bk["a0"] + bk["a1"] / t + bk["a2"] / t**2 + bk["a3"] / t**3 + bk["a4"] / t**4)
    vapour = math.exp(bk["u0"] + bk["u1"] / t + bk["u2"] / t**2)
    theta = bk["theta0"] + bk["theta1"] * temperature_c + bk["theta2"] * temperature_c**2
    p = pressure_kpa / KPA_PER_ATM
    return at_one * p * (1 - vapour / p) * (1 - theta * p) / ((1 - vapour) * (1 - theta))
