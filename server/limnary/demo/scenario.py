"""The contents of the invented fish room: keepers, waters, bottles, kits and three tanks. All invented."""

from dataclasses import dataclass, field

ROOM = "Stairwell fish room (invented)"
OWNER, KEEPER = "Marit Solvang", "Teo Achebe"
KEEPERS = {OWNER: "owner", KEEPER: "keeper"}
DAYS = 42

TAP = {
    "name": "Kitchen tap",
    "disinfectant": "chloramine",
    "disinfectant_mg_l": 1.2,
    "tan_mg_n_l": 0,
    "nitrite_mg_n_l": 0,
    "nitrate_mg_n_l": 2.5,
    "ph": 7.7,
    "kh_dkh": 6,
    "gh_dgh": 9,
    "temperature_c": 14,
    "note": "The water company writes of chloramine, 1 to 1.5 mg/L.",
}
BARREL = {
    "name": "Rain barrel",
    "disinfectant": "none",
    "nitrate_mg_n_l": 0.2,
    "ph": 6.6,
    "kh_dkh": 0.5,
    "gh_dgh": 0.5,
    "note": "From the shed roof, through the fleece. Not in frost.",
}
DECHLORINATOR = {
    "name": "Bottle under the stairs",
    "use": "dechlorinator",
    "amount": 2.5,
    "unit": "ml",
    "per_l": 50,
    "basis": "new_water",
    "binds_ammonia": False,
}
PLANT_FOOD = {
    "name": "Brown plant food bottle",
    "use": "fertiliser",
    "amount": 1,
    "unit": "ml",
    "per_l": 40,
    "basis": "whole_tank",
}


def _drops(name: str, parameter: str, steps: list[float], *timers: tuple[str, int]) -> dict:
    timed = [{"what": what, "seconds": seconds} for what, seconds in timers]
    ion = {"basis": "ion", "unit": "mg/L", "entry": "steps", "steps": steps, "timers": timed}
    return {"name": name, "parameter": parameter, **ion}


KITS = {
    "total_ammonia": _drops(
        "Drop test, ammonia", "total_ammonia", [0, 0.15, 0.3, 0.6, 1.2, 2.5, 5], ("Shake", 20), ("Wait", 600)
    ),
    "nitrite": _drops(
        "Drop test, nitrite", "nitrite", [0, 0.05, 0.1, 0.2, 0.4, 0.8, 1.6, 3.2], ("Shake", 10), ("Wait", 300)
    ),
    "nitrate": _drops(
        "Drop test, nitrate", "nitrate", [0, 4, 10, 20, 30, 40, 55, 75, 110], ("Shake hard", 60), ("Wait", 300)
    ),
    "ph": {"name": "Pen, pH", "parameter": "ph", "entry": "keypad"},
    "temperature": {"name": "Glass thermometer", "parameter": "temperature", "entry": "keypad", "unit": "°C"},
}


@dataclass(frozen=True)
class Tank:
    """One invented tank and how it is kept. Days count from the start of the six weeks."""

    key: str
    record: dict
    measures: dict
    first_day: int
    feed_g: float
    protein_fraction: float
    ph: float
    temperature_c: float
    # Water at the start: ammonia, nitrite, nitrate [mg N/L]; oxidisers' capacities [mg N/L a day].
    start: tuple[float, float, float, float, float]
    uptake_mg_n_l_day: float
    change_fraction: float
    change_days: tuple[int, ...]
    test_days: tuple[int, ...]
    stock: list[tuple[int, dict]] = field(default_factory=list)
    plants: list[tuple[int, dict]] = field(default_factory=list)
    notes: list[tuple[int, str]] = field(default_factory=list)
    # Notes with a drawn picture.
    drawn: list[tuple[int, str]] = field(default_factory=list)
    # Change `change_fraction` when a test shows at least this much nitrite [mg N/L]; for the tank in its first weeks.
    change_at_nitrite: float | None = None


