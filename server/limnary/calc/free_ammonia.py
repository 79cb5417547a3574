"""Free (un-ionised) ammonia from total ammonia, pH, temperature and ionic strength."""

from limnary.calc.tables import constants


def free_ammonia(*, tan_mg_n_l: float, ph: float, temperature_c: float, ionic_strength_mol_l: float = 0.0) -> dict:
    """The share of total ammonia that is NH3, and its concentration.

    pKa = 0.09018 + 2729.92 / T;  pKa' = pKa - log10(gamma);  fraction = 1 / (1 + 10^(pKa' - pH))
    with log10(gamma) of the ammonium ion after Davies. `ph` is the activity pH that a meter shows.

    Parameters: tan_mg_n_l [mg N/L], ph, temperature_c [°C, 0 to 50 as published],
    ionic_strength_mol_l [mol/L, up to 0.1].
    Returns fraction [1], nh3_mg_n_l [mg N/L], nh3_mg_l [mg NH3/L], pka [1].
    Source: emerson_1975; davies_1962 for the ionic strength.

    >>> round(free_ammonia(tan_mg_n_l=1, ph=8, temperature_c=25)["fraction"], 5)
    0.05366
    """
    emerson = constants("emerson_1975")
    davies = constants("davies_1962")
    pka = emerson["intercept"] + emerson["slope_k"] / (temperature_c + constants("kelvin")["zero_celsius_k"])
    root = ionic_strength_mol_l**0.5
    log_gamma = -davies["a_25c"] * (root / (1 + root) - davies["linear"] * ionic_strength_mol_l)
    pka_in_water = pka - log_gamma
    fraction = 1 / (1 + 10 ** (pka_in_water - ph))
    nh3_mg_n_l = tan_mg_n_l * fraction
    return {
        "fraction": fraction,
        "nh3_mg_n_l": nh3_mg_n_l,
        "nh3_mg_l": nh3_mg_n_l * constants("nitrogen_species")["nh3_per_n"],
        "pka": pka_in_water,
    }
