"""Hypothesis strategies made from a contract: inputs that pass its checks, including the limits."""

from drawn_answers import ANSWERABLE
from hypothesis import strategies as st
from limnary.schema_files import read_folder


def inputs_of(spec: dict) -> st.SearchStrategy[dict]:
    """Objects that satisfy one contract: its fields, its `when` conditions and its rules."""
    anything = _fields(spec["inputs"]).flatmap(lambda values: _obey(spec, values))
    answerable = ANSWERABLE.get(spec.get("name"))
    return st.one_of(anything, answerable(spec, _value)) if answerable else anything


def _fields(inputs: list[dict]) -> st.SearchStrategy[dict]:
    needed = {i["name"]: _value(i) for i in inputs if i.get("required")}
    free = {i["name"]: _value(i) for i in inputs if not i.get("required")}
    return st.fixed_dictionaries(needed, optional=free)


def _obey(spec: dict, values: dict) -> st.SearchStrategy[dict]:
    """Drop or add fields until the rules between fields hold."""
    fields = {i["name"]: i for i in spec["inputs"]}
    out = {name: st.just(value) for name, value in values.items()}
    for rule in spec.get("rules", []):
        names = rule["fields"]
        given = [name for name in names if name in out]
        if rule["rule"] in ("exactly_one", "at_most_one"):
            for name in given[1:]:
                del out[name]
            if rule["rule"] == "exactly_one" and not given:
                out[names[0]] = _value(fields[names[0]])
        elif given:
            for name in names:
                out.setdefault(name, _value(fields[name]))
    return st.fixed_dictionaries(out)


def _value(spec: dict) -> st.SearchStrategy:
    kind = spec["type"]
    if kind == "number":
        # Denormals and 1e-300 say nothing about a tank; zero and the limits do.
        low, high = float(spec["min"]), float(spec["max"])
        usual = st.floats(low, high, allow_subnormal=False).map(lambda x: 0.0 if abs(x) < 1e-12 else x)
        usual = usual.filter(lambda x: low <= x <= high)
        typical = [x for x in spec.get("typical", []) if low <= x <= high]
        return st.one_of(usual, st.sampled_from([low, high, *typical]))
    if kind == "integer":
        return st.integers(spec["min"], spec["max"])
    if kind == "boolean":
        return st.booleans()
    if kind == "text" and "table" in spec:
        return st.sampled_from([*read_folder("tables")[spec["table"]]["rows"], "no row of the table"])
    if kind == "text":
        return st.text("abc äß✓", min_size=spec.get("min_length", 0), max_size=min(spec["max_length"], 12))
    if kind == "choice":
        return st.sampled_from([choice["value"] for choice in spec["choices"]])
    if kind == "list":
        most = min(spec["max_items"], spec["min_items"] + 5)
        return st.lists(_value(spec["item"]), min_size=spec["min_items"], max_size=most)
    return _fields(spec["fields"])