def _arrived(species: str, count: int, length_cm: float) -> dict:
    return {"change": "arrival", "species": species, "count": count, "length_cm": length_cm}


def _planted(species: str, amount: str) -> dict:
    return {"change": "plant", "species": species, "amount": amount}


STEADY = Tank(
    key="steady",
    record={
        "name": "Window trough",
        "place": "Under the north window",
        "planting": "dense",
        "filter": "sponge",
        "walk_order": 1,
    },
    measures={
        "shape": "cuboid",
        "length_cm": 90,
        "width_cm": 45,
        "height_cm": 38,
        "measures": "inside",
        "fill_height_cm": 34,
        "substrate_l": 20,
        "hardscape_kg": 6,
    },
    first_day=-210,
    feed_g=0.3,
    protein_fraction=0.42,
    ph=7.2,
    temperature_c=21.5,
    start=(0.02, 0.01, 2.6, 0.1, 0.1),
    uptake_mg_n_l_day=0.04,
    change_fraction=0.25,
    change_days=tuple(range(3, DAYS, 7)),
    test_days=tuple(range(2, DAYS + 1, 7)),
    stock=[(0, _arrived("Tanichthys albonubes", 14, 3.2)), (0, _arrived("Corydoras paleatus", 6, 5.5))],
    plants=[
        (0, _planted("Vallisneria spiralis", "a hedge")),
        (9, {"change": "trim", "species": "Vallisneria spiralis"}),
    ],
    notes=[(16, "Two of the small catfish dig at the left end every evening.")],
    drawn=[(41, "The hedge has reached the surface: trim it this week. (Drawn, not photographed.)")],
)
DUE = Tank(
    key="due",
    record={
        "name": "Landing cube",
        "place": "First landing",
        "planting": "light",
        "filter": "internal",
        "walk_order": 2,
    },
    measures={
        "shape": "cuboid",
        "length_cm": 50,
        "width_cm": 50,
        "height_cm": 50,
        "measures": "outside",
        "glass_mm": 8,
        "fill_height_cm": 45,
        "substrate_l": 12,
        "hardscape_kg": 9,
    },
    first_day=-400,
    feed_g=0.8,
    protein_fraction=0.45,
    ph=7.4,
    temperature_c=25.0,
    start=(0.03, 0.01, 6.2, 0.35, 0.35),
    uptake_mg_n_l_day=0.02,
    change_fraction=0.3,
    change_days=(1, 8, 15, 22),
    test_days=(0, 7, 14, 21, 28, 35, 41),
    stock=[(0, _arrived("Xiphophorus maculatus", 8, 4.5)), (0, _arrived("Ancistrus cirrhosus", 1, 10))],
    plants=[(0, _planted("Microsorum pteropus", "two on the root"))],
    notes=[(30, "Away for the weekend: no change this week.")],
)
YOUNG = Tank(
    key="young",
    record={
        "name": "New long tank",
        "place": "Cellar, left of the door",
        "planting": "medium",
        "filter": "sponge",
        "seeded": "mature_media",
        "walk_order": 3,
    },
    measures={
        "shape": "cuboid",
        "length_cm": 100,
        "width_cm": 40,
        "height_cm": 40,
        "measures": "outside",
        "glass_mm": 8,
        "fill_height_cm": 35,
        "substrate_l": 25,
        "hardscape_kg": 4,
    },
    first_day=29,
    feed_g=0.25,
    protein_fraction=0.44,
    ph=7.5,
    temperature_c=24.0,
    start=(0.05, 0.0, 2.5, 0.006, 0.004),
    uptake_mg_n_l_day=0.012,
    change_fraction=0.35,
    change_days=(),
    test_days=tuple(range(30, DAYS + 1)),
    change_at_nitrite=0.1,
    stock=[(31, _arrived("Danio rerio", 6, 3.0))],
    plants=[(29, _planted("Hygrophila polysperma", "20 stems")), (29, _planted("Cryptocoryne wendtii", "4 pots"))],
    notes=[(29, "Filled. The old sponge from the window trough sits in the new filter.")],
)
TANKS = (STEADY, DUE, YOUNG)

