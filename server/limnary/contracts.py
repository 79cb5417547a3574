"""Contracts: makes a marshmallow schema of shared_schema/calc/NAME.json; `run` checks, calculates and answers by it.

The phone's twin of this file is pwa/contracts.js: same stages, same words, same order of errors.
"""

import math
import re
from decimal import Decimal
from functools import cache
from itertools import islice

from marshmallow import EXCLUDE, RAISE, Schema, ValidationError, fields, missing

from limnary.calc import calculation
from limnary.calc.refusal import Refusal
from limnary.schema_files import formats, messages, read_folder

# An answer names so many errors at most: a small request of many strange fields must not make a large answer.
MOST_ERRORS = 50
# A form holds tabs and line breaks; the other control characters, and halves of a character, are no text to read.
CONTROLS = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ud800-\udfff]")
# What an open object (a tank's measures) may hold in all; the phone's contracts.js has the same bounds.
OPEN_DEPTH, OPEN_ENTRIES, OPEN_CHARACTERS, OPEN_NUMBER = 6, 500, 8_000, 1e15


class InvalidInput(ValueError):
    """The input breaks its contract. `errors` is a list of {field, message, allowed}, never empty."""

    def __init__(self, errors: list[dict]):
        super().__init__("; ".join(f"{e['field']} {e['message']}".strip() for e in errors))
        self.errors = errors


class UnknownCalculation(LookupError):
    """There is no contract of that name."""


def contracts() -> dict[str, dict]:
    """Every contract by name."""
    return read_folder("calc")


def contract(name: str) -> dict:
    """One contract; UnknownCalculation if there is none."""
    try:
        return contracts()[name]
    except KeyError:
        raise UnknownCalculation(name) from None


def run(name: str, payload: object) -> dict:
    """Check `payload` against the contract, calculate, and answer outputs, cautions, notes and sources.

    Raises UnknownCalculation, or InvalidInput naming each field and what is allowed.
    """
    spec = contract(name)
    values = check(spec, payload)
    try:
        outputs = dict(calculation(name)(**values))
    except Refusal as no:
        words = spec["refusals"][no.code]
        raise InvalidInput([{**words, "field": no.field or words["field"]}]) from no
    notes = [spec["notes"][code] for code in outputs.pop("notes", [])]
    known = read_folder("tables")["sources"]["sources"]
    return {
        **outputs,
        "cautions": [caution["text"] for caution in spec["cautions"]],
        "notes": notes,
        "sources": [{"key": key, **known[key]} for key in spec["sources"]],
    }


def check(spec: dict, payload: object) -> dict:
    """The payload with defaults filled in, or InvalidInput. Stage 1: each field; stage 2: between fields."""
    if not isinstance(payload, dict):
        raise InvalidInput([{"field": "", "message": messages()["not_body"], "allowed": messages()["allowed_body"]}])
    values = load(marshmallow_schema(spec["name"]), spec["inputs"], payload)
    errors = [*_missing_when(spec["inputs"], values), *_broken_rules(spec, values)]
    if errors:
        raise InvalidInput(errors)
    return values


def load(schema: Schema, inputs: list[dict], payload: dict, partial: bool = False) -> dict:
    """Stage 1 alone: each field by its own specification; `partial` lets required fields be missing."""
    try:
        sound = _sound(schema, payload, partial)
        return schema.load(payload, partial=partial) if sound is None else sound
    except ValidationError as bad:
        raise InvalidInput(list(islice(_flat(bad.messages, inputs), MOST_ERRORS))) from bad


def _sound(schema: Schema, payload: dict, partial: bool) -> dict | None:
    """What `schema.load` answers for an input in which nothing is wrong, else None.

    Each field is checked by its own `check`, as `load` does; left out is what `load` does to collect errors, which is
    half of what an op of a push costs.
    """
    if not isinstance(payload, dict):
        return None
    made, checks = {}, schema.checks
    try:
        for name, value in payload.items():
            if value is None or name not in checks:
                return None
            made[name] = checks[name](value)
    except ValidationError:
        return None
    for name, its in () if partial else schema.awaited:
        if name not in made:
            if its.required:
                return None
            made[name] = its.load_default
    return made


@cache
def marshmallow_schema(name: str) -> Schema:
    """The marshmallow schema of one contract's input."""
    return schema_of(contract(name)["inputs"], name)


def schema_of(inputs: list[dict], name: str, unknown: str = RAISE) -> Schema:
    """A schema of a list of field specifications; it refuses unknown fields, or ignores them with EXCLUDE."""
    made = Schema.from_dict({spec["name"]: _field(spec) for spec in inputs}, name=name)
    made.error_messages = {"unknown": messages()["unknown"], "type": messages()["not_object"]}
    schema = made(unknown=unknown)
    # For `_sound`: each field's check, and the fields that are required or have a default.
    schema.checks = {name: its.check for name, its in schema.load_fields.items()}
    schema.awaited = [
        (name, its) for name, its in schema.load_fields.items() if its.required or its.load_default is not missing
    ]
    return schema


