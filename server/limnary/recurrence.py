"""When a task is due: recurrence rules (RFC 5545, 3.3.10), expanded in local time of the task's zone.

A task at 08:00 stays at 08:00 when clocks change. Pure; the phone's twin is pwa/advice/tasks/recurrence.js.
"""

import calendar
import re
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from functools import lru_cache
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from dateutil import rrule

from limnary.ids import ms_of

FREQUENCIES = {"DAILY": rrule.DAILY, "WEEKLY": rrule.WEEKLY, "MONTHLY": rrule.MONTHLY, "YEARLY": rrule.YEARLY}
WEEKDAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
# Parts that hold whole numbers: minimum, maximum, whether a negative number counts from the end.
NUMBERS = {
    "BYMONTHDAY": (1, 31, True),
    "BYMONTH": (1, 12, False),
    "BYSETPOS": (1, 366, True),
    "BYHOUR": (0, 23, False),
    "BYMINUTE": (0, 59, False),
}
MOST_INTERVAL, MOST_COUNT = 1000, 10_000
DAY_MS = 86_400_000
_EPOCH = datetime(1970, 1, 1)


class BadRule(ValueError):
    """A rule that is not supported; the message says why."""


def parse_rule(text: str) -> dict:
    """The parts of an RRULE value by name; BadRule.

    Supported are DAILY to YEARLY with INTERVAL, COUNT or UNTIL, BYDAY, BYMONTHDAY, BYMONTH, BYSETPOS, BYHOUR,
    BYMINUTE and WKST. HOURLY and shorter frequencies, BYYEARDAY, BYWEEKNO and BYSECOND are refused, and so are
    combinations that could search for a very long time without a match.

    >>> parse_rule("FREQ=WEEKLY;BYDAY=MO,TH")
    {'FREQ': 'WEEKLY', 'INTERVAL': 1, 'BYDAY': [(0, 'MO'), (0, 'TH')]}
    """
    given = {}
    for part in text.strip().upper().split(";"):
        name, equals, value = part.partition("=")
        if not equals or name in given:
            raise BadRule(f"{part} is no part of a rule, or stands twice")
        given[name] = value
    if given.get("FREQ") not in FREQUENCIES:
        raise BadRule("FREQ must be DAILY, WEEKLY, MONTHLY or YEARLY")
    rule = {"FREQ": given.pop("FREQ"), "INTERVAL": _whole("INTERVAL", given.pop("INTERVAL", "1"), 1, MOST_INTERVAL)}
    for name, value in given.items():
        rule[name] = _part(name, value)
    _check(rule)
    return rule


def _part(name: str, value: str):
    if name == "COUNT":
        return _whole(name, value, 1, MOST_COUNT)
    if name == "UNTIL" and re.fullmatch(r"\d{8}(T\d{6}Z?)?", value, re.ASCII):
        return value
    if name == "WKST" and value in WEEKDAYS:
        return value
    if name == "BYDAY":
        return [_weekday(one) for one in value.split(",")]
    if name in NUMBERS:
        return sorted({_number(name, one) for one in value.split(",")})
    raise BadRule(f"{name}={value} is not read here")


def _whole(name: str, text: str, least: int, most: int) -> int:
    if re.fullmatch(r"\d{1,5}", text, re.ASCII) and least <= int(text) <= most:
        return int(text)
    raise BadRule(f"{name} must be a whole number from {least} to {most}")


def _number(name: str, text: str) -> int:
    least, most, from_end = NUMBERS[name]
    if re.fullmatch(r"[+-]?\d{1,3}", text, re.ASCII):
        value = int(text)
        if least <= abs(value) <= most and (from_end or not text.startswith("-")):
            return value
    raise BadRule(f"{name}={text} is out of range")


def _weekday(text: str) -> tuple[int, str]:
    hit = re.fullmatch(r"([+-]?\d{1,2})?(MO|TU|WE|TH|FR|SA|SU)", text, re.ASCII)
    if hit and (hit[1] is None or 1 <= abs(int(hit[1])) <= 53):
        return int(hit[1] or 0), hit[2]
    raise BadRule(f"BYDAY={text} names no weekday")


def _check(rule: dict) -> None:
    freq, days = rule["FREQ"], [nth for nth, _ in rule.get("BYDAY", [])]
    by = {name for name in rule if name.startswith("BY")}
    by_day = by & {"BYDAY", "BYMONTHDAY", "BYMONTH"}
    wrong = (
        ("COUNT" in rule and "UNTIL" in rule)
        or (any(days) and (not all(days) or freq not in ("MONTHLY", "YEARLY") or "BYMONTHDAY" in rule))
        or ((freq == "MONTHLY" or "BYMONTH" in rule) and any(abs(nth) > 5 for nth in days))
        or (freq == "DAILY" and rule["INTERVAL"] > 1 and by_day)
        or (freq == "WEEKLY" and by_day - {"BYDAY"})
        or (freq == "MONTHLY" and "BYMONTH" in rule)
        or ("BYSETPOS" in rule and (freq not in ("MONTHLY", "YEARLY") or not by_day))
    )
    if wrong:
        raise BadRule("These parts do not go together here")
    if "BYMONTH" in rule and "BYMONTHDAY" in rule:
        longest = max(calendar.monthrange(2024, month)[1] for month in rule["BYMONTH"])
        if all(abs(day) > longest for day in rule["BYMONTHDAY"]):
            raise BadRule("Such a day never comes")


