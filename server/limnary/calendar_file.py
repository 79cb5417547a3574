"""A room's tasks as an iCalendar file (RFC 5545): titles and times, in the time zone of each task.

Pure; the phone's twin is pwa/advice/tasks/calendar.js.
"""

from collections.abc import Iterable
from datetime import UTC, datetime, timedelta

from icalendar import Calendar, Event, vText

from limnary.ids import ms_of
from limnary.recurrence import BadRule, local_of, occurrences, parse_rule, until_ms, zone_of

# An event needs a duration to be visible; how long a task takes is unknown (assumption).
LENGTH = timedelta(minutes=15)
REACH_MS = 12 * 366 * 86_400_000
MOST_TASKS = 500


def calendar_file(room: str, tasks: Iterable[dict], tanks: dict[str, str], dones: Iterable[dict]) -> bytes:
    """The file. `tasks` and `dones` are record fields with `id` and `changed_at`; `tanks`: names by id of those in use.

    Tasks that have ended or whose tank is not in use are left out; skipped dates are excluded (EXDATE).
    """
    skipped: dict[str, list[int]] = {}
    for done in dones:
        if done.get("skipped") and done.get("due_at"):
            skipped.setdefault(done["task"], []).append(ms_of(done["due_at"]))
    calendar = Calendar()
    calendar.add("prodid", "-//Limnary//Tasks//EN")
    calendar.add("version", "2.0")
    calendar["x-wr-calname"] = vText(room)
    shown = (task for task in tasks if not task.get("over") and (not task.get("tank") or task["tank"] in tanks))
    for task in sorted(shown, key=lambda task: task["id"])[:MOST_TASKS]:
        calendar.add_component(_event(task, tanks, skipped.get(task["id"], [])))
    calendar.add_missing_timezones()
    return calendar.to_ical()


def _event(task: dict, tanks: dict[str, str], skipped: list[int]) -> Event:
    event = Event()
    event.add("uid", f"{task['id']}@limnary")
    event.add("dtstamp", datetime.fromisoformat(task["changed_at"]).astimezone(UTC).replace(microsecond=0))
    event.add("summary", f"{tanks[task['tank']]}: {task['title']}" if task.get("tank") else task["title"])
    event.add("duration", LENGTH)
    event.add("transp", "TRANSPARENT")
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
