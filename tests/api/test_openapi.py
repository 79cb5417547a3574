"""The API's description is valid OpenAPI 3.1, covers every route, and the server answers as it says."""

import copy
import hashlib

import pytest
import schemathesis
from fish_rooms import FishRoom
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from limnary.api.openapi import description
from limnary.contracts import contracts, run
from openapi_spec_validator import OpenAPIV31SpecValidator
from pace import by_pace
from schemathesis.generation import GenerationMode
from schemathesis.specs.openapi.checks import negative_data_rejection, positive_data_acceptance

OPERATIONS = [
    (path, method) for path, item in description()["paths"].items() for method in item if method != "parameters"
]


def test_valid_openapi():
    OpenAPIV31SpecValidator(description()).validate()


def test_every_route_is_described(fish_room):
    described = {
        (method, path) for path, item in description()["paths"].items() for method in item if method != "parameters"
    }
    for rule in fish_room.app.url_map.iter_rules():
        if rule.endpoint.startswith(("shell.", "pages.")) or rule.rule == "/api/v1/openapi.json":
            continue
        methods = {method.lower() for method in rule.methods - {"HEAD", "OPTIONS"}}
        for path in _paths_of(rule.rule):
            assert {(method, path) for method in methods} <= described, path


def _paths_of(rule: str) -> list[str]:
    if rule == "/api/v1/calc/<name>":
        return [f"/api/v1/calc/{name}" for name in contracts()]
    names = {"<room>": "{room}", "<keeper>": "{keeper}", "<invitation>": "{invitation}", "<phone>": "{device}"}
    names["<sha256>"] = "{sha256}"
    for flask, described in names.items():
        rule = rule.replace(flask, described)
    return [rule]


LABELS = sorted(f"{method.upper()} {path}" for path, method in OPERATIONS)
OF_ROOMS = [label for label in LABELS if "/calc/" not in label]
EXAMPLES = by_pace(quick=4, usual=8, long=200)
PICTURE = b"\x89PNG\r\n\x1a\n" + bytes(40)


def drawn(label: str, described: dict, room: FishRoom, mode: GenerationMode, check) -> None:
    """Call `check` with requests to one operation that fit the description, or that break it."""
    schema = schemathesis.openapi.from_dict(described)
    schema.app = room.app
    operation = schema.find_operation_by_label(label)

    @settings(
        max_examples=EXAMPLES,
        deadline=None,
        derandomize=True,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(operation.as_strategy(generation_mode=mode), st.sampled_from(["owner", "viewer", "nobody"]))
    def drawing(case, role):
        check(case, role)

    drawing()


def judge(case, key: str | None, excepted) -> None:
    """Send it and hold every check of schemathesis against the answer, but for those that `excepted(answer)` names."""
    # The test transport asks for gzip but does not unpack it.
    headers = {"Accept-Encoding": "identity", **({"Authorization": f"Bearer {key}"} if key else {})}
    answer = case.call(headers=headers)
    case.validate_response(answer, headers=headers, excluded_checks=excepted(answer))


@pytest.fixture(scope="module")
def calculating(tmp_path_factory):
    """A server whose slow calculations answer in this process."""
    room = FishRoom(tmp_path_factory.mktemp("calculating") / "data")
    room.app.extensions["limnary_slow_lane"].answer = run
    yield room
    room.close()


@pytest.mark.parametrize("label", [label for label in LABELS if label not in OF_ROOMS])
def test_each_calculation_keeps_to_its_description(label, calculating):
    name = label.rsplit("/", 1)[1]
    refusals = {words["message"] for words in contracts().get(name, {}).get("refusals", {}).values()}

    def excepted(answer):
        """A contract's own refusals depend on figures, which JSON Schema cannot compare: its words are the proof."""
        errors = answer.json().get("errors", []) if answer.status_code == 422 else []
        refused = errors and all(error["message"] in refusals for error in errors)
        return [positive_data_acceptance] if refused else []

    drawn(label, description(), calculating, GenerationMode.POSITIVE, lambda case, _: judge(case, None, excepted))


def of_this_room(room: FishRoom) -> dict:
    """The description with ids that exist: of this room, its members, their phones, a link and a photo."""
    kim = room.phone("keeper", "Kim")
    sha256 = hashlib.sha256(PICTURE).hexdigest()
    room.owner.call("PUT", f"/rooms/{{room}}/blobs/{sha256}", data=PICTURE, content_type="image/png")
    invitation = room.owner.call("POST", "/rooms/{room}/invites", {}).json["id"]
    ids = {"room": room.id, "keeper": kim.keeper, "device": kim.device, "invitation": invitation, "sha256": sha256}
    described = copy.deepcopy(description())
    paths = described["paths"]
    for item in paths.values():
        for parameter in item.get("parameters", []):
            parameter["schema"] = {"enum": [ids[parameter["name"]]]}
    own = {"enum": [room.epoch]}
    for call in ("push", "bring-back"):
        body = paths[f"/api/v1/rooms/{{room}}/{call}"]["post"]["requestBody"]["content"]["application/json"]["schema"]
        body["properties"]["epoch"] = own
    next(one for one in paths["/api/v1/rooms/{room}/pull"]["get"]["parameters"] if one["name"] == "epoch")["schema"] = (
        own
    )
    return described


@pytest.mark.parametrize("mode", [GenerationMode.POSITIVE, GenerationMode.NEGATIVE], ids=lambda mode: mode.value)
@pytest.mark.parametrize("label", OF_ROOMS)
def test_the_server_keeps_to_its_description(label, mode, fish_room):
    described = of_this_room(fish_room)
    keys = {"owner": fish_room.owner.key, "viewer": fish_room.phone("viewer", "Vic").key, "nobody": None}
    takes_nothing = mode is GenerationMode.NEGATIVE and label in ("GET /healthz", "GET /api/v1/calc")
    if takes_nothing:
        return  # no request to it can break its description

    def excepted(answer):
        if label.startswith("PUT") and answer.status_code == 400:
            return [positive_data_acceptance]  # the bytes must have the hash in the address
        if label.endswith(("/push", "/bring-back")) and answer.status_code == 200:
            return [negative_data_rejection]  # one bad entry is told in its result; the others count
        return []

    drawn(label, described, fish_room, mode, lambda case, role: judge(case, keys[role], excepted))
