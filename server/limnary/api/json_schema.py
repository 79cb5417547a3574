"""Field specifications of contracts and record kinds as JSON Schema 2020-12, for the API's description."""

from collections.abc import Iterator
from itertools import combinations

from limnary.contracts import pattern_of

# What `contracts.CONTROLS` refuses, in the syntax of JSON Schema; JSON in UTF-8 has no halves of a character.
TEXT = r"^[^\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]*$"


def object_schema(fields: list[dict], open_to_others: bool = False) -> dict:
    """An object that holds these fields and, unless it is open, no others."""
    out = {"type": "object", "properties": {spec["name"]: value_schema(spec) for spec in fields}}
    if not open_to_others:
        out["additionalProperties"] = False
    required = [spec["name"] for spec in fields if spec.get("required") and "when" not in spec]
    return {**out, "required": required} if required else out


def input_schema(contract: dict) -> dict:
    """The input of a calculation: its fields, and the rules between them. Its refusals stand in the contract alone."""
    rules = [
        *_needed_beside(contract["inputs"]),
        *(_RULES[one["rule"]](one["fields"]) for one in contract.get("rules", [])),
    ]
    return {**object_schema(contract["inputs"]), **({"allOf": rules} if rules else {})}


def _needed_beside(inputs: list[dict]) -> Iterator[dict]:
    """One condition for each field that is needed beside certain choices of others."""
    for spec in inputs:
        if spec.get("required") and "when" in spec:
            beside = {name: {"enum": wanted} for name, wanted in spec["when"].items()}
            yield {
                "if": {"properties": beside, "required": list(beside)},
                "then": {"required": [spec["name"]]},
            }


def _together(names: list[str]) -> dict:
    return {"dependentRequired": {name: [other for other in names if other != name] for name in names}}


def _exactly_one(names: list[str]) -> dict:
    return {"oneOf": [{"required": [name]} for name in names]}


def _at_most_one(names: list[str]) -> dict:
    return {"allOf": [{"not": {"required": list(pair)}} for pair in combinations(names, 2)]}


_RULES = {"together": _together, "exactly_one": _exactly_one, "at_most_one": _at_most_one}


def value_schema(spec: dict) -> dict:
    """The values of one field; `bare` leaves out bounds and patterns, as for outputs."""
    bare = spec.get("bare", False)
    out = {} if bare else _bounds(spec)
    kind = _TYPES[spec["type"]]
    # An optional output "may be missing or null", as the contract's form says.
    out = {"type": [kind, "null"] if bare and spec.get("optional") else kind, **out}
    if spec["type"] == "list":
        out["items"] = value_schema({**spec["item"], "bare": bare}) if "item" in spec else {}
    elif spec["type"] == "object" and spec.get("fields"):
        inner = [{**field, "bare": bare} for field in spec["fields"]]
        whole = object_schema(inner, bool(spec.get("open")))
        out |= {"properties": whole["properties"]} if bare else whole
    words = " ".join(part for part in (spec.get("label", ""), f"[{spec['unit']}]" if spec.get("unit") else "") if part)
    if words:
        out["description"] = words
    if "default" in spec:
        out["default"] = spec["default"]
    return out


_TYPES = {
    "number": "number",
    "integer": "integer",
    "boolean": "boolean",
    "text": "string",
    "choice": "string",
    "list": "array",
    "object": "object",
}


def _bounds(spec: dict) -> dict:
    if spec["type"] in ("number", "integer"):
        return {"minimum": spec["min"], "maximum": spec["max"]}
    if spec["type"] == "text":
        out = {"minLength": spec.get("min_length", 0), "maxLength": spec["max_length"]}
        if "format" in spec:
            out["format"] = spec["format"]
        pattern = pattern_of(spec)
        return {**out, "pattern": f"^(?:{pattern})$" if pattern else TEXT}
    if spec["type"] == "choice":
        return {"enum": [choice["value"] for choice in spec["choices"]]}
    if spec["type"] == "list":
        return {"minItems": spec["min_items"], "maxItems": spec["max_items"]}
    return {}
