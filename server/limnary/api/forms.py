"""The fields of the API's own request bodies, in the form of a contract's inputs; OpenAPI is made from them too."""

from limnary.store.people import ROLES

_ID = {"type": "text", "min_length": 8, "max_length": 64, "pattern": "[A-Za-z0-9_-]+", "example": "0190f3a2-7c1e-7abc"}


def _name(field: str, label: str, **more) -> dict:
    return {"name": field, "label": label, "type": "text", "min_length": 1, "max_length": 60, **more}


_ROLE = {
    "name": "role",
    "label": "Role",
    "type": "choice",
    "choices": [{"value": role, "label": role} for role in ROLES],
}

_SECRET = {
    "name": "secret",
    "label": "The invitation's secret, the part of the link after #",
    "type": "text",
    "min_length": 8,
    "max_length": 200,
    "required": True,
}
JOIN = [
    _SECRET,
    _name("keeper_name", "The keeper's name, needed without a key"),
    _name("device_name", "What this phone is called", required=True),
    {
        "name": "device_key",
        "label": "A key of 256 random bits made on the phone, so that a join may be repeated",
        "type": "text",
        "min_length": 43,
        "max_length": 86,
        "pattern": "[A-Za-z0-9_-]+",
        "example": "43 to 86 letters, digits, - or _",
    },
]
JOIN_CODE = [
    {
        "name": "code",
        "label": "The short code, with or without spaces and hyphens, in capitals or not",
        "type": "text",
        "min_length": 8,
        "max_length": 20,
        "required": True,
    }
]
CODE = [_SECRET]
ROOM = [_name("name", "The room's name", required=True)]
ROLE = [{**_ROLE, "required": True}]
INVITE = [
    {**_ROLE, "default": "keeper"},
    {"name": "hours", "label": "Open for", "type": "number", "unit": "h", "min": 0.01, "max": 720, "default": 48},
    {"name": "keeper", "label": "One more phone of this member", **_ID},
]
MOST_OPS = 500
_EPOCH = {"name": "epoch", "label": "The room's epoch", "type": "text", "min_length": 1, "max_length": 64}
PUSH = [
    {**_EPOCH, "required": True},
    {
        "name": "ops",
        "label": "Writes, oldest first",
        "type": "list",
        "min_items": 0,
        "max_items": MOST_OPS,
        "item": {"type": "object", "open": True, "raw": True, "fields": []},
        "required": True,
    },
]
BRING_BACK = [
    {**_EPOCH, "required": True},
    {
        "name": "rows",
        "label": "Rows that this phone pulled before the server was restored, each with a name of the phone's own",
        "type": "list",
        "min_items": 0,
        "max_items": MOST_OPS,
        "item": {
            "type": "object",
            "fields": [
                {
                    "name": "ref",
                    "label": "Comes back with the result",
                    "type": "text",
                    "max_length": 200,
                    "required": True,
                },
                {
                    "name": "row",
                    "label": "As pull answered it",
                    "type": "object",
                    "open": True,
                    "raw": True,
                    "fields": [],
                    "required": True,
                },
            ],
        },
        "required": True,
    },
    {"name": "people", "label": "Names by keeper", "type": "object", "open": True, "raw": True, "fields": []},
]
