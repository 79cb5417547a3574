"""Which daily backups are kept: the newest of each of the last 7 days, 4 weeks and 12 months that have one. Pure."""

from collections.abc import Callable, Iterable
from datetime import date

# How many periods of a kind keep their newest backup.
PERIODS: list[tuple[int, Callable[[date], object]]] = [
    (7, lambda day: day),
    (4, lambda day: day.isocalendar()[:2]),
    (12, lambda day: (day.year, day.month)),
]


def kept(days: Iterable[date]) -> set[date]:
    """The days whose backups are kept. Only days that have a backup count, so a server that was off loses none.

    >>> sorted(day.isoformat() for day in kept(date(2026, 5, n) for n in range(1, 29)))[:3]
    ['2026-05-10', '2026-05-17', '2026-05-22']
    """
    found: set[date] = set()
    newest_first = sorted(set(days), reverse=True)
    for most, period in PERIODS:
        newest: dict[object, date] = {}
        for day in newest_first:
            newest.setdefault(period(day), day)
        found |= set(list(newest.values())[:most])
    return found


def over_limit(sizes: list[tuple[date, int]], limit_bytes: int) -> list[date]:
    """The days whose backups must go so that all fit into the limit: the oldest first, the newest never.

    >>> over_limit([(date(2026, 5, 1), 60), (date(2026, 5, 2), 60), (date(2026, 5, 3), 60)], 100)
    [datetime.date(2026, 5, 1), datetime.date(2026, 5, 2)]
    """
    left = sum(size for _, size in sizes)
    gone = []
    for day, size in sorted(sizes)[:-1]:
        if left <= limit_bytes:
            break
        left -= size
        gone.append(day)
    return gone
