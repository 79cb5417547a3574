"""The calculations over HTTP: the answers of the contracts, and refusals that name field and range."""

import gzip
import json

import pytest
from limnary.contracts import contracts

GOOD = {"tan_mg_n_l": 1, "ph": 8, "temperature_c": 25}


@pytest.fixture
def client(fish_room):
    return fish_room.app.test_client()


def test_every_contract_is_listed_and_answers_its_examples(client):
    listed = client.get("/api/v1/calc").json["calculations"]
    assert [one["name"] for one in listed] == sorted(contracts())
    for one in listed:
        contract = client.get(one["url"]).json
        for case in contract["examples"]:
            answer = client.post(one["url"], json=case["input"])
            assert answer.status_code == 200, answer.text
            assert set(case["expected"]) <= set(answer.json)
            assert answer.json["sources"]


def test_table_value_of_emerson_1975(client):
    answer = client.post("/api/v1/calc/free_ammonia", json=GOOD)
    # Emerson, Russo, Lund, Thurston 1975: 5.37 % at 25 °C and pH 8.0.
    assert answer.json["fraction"] == pytest.approx(0.0537, abs=0.0001)


@pytest.mark.parametrize(
    ("changed", "field", "says"),
    [
        ('"text"', "ph", "a number from 0 to 14"),
        ("15", "ph", "from 0 to 14"),
        ("NaN", "ph", "finite"),
        ("Infinity", "ph", "finite"),
        ("1e999", "ph", "finite"),
        ("true", "ph", "a number"),
        ("null", "ph", "no value"),
    ],
)
def test_bad_values_name_the_field_and_what_is_allowed(client, changed, field, says):
    text = f'{{"tan_mg_n_l": 1, "ph": {changed}, "temperature_c": 25}}'
    answer = client.post("/api/v1/calc/free_ammonia", data=text, content_type="application/json")
    assert answer.status_code == 422
    (error,) = answer.json["errors"]
    assert error["field"] == field
    assert error["allowed"] == "a number from 0 to 14"
    assert says in f"{error['message']} {error['allowed']}"


def test_unknown_field_is_refused(client):
    answer = client.post("/api/v1/calc/free_ammonia", json={**GOOD, "salinity": 3})
    assert [error["field"] for error in answer.json["errors"]] == ["salinity"]


def test_gzip_both_ways(client):
    packed = gzip.compress(json.dumps(GOOD).encode())
    headers = {"Content-Encoding": "gzip", "Content-Type": "application/json", "Accept-Encoding": "gzip"}
    answer = client.post("/api/v1/calc/free_ammonia", data=packed, headers=headers)
    assert answer.status_code == 200
    listing = client.get("/api/v1/openapi.json", headers={"Accept-Encoding": "gzip"})
    assert listing.headers["Content-Encoding"] == "gzip"
    assert json.loads(gzip.decompress(listing.data))["openapi"] == "3.1.0"
    assert client.get("/api/v1/openapi.json").json["openapi"] == "3.1.0"
