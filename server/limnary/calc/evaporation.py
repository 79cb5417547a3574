"""Water that evaporates from a quiet, open surface, and the heat that it takes away."""

from limnary.calc.tables import constants
from limnary.calc.water_properties import density_kg_m3, latent_heat_kj_kg, saturation_kpa

_SECONDS_PER_DAY = 86400
_DAYS_PER_MONTH = 30


def evaporation(
    *,
    temperature_c: float,
    room_c: float,
    length_cm: float | None = None,
    width_cm: float | None = None,
    surface_cm2: float | None = None,
    humidity_percent: float = 50.0,
    air_speed_m_s: float = 0.0,
    open_fraction: float = 1.0,
    water_l: float | None = None,
    source_gh_dgh: float | None = None,
) -> dict:
    """Evaporation from the open part of a quiet surface; zero where the room's vapour pressure is higher.

    heat = 0.74 (88.5 + 77.9 v) (p_water - p_room) A;  mass = heat / Y

    Parameters: length_cm and width_cm [cm] or surface_cm2 [cm²]; temperature_c, room_c [°C, 0 to 45];
    humidity_percent [%]; air_speed_m_s [m/s]; open_fraction [1]; water_l [L] with source_gh_dgh [°dGH].
    Returns litres_day [L/day], litres_week [L/week], drop_mm_day [mm/day over the whole surface], heat_w [W],
    pressure_gap_kpa [kPa], open_m2 [m²] and, with water_l, gh_rise_dgh_month [°dGH in 30 days].
    Source: smith_lof_jones_1998; alduchov_eskridge_1996, harrison_1963, tanaka_2001.

    >>> round(evaporation(temperature_c=25, room_c=20, surface_cm2=10000)["heat_w"])
    131
    """
    surface_m2 = (length_cm * width_cm if surface_cm2 is None else surface_cm2) / 10_000
    open_m2 = surface_m2 * open_fraction
    gap_kpa = saturation_kpa(temperature_c) - humidity_percent / 100 * saturation_kpa(room_c)
    smith = constants("smith_1998")
    w_m2_kpa = smith["quiet_share"] * (smith["still_w_m2_kpa"] + smith["moving_w_m2_kpa"] * air_speed_m_s)
    heat_w = w_m2_kpa * max(gap_kpa, 0.0) * open_m2
    kg_day = heat_w / 1000 / latent_heat_kj_kg(temperature_c) * _SECONDS_PER_DAY
    litres_day = kg_day / density_kg_m3(temperature_c) * 1000
    out = {
        "litres_day": litres_day,
        "litres_week": litres_day * 7,
        "drop_mm_day": litres_day / surface_m2,
        "heat_w": heat_w,
        "pressure_gap_kpa": gap_kpa,
        "open_m2": open_m2,
        "notes": ["condenses"] if gap_kpa <= 0 else [],
    }
    if water_l is not None:
        out["gh_rise_dgh_month"] = litres_day * _DAYS_PER_MONTH / water_l * source_gh_dgh
    return out
