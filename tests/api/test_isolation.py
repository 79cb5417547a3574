"""Who has access to what: the expected status for every address and every kind of caller."""

import hashlib

import pytest
from fish_rooms import WRITES, Phone

PNG = b"\x89PNG\r\n\x1a\n" + b"isolated"
SHA256 = hashlib.sha256(PNG).hexdigest()
WHO = ("nobody", "stranger", "revoked", "ended", "viewer", "helper", "keeper", "owner")


def row(*statuses: int) -> dict[str, int]:
    return dict(zip(WHO, statuses, strict=True))


# The stranger has a valid key and owns another room. For them a room they were never in does not exist (404).
MEMBERS = row(401, 404, 401, 410, 200, 200, 200, 200)
OWNERS = row(401, 404, 401, 410, 403, 403, 403, 200)
WRITERS = row(401, 404, 401, 410, 403, 201, 201, 201)
KNOWN = row(401, 200, 401, 200, 200, 200, 200, 200)
OPEN = row(200, 200, 200, 200, 200, 200, 200, 200)


def with_status(table: dict[str, int], status: int) -> dict[str, int]:
    """The same table with another status than 200 for success."""
    return {who: status if code == 200 else code for who, code in table.items()}


TABLE = {
    ("GET", "/api/v1/rooms/<room>/pull"): MEMBERS,
    ("POST", "/api/v1/rooms/<room>/push"): MEMBERS,  # an op that the role may not write is refused by itself, see below
    ("POST", "/api/v1/rooms/<room>/bring-back"): MEMBERS,  # and so is a row
    ("GET", "/api/v1/rooms/<room>/people"): MEMBERS,
    ("GET", "/api/v1/rooms/<room>/export"): MEMBERS,
    ("GET", "/api/v1/rooms/<room>/blobs/<sha256>"): MEMBERS,
    ("PUT", "/api/v1/rooms/<room>/blobs/<sha256>"): WRITERS,
    ("PATCH", "/api/v1/rooms/<room>"): OWNERS,
    ("PATCH", "/api/v1/rooms/<room>/people/<keeper>"): OWNERS,
    ("DELETE", "/api/v1/rooms/<room>/people/<keeper>"): with_status(OWNERS, 204),
    ("POST", "/api/v1/rooms/<room>/invites"): with_status(OWNERS, 201),
    ("GET", "/api/v1/rooms/<room>/invites"): OWNERS,
    ("DELETE", "/api/v1/rooms/<room>/invites/<invitation>"): with_status(OWNERS, 204),
    ("GET", "/api/v1/rooms/<room>/upkeep"): OWNERS,
    ("GET", "/api/v1/rooms/<room>/calendar"): MEMBERS,
    ("POST", "/api/v1/rooms/<room>/calendar"): with_status(MEMBERS, 201),
    ("DELETE", "/api/v1/rooms/<room>/calendar"): with_status(MEMBERS, 204),
    # A phone's key does not open the calendar, which has its own key: see test_calendar.py.
    ("GET", "/api/v1/calendar.ics"): row(404, 404, 404, 404, 404, 404, 404, 404),
    # Someone whose membership has ended no longer shares a room with the phone.
    ("DELETE", "/api/v1/devices/<phone>"): {**with_status(OWNERS, 204), "ended": 404},
    ("GET", "/api/v1/me"): KNOWN,
    ("POST", "/api/v1/rooms"): with_status(KNOWN, 201),
    # A revoked key must not count as no key.
    ("POST", "/api/v1/join"): {**with_status(OPEN, 201), "revoked": 401},
    # Codes and secrets that nobody holds: see test_join_codes.py for those that somebody does.
    ("POST", "/api/v1/join/code"): row(404, 404, 404, 404, 404, 404, 404, 404),
    ("POST", "/api/v1/rooms/<room>/invites/<invitation>/code"): with_status(MEMBERS, 404),
    ("GET", "/api/v1/calc"): OPEN,
    ("GET", "/api/v1/calc/<name>"): OPEN,
    ("POST", "/api/v1/calc/<name>"): OPEN,
    ("GET", "/api/v1/openapi.json"): OPEN,
    ("GET", "/healthz"): OPEN,
}
BODIES = {
    ("POST", "/api/v1/rooms/<room>/push"): lambda house: {"epoch": house.epoch, "ops": []},
    ("POST", "/api/v1/rooms/<room>/bring-back"): lambda house: {"epoch": house.epoch, "rows": []},
    ("PATCH", "/api/v1/rooms/<room>"): lambda _: {"name": "Renamed"},
    ("PATCH", "/api/v1/rooms/<room>/people/<keeper>"): lambda _: {"role": "viewer"},
    ("POST", "/api/v1/rooms/<room>/invites"): lambda _: {"role": "viewer"},
    ("POST", "/api/v1/rooms"): lambda _: {"name": "Another"},
    ("POST", "/api/v1/join"): lambda house: {
        "secret": house.secret("viewer"),
        "keeper_name": "New",
        "device_name": "x",
    },
    ("POST", "/api/v1/join/code"): lambda _: {"code": "ABCD2345"},
    ("POST", "/api/v1/rooms/<room>/invites/<invitation>/code"): lambda _: {"secret": "a-secret-that-nobody-has"},
    ("POST", "/api/v1/calc/<name>"): lambda _: {"tan_mg_n_l": 1, "ph": 8, "temperature_c": 25},
}