# A death, and what the tanks shared: day, kind, tank key, the other tank's key or None, fields.
HAPPENED = (
    (
        34,
        "stock_change",
        "due",
        None,
        {"change": "death", "species": "Xiphophorus maculatus", "count": 1, "cause": "old age", "cause_code": "age"},
    ),
    (29, "shared_tool", "steady", "young", {"tool": "filter", "order": "here"}),
    (
        36,
        "planting",
        "steady",
        "due",
        {"species": "Vallisneria spiralis", "amount": "a handful", "amount_code": "handful"},
    ),
    (38, "shared_tool", "due", "young", {"tool": "net", "order": "both"}),
)

# A tank that is still being set up: measured, weighed and planted on paper, but not filled.
PLAN = {
    "name": "Shelf in the hall",
    "place": "Hall, on the low shelf",
    "walk_order": 4,
    "temperature_c": 24,
    "planting": "dense",
    "filter": "sponge",
    "planned_stock": [{"species": "Danio margaritatus", "count": 10, "length_cm": 1.5}],
    "setup_glass": {"state": "done"},
    "setup_place": {"state": "done", "said": {"stand_kg": 24, "equipment_kg": 4}},
    "setup_substrate": {
        "state": "done",
        "said": {
            "bed": "capped",
            "nutrient": "garden_soil",
            "nutrient_front_cm": 1,
            "nutrient_back_cm": 2.5,
            "nutrient_pack": 10,
            "cap": "sand",
            "cap_front_cm": 3,
            "cap_back_cm": 4,
            "cap_pack": 12.5,
            "support_bags": 0,
        },
    },
    "setup_hardscape": {"state": "done", "said": {"wood_kg": 1.5}},
    "setup_warmth": {
        "state": "done",
        "said": {
            "temperature_c": 24,
            "room_c": 17,
            "cover": "lid",
            "light": "medium",
            "hours": 8,
            "filter": "sponge",
        },
    },
    "setup_plants": {
        "state": "done",
        "said": {
            "planting": "dense",
            "list": [
                {"species": "Ceratophyllum demersum", "portions": 4},
                {"species": "Cryptocoryne beckettii", "portions": 6},
            ],
        },
    },
    "setup_stock": {"state": "done"},
}
PLAN_GLASS = {
    "shape": "cuboid",
    "length_cm": 75,
    "width_cm": 35,
    "height_cm": 38,
    "measures": "outside",
    "glass_mm": 6,
    "fill_height_cm": 33,
}

# Tasks in the room's time zone: rule, tank key or None, title, hour, how many of the last dates are not done yet.
ZONE = "Europe/Berlin"
TASKS = (
    ("FREQ=WEEKLY;BYDAY=SA", "steady", "Change water", 10, 0),
    ("FREQ=WEEKLY;BYDAY=SU", "due", "Change water", 10, 2),
    ("FREQ=DAILY;INTERVAL=3", "young", "Top up the water", 8, 1),
    ("FREQ=MONTHLY;BYMONTHDAY=5", None, "Squeeze the sponges out in tank water", 17, 0),
    ("FREQ=DAILY", None, "Look at every thermometer", 8, 1),
)
# The keepers go away soon; whoever looks after the tanks can call these people.
AWAY_DAYS = (1, 8)
AWAY = {
    "feed_every_days": 2,
    "calls": [
        {"who": "Marit Solvang", "phone": "+49 30 5550 0142"},
        {"who": "Dr Imani Okoye, vet for fish", "phone": "+49 30 5550 0177"},
    ],
    "note": "The key hangs behind the green coat. The cellar light is the left switch.",
}
