"""Field specifications of contracts and record kinds as JSON Schema 2020-12, for the API's description."""

from limnary.contracts import pattern_of


def object_schema(fields: list[dict]) -> dict:
    """An object that holds these fields and no others."""
    out = {
        "type": "object",
        "properties": {spec["name"]: value_schema(spec) for spec in fields},
        "additionalProperties": False,
    }
    required = [spec["name"] for spec in fields if spec.get("required") and "when" not in spec]
    return {**out, "required": required} if required else out


def value_schema(spec: dict) -> dict:
    """The values of one field; `bare` leaves out bounds and patterns, as for outputs."""
    bare = spec.get("bare", False)
    out = {} if bare else _bounds(spec)
    kind = _TYPES[spec["type"]]
    # An optional output "may be missing or null", as the contract's form says.
    out = {"type": [kind, "null"] if bare and spec.get("optional") else kind, **out}
    if spec["type"] == "list":
        out["items"] = value_schema({**spec["item"], "bare": bare}) if "item" in spec else {}
    elif spec["type"] == "object" and "fields" in spec and not spec.get("open"):
        inner = [{**field, "bare": bare} for field in spec["fields"]]
        out |= {"properties": object_schema(inner)["properties"]} if bare else object_schema(inner)
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
        return {**out, "pattern": f"^(?:{pattern})$"} if pattern else out
    if spec["type"] == "choice":
        return {"enum": [choice["value"] for choice in spec["choices"]]}
    if spec["type"] == "list":
        return {"minItems": spec["min_items"], "maxItems": spec["max_items"]}
    return {}
