"""A tank that is still a plan, as the pictures and the checks of every screen want one."""

from foretold import write

PLAN = "plan-tank-0001"
OF_PLAN = ["", "/setup/glass", "/setup/substrate", "/setup/plants", "/setup/stock", "/setup/fill", "/buy"]
MEASURES = {
    "shape": "cuboid",
    "length_cm": 90,
    "width_cm": 40,
    "height_cm": 45,
    "fill_height_cm": 40,
    "measures": "inside",
}
SETUP = {
    "setup_glass": {"state": "done"},
    "setup_place": {"state": "done", "said": {}},
    "setup_substrate": {"state": "done", "said": {"bed": "capped", "nutrient_pack": 5, "support_bags": 1}},
    "setup_hardscape": {"state": "skipped"},
    "setup_warmth": {"state": "done", "said": {}},
    "setup_plants": {
        "state": "done",
        "said": {"planting": "dense", "list": [{"species": "Ceratophyllum demersum", "portions": 6}]},
    },
}
FIELDS = {
    "name": "Long plan",
    "measures": MEASURES,
    "water_l": 130,
    "gross_l": 162,
    "temperature_c": 21,
    "planting": "dense",
    "planned_stock": [{"species": "Danio rerio", "count": 8}],
    **SETUP,
}


def plan_tank(thumb) -> str:
    """Write the plan into the open room; the path of its page."""
    write(thumb, [("tank", PLAN, FIELDS)])
    return f"/tank/{PLAN}"