def caller(house, who: str) -> Phone:
    if who == "nobody":
        return Phone(house)
    if who == "stranger":
        return house.stranger()
    phone = house.phone("keeper" if who in ("revoked", "ended") else who, "Cal")
    if who == "revoked":
        house.owner.call("DELETE", f"/devices/{phone.device}")
    if who == "ended":
        house.owner.call("DELETE", f"/rooms/{{room}}/people/{phone.keeper}")
    return phone


def test_the_table_names_every_address(fish_room):
    rules = {
        (method, rule.rule)
        for rule in fish_room.app.url_map.iter_rules()
        for method in rule.methods - {"HEAD", "OPTIONS"}
        if not rule.endpoint.startswith(("shell.", "pages."))
    }
    assert rules == set(TABLE)


@pytest.mark.parametrize("who", WHO)
@pytest.mark.parametrize(("method", "rule"), TABLE, ids=[f"{m} {r}" for m, r in TABLE])
def test_the_answer_is_the_expected_one(fish_room, method, rule, who):
    phone, other = caller(fish_room, who), fish_room.phone("keeper", "Other")
    fish_room.owner.call("PUT", f"/rooms/{{room}}/blobs/{SHA256}", data=PNG)
    invitation = fish_room.owner.call("POST", "/rooms/{room}/invites", {}).json["id"]
    fresh = PNG + who.encode()
    sha256 = hashlib.sha256(fresh).hexdigest() if method == "PUT" else SHA256
    names = {"<room>": fish_room.id, "<keeper>": other.keeper, "<phone>": other.device, "<sha256>": sha256}
    path = rule
    for name, value in {**names, "<invitation>": invitation, "<name>": "free_ammonia"}.items():
        path = path.replace(name, value)
    more = {"query_string": {"epoch": fish_room.epoch}} if rule.endswith("/pull") else {}
    if method == "PUT":
        more["data"] = fresh
    elif (method, rule) in BODIES:
        more["json"] = BODIES[method, rule](fish_room)
    headers = {"Authorization": f"Bearer {phone.key}"} if phone.key else {}
    answer = phone.client.open(path, method=method, headers=headers, **more)
    assert answer.status_code == TABLE[method, rule][who], answer.text
    if answer.status_code >= 400:
        assert fish_room.id not in answer.text.replace(path, ""), "a refusal tells nothing of the room"


@pytest.mark.parametrize(("role", "kind", "status"), WRITES)
@pytest.mark.parametrize("type", ["put", "del", "restore"])
def test_each_role_writes_its_kinds_only(fish_room, role, kind, status, type):
    phone = fish_room.phone(role, "Cal")
    op = phone.tank() if kind == "tank" else phone.reading("tank-0001")
    (result,) = phone.results(op if type == "put" else {**op, "type": type, "fields": {}})
    assert result["status"] == status


def test_one_room_never_shows_in_another(fish_room):
    tank = fish_room.owner.tank(name="Only here")
    fish_room.owner.results(tank)
    stranger = fish_room.stranger()
    (room,) = stranger.call("GET", "/me").json["rooms"]
    answer = stranger.call("GET", f"/rooms/{room['id']}/pull", query_string={"epoch": room["epoch"]})
    assert answer.json["rows"] == []
    assert "Ada" not in answer.text
    # The same record id in another room is another record.
    body = {"epoch": room["epoch"], "ops": [{**stranger.tank(name="Elsewhere"), "id": tank["id"]}]}
    assert stranger.call("POST", f"/rooms/{room['id']}/push", body).json["results"][0]["status"] == "ok"
    assert fish_room.owner.rows()[tank["id"]]["fields"]["name"] == "Only here"


def test_an_owner_of_one_room_is_nobody_in_another(fish_room):
    stranger = fish_room.stranger()
    for path in (f"/rooms/{{room}}/people/{fish_room.owner.keeper}", f"/devices/{fish_room.owner.device}"):
        assert stranger.call("DELETE", path).status_code == 404
    assert fish_room.owner.pull().status_code == 200
