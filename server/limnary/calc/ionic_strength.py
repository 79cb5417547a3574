"""Ionic strength of fresh water from its conductivity or its dissolved solids."""

from limnary.calc.tables import constants


def ionic_strength(*, conductivity_us_cm: float | None = None, tds_mg_l: float | None = None) -> dict:
    """The ionic strength by the rule of thumb of water chemistry; give one of the two.

    I = 1.6e-5 x conductivity;  I = 2.5e-5 x dissolved solids

    Parameters: conductivity_us_cm [µS/cm at 25 °C, up to 3000], tds_mg_l [mg/L, up to 2000].
    Returns ionic_strength_mol_l [mol/L].
    Source: lind_1970, langelier_1936 (both from memory).

    >>> ionic_strength(tds_mg_l=200)
    {'ionic_strength_mol_l': 0.005}
    """
    rule = constants("ionic_strength_rules")
    if conductivity_us_cm is not None:
        return {"ionic_strength_mol_l": rule["per_us_cm"] * conductivity_us_cm}
    return {"ionic_strength_mol_l": rule["per_mg_l"] * tds_mg_l}
