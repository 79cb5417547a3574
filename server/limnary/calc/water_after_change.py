"""pH, hardness, warmth and free ammonia of a tank after a water change: at once, and once its gases have settled."""

from limnary.calc.carbonate import carbon_ratios, davies, ph_of
from limnary.calc.free_ammonia import free_ammonia
from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants, table

# Tolerance for float rounding: less is not more free ammonia, nor a larger move of the pH.
ROUNDING = 1e-6
# A smaller rise of the pH shows on no meter (assumption): then it is not what raised the free ammonia.
SEEN_PH = 0.05
# From this share of a limit on a tank is watched (assumption).
WATCHED = 0.25


def water_after_change(
    *,
    ph: float,
    kh_dkh: float,
    temperature_c: float,
    tan_mg_n_l: float,
    source_ph: float,
    source_kh_dkh: float,
    source_temperature_c: float,
    fraction: float,
    source_tan_mg_n_l: float = 0.0,
) -> dict:
    """The tank's water after `fraction` of it was changed, as a closed vessel and after settling.

    Alkalinity, inorganic carbon, total ammonia and heat mix by volume. The pH is the one at which
    alkalinity = HCO3 + 2 CO3 + OH - H + NH3 holds: at once with the mixed inorganic carbon at the mixed
    temperature, settled with the carbon dioxide and the temperature that the tank had before the change.
    (Assumption: its animals, plants, surface and heater bring both back, within hours to a day.)

    Parameters: ph, kh_dkh [°d], temperature_c [°C], tan_mg_n_l [mg N/L] of the tank; the same with `source_`
    of the new water; fraction changed [1].
    Returns ph, kh_dkh [°d], temperature_c [°C], tan_mg_n_l, nh3_mg_n_l [mg N/L] at once; ph_settled,
    nh3_settled_mg_n_l [mg N/L]; nh3_before_mg_n_l [mg N/L]; notes.
    Raises Refusal("no_such_water") where the tank's pH is too high for so little alkalinity. New water of that kind
    (rain, reverse osmosis: its pH tells nothing) counts as holding no carbon, and the answer has the note
    `pure_source`.
    Source: plummer_busenberg_1982, davies_1962, emerson_1975, mass_balance. Ion pairs with calcium are left out: in
    hard water the pH at once can be 0.15 higher than this, the settled one 0.02.

    >>> hard_tap = dict(source_ph=7.6, source_kh_dkh=10, source_temperature_c=20)
    >>> found = water_after_change(ph=6.2, kh_dkh=1, temperature_c=24, tan_mg_n_l=4, fraction=0.5, **hard_tap)
    >>> round(found["ph"], 1), round(found["ph_settled"], 1), found["notes"]
    (7.1, 6.9, ['lifts_ph', 'ph_jump'])
    """
    tank = _dissolved(ph, kh_dkh, temperature_c, tan_mg_n_l)
    if tank["carbon"] <= 0:
        raise Refusal("no_such_water")
    source = _dissolved(source_ph, source_kh_dkh, source_temperature_c, source_tan_mg_n_l)
    pure = source["carbon"] <= 0
    if pure:
        source["carbon"] = 0.0
    mixed = {name: (1 - fraction) * tank[name] + fraction * source[name] for name in tank}
    at_once = _ph_of_carbon(mixed, mixed["temperature_c"])
    settled = _ph_of_carbon_dioxide(mixed, tank["carbon_dioxide"], temperature_c)
    before_mg_n_l = _free(tan_mg_n_l, ph, temperature_c)
    nh3_mg_n_l = _free(mixed["tan_mg_n_l"], at_once, mixed["temperature_c"])
    settled_mg_n_l = _free(mixed["tan_mg_n_l"], settled, temperature_c)
    return {
        "ph": at_once,
        "kh_dkh": mixed["kh_dkh"],
        "temperature_c": mixed["temperature_c"],
        "tan_mg_n_l": mixed["tan_mg_n_l"],
        "nh3_mg_n_l": nh3_mg_n_l,
        "ph_settled": settled,
        "nh3_settled_mg_n_l": settled_mg_n_l,
        "nh3_before_mg_n_l": before_mg_n_l,
        "notes": [
            *_notes(ph, before_mg_n_l, [(nh3_mg_n_l, at_once), (settled_mg_n_l, settled)]),
            *(["pure_source"] if pure else []),
        ],
    }


