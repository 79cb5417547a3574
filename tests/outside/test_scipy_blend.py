"""water_blend against scipy's bounded optimisers: no mixture of these waters is closer."""

import random

import pytest
from limnary.contracts import run
from scipy.optimize import LinearConstraint, linprog, minimize

NAMES = ("gh_dgh", "kh_dkh", "temperature_c")


def drawn(seed):
    rng = random.Random(seed)
    count, wanted = rng.randint(2, 5), rng.sample(NAMES, rng.randint(1, 3))
    sources = [{name: round(rng.uniform(0, 20), 1) for name in NAMES} for _ in range(count)]
    for source in sources:
        if rng.random() < 0.4:
            source["litres"] = round(rng.uniform(0, 30), 1)
    if all("litres" in source for source in sources):
        del sources[0]["litres"]
    target = {name: round(rng.uniform(0, 20), 1) for name in NAMES if name in wanted}
    return {"sources": sources, "target": target, "litres": 40}


def miss(payload, litres):
    total = 0.0
    for name, goal in payload["target"].items():
        mixed = sum(x * s[name] for x, s in zip(litres, payload["sources"], strict=True)) / payload["litres"]
        total += (mixed - goal) ** 2
    return total


@pytest.mark.parametrize("seed", range(60))
def test_water_blend_is_the_nearest_mixture(seed):
    payload = drawn(seed)
    litres = run("water_blend", payload)["litres"]
    caps = [min(40, source.get("litres", 40)) for source in payload["sources"]]
    assert sum(litres) == pytest.approx(40, rel=1e-9)
    assert all(0 <= x <= cap + 1e-9 for x, cap in zip(litres, caps, strict=True))
    start = [cap * 40 / sum(caps) for cap in caps]
    found = minimize(
        lambda x: miss(payload, x), start, bounds=[(0, cap) for cap in caps], method="SLSQP",
        constraints=LinearConstraint([[1] * len(caps)], 40, 40), options={"ftol": 1e-14, "maxiter": 500},
    )  # fmt: skip
    assert miss(payload, litres) <= found.fun + 1e-6
    assert miss(payload, litres) == pytest.approx(found.fun, abs=1e-4)


# If a linear programme finds a mixture that meets every target, so does water_blend.
@pytest.mark.parametrize("seed", range(60))
def test_water_blend_meets_what_can_be_met(seed):
    payload = drawn(1000 + seed)
    rows = [[source[name] / 40 for source in payload["sources"]] for name in payload["target"]]
    found = linprog(
        [0] * len(payload["sources"]),
        A_eq=[*rows, [1] * len(payload["sources"])],
        b_eq=[*payload["target"].values(), 40],
        bounds=[(0, source.get("litres", 40)) for source in payload["sources"]],
    )
    got = run("water_blend", payload)
    if found.success:
        assert got["notes"] == []
        for name, goal in payload["target"].items():
            assert got["reached"][name] == pytest.approx(goal, abs=1e-4)
    else:
        assert miss(payload, got["litres"]) > 1e-12
