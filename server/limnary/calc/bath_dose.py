"""A salt bath or a medicine by its label: the dose on net litres, what to dose again after a change, how it leaves."""

import math

from limnary.calc.dilution import SETTLED_SHARE
from limnary.calc.tables import constants

# Tolerance for float rounding where a change falls on the last day.
ROUNDING = 1e-9


def bath_dose(
    *,
    water_l: float,
    days: float,
    label_amount: float | None = None,
    label_per_l: float | None = None,
    label_unit: str = "ml",
    wanted_g_l: float | None = None,
    change_fraction: float | None = None,
    every_days: float | None = None,
) -> dict:
    """Dose, renewal after each water change, and the whole of it over a course.

    dose = label amount x litres / label litres, or wanted g/L x litres;  again after a change = dose x fraction;
    changes during the course = those that fall before its end;  to clear: (1 - fraction)^n <= 0.05.

    Parameters: water_l (net of gravel and wood) [L], days (of the course); label_amount [`label_unit`: ml or g] for
    each label_per_l [L], or wanted_g_l [g/L]; change_fraction [1] every every_days [days].
    Returns dose_ml or dose_g, with changes again_ml or again_g (after each), changes (during the course), total_ml
    or total_g, changes_to_clear (afterwards, until a twentieth is left); notes.
    Source: mass_balance, keepers_practice. It knows no medicine: the label and a vet decide.

    >>> bath_dose(water_l=54, days=10, wanted_g_l=1, change_fraction=0.25, every_days=3)["total_g"]
    94.5
    """
    unit = label_unit if wanted_g_l is None else "g"
    dose = label_amount * water_l / label_per_l if wanted_g_l is None else wanted_g_l * water_l
    strong = wanted_g_l is not None and wanted_g_l > constants("bath_practice")["long_bath_most_g_l"]
    notes = ["strong"] if strong else []
    if change_fraction is None:
        return {f"dose_{unit}": dose, f"total_{unit}": dose, "notes": notes}
    again = dose * change_fraction
    changes = math.ceil(days / every_days - ROUNDING) - 1
    to_clear = 1 if change_fraction >= 1 else math.ceil(math.log(SETTLED_SHARE) / math.log(1 - change_fraction))
    return {
        f"dose_{unit}": dose,
        f"again_{unit}": again,
        "changes": changes,
        f"total_{unit}": dose + changes * again,
        "changes_to_clear": to_clear,
        "notes": notes,
    }
