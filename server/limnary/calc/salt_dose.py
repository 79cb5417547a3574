"""Grams of a salt that raise hardness or one ion by a wanted amount, and everything else that they add."""

from limnary.calc.refusal import Refusal
from limnary.calc.tables import table

# A rise of more degrees than this is made in steps (common practice).
STEP_DH = 2


def salt_dose(*, volume_l: float, salt: str, **wanted: dict) -> dict:
    """Grams for the volume, and what each litre gains.

    mmol/L of salt = wanted / (effect of one mmol/L);  grams = mmol/L x molar mass x volume / 1000

    Parameters: volume_l [L]; salt, a row of tables/salts.json; raise (a Python keyword, so it arrives in
    `wanted`), an object with exactly one of gh_dgh [°dGH], kh_dkh [°dKH], or ion with mg_l [mg/L].
    Returns grams [g] and adds, an object with gh_dgh, kh_dkh and NAME_mg_l of each ion given; notes.
    Raises Refusal: raise_one, ion_with_amount, not_in_salt.
    Source: iupac_atomic_weights.

    >>> round(salt_dose(volume_l=100, salt="gypsum", **{"raise": {"gh_dgh": 1}})["grams"], 2)
    3.07
    """
    name, amount = _asked(wanted["raise"])
    row = table("salts")["rows"][salt]
    effects = effects_of(salt)
    if not effects.get(name):
        raise Refusal("not_in_salt")
    mmol_l = amount / effects[name]
    adds = {key: effect * mmol_l for key, effect in effects.items()}
    notes = ["slow"] if row.get("slow") else []
    if max(adds["gh_dgh"], adds["kh_dkh"]) > STEP_DH:
        notes.append("in_steps")
    return {"grams": mmol_l * row["g_mol"] * volume_l / 1000, "adds": adds, "notes": notes}


def effects_of(salt: str) -> dict[str, float]:
    """What one mmol/L of a salt adds: gh_dgh, kh_dkh [°d], NAME_mg_l of each of its ions [mg/L]."""
    ions = table("salts")["ions"]
    gives = table("salts")["rows"][salt]["gives"]
    per_dh = table("hardness_scales")["scales"]["dh"]["mmol_l"]
    return {
        "gh_dgh": sum(n * ions[ion]["hardness"] for ion, n in gives.items()) / per_dh,
        "kh_dkh": sum(n * ions[ion]["charges"] for ion, n in gives.items()) / 2 / per_dh,
        **{f"{ion}_mg_l": n * ions[ion]["g_mol"] for ion, n in gives.items()},
    }


def _asked(wanted: dict) -> tuple[str, float]:
    """(name among the effects, amount) of the one thing to raise."""
    if ("ion" in wanted) != ("mg_l" in wanted):
        raise Refusal("ion_with_amount")
    given = [name for name in ("gh_dgh", "kh_dkh", "ion") if name in wanted]
    if len(given) != 1:
        raise Refusal("raise_one")
    if given == ["ion"]:
        return f"{wanted['ion']}_mg_l", wanted["mg_l"]
    return given[0], wanted[given[0]]
