"""Moved stamps of one record: `{stamp as the phone wrote it: stamp as a server took it}`. Pure.

A server restored from a backup has forgotten which stamps it moved back. When a phone sends such a write again, the
server would move it to a later place, above the edits of people who had seen it at the first one. So the map travels
with the row and with each edit. If one write was clamped twice, the earlier place counts: it is later than all that
its author had seen, and earlier than any edit by someone who saw the write at either place.
"""

from limnary.protocol.stamps import is_stamp, parts

# One edit names as many at most, and a row learns no more once it holds so many: a handful of phones with clocks far
# ahead make a few, and only a hostile one would make a row grow without end.
MOST_MOVED = 200


def are_moved(value: object) -> bool:
    """Whether `value` is such a map: not too large, and each stamp moves back and keeps its device."""
    return (
        isinstance(value, dict)
        and len(value) <= MOST_MOVED
        and all(_is_move(written, taken) for written, taken in value.items())
    )


def _is_move(written: object, taken: object) -> bool:
    return is_stamp(written) and is_stamp(taken) and taken < written and parts(taken)[2] == parts(written)[2]


def learn(known: dict[str, str], heard: dict[str, str]) -> dict[str, str]:
    """Update `known` in place by what is heard; return {place of a write here: its earlier place}.

    >>> known = {"9-p": "5-p"}
    >>> learn(known, {"9-p": "3-p", "8-q": "4-q"}), known
    ({'5-p': '3-p', '8-q': '4-q'}, {'9-p': '3-p', '8-q': '4-q'})
    """
    earlier = {}
    for written, taken in heard.items():
        if len(known) >= 2 * MOST_MOVED and written not in known:
            continue
        here = known.get(written, written)
        if taken < here:
            known[written] = earlier[here] = taken
    return earlier


def places(known: dict[str, str], heard: dict[str, str]) -> dict[str, str]:
    """The place here of each stamp that the sender may name, after `learn`; a stamp not in the map stays.

    >>> places({"9-p": "3-p"}, {"9-p": "5-p"})
    {'5-p': '3-p', '9-p': '3-p'}
    """
    return {**{taken: known.get(written, taken) for written, taken in heard.items()}, **known}
