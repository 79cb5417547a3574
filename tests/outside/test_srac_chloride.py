"""nitrite_risk against pond practice (SRAC Publication 462, 1997) and measured harm."""

import pytest
from limnary.contracts import run
from molmass import Formula

NO2_PER_N = Formula("NO2").mass / Formula("N").mass


# "At least a 10 to 1 ratio of chloride to nitrite", by mass, nitrite as the ion.
@pytest.mark.parametrize(("nitrite_mg_l", "chloride_mg_l"), [(2, 10), (0.5, 20), (5, 0), (10, 100)])
def test_nitrite_risk_reaches_ten_to_one(nitrite_mg_l, chloride_mg_l):
    got = run("nitrite_risk", {"nitrite_mg_n_l": nitrite_mg_l / NO2_PER_N, "chloride_mg_l": chloride_mg_l})
    after = chloride_mg_l + got["chloride_to_add_mg_l"]
    assert after / nitrite_mg_l == pytest.approx(max(10, chloride_mg_l / nitrite_mg_l), rel=1e-4)
    salt = got["chloride_to_add_mg_l"] * Formula("NaCl").mass / Formula("Cl").mass
    assert got["salt_mg_l"] == pytest.approx(salt, rel=1e-4)


# Measured in water with little chloride: trout, 28 days, growth harmed at 0.2 and not at 0.01 mg/L as NO2 with
# 10 mg/L of chloride (abstract, PubMed 18313751); a characin, 96 h, nine tenths of the blood pigment converted
# at 0.2 to 0.6 mg N/L (Avilez et al. 2004). The answer must not call a harmful level safe for such fish, nor the
# harmless level dangerous. (0.2 mg/L as NO2 is 0.061 mg N/L. The guideline's mean at 10 mg/L of chloride,
# 0.10, is above it, so the test only asks that this level is more than half of our limit.)
def test_nitrite_risk_beside_measured_harm():
    harmless = run("nitrite_risk", {"nitrite_mg_n_l": 0.01 / NO2_PER_N, "chloride_mg_l": 10})
    assert harmless["risk"] == "below_both"
    harmed = run("nitrite_risk", {"nitrite_mg_n_l": 0.2, "chloride_mg_l": 2})
    assert harmed["risk"] == "above_both"
    growth = run("nitrite_risk", {"nitrite_mg_n_l": 0.2 / NO2_PER_N, "chloride_mg_l": 10})
    assert growth["mean_limit_mg_n_l"] < 2 * 0.2 / NO2_PER_N
