"""The light that a planted tank gets in a day, and the hours that a wanted amount needs."""

from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants
from limnary.calc.tolerance import TOLERANCE

_SECONDS_PER_HOUR = 3600
_UMOL_PER_MOL = 1_000_000


def light_dose(
    *, ppfd_umol_m2_s: float, hours: float, ramp_minutes: float = 0.0, wanted_mol_m2_day: float | None = None
) -> dict:
    """Daily light integral of a lamp that fades in and out linearly.

    DLI = PPFD x (hours - ramp) x 3600 / 10^6

    Parameters: ppfd_umol_m2_s [µmol/m²/s], hours [h/day, fades included], ramp_minutes [min, one fade],
    wanted_mol_m2_day [mol/m²/day].
    Returns dli_mol_m2_day [mol/m²/day], full_hours [h], band ("low" | "medium" | "high", common practice)
    and, if an amount is wanted and fits into a day, hours_needed [h].
    Raises Refusal("ramp_too_long") when the two fades are longer than the day of light.
    Source: si_brochure; egeria_2010 and keepers_practice for the notes.

    >>> round(light_dose(ppfd_umol_m2_s=50, hours=8)["dli_mol_m2_day"], 6)
    1.44
    """
    ramp_hours = ramp_minutes / 60
    if 2 * ramp_hours > hours:
        raise Refusal("ramp_too_long")
    full_hours = hours - ramp_hours
    mol_m2_hour = ppfd_umol_m2_s * _SECONDS_PER_HOUR / _UMOL_PER_MOL
    out = {"dli_mol_m2_day": mol_m2_hour * full_hours, "full_hours": full_hours, "band": _band(ppfd_umol_m2_s)}
    notes = _notes_on(ppfd_umol_m2_s, hours)
    if wanted_mol_m2_day is not None:
        if wanted_mol_m2_day <= mol_m2_hour * (24 - ramp_hours) + TOLERANCE and mol_m2_hour > TOLERANCE:
            out["hours_needed"] = min(24.0, wanted_mol_m2_day / mol_m2_hour + ramp_hours)
        else:
            notes.append("cannot_reach")
    return {**out, "notes": notes}


def _band(ppfd_umol_m2_s: float) -> str:
    practice = constants("light_practice")
    if ppfd_umol_m2_s >= practice["high_from_umol_m2_s"]:
        return "high"
    return "medium" if ppfd_umol_m2_s >= practice["medium_from_umol_m2_s"] else "low"


def _notes_on(ppfd_umol_m2_s: float, hours: float) -> list[str]:
    egeria = constants("light_for_submerged_plants")
    notes = []
    if ppfd_umol_m2_s < egeria["compensation_low_umol_m2_s"]:
        notes.append("below_compensation")
    elif ppfd_umol_m2_s <= egeria["compensation_high_umol_m2_s"]:
        notes.append("near_compensation")
    if hours > constants("light_practice")["long_day_hours"]:
        notes.append("long_day")
    return notes
