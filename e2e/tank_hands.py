"""Hands for tanks: set up by a keeper's taps, or there at once where a story is about something else."""

from foretold import write

# What the form stores of the measures typed below: 80 x 35 cm, water 36.5 cm deep.
MEASURES = {"shape": "cuboid", "length_cm": 80, "width_cm": 35, "height_cm": 40, "fill_height_cm": 36.5}


def have_tank(thumb, name):
    """A tank of these measures, and its page."""
    tank = f"tank-{name.lower().replace(' ', '-')}"
    write(thumb, [("tank", tank, {"name": name, "measures": MEASURES, "water_l": 102.2, "gross_l": 112})])
    thumb.turn_to(f"/tank/{tank}")
    thumb.title(name)


def set_up_tank(thumb, name):
    thumb.turn_to("/tanks/new")
    thumb.pick("rectangular")
    for label, figure in (("Length", "80"), ("Width", "35"), ("Height", "40"), ("Water stands", "36,5")):
        thumb.type(label, figure)
    thumb.type("Name", name)
    thumb.tap("button", "Save tank")
    thumb.title(name)


def set_down_water_and_label(thumb):
    thumb.tap("link", "Water that goes in")
    thumb.tap("link", "New source water")
    thumb.type("Name", "Kitchen tap")
    thumb.pick("chlorine")
    thumb.tap("button", "Save", exact=True)
    set_down_label(thumb)
    thumb.tap("link", "Back")


def set_down_label(thumb):
    """A dechlorinator's dose line: 2 ml for 10 L."""
    thumb.tap("link", "New label")
    thumb.type("Name", "Tap safe")
    thumb.type("The label says", "2")
    thumb.type("for this much water", "10")
    thumb.tap("button", "Save", exact=True)
