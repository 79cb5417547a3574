"""light_dose and nitrogen_load against unit algebra by pint, and a published worked example of light."""

import pytest
from limnary.contracts import run
from pint import get_application_registry

unit = get_application_registry()


@pytest.mark.parametrize(("ppfd", "hours"), [(30, 8), (50, 10), (100, 8), (200, 12), (2000, 24)])
def test_light_dose_by_units(ppfd, hours):
    got = run("light_dose", {"ppfd_umol_m2_s": ppfd, "hours": hours})
    expected = (ppfd * unit.micromole / unit.m**2 / unit.s * hours * unit.hour).to("mol/m**2")
    assert got["dli_mol_m2_day"] == pytest.approx(expected.magnitude, rel=1e-12)


def test_light_dose_of_the_published_example():
    # Faust, Light Management: 38.1 µmol/m²/s x 3600 s/h x 12 h / 10^6 = 1.6 mol/m²/day.
    got = run("light_dose", {"ppfd_umol_m2_s": 38.1, "hours": 12})
    assert round(got["dli_mol_m2_day"], 1) == 1.6


def test_light_dose_of_a_fading_lamp_is_the_area_under_its_curve():
    from scipy.integrate import quad

    def lamp(hour):  # 1.5 h up, 6 h full, 1.5 h down
        return 80 * max(0.0, min(1.0, hour / 1.5, (9 - hour) / 1.5))

    area = quad(lamp, 0, 9, points=[1.5, 7.5])[0] * 3600 / 1e6
    got = run("light_dose", {"ppfd_umol_m2_s": 80, "hours": 9, "ramp_minutes": 90})
    assert got["dli_mol_m2_day"] == pytest.approx(area, rel=1e-9)


def test_nitrogen_load_by_units():
    got = run("nitrogen_load", {"feed_g_day": 0.7, "protein_fraction": 0.42, "volume_l": 63})
    load = 0.7 * unit.gram / unit.day * 0.42 * 0.092 / (63 * unit.litre)
    assert got["tan_mg_n_l_day"] == pytest.approx(load.to("mg/litre/day").magnitude, rel=1e-12)
