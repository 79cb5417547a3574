"""Limits of copper, chloride and chlorine for fish and for shrimp and snails, by hardness."""

import math

from limnary.calc.tables import constants, table

# The hardness that the copper criteria were drawn for (from memory), mg/L as CaCO3.
DRAWN_FOR_MG_L = (25.0, 400.0)


def toxicant_limits(
    *,
    gh_dgh: float | None = None,
    hardness_mg_caco3_l: float | None = None,
    copper_ug_l: float | None = None,
    chloride_mg_l: float | None = None,
    chlorine_ug_l: float | None = None,
) -> dict:
    """Short and long limits for freshwater life, and which of them a measured figure passes.

    copper, United States, dissolved: 0.96 exp(a ln H + b);  Canada: 0.2 exp(0.8545 ln H - 1.465), H held from
    82 to 180;  H the hardness in mg/L as CaCO3. Chloride and chlorine do not depend on it.

    Parameters: gh_dgh [°d] or hardness_mg_caco3_l [mg/L]; as measured copper_ug_l [ug/L], chloride_mg_l [mg/L],
    chlorine_ug_l [ug/L as Cl2].
    Returns copper_acute_ug_l, copper_chronic_ug_l, copper_ccme_ug_l [ug/L], chloride_acute_mg_l,
    chloride_chronic_mg_l (the lower of both countries') [mg/L], chlorine_acute_ug_l, chlorine_chronic_ug_l,
    chlorine_ccme_ug_l [ug/L]; hardness_mg_l [mg/L as CaCO3]; notes, one for each measured figure that passes a
    limit, by its worst.
    Source: epa_1995_copper, ccme_copper, ccme_chloride, epa_1984_chlorine, ccme_chlorine.

    >>> found = toxicant_limits(hardness_mg_caco3_l=100)
    >>> [round(found[name], 1) for name in ("copper_acute_ug_l", "copper_chronic_ug_l", "copper_ccme_ug_l")]
    [13.4, 9.0, 2.4]
    """
    hardness_mg_l = hardness_mg_caco3_l
    if gh_dgh is not None:
        hardness_mg_l = gh_dgh * constants("degree_of_hardness")["caco3_mg_l"]
    limits = table("limits")["limits"]
    answer = {
        "copper_acute_ug_l": _dissolved_ug_l("acute", hardness_mg_l),
        "copper_chronic_ug_l": _dissolved_ug_l("chronic", hardness_mg_l),
        "copper_ccme_ug_l": _ccme_ug_l(hardness_mg_l),
        "chloride_acute_mg_l": limits["chloride_acute_mg_l"]["value"],
        "chloride_chronic_mg_l": limits["chloride_mg_l"]["value"],
        "chlorine_acute_ug_l": limits["chlorine_acute_mg_l"]["value"] * 1000,
        "chlorine_chronic_ug_l": limits["chlorine_mg_l"]["value"] * 1000,
        "chlorine_ccme_ug_l": limits["chlorine_ccme_mg_l"]["value"] * 1000,
        "hardness_mg_l": hardness_mg_l,
    }
    return {
        **answer,
        "notes": [
            *([] if DRAWN_FOR_MG_L[0] <= hardness_mg_l <= DRAWN_FOR_MG_L[1] else ["hardness_extended"]),
            *_passed("copper", copper_ug_l, answer["copper_acute_ug_l"], answer["copper_ccme_ug_l"]),
            *_passed("chloride", chloride_mg_l, answer["chloride_acute_mg_l"], answer["chloride_chronic_mg_l"]),
            *_passed("chlorine", chlorine_ug_l, answer["chlorine_acute_ug_l"], answer["chlorine_chronic_ug_l"]),
        ],
    }


def _dissolved_ug_l(kind: str, hardness_mg_l: float) -> float:
    """The United States criterion of dissolved copper [ug/L]."""
    law = constants("epa_1995_copper")
    return law["dissolved"] * math.exp(law[f"{kind}_slope"] * math.log(hardness_mg_l) + law[f"{kind}_intercept"])


def _ccme_ug_l(hardness_mg_l: float) -> float:
    """Canada's guideline for total copper [ug/L], level below and above the hardness it was drawn for."""
    law = constants("ccme_copper")
    held = min(max(hardness_mg_l, law["least_hardness_mg_l"]), law["most_hardness_mg_l"])
    return law["factor"] * math.exp(law["slope"] * math.log(held) + law["intercept"])


def _passed(what: str, measured: float | None, acute: float, chronic: float) -> list[str]:
    """The note of a measured figure: over the short limit, over the long one, or none."""
    if measured is None or measured <= chronic:
        return []
    return [f"{what}_acute" if measured > acute else f"{what}_chronic"]
