"""free_ammonia against the printed table of Emerson et al. 1975 (J. Fish. Res. Board Can. 32:2379)."""

import pytest
from limnary.contracts import run

# Per cent un-ionised ammonia, zero salinity, by the published formula and its table. The printed
# table uses 273.2 for the freezing point, which moves values by less than 0.4 %.
PH = (6.0, 6.5, 7.0, 7.5, 8.0, 8.5, 9.0, 9.5)
TABLE = {
    5: (0.01245, 0.03936, 0.1244, 0.3922, 1.230, 3.789, 11.07, 28.25),
    10: (0.01856, 0.05866, 0.1853, 0.5835, 1.822, 5.544, 15.65, 36.98),
    15: (0.02727, 0.0862, 0.2721, 0.8553, 2.656, 7.942, 21.43, 46.31),
    20: (0.03956, 0.1250, 0.3942, 1.236, 3.807, 11.12, 28.36, 55.59),
    25: (0.05667, 0.1790, 0.5639, 1.762, 5.366, 15.21, 36.19, 64.20),
}
POINTS = [(t, ph, percent) for t, row in TABLE.items() for ph, percent in zip(PH, row, strict=True)]


@pytest.mark.parametrize(("temperature_c", "ph", "percent"), POINTS)
def test_free_ammonia_as_printed(temperature_c, ph, percent):
    got = run("free_ammonia", {"tan_mg_n_l": 1, "ph": ph, "temperature_c": temperature_c})
    assert got["fraction"] * 100 == pytest.approx(percent, rel=0.005)


# Trussell 1972, Percent un-ionized ammonia in aqueous ammonia solutions, pH 8.0: an older constant,
# so the tolerance is that constant's own spread.
@pytest.mark.parametrize(("temperature_c", "percent"), [(10, 1.83), (15, 2.65), (20, 3.83), (25, 5.28)])
def test_free_ammonia_beside_trussell(temperature_c, percent):
    got = run("free_ammonia", {"tan_mg_n_l": 1, "ph": 8, "temperature_c": temperature_c})
    assert got["fraction"] * 100 == pytest.approx(percent, rel=0.017)