def _field(spec: dict) -> "_Checked":
    words = messages()
    options = {
        "required": bool(spec.get("required")) and "when" not in spec,
        "error_messages": {**words, "required": words["missing"]},
    }
    if "default" in spec:
        options["load_default"] = spec["default"]
    return _FIELDS[spec["type"]](spec, **options)


class _Checked(fields.Field):
    """A field whose checks come from its specification alone, its messages from messages.json."""

    def __init__(self, spec: dict, **options):
        super().__init__(**options)
        self.spec = spec

    def _deserialize(self, value, attr, data, **kwargs):
        return self.check(value)

    def check(self, value: object) -> object:
        """The value as the calculation gets it; ValidationError."""
        raise NotImplementedError


# A tuple: a union takes more than twice as long to ask, and a push asks it for each figure.
_NUMBER = (int, float)


class _Number(_Checked):
    def __init__(self, spec: dict, **options):
        super().__init__(spec, **options)
        self.least, self.most = spec["min"], spec["max"]

    def check(self, value):
        if isinstance(value, bool) or not isinstance(value, _NUMBER):
            raise self.make_error("not_number")
        if not self.least <= value <= self.most:
            raise self.out_of_range(value)
        # -0.0 becomes 0.0, so that no answer contains -0.
        return float(value) + 0.0

    def out_of_range(self, value: float) -> ValidationError:
        if isinstance(value, float) and not math.isfinite(value):
            return self.make_error("not_finite")
        return self.make_error("out_of_range", min=_plain(self.least), max=_plain(self.most), unit=_unit(self.spec))


class _Integer(_Number):
    def check(self, value):
        if isinstance(value, bool) or not isinstance(value, _NUMBER):
            raise self.make_error("not_integer")
        if isinstance(value, float) and math.isfinite(value) and not value.is_integer():
            raise self.make_error("not_integer")
        if not self.least <= value <= self.most:
            raise self.out_of_range(value)
        return int(value)


class _Boolean(_Checked):
    def check(self, value):
        if not isinstance(value, bool):
            raise self.make_error("not_boolean")
        return value


class _Text(_Checked):
    def __init__(self, spec: dict, **options):
        super().__init__(spec, **options)
        pattern = pattern_of(spec)
        self.pattern = re.compile(pattern) if pattern else None
        self.shortest, self.longest = spec.get("min_length", 0), spec["max_length"]

    def check(self, value):
        if not isinstance(value, str):
            raise self.make_error("not_text")
        if not self.shortest <= len(value) <= self.longest:
            raise self.make_error("text_length", min=self.shortest, max=self.longest)
        # What can be printed holds none of them; to ask that first is quicker than to search.
        if not value.isprintable() and CONTROLS.search(value):
            raise self.make_error("control")
        if self.pattern and not self.pattern.fullmatch(value):
            raise self.make_error("not_pattern", example=self.spec["example"])
        return value


def pattern_of(spec: dict) -> str | None:
    """The whole-value pattern of a text field: that of its format, or its own."""
    return formats()[spec["format"]]["pattern"] if "format" in spec else spec.get("pattern")


class _Choice(_Checked):
    def __init__(self, spec: dict, **options):
        super().__init__(spec, **options)
        self.options = [choice["value"] for choice in spec["choices"]]

    def check(self, value):
        if not isinstance(value, str) or value not in self.options:
            raise self.make_error("not_choice", choices=", ".join(self.options))
        return value


class _List(_Checked):
    def __init__(self, spec: dict, **options):
        super().__init__(spec, **options)
        self.item = _field(spec["item"])

    def check(self, value):
        if not isinstance(value, list):
            raise self.make_error("not_list")
        if not self.spec["min_items"] <= len(value) <= self.spec["max_items"]:
            raise self.make_error("list_length", min=self.spec["min_items"], max=self.spec["max_items"])
        out, errors = [], {}
        for index, entry in enumerate(value):
            try:
                if entry is None:
                    raise self.make_error("null")
                out.append(self.item.check(entry))
            except ValidationError as bad:
                errors[index] = bad.messages
                if len(errors) == MOST_ERRORS:
                    break
        if errors:
            raise ValidationError(errors)
        return out


