"""Strategies of answerable inputs, for contracts that refuse nearly everything drawn from their fields alone."""

from hypothesis import strategies as st
from limnary.schema_files import read_folder


def salt_dose(spec: dict, value_of) -> st.SearchStrategy[dict]:
    """A salt and one thing that it holds."""
    fields = {field["name"]: field for field in spec["inputs"]}
    wishes = {field["name"]: field for field in fields["raise"]["fields"]}
    salts = read_folder("tables")["salts"]
    pairs = []
    for salt, row in salts["rows"].items():
        for ion in row["gives"]:
            if ion in {choice["value"] for choice in wishes["ion"]["choices"]}:
                pairs.append((salt, st.fixed_dictionaries({"ion": st.just(ion), "mg_l": value_of(wishes["mg_l"])})))
            for name, counted in (("gh_dgh", "hardness"), ("kh_dkh", "charges")):
                if salts["ions"][ion][counted]:
                    pairs.append((salt, st.fixed_dictionaries({name: value_of(wishes[name])})))
    return st.sampled_from(range(len(pairs))).flatmap(
        lambda at: st.fixed_dictionaries(
            {"volume_l": value_of(fields["volume_l"]), "salt": st.just(pairs[at][0]), "raise": pairs[at][1]}
        )
    )


def water_blend(spec: dict, value_of) -> st.SearchStrategy[dict]:
    """Waters that all have the properties wanted of the mixture."""
    sources, target, litres = spec["inputs"]
    of_source = {field["name"]: value_of(field) for field in sources["item"]["fields"]}
    of_target = {field["name"]: value_of(field) for field in target["fields"]}

    def wanting(names):
        others = {name: value for name, value in of_source.items() if name not in names}
        water = st.fixed_dictionaries({name: of_source[name] for name in names}, optional=others)
        return st.fixed_dictionaries(
            {
                "sources": st.lists(water, min_size=1, max_size=sources["max_items"]),
                "target": st.fixed_dictionaries({name: of_target[name] for name in names}),
                "litres": value_of(litres),
            }
        )

    return st.lists(st.sampled_from(sorted(of_target)), min_size=1, max_size=3, unique=True).flatmap(wanting)


def of_animals(spec: dict, value_of) -> st.SearchStrategy[dict]:
    """Animals that are in the table or have a length, with complete mass laws and ranges."""
    needed = {field["name"]: value_of(field) for field in spec["inputs"] if field.get("required")}
    free = {field["name"]: value_of(field) for field in spec["inputs"] if not field.get("required")}
    return st.fixed_dictionaries(needed, optional=free).map(
        lambda drawn: {**drawn, "animals": [_whole(animal) for animal in drawn.get("animals", [])]}
    )


def _whole(animal: dict) -> dict:
    """The animal with a missing length, half a pair or a reversed range corrected."""
    out = dict(animal)
    if out.get("species") not in read_folder("tables")["species"]["rows"]:
        out.setdefault("length_cm", 5.0)
    pairs = [(f"{name}_low{unit}", f"{name}_high{unit}") for name, unit in (("temperature", "_c"), ("gh", "_dgh"))]
    for low, high in [*pairs, ("ph_low", "ph_high")]:
        if low in out and high in out:
            out[low], out[high] = sorted((out[low], out[high]))
        else:
            out.pop(low, None)
            out.pop(high, None)
    if ("mass_a" in out) != ("mass_b" in out):
        out.pop("mass_a", None)
        out.pop("mass_b", None)
    return out


ANSWERABLE = {
    "animal_mass": of_animals,
    "closed_water": of_animals,
    "compatibility": of_animals,
    "feed_ration": of_animals,
    "oxygen_night": of_animals,
    "salt_dose": salt_dose,
    "stocking_limit": of_animals,
    "water_blend": water_blend,
}
