"""Oxygen at dawn in a still, planted, stocked tank."""

from math import exp, expm1, log1p, sqrt

from limnary.calc.animals import resolve
from limnary.calc.oxygen_saturation import oxygen_saturation
from limnary.calc.tables import constants, table

# Indices of a (low, usual, high) triple of the tank classes.
LOW, USUAL, HIGH = 0, 1, 2
# Uncertain figures: each is varied alone, and the deviations are combined as the root of their squares.
DOUBTS = ("exchange", "evening", "dry", "plants", "substrate", "animals")


def oxygen_night(
    *,
    water_l: float,
    surface_cm2: float,
    temperature_c: float,
    animals: list[dict],
    altitude_m: float = 0.0,
    dark_hours: float = 14.0,
    evening_percent: float | None = None,
    planting: str = "medium",
    floating_cover: float = 0.0,
    substrate: str = "sand",
    filter: str = "none",
    cover: str = "lid",
    nitrified_mg_n_day: float = 0.0,
    least_mg_l: float = 4.0,
) -> dict:
    """Dissolved oxygen at the end of a night without light.

    dC/dt = (k A / V) (Cs - C) - R / V,  so  C(t) = Cs + (C0 - Cs) e^(-kAt/V) - R/(kA) (1 - e^(-kAt/V))

    with k = k600 (Sc/600)^(-2/3) of a windless surface times a factor for lid or filter, and R the respiration
    of animals, plants, bottom and nitrifiers, constant through the night. A negative result is answered as
    zero: no oxygen is left.

    Parameters: water_l [L], surface_cm2 [cm²], temperature_c [°C, 4 to 34], animals as in `resolve`,
    altitude_m [m], dark_hours [h], evening_percent [% of saturation at lights out; None: as the planting class
    says], planting, substrate, filter, cover (classes of tables/tank_classes.json), floating_cover [1, share of
    the surface; the covered part exchanges nothing], nitrified_mg_n_day [mg N/day], least_mg_l [mg/L, the limit
    to hold].
    Returns dawn, its band, the lowest of the night and the parts of the sum. The band varies each uncertain
    figure alone (about one standard deviation) and combines the deviations as the root of their squares.
    Raises Refusal as `resolve` does. Sources: cole_caraco_1998, wanninkhof_2014, clarke_johnston_1999,
    kragh_2017, thomann_1987, ebeling_2006, epa_1986_oxygen.

    >>> night = oxygen_night(water_l=96, surface_cm2=2400, temperature_c=24, planting="light",
    ...                      animals=[{"species": "Hyphessobrycon amandae", "count": 12}])
    >>> round(night["saturation_mg_l"], 2), night["dawn_low_mg_l"] < night["dawn_mg_l"] < night["dawn_high_mg_l"]
    (8.42, True)
    """
    tank = {
        "water_l": water_l,
        "surface_cm2": surface_cm2,
        "temperature_c": temperature_c,
        "altitude_m": altitude_m,
        "dark_hours": dark_hours,
        "evening_percent": evening_percent,
        "planting": planting,
        "floating_cover": floating_cover,
        "substrate": substrate,
        "filter": filter,
        "cover": cover,
    }
    stock = resolve(animals)
    breathing = sum(one["count"] * breathing_mg_h(one["mass_g"], temperature_c) for one in stock)
    bacteria = nitrified_mg_n_day / 24 * constants("ebeling_2006")["oxygen_per_n"]
    night = still_night(tank)
    usual = dawn_mg_l(night, breathing + bacteria)
    below, above = dawn_band(tank, breathing, bacteria)
    dawn = max(0.0, usual)
    lowest = min(night["evening_mg_l"], dawn)
    low = max(0.0, usual - below)
    return {
        "dawn_mg_l": dawn,
        "dawn_low_mg_l": low,
        "dawn_high_mg_l": max(0.0, usual + above),
        "dawn_percent": 100 * dawn / night["saturation_mg_l"],
        "lowest_mg_l": lowest,
        "hours_to_limit": hours_to(night, breathing + bacteria, least_mg_l, dark_hours),
        "saturation_mg_l": night["saturation_mg_l"],
        "evening_mg_l": night["evening_mg_l"],
        "exchange_cm_h": night["exchange_cm_h"],
        "animals_g": sum(one["count"] * one["mass_g"] for one in stock),
        "animals_mg_h": breathing,
        "plants_mg_h": night["plants_mg_h"],
        "substrate_mg_h": night["substrate_mg_h"],
        "bacteria_mg_h": bacteria,
        "notes": _notes(usual, low, lowest, least_mg_l, temperature_c),
    }


def breathing_mg_h(mass_g: float, temperature_c: float) -> float:
    """Oxygen that one fish of `mass_g` consumes [mg/h]; also used for shrimp and snails, for lack of better data.

    R = 31.9988 exp(15.7 - 5020/T) (M/50)^0.80. Source: clarke_johnston_1999.

    >>> round(breathing_mg_h(50, 25) / 0.05, 1)
    205.3
    """
    law = constants("clarke_johnston_1999")
    kelvin = temperature_c + constants("kelvin")["zero_celsius_k"]
    mmol_h = exp(law["intercept"] - law["slope_k"] / kelvin) * (mass_g / law["reference_g"]) ** law["exponent"]
    return mmol_h * constants("oxygen_molar_mass")["mg_per_mmol"]


def schmidt_oxygen(temperature_c: float) -> float:
    """Schmidt number of oxygen in fresh water, -2 to 40 °C. Source: wanninkhof_2014.

    >>> round(schmidt_oxygen(20))
    510
    """
    a, t = constants("wanninkhof_2014"), temperature_c
    return a["a0"] + t * (a["a1"] + t * (a["a2"] + t * (a["a3"] + t * a["a4"])))


