"""What a routine of fertiliser salts gives a week, what piles up under water changes, and the dose for a target."""

from limnary.calc.refusal import Refusal
from limnary.calc.salt_dose import effects_of
from limnary.calc.tables import constants, table

# What falls out together with calcium in one bottle.
CLOUDS = ("so4", "po4", "co3", "hco3")


def nutrient_routine(
    *,
    water_l: float,
    salts: list[dict],
    doses_per_week: float = 1.0,
    stock_ml: float | None = None,
    dose_ml: float | None = None,
    change_fraction: float | None = None,
    every_days: float | None = None,
    uptake_fraction: float = 0.0,
    target_ion: str | None = None,
    target_mg_l_week: float | None = None,
) -> dict:
    """Ions and hardness that the doses of a week add to each litre, and where each settles.

    a week = doses x share of the bottle x grams / molar mass x ions / litres;
    just before a change it settles at a week x (1 - uptake) / 7 x days / fraction.

    Parameters: water_l [L]; salts, each {salt, a row of tables/salts.json, g}, in grams for one dose or, with
    stock_ml and dose_ml [ml], in the bottle; doses_per_week; change_fraction [1] every every_days [days];
    uptake_fraction [1, what plants take of it]; target_ion with target_mg_l_week [mg/L a week].
    Returns week (gh_dgh, kh_dkh [°d] and NAME_mg_l [mg/L]); with changes settles (the same, added to what the new
    water holds); with a target dose_factor [1]; notes.
    Raises Refusal: dose_above_stock, not_in_salts.
    Source: iupac_atomic_weights, mass_balance.

    >>> salts = [{"salt": "potassium_nitrate", "g": 1}]
    >>> round(nutrient_routine(water_l=60, salts=salts, doses_per_week=2)["week"]["no3_mg_l"], 2)
    20.44
    """
    if stock_ml is not None and dose_ml > stock_ml:
        raise Refusal("dose_above_stock")
    share = 1.0 if stock_ml is None else dose_ml / stock_ml
    week = {"gh_dgh": 0.0, "kh_dkh": 0.0}
    for one in salts:
        mmol_l = one["g"] * share * 1000 / table("salts")["rows"][one["salt"]]["g_mol"] / water_l * doses_per_week
        for name, effect in effects_of(one["salt"]).items():
            week[name] = week.get(name, 0.0) + effect * mmol_l
    answer = {"week": week}
    notes = [] if stock_ml is None else _of_bottle(salts)
    if change_fraction is not None:
        held = (1 - uptake_fraction) / 7 * every_days / change_fraction
        answer["settles"] = {name: amount * held for name, amount in week.items()}
        limit_mg_l = table("limits")["limits"]["nitrate_mg_n_l"]["value"] * constants("nitrogen_species")["no3_per_n"]
        if answer["settles"].get("no3_mg_l", 0.0) > limit_mg_l:
            notes.append("nitrate_high")
    if target_ion is not None:
        given = week.get(f"{target_ion}_mg_l", 0.0)
        if given <= 0:
            raise Refusal("not_in_salts")
        answer["dose_factor"] = target_mg_l_week / given
    return {**answer, "notes": notes}


def _of_bottle(salts: list[dict]) -> list[str]:
    """What a bottle with these salts will not do: stay clear, or dissolve."""
    rows = [table("salts")["rows"][one["salt"]] for one in salts]
    ions = {ion for row in rows for ion in row["gives"]}
    notes = ["falls_out"] if "ca" in ions and ions.intersection(CLOUDS) else []
    return [*notes, "slow"] if any(row.get("slow") for row in rows) else notes
