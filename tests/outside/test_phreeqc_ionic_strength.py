"""ionic_strength against PHREEQC, which works out both the conductivity and the ionic strength of a water."""

import pytest
from limnary.contracts import run
from phreeqpython import PhreeqPython

# mmol/L of alkalinity, Ca, Mg, Na, Cl, sulfate: very soft, soft, middling and hard water, and one with salt.
WATERS = {
    "very soft": ((0.3, 0.15, 0.05, 0.1, 0.1, 0.05), 0.20),
    "soft": ((1, 0.5, 0.1, 0.3, 0.3, 0.1), 0.18),
    "middling": ((2.5, 1.2, 0.3, 0.5, 0.5, 0.3), 0.10),
    "hard": ((5, 2.2, 0.6, 1, 1, 0.6), 0.06),
    "salted": ((3, 1, 0.5, 3, 3, 0.5), 0.30),
}


@pytest.mark.parametrize("name", WATERS)
def test_ionic_strength_as_phreeqc_finds_it(name):
    (alkalinity, calcium, magnesium, sodium, chloride, sulfate), room = WATERS[name]
    water = PhreeqPython(database="phreeqc.dat").add_solution(
        {
            **{"units": "mmol/kgw", "temp": 25, "pH": 7.5, "Alkalinity": alkalinity, "Ca": calcium},
            **{"Mg": magnesium, "Na": sodium, "S(6)": sulfate, "Cl": f"{chloride} charge"},
        }
    )
    got = run("ionic_strength", {"conductivity_us_cm": water.sc})["ionic_strength_mol_l"]
    assert got == pytest.approx(water.I, rel=room)
    # The effect of the difference on free ammonia at pH 8 and 25 °C.
    tap = {"tan_mg_n_l": 1, "ph": 8, "temperature_c": 25}
    ours = run("free_ammonia", {**tap, "ionic_strength_mol_l": got})["fraction"]
    theirs = run("free_ammonia", {**tap, "ionic_strength_mol_l": water.I})["fraction"]
    assert ours == pytest.approx(theirs, rel=0.02)
