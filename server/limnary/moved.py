"""What became of stamps that lay in the future: `{as the phone wrote it: as a server took it}`, for each record. Pure.

A server that was restored from a backup forgets what it had moved back; asked again, it would move the same
write to a later place, before the eyes of those who have since edited what they saw. So the map travels with
the row and with each edit, and of two places for one write the earlier counts: it lies behind all that the
write's own author had seen, and before every edit made by anyone who saw the write at either place.
"""

from limnary.stamps import is_stamp, parts


def are_moved(value: object) -> bool:
    """Whether `value` is such a map: never forward, never to another device."""
    return isinstance(value, dict) and all(_is_move(written, taken) for written, taken in value.items())


def _is_move(written: object, taken: object) -> bool:
    return is_stamp(written) and is_stamp(taken) and taken < written and parts(taken)[2] == parts(written)[2]


def learn(known: dict[str, str], heard: dict[str, str]) -> dict[str, str]:
    """Bring `known` up to date with what is heard: {the place a write had here: its earlier place}.

    >>> known = {"9-p": "5-p"}
    >>> learn(known, {"9-p": "3-p", "8-q": "4-q"}), known
    ({'5-p': '3-p', '8-q': '4-q'}, {'9-p': '3-p', '8-q': '4-q'})
    """
    earlier = {}
    for written, taken in heard.items():
        here = known.get(written, written)
        if taken < here:
            known[written] = earlier[here] = taken
    return earlier


def places(known: dict[str, str], heard: dict[str, str]) -> dict[str, str]:
    """Where each stamp of the sender belongs here, after `learn`; a stamp not named stays.

    >>> places({"9-p": "3-p"}, {"9-p": "5-p"})
    {'5-p': '3-p', '9-p': '3-p'}
    """
    return {**{taken: known.get(written, taken) for written, taken in heard.items()}, **known}
