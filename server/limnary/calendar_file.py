"""A room's tasks as an iCalendar file (RFC 5545): titles and times, in the time zone of each task.

Pure; the phone's twin is pwa/advice/tasks/calendar.js.
"""

import re
from collections import Counter
from collections.abc import Iterable
from datetime import UTC, datetime, timedelta
from functools import lru_cache

from icalendar import Calendar, Event, Timezone, vText

from limnary.ids import ms_of
from limnary.recurrence import BadRule, local_of, occurrences, parse_rule, until_ms, zone_of

# An event needs a duration to be visible; how long a task takes is unknown (assumption).
LENGTH = timedelta(minutes=15)
REACH_MS = 12 * 366 * 86_400_000
MOST_TASKS = 500
# To describe a zone takes some 20 ms. The tasks of a room share one or two; only a hostile room names hundreds.
MOST_ZONES = 8
# A task of a zone that is not described has this many dates, from a week before now on.
DATES = 12
WEEK_MS = 7 * 86_400_000
# RFC 5545, 3.1: no control characters but the tab; a line break is escaped.
CONTROLS = re.compile(r"[\x00-\x08\x0b-\x1f\x7f]")


def calendar_file(room: str, tasks: Iterable[dict], tanks: dict[str, str], dones: Iterable[dict], now_ms: int) -> bytes:
    """The file. `tasks` and `dones` are record fields with `id` and `changed_at`; `tanks`: names by id of those in use.

    Tasks that have ended or whose tank is not in use are left out; skipped dates are excluded (EXDATE). The 8 zones
    that most tasks name are described; a task of another zone gets its next dates in UTC.
    """
    skipped: dict[str, list[int]] = {}
    for done in dones:
        if done.get("skipped") and done.get("due_at"):
            skipped.setdefault(done["task"], []).append(ms_of(done["due_at"]))
    calendar = Calendar()
    calendar.add("prodid", "-//Limnary//Tasks//EN")
    calendar.add("version", "2.0")
    calendar["x-wr-calname"] = vText(_plain(room))
    shown = (task for task in tasks if not task.get("over") and (not task.get("tank") or task["tank"] in tanks))
    listed = sorted(shown, key=lambda task: task["id"])[:MOST_TASKS]
    zones = [zone for zone, _ in Counter(filter(None, map(_zone_known, listed))).most_common(MOST_ZONES)]
    for zone in sorted(zones):
        calendar.add_component(_described(zone))
    for task in listed:
        gone = skipped.get(task["id"], [])
        zone = _zone_known(task)
        beyond = zone is not None and zone not in zones
        calendar.add_component(_dates(task, tanks, gone, now_ms) if beyond else _event(task, tanks, gone))
    return calendar.to_ical()


def _zone_known(task: dict) -> str | None:
    """The task's zone if it must be described: one that is known here and is not UTC."""
    try:
        zone = str(zone_of(task.get("zone")))
    except BadRule:
        return None
    return None if zone == "UTC" else zone


@lru_cache(maxsize=600)
def _described(zone: str) -> Timezone:
    return Timezone.from_tzinfo(zone_of(zone), zone)


def _dates(task: dict, tanks: dict[str, str], skipped: list[int], now_ms: int) -> Event:
    """The task's next dates in UTC, without a rule: the file does not describe its zone."""
    start_ms = ms_of(task["starts_at"]) // 1000 * 1000
    try:
        since = max(start_ms, now_ms - WEEK_MS)
        found = occurrences(task.get("rule"), task["starts_at"], task["zone"], since, since + REACH_MS, DATES)
    except BadRule:
        found = []
    event = _named(task, tanks)
    first, *more = [moment for moment in found if moment not in skipped] or [start_ms]
    event.add("dtstart", local_of(first, zone_of(None)).replace(tzinfo=UTC))
    if more:
        event.add("rdate", [local_of(moment, zone_of(None)).replace(tzinfo=UTC) for moment in more])
    return event


def _plain(text: str) -> str:
    return CONTROLS.sub("", text)


def _named(task: dict, tanks: dict[str, str]) -> Event:
    event = Event()
    event.add("uid", f"{task['id']}@limnary")
    event.add("dtstamp", datetime.fromisoformat(task["changed_at"]).astimezone(UTC).replace(microsecond=0))
    title = f"{tanks[task['tank']]}: {task['title']}" if task.get("tank") else task["title"]
    event.add("summary", _plain(title))
    event.add("duration", LENGTH)
    event.add("transp", "TRANSPARENT")
    return event


def _event(task: dict, tanks: dict[str, str], skipped: list[int]) -> Event:
    event = _named(task, tanks)
    start_ms = ms_of(task["starts_at"]) // 1000 * 1000
    try:
        zone = zone_of(task.get("zone"))
        # RFC 5545, 3.8.5.3: DTSTART counts as an occurrence, so it must be one that the rule gives.
        rule = task.get("rule")
        first = occurrences(rule, task["starts_at"], task.get("zone"), start_ms, start_ms + REACH_MS, 1)
        if rule and first:
            event.add("rrule", _rule(rule, task.get("zone")))
    except BadRule:
        # A task with a rule that is not supported keeps its first day instead of being lost.
        zone, first = zone_of(None), []
    at = [local_of(ms, zone).replace(tzinfo=zone) for ms in [*(first or [start_ms]), *sorted(skipped)]]
    event.add("dtstart", at[0])
    for moment in at[1:]:
        event.add("exdate", moment)
    return event


def _rule(rule: str, zone: str | None) -> dict:
    parts = parse_rule(rule)
    if "UNTIL" in parts:
        # RFC 5545, 3.3.10: if DTSTART has a time zone, UNTIL must be in UTC.
        parts["UNTIL"] = datetime.fromtimestamp(until_ms(parts, zone_of(zone)) // 1000, UTC)
    if "BYDAY" in parts:
        parts["BYDAY"] = [f"{nth or ''}{day}" for nth, day in parts["BYDAY"]]
    return {name: value for name, value in parts.items() if (name, value) != ("INTERVAL", 1)}
