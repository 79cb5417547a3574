"""The shared vectors, run by the server's calculations; tests/js/vectors.test.js runs them by the phone's."""

import pytest
from limnary.contracts import InvalidInput, contracts, run
from limnary.schema_files import read_folder

CASES = [
    (name, case)
    for name, spec in contracts().items()
    for case in [*spec["examples"], *read_folder("vectors")[name]["cases"]]
]


@pytest.mark.parametrize(("name", "case"), CASES, ids=[case["id"] for _, case in CASES])
def test_vector(name, case):
    if "errors" in case:
        with pytest.raises(InvalidInput) as no:
            run(name, case["input"])
        assert no.value.errors == case["errors"]
    else:
        got = run(name, case["input"])
        agrees(got, case["expected"], case["tolerance"], case["id"])
        assert not [path for path in case.get("absent", []) if holds(got, path)]


def holds(got, path):
    """Whether the answer has a value at a path such as plan.0.drops_s."""
    for step in path.split("."):
        if isinstance(got, dict) and step not in got:
            return False
        got = got[int(step)] if isinstance(got, list) else got[step]
    return True


def agrees(got, expected, tolerance, path):
    """Assert that `expected` is a subset of `got`: numbers within the tolerance, everything else equal."""
    if isinstance(expected, int | float) and not isinstance(expected, bool):
        room = tolerance.get("absolute", 0) + tolerance.get("relative", 0) * abs(expected)
        assert abs(got - expected) <= room, f"{path}: {got} is not {expected} ± {room}"
    elif isinstance(expected, dict):
        for key, value in expected.items():
            agrees(got[key], value, tolerance, f"{path}.{key}")
    elif isinstance(expected, list):
        assert len(got) == len(expected), path
        for index, value in enumerate(expected):
            agrees(got[index], value, tolerance, f"{path}.{index}")
    else:
        assert got == expected, path