class _Object(_Checked):
    def __init__(self, spec: dict, **options):
        super().__init__(spec, **options)
        unknown = EXCLUDE if spec.get("open") else RAISE
        self.schema = schema_of(spec["fields"], spec.get("name", "item"), unknown)

    def check(self, value):
        if not isinstance(value, dict):
            raise self.make_error("not_object")
        # `raw`: its receiver checks what is in it.
        if self.spec.get("raw"):
            return value
        known = self.schema.load(value)
        if not self.spec.get("open"):
            return known
        # The fields come first: their errors say more than that of the whole.
        if not is_plain(value):
            raise self.make_error("not_plain")
        return value


def is_plain(value: object) -> bool:
    """Whether an open object holds only what every reader can bear: little, not deep, real text and real numbers."""
    entries = characters = 0
    level = [value]
    for _ in range(OPEN_DEPTH + 1):
        inner = []
        for one in level:
            texts = [one] if isinstance(one, str) else list(one) if isinstance(one, dict) else []
            if any(CONTROLS.search(text) or text == "__proto__" for text in texts):
                return False
            if isinstance(one, int | float) and not abs(one) <= OPEN_NUMBER:
                return False
            characters += sum(map(len, texts))
            inner += one.values() if isinstance(one, dict) else one if isinstance(one, list) else []
        entries += len(inner)
        if entries > OPEN_ENTRIES or characters > OPEN_CHARACTERS:
            return False
        level = inner
    return not level


_FIELDS = {
    "number": _Number,
    "integer": _Integer,
    "boolean": _Boolean,
    "text": _Text,
    "choice": _Choice,
    "list": _List,
    "object": _Object,
}


def _missing_when(inputs: list[dict], values: dict) -> list[dict]:
    errors = []
    for spec in inputs:
        if spec.get("required") and "when" in spec and spec["name"] not in values:
            for other, wanted in spec["when"].items():
                if values.get(other) not in wanted:
                    break
            else:
                other, _ = next(iter(spec["when"].items()))
                message = messages()["missing_when"].format(other=other, value=values[other])
                errors.append({"field": spec["name"], "message": message, "allowed": allowed(spec)})
    return errors


def _broken_rules(spec: dict, values: dict) -> list[dict]:
    errors = []
    for rule in spec.get("rules", []):
        kind, names = rule["rule"], rule["fields"]
        given = sum(name in values for name in names)
        broken = {
            "exactly_one": given != 1,
            "at_most_one": given > 1,
            "together": given not in (0, len(names)),
        }[kind]
        if broken:
            text = messages()[kind].format(fields=", ".join(names))
            errors.append({"field": names[0], "message": text, "allowed": text})
    return errors


def _flat(tree: dict, inputs: list[dict]):
    """marshmallow's nested messages as {field, message, allowed}, in the contract's order."""
    by_name = {spec["name"]: spec for spec in inputs}
    known = [name for name in by_name if name in tree]
    # marshmallow keeps unknown fields in a set. Sort them by UTF-16 code units, as JavaScript does.
    strange = sorted(
        (name for name in tree if name not in by_name), key=lambda name: str(name).encode("utf-16-be", "surrogatepass")
    )
    for name in known:
        yield from _flat_field(name, by_name[name], tree[name])
    for name in strange:
        yield {"field": str(name), "message": messages()["unknown"], "allowed": ", ".join(by_name)}


def _flat_field(path: str, spec: dict, found: dict | list):
    if isinstance(found, list):
        yield {"field": path, "message": found[0], "allowed": allowed(spec)}
    elif spec["type"] == "list":
        for index, inner in found.items():
            yield from _flat_field(f"{path}.{index}", spec["item"], inner)
    else:
        for error in _flat(found, spec["fields"]):
            yield {**error, "field": f"{path}.{error['field']}"}


def allowed(spec: dict) -> str:
    """What a field accepts, in words: the `allowed` of an error."""
    kind = spec["type"]
    if kind == "choice":
        return ", ".join(choice["value"] for choice in spec["choices"])
    parts: dict = {}
    if kind in ("number", "integer"):
        parts = {"min": _plain(spec["min"]), "max": _plain(spec["max"]), "unit": _unit(spec)}
    elif kind == "list":
        parts = {"min": spec["min_items"], "max": spec["max_items"]}
    elif kind == "object" and spec.get("open"):
        return messages()["allowed_open"].format(entries=OPEN_ENTRIES, depth=OPEN_DEPTH)
    elif kind == "object":
        parts = {"fields": ", ".join(inner["name"] for inner in spec["fields"])}
    elif kind == "text":
        parts = {"min": spec.get("min_length", 0), "max": spec["max_length"]}
    return messages()[f"allowed_{kind}"].format(**parts)


def _unit(spec: dict) -> str:
    return f" {spec['unit']}" if spec.get("unit", "") not in ("", "1") else ""


def _plain(value: float) -> str:
    """A bound as text, printed the same in both languages: 14, 0.5, 0.000001."""
    return str(int(value)) if float(value).is_integer() else f"{Decimal(repr(value)):f}"
