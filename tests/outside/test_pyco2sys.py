"""carbon_dioxide against PyCO2SYS, fresh water (carbonate constants of option 8, Millero 1979, no salt)."""

import warnings

import pytest
from limnary.contracts import run

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # the library's own imports warn on newer versions of what it uses
    import PyCO2SYS


# PyCO2SYS has no activity coefficients, so the water must be dilute: at 0.1 °d they matter by half a per cent.
@pytest.mark.parametrize("temperature_c", [10, 20, 25, 30])
@pytest.mark.parametrize("ph", [6.0, 6.5, 7.0, 7.5, 8.0])
def test_carbon_dioxide_in_thin_water(ph, temperature_c):
    kh_dkh = 0.1
    alkalinity_umol = kh_dkh * 2 * 10 / 56.077 * 1000
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        found = PyCO2SYS.sys(
            par1=alkalinity_umol, par2=ph, par1_type=1, par2_type=3, salinity=0,
            temperature=temperature_c, opt_k_carbonic=8, opt_pH_scale=4,
        )  # fmt: skip
    expected = float(found["aqueous_CO2"]) * 44.009 / 1000
    got = run("carbon_dioxide", {"ph": ph, "kh_dkh": kh_dkh, "temperature_c": temperature_c})
    assert got["co2_mg_l"] == pytest.approx(expected, rel=0.01)
