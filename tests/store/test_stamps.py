"""The clamp: no stamp stays in the future, and an edit still beats what its author had seen."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from limnary.protocol.stamps import AHEAD_MS, Clamp, is_stamp, parts, stamp_of

NOW = 1_780_000_000_000


def test_a_stamp_within_the_ceiling_is_kept():
    clamp = Clamp(0, 0, NOW)
    edge = stamp_of(NOW + AHEAD_MS, 4, "phone")
    assert clamp.accept(edge) == edge


def test_a_stamp_above_the_ceiling_goes_to_the_ceiling_behind_all_accepted():
    clamp = Clamp(0, 0, NOW)
    seen = clamp.accept(stamp_of(NOW + AHEAD_MS, 7, "zzz"))
    moved = clamp.accept(stamp_of(NOW + 9 * AHEAD_MS, 0, "aaa"))
    assert parts(moved) == (NOW + AHEAD_MS, 8, "aaa")
    assert moved > seen


def test_a_full_counter_moves_to_the_next_millisecond():
    clamp = Clamp(NOW + AHEAD_MS, 99_999, NOW)
    assert parts(clamp.accept(stamp_of(NOW + 2 * AHEAD_MS, 0, "phone")))[:2] == (NOW + AHEAD_MS + 1, 0)


@given(st.lists(st.tuples(st.integers(0, NOW * 3), st.integers(0, 99_999)), max_size=30), st.data())
def test_clamped_stamps_only_rise_and_never_pass_the_ceiling(asked, data):
    clamp, now_ms = Clamp(0, 0, NOW), NOW
    top = ""
    for ms, counter in asked:
        now_ms += data.draw(st.integers(0, 1000))
        clamp = Clamp(clamp.ms, clamp.counter, now_ms)
        got = clamp.accept(stamp_of(ms, counter, "phone"))
        assert is_stamp(got)
        assert parts(got)[0] <= now_ms + AHEAD_MS + 1
        if ms > now_ms + AHEAD_MS:
            assert got > top
        top = max(top, got)


def test_a_clock_set_back_moves_nothing_below_what_was_accepted():
    clamp = Clamp(NOW + 5 * AHEAD_MS, 99_998, NOW)
    kept = stamp_of(NOW + 5 * AHEAD_MS, 99_999, "phone")
    assert clamp.accept(kept) == kept
    after = [clamp.accept(stamp_of(NOW + 9 * AHEAD_MS, 0, "phone")) for _ in range(2)]
    assert [parts(one)[:2] for one in after] == [(NOW + 5 * AHEAD_MS + 1, 0), (NOW + 5 * AHEAD_MS + 1, 1)]


@pytest.mark.parametrize("text", ["", "1-2-3", "1767225600000-00000-", "1767225600000-00000-a b", None, 3])
def test_what_is_no_stamp(text):
    assert not is_stamp(text)
