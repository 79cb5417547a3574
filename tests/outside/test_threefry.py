"""The outlook's random numbers against the known answers of Threefry-2x32, 20 rounds, and the normal law.

Known answers: kat_vectors of the Random123 distribution (Salmon et al. 2011), from memory; other public
implementations of the generator give the same.
"""

import json
import subprocess
from pathlib import Path

import numpy as np
import pytest
from limnary.calc.random_numbers import normals, threefry, uniform

MODULE = Path(__file__).parents[2] / "pwa/calc/random_numbers.js"
KNOWN = [
    ((0, 0), (0, 0), (0x6B200159, 0x99BA4EFE)),
    ((0xFFFFFFFF, 0xFFFFFFFF), (0xFFFFFFFF, 0xFFFFFFFF), (0x1CB996FC, 0xBB002BE7)),
    ((0x13198A2E, 0x03707344), (0x243F6A88, 0x85A308D3), (0xC4923A9C, 0x483DF7A0)),
]


@pytest.mark.parametrize(("key", "counter", "answer"), KNOWN)
def test_known_answers(key, counter, answer):
    words = threefry(key, *(np.array([word], np.uint32) for word in counter))
    assert tuple(int(word[0]) for word in words) == answer


def test_known_answers_on_the_phone():
    script = f"""
      import {{ threefry }} from {json.dumps(MODULE.as_uri())};
      const cases = {json.dumps(KNOWN)};
      const got = cases.map(([key, counter]) => {{
        const words = [new Uint32Array(1), new Uint32Array(1)];
        threefry(...key, ...counter, ...words);
        return words.map(([word]) => word);
      }});
      console.log(JSON.stringify(got));
    """
    out = subprocess.run(
        ["node", "--input-type=module", "-e", script], capture_output=True, text=True, check=True, timeout=60
    )
    assert [tuple(pair) for pair in json.loads(out.stdout)] == [answer for *_, answer in KNOWN]


@pytest.mark.parametrize("seed", [1, 7, 2_147_483_647])
def test_normals_follow_the_normal_law(seed):
    from scipy import stats  # here, for every worker reads this file and takes a second for it

    draws = normals(seed, 1000, 20_000)
    assert stats.kstest(draws, "norm").pvalue > 1e-4
    assert abs(stats.pearsonr(draws[0::2], draws[1::2]).statistic) < 0.04
    assert np.array_equal(normals(seed, 1010, 20), draws[20:40]), "a draw depends on its position alone"


def test_uniform_stays_inside_the_open_unit_interval():
    from scipy import stats

    found = [uniform(1, position) for position in range(2000)]
    assert 0 < min(found) < max(found) < 1
    assert stats.kstest(found, "uniform").pvalue > 1e-4
