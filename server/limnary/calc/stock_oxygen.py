"""Grams of animals that leave enough oxygen at dawn."""

from limnary.calc.doubt_band import doubt_band
from limnary.calc.oxygen_night import DOUBTS, HIGH, LOW, USUAL, others_at_dawn_mg_h, still_night
from limnary.calc.tables import constants


def oxygen_limit(tank: dict, lot: dict, oxidising_mg_h_g: float, least_mg_l: float) -> dict:
    """The oxygen limit of a mixture of animals, with its band.

    `tank` as in `oxygen_night.still_night`; `lot`: mass and respiration of the mixture, g and mg_h [mg O2/h];
    oxidising_mg_h_g: oxygen that oxidises the ammonia of one gram of animals [mg/h/g]; least_mg_l at dawn [mg/L].
    Returns limit_g, low_g, high_g [g], spare_mg_h, what animals and nitrifiers may take, and sure_mg_h, what they may
    take at the low end of the band [mg/h].
    """

    def grams(doubt: str = "", place: int = USUAL) -> float:
        return _oxygen_g_of(tank, lot, oxidising_mg_h_g, least_mg_l, doubt, place)

    usual = grams()
    low, high = doubt_band(usual, [grams(doubt, place) for doubt in DOUBTS for place in (LOW, HIGH)])
    spare = others_at_dawn_mg_h(still_night(tank), least_mg_l)
    sure = spare * low / usual if usual > 0 else 0.0
    return {"limit_g": usual, "low_g": low, "high_g": high, "spare_mg_h": spare, "sure_mg_h": sure}


def measured_limit(
    tank: dict, lot: dict, oxidising_mg_h_g: float, least_mg_l: float, used: dict, dawn_mg_l: float
) -> dict:
    """The same where oxygen was read at dawn with the animals in it: only what more of them would take is calculated.

    `used`: mass and respiration of the animals present, g and mg_h. The band never reaches across what is present: a
    reading that reached `least_mg_l` says for certain that those are borne.
    """

    def grams(doubt: str = "", place: int = USUAL) -> float:
        night = still_night(tank, doubt, place)
        more_mg_h = (dawn_mg_l - least_mg_l) * night["litres_h"] / night["renewed"]
        return max(0.0, used["g"] + more_mg_h * _grams_per_mg_h(lot, oxidising_mg_h_g, doubt, place))

    usual = grams()
    low, high = doubt_band(usual, [grams(doubt, place) for doubt in DOUBTS for place in (LOW, HIGH)])
    per_mg_h = _grams_per_mg_h(lot, oxidising_mg_h_g, "", USUAL)
    return {
        "limit_g": usual,
        "low_g": low,
        "high_g": high,
        "spare_mg_h": used["mg_h"] + (usual - used["g"]) / per_mg_h,
        "sure_mg_h": used["mg_h"] + (low - used["g"]) / per_mg_h,
    }


def _oxygen_g_of(tank: dict, lot: dict, oxidising_mg_h_g: float, least_mg_l: float, doubt: str, place: int) -> float:
    """Mass of the lot [g] that leaves `least_mg_l` at dawn after its respiration and its ammonia's oxidation."""
    spare = others_at_dawn_mg_h(still_night(tank, doubt, place), least_mg_l)
    return max(0.0, spare) * _grams_per_mg_h(lot, oxidising_mg_h_g, doubt, place)


def _grams_per_mg_h(lot: dict, oxidising_mg_h_g: float, doubt: str, place: int) -> float:
    """Mass of the lot [g] whose respiration, with the oxidation of its ammonia, takes 1 mg/h of oxygen."""
    breath = constants("animal_breathing")
    rate = (breath["night_low"], breath["night_usual"], breath["night_high"])
    breathing = lot["mg_h"] * rate[place if doubt == "animals" else USUAL]
    return lot["g"] / (breathing + lot["g"] * oxidising_mg_h_g)
