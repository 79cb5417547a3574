"""oxygen_saturation against Table 4500-O:I of Standard Methods (APHA), fresh water at one atmosphere."""

import pytest
from limnary.contracts import run

# mg/L by °C, as printed (from memory).
TABLE = {0: 14.621, 5: 12.770, 10: 11.288, 15: 10.084, 20: 9.092, 25: 8.263, 30: 7.559, 35: 6.949}


@pytest.mark.parametrize(("temperature_c", "mg_l"), TABLE.items())
def test_oxygen_saturation_as_printed(temperature_c, mg_l):
    got = run("oxygen_saturation", {"temperature_c": temperature_c})
    assert got["saturation_mg_l"] == pytest.approx(mg_l, abs=0.0011)
