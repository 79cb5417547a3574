"""How much nitrite a water may hold by its chloride, as British Columbia's guideline prints it."""

from limnary.calc.tables import table


def nitrite_limits(chloride_mg_l: float) -> dict:
    """The step of the guideline's table that this chloride [mg/L] lies in; a bound belongs to the step below it.

    Returns mean_mg_n_l (30-day mean) and maximum_mg_n_l [mg N/L].
    Source: bc_nitrogen_2009.

    >>> [nitrite_limits(chloride)["mean_mg_n_l"] for chloride in (2, 2.1, 400)]
    [0.02, 0.04, 0.2]
    """
    printed = table("limits")["nitrite_by_chloride"]
    return next((step for step in printed["steps"] if chloride_mg_l <= step["chloride_to_mg_l"]), printed["above"])
