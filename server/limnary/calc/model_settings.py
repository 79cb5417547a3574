"""The constants of the forecast's model."""

from functools import cache
from types import MappingProxyType

from limnary.calc.tables import constants

_GROUPS = (
    "metcalf_eddy_2014",
    "metcalf_eddy_nitrite_oxidisers",
    "nitrifier_water",
    "nitrifier_heat",
    "park_bae_2009",
    "nitrous_acid",
    "belief_water",
    "timmons_ebeling",
    "belief_prior",
    "belief_walk",
    "belief_reading",
    "belief_drift",
    "outlook",
)


@cache
def settings() -> MappingProxyType:
    """Every constant of the outlook by name; tables/constants.json has units and provenance."""
    return MappingProxyType({name: value for group in _GROUPS for name, value in constants(group).items()})
