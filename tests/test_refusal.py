"""A refusal that nobody puts into words still says its code in a log."""

from limnary.calc.refusal import Refusal


def test_a_refusal_carries_its_code_and_its_field():
    no = Refusal("source_unknown", "sources.1.gh_dgh")
    assert (str(no), no.code, no.field) == ("source_unknown", "source_unknown", "sources.1.gh_dgh")
    assert Refusal("no_target").field is None