def _dissolved(ph: float, kh_dkh: float, temperature_c: float, tan_mg_n_l: float) -> dict:
    """What mixes by volume, of one water: alkalinity, carbon, carbon_dioxide [mol/L] and the given figures.

    The carbon is not above zero where no water has that pH with so little alkalinity.
    """
    alkalinity = kh_dkh * table("hardness_scales")["scales"]["dh"]["mmol_l"] * 2 / 1000
    ratios = carbon_ratios(ph, _kelvin(temperature_c), davies(alkalinity))
    left = alkalinity - ratios["hydroxide"] - _free_mol_l(tan_mg_n_l, ph, temperature_c)
    bicarbonate = left / (1 + 2 * ratios["carbonate"])
    return {
        "alkalinity": alkalinity,
        "carbon": bicarbonate * (1 + ratios["carbon_dioxide"] + ratios["carbonate"]),
        "carbon_dioxide": bicarbonate * ratios["carbon_dioxide"],
        "kh_dkh": kh_dkh,
        "temperature_c": temperature_c,
        "tan_mg_n_l": tan_mg_n_l,
    }


def _ph_of_carbon(water: dict, temperature_c: float) -> float:
    """The pH of a closed vessel: all its inorganic carbon stays."""
    kelvin, activity = _kelvin(temperature_c), davies(water["alkalinity"])

    def alkalinity_at(ph: float) -> float:
        ratios = carbon_ratios(ph, kelvin, activity)
        bicarbonate = water["carbon"] / (1 + ratios["carbon_dioxide"] + ratios["carbonate"])
        return _alkalinity(ratios, bicarbonate, _free_mol_l(water["tan_mg_n_l"], ph, temperature_c))

    return ph_of(water["alkalinity"], alkalinity_at)


def _ph_of_carbon_dioxide(water: dict, carbon_dioxide: float, temperature_c: float) -> float:
    """The pH of a water whose dissolved carbon dioxide [mol/L] is held."""
    kelvin, activity = _kelvin(temperature_c), davies(water["alkalinity"])

    def alkalinity_at(ph: float) -> float:
        ratios = carbon_ratios(ph, kelvin, activity)
        bicarbonate = carbon_dioxide / ratios["carbon_dioxide"]
        return _alkalinity(ratios, bicarbonate, _free_mol_l(water["tan_mg_n_l"], ph, temperature_c))

    return ph_of(water["alkalinity"], alkalinity_at)


def _alkalinity(ratios: dict, bicarbonate: float, free_mol_l: float) -> float:
    return bicarbonate * (1 + 2 * ratios["carbonate"]) + ratios["hydroxide"] + free_mol_l


def _free(tan_mg_n_l: float, ph: float, temperature_c: float) -> float:
    return free_ammonia(tan_mg_n_l=tan_mg_n_l, ph=ph, temperature_c=temperature_c)["nh3_mg_n_l"]


def _free_mol_l(tan_mg_n_l: float, ph: float, temperature_c: float) -> float:
    return _free(tan_mg_n_l, ph, temperature_c) / constants("molar_mass")["n_g_mol"] / 1000


def _kelvin(temperature_c: float) -> float:
    return temperature_c + constants("kelvin")["zero_celsius_k"]


def _notes(ph: float, free_before: float, after: list[tuple[float, float]]) -> list[str]:
    """What a keeper should know: more free ammonia than before, and why; a pH that moves far.

    `after` holds (free ammonia, pH) at once and settled. A rise that stays within `WATCHED` of the limit for long
    times harms no animal (eifac_1970).
    """
    notes = []
    most_free, ph_then = max(after)
    limit = table("limits")["limits"]["free_ammonia_mg_l"]["value"] / constants("nitrogen_species")["nh3_per_n"]
    if most_free > free_before * (1 + ROUNDING) and most_free > WATCHED * limit:
        notes.append("lifts_ph" if ph_then > ph + SEEN_PH else "brings_ammonia")
    if max(abs(ph_after - ph) for _, ph_after in after) > constants("acclimation_fao")["ph_far"] + ROUNDING:
        notes.append("ph_jump")
    return notes