def still_night(tank: dict, doubt: str = "", place: int = USUAL) -> dict:
    """The night without animals: gas exchange, oxygen in the evening, and what plants and bottom consume.

    `doubt` names the one figure that is taken at index `place` of its triple instead of the usual one.
    """
    place_of = {name: place if name == doubt else USUAL for name in DOUBTS}
    classes, smooth, t = table("tank_classes"), constants("schmidt_smooth"), tank["temperature_c"]
    filters, covers = classes["filter"]["classes"], classes["cover"]["classes"]
    stirred = filters[tank["filter"]]["exchange"][place_of["exchange"]]
    if tank["filter"] == "none":
        stirred *= covers[tank["cover"]]["exchange"][place_of["exchange"]]
    k = (
        stirred
        * constants("cole_caraco_1998")["k600_still_cm_h"]
        * (schmidt_oxygen(t) / smooth["reference"]) ** -smooth["exponent"]
    )
    bottom_m2 = tank["surface_cm2"] / 10000
    dry_g = bottom_m2 * classes["planting"]["classes"][tank["planting"]]["dry_g_m2"][place_of["dry"]]
    plants = constants("plant_breathing")
    dark = plants[("dark_low_mg_g_h", "dark_usual_mg_g_h", "dark_high_mg_g_h")[place_of["plants"]]]
    demand = classes["substrate"]["classes"][tank["substrate"]]["oxygen_g_m2_day"][place_of["substrate"]]
    evening_percent = tank["evening_percent"]
    if evening_percent is None:
        evening_percent = classes["evening"]["classes"][tank["planting"]]["percent"][place_of["evening"]]
    saturation = oxygen_saturation(temperature_c=t, altitude_m=tank["altitude_m"])["saturation_mg_l"]
    litres_h = k * tank["surface_cm2"] * (1 - tank["floating_cover"]) / 1000
    per_hour = litres_h / tank["water_l"]
    return {
        "saturation_mg_l": saturation,
        "evening_mg_l": saturation * evening_percent / 100,
        "exchange_cm_h": k,
        "litres_h": litres_h,
        "per_hour": per_hour,
        "kept": exp(-per_hour * tank["dark_hours"]),
        "renewed": -expm1(-per_hour * tank["dark_hours"]),
        "plants_mg_h": dry_g * dark * plants["night_mean_share"] * plants["theta"] ** (t - 20),
        "substrate_mg_h": bottom_m2 * demand * 1000 / 24 * constants("sediment_oxygen")["theta"] ** (t - 20),
    }


def dawn_mg_l(night: dict, others_mg_h: float) -> float:
    """Oxygen at dawn [mg/L] when animals and nitrifiers consume `others_mg_h`; negative where it runs out."""
    demand = others_mg_h + night["plants_mg_h"] + night["substrate_mg_h"]
    kept = night["saturation_mg_l"] + (night["evening_mg_l"] - night["saturation_mg_l"]) * night["kept"]
    return kept - demand / night["litres_h"] * night["renewed"]


def others_at_dawn_mg_h(night: dict, least_mg_l: float) -> float:
    """What animals and nitrifiers may consume [mg/h] to leave `least_mg_l` at dawn.

    Negative where less than that is left even without them.
    """
    kept = night["saturation_mg_l"] + (night["evening_mg_l"] - night["saturation_mg_l"]) * night["kept"]
    demand = (kept - least_mg_l) * night["litres_h"] / night["renewed"]
    return demand - night["plants_mg_h"] - night["substrate_mg_h"]


def hours_to(night: dict, others_mg_h: float, least_mg_l: float, dark_hours: float) -> float | None:
    """Hours after lights out at which oxygen passes `least_mg_l`; None where it does not before dawn."""
    settle = dawn_settles_at(night, others_mg_h)
    if not night["evening_mg_l"] > least_mg_l > settle:
        return None
    reached = log1p((night["evening_mg_l"] - least_mg_l) / (least_mg_l - settle)) / night["per_hour"]
    return reached if reached <= dark_hours else None


def dawn_settles_at(night: dict, others_mg_h: float) -> float:
    """Oxygen [mg/L] at which an endless night would settle."""
    demand = others_mg_h + night["plants_mg_h"] + night["substrate_mg_h"]
    return night["saturation_mg_l"] - demand / night["litres_h"]


def dawn_band(tank: dict, animals_mg_h: float, bacteria_mg_h: float) -> tuple[float, float]:
    """How far dawn may lie below and above the usual [mg/L, both positive]."""
    breath = constants("animal_breathing")
    rate = (breath["night_low"], breath["night_usual"], breath["night_high"])
    usual = dawn_mg_l(still_night(tank), animals_mg_h + bacteria_mg_h)
    below = above = 0.0
    for doubt in DOUBTS:
        for place in (LOW, HIGH):
            animals = animals_mg_h * rate[place if doubt == "animals" else USUAL]
            off = dawn_mg_l(still_night(tank, doubt, place), animals + bacteria_mg_h) - usual
            below, above = (below + off * off, above) if off < 0 else (below, above + off * off)
    return sqrt(below), sqrt(above)


def _notes(usual: float, low: float, lowest: float, least_mg_l: float, temperature_c: float) -> list[str]:
    notes = []
    if usual <= 0:
        notes.append("used_up")
    elif lowest < constants("epa_1986_oxygen")["day_minimum_mg_l"]:
        notes.append("under_day_minimum")
    elif lowest < least_mg_l:
        notes.append("under_limit")
    elif low < least_mg_l:
        notes.append("may_fall_under")
    if temperature_c > constants("clarke_johnston_1999")["warmest_c"]:
        notes.append("warmer_than_measured")
    return notes