# zoneinfo itself keeps the last 8 in memory, and reads a file for any other.
@lru_cache(maxsize=600)
def zone_of(name: str | None) -> ZoneInfo:
    """The time zone of that IANA name, UTC for none; BadRule."""
    try:
        return ZoneInfo(name or "UTC")
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise BadRule(f"{name} is no time zone known here") from None


def local_of(ms: int, zone: ZoneInfo) -> datetime:
    """The local time in `zone`, to whole seconds, as a naive datetime."""
    return datetime.fromtimestamp(ms // 1000, zone).replace(tzinfo=None)


def ms_of_local(local: datetime, zone: ZoneInfo) -> int:
    """Milliseconds since 1970 of a local time.

    RFC 5545, 3.3.5: a local time that occurs twice means the first; one that is skipped is read with the offset
    before the gap. `fold=0` means both (PEP 495).

    >>> ms_of_local(datetime(2026, 3, 29, 2, 30), ZoneInfo("Europe/Berlin")) - ms_of("2026-03-29T01:30:00Z")
    0
    """
    return round(local.replace(tzinfo=zone, fold=0).astimezone(UTC).timestamp()) * 1000


def occurrences(
    rule: str | None, starts_at: str, zone: str | None, from_ms: int, to_ms: int, most: int = 1000
) -> list[int]:
    """The due times from `from_ms` to `to_ms`, both included, oldest first, at most `most`; BadRule.

    Without a rule a task is due once. The start counts only if the rule gives it too.

    >>> day = 86_400_000
    >>> occurrences("FREQ=WEEKLY;BYDAY=SA", "1970-01-01T08:00:00Z", None, 0, 16 * day) == [2 * day + 8 * 3_600_000,
    ...     9 * day + 8 * 3_600_000]
    True
    """
    start_ms = ms_of(starts_at) // 1000 * 1000
    if not rule:  # an instant: no zone is needed
        return [start_ms] if from_ms <= start_ms <= to_ms else []
    where = zone_of(zone)
    parts = parse_rule(rule)
    start = local_of(start_ms, where)
    last_ms = min(to_ms, until_ms(parts, where))
    found = set()
    for local in _from(parts, start, _local_bound(from_ms - DAY_MS), _local_bound(last_ms + DAY_MS)):
        ms = ms_of_local(local, where)
        if from_ms <= ms <= last_ms:
            found.add(ms)
        if len(found) > most:
            break
    return sorted(found)[:most]


def _from(parts: dict, start: datetime, after: datetime, before: datetime) -> Iterator[datetime]:
    by_day = [getattr(rrule, day)(nth or None) for nth, day in parts.get("BYDAY", [])] or None
    start = _nearer(parts, start, after)
    dates = rrule.rrule(
        FREQUENCIES[parts["FREQ"]],
        dtstart=start,
        interval=parts["INTERVAL"],
        count=parts.get("COUNT"),
        wkst=getattr(rrule, parts.get("WKST", "MO")),
        byweekday=by_day,
        **{name.lower(): parts[name] for name in NUMBERS if name in parts},
    )
    for local in dates.xafter(after, inc=True):
        # When clocks change, instants can be out of order by an hour, never by a day.
        if local > before:
            return
        yield local


def _nearer(parts: dict, start: datetime, after: datetime) -> datetime:
    """A later start that gives the same times from `after` on: dateutil counts up from the start, day by day.

    Only days and weeks are counted in steps that all have one length; months and years are few.
    """
    step_days = {"DAILY": 1, "WEEKLY": 7}.get(parts["FREQ"])
    if step_days is None or "COUNT" in parts:
        return start
    step = timedelta(days=step_days * parts["INTERVAL"])
    return start + max(0, (after - start) // step) * step


def _local_bound(ms: int) -> datetime:
    """A local time near that instant in any zone: callers leave a day of margin."""
    return _EPOCH + timedelta(milliseconds=min(max(ms, -(10**13)), 10**14))


def until_ms(parts: dict, zone: ZoneInfo) -> int:
    """The last instant of a rule's UNTIL: in UTC if it ends with Z, else in local time; a date includes that day."""
    text = parts.get("UNTIL")
    if text is None:
        return 10**14
    try:
        if len(text) == 8:  # a date includes that whole day
            return ms_of_local(datetime.strptime(text, "%Y%m%d") + timedelta(hours=24), zone) - 1
        moment = datetime.strptime(text.removesuffix("Z"), "%Y%m%dT%H%M%S")
    except ValueError:
        raise BadRule(f"UNTIL={text} is no date") from None
    return ms_of_local(moment, ZoneInfo("UTC") if text.endswith("Z") else zone)
