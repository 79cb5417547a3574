"""The API's description is valid OpenAPI 3.1, covers every route, and the server answers as it says."""

import pytest
import schemathesis
from hypothesis import HealthCheck, given, settings
from limnary.api.openapi import description
from limnary.contracts import contracts
from openapi_spec_validator import OpenAPIV31SpecValidator
from schemathesis.specs.openapi.checks import positive_data_acceptance

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
        if rule.endpoint.startswith("shell.") or rule.rule == "/api/v1/openapi.json":
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


@pytest.mark.parametrize("label", sorted(f"{m.upper()} {p}" for p, m in OPERATIONS))
def test_the_server_keeps_to_its_description(label, fish_room):
    described = schemathesis.openapi.from_dict(description())
    described.app = fish_room.app
    operation = described.find_operation_by_label(label)

    @settings(
        max_examples=12,
        deadline=None,
        derandomize=True,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(operation.as_strategy())
    def keeps(case):
        # The test transport asks for gzip but does not unpack it.
        headers = {"Authorization": f"Bearer {fish_room.owner.key}", "Accept-Encoding": "identity"}
        # Contracts also have rules between fields and refusals, which a JSON Schema of each field cannot express.
        case.call_and_validate(headers=headers, excluded_checks=[positive_data_acceptance])

    keeps()
