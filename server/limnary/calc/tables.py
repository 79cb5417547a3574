"""The shared tables (constants, limits, species ...) as the calculations read them."""

from functools import cache
from types import MappingProxyType

from limnary.schema_files import read_folder


def table(name: str) -> dict:
    """One table, the content of `shared_schema/tables/NAME.json`."""
    return read_folder("tables")[name]


@cache
def constants(group: str) -> MappingProxyType:
    """The plain values of one group of `tables/constants.json`, by name; the table has the units.

    >>> constants("emerson_1975")["slope_k"]
    2729.92
    """
    values = table("constants")["groups"][group]["values"]
    return MappingProxyType({name: entry["value"] for name, entry in values.items()})
