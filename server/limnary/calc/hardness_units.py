"""One hardness or alkalinity on every scale that kits and water reports use."""

from limnary.calc.tables import table

ANSWERED = ("dh", "ppm_caco3", "mmol_l", "meq_l", "fh", "clark", "gpg")


def hardness_units(*, value: float, unit: str) -> dict:
    """The same amount on every scale.

    mmol/L of calcium and magnesium = value x (mmol/L in one of the unit). For carbonate hardness the
    same scales count the hardness equivalent to the alkalinity, so 1 mmol/L is 2 meq/L there too.

    Parameters: value; unit, a key of tables/hardness_scales.json.
    Returns dh [°d], ppm_caco3 [mg/L as CaCO3], mmol_l, meq_l, fh [French degrees], clark, gpg (US).
    Source: iupac_atomic_weights, nist_handbook_44 and the definitions of the scales.

    >>> round(hardness_units(value=10, unit="dh")["ppm_caco3"], 1)
    178.5
    """
    scales = table("hardness_scales")["scales"]
    mmol_l = value * scales[unit]["mmol_l"]
    return {key: value if key == unit else mmol_l / scales[key]["mmol_l"] for key in ANSWERED}
