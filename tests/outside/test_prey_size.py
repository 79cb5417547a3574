"""Whose mouth fits whom in compatibility, against measured diets (Gaeta 2018) and mouths (Mihalitsis 2017)."""

import pytest
from limnary.contracts import run

RANGES = {
    "temperature_low_c": 20,
    "temperature_high_c": 26,
    "ph_low": 6,
    "ph_high": 8,
    "gh_low_dgh": 2,
    "gh_high_dgh": 20,
}


def kinds(predator_cm, prey_cm, shape="fusiform", mouth="predator"):
    hunter = {"name": "hunter", "count": 1, "length_cm": predator_cm, "mouth": mouth, **RANGES}
    prey = {"name": "prey", "count": 1, "length_cm": prey_cm, "shape": shape, "mouth": "grazer", **RANGES}
    return [found["kind"] for found in run("compatibility", {"animals": [hunter, prey]})["findings"]]


# Gaeta et al. 2018 (PLoS ONE 13:e0194092), abstract: over seven piscivores the median prey measures 10 to 20 % of the
# predator's total length, the largest 32 to 46 %.
@pytest.mark.parametrize("share", [0.05, 0.10, 0.20, 0.31])
def test_prey_within_the_reach_of_all_seven_is_eaten(share):
    assert kinds(30, 30 * share) == ["eaten"]


@pytest.mark.parametrize("share", [0.33, 0.40, 0.45])
def test_prey_within_the_reach_of_some_may_be_eaten(share):
    assert kinds(30, 30 * share) == ["may_be_eaten"]


@pytest.mark.parametrize("share", [0.47, 0.6, 1.0])
def test_longer_prey_than_any_measured_is_not_named(share):
    assert kinds(30, 30 * share) == []


# Mihalitsis, Bellwood 2017 (PLoS ONE 12:e0184679), abstract: the deepest prey taken was 27 % of the standard length.
# A shell as deep as 0.7 of its length passes at 9 cm beside a 30 cm hunter (6.3 of at most 6.48 cm), not at 9.5 cm.
def test_prey_too_deep_for_the_mouth_is_safe():
    assert kinds(30, 9, "snail") == ["eaten"]
    assert kinds(30, 9.5, "snail") == []


def test_a_grazer_eats_nobody():
    assert kinds(30, 3, mouth="grazer") == []


# The predator's adult length counts: a young angelfish of 5 cm will grow to the table's 15 cm.
def test_a_young_hunter_is_judged_grown():
    animals = [
        {"species": "Pterophyllum scalare", "count": 1, "length_cm": 5},
        {"species": "Paracheirodon innesi", "count": 8},
    ]
    found = run("compatibility", {"animals": animals})["findings"]
    assert [one["kind"] for one in found] == ["eaten"]
