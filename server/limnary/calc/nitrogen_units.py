"""One reading of a nitrogen species, as nitrogen and as the ion or molecule itself."""

from limnary.calc.tables import constants


def nitrogen_units(*, value: float, species: str, basis: str) -> dict:
    """The same amount on both bases.

    as ion = as N x (mass of the species per mass of nitrogen in it)

    Parameters: value [mg/L on the stated basis]; species nh3, nh4, no2 or no3; basis "ion" or "n".
    Returns as_n_mg_l [mg N/L], as_ion_mg_l [mg of the species/L], ion_per_n [1].
    Source: iupac_atomic_weights.

    >>> round(nitrogen_units(value=50, species="no3", basis="ion")["as_n_mg_l"], 3)
    11.295
    """
    ion_per_n = constants("nitrogen_species")[f"{species}_per_n"]
    as_n_mg_l = value if basis == "n" else value / ion_per_n
    as_ion_mg_l = value if basis == "ion" else value * ion_per_n
    return {"as_n_mg_l": as_n_mg_l, "as_ion_mg_l": as_ion_mg_l, "ion_per_n": ion_per_n}
