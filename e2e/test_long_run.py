"""The long run, as one story: where nitrate goes by the keeper's own tests, and a task made of what is enough."""

from datetime import UTC, datetime, timedelta

import pytest
from foretold import plain, write

pytestmark = pytest.mark.browser

DAYS = {42: 10, 21: 24, 0.1: 38}


def test_what_is_enough_becomes_a_task_without_signal(new_phone):
    thumb = new_phone()
    thumb.open("/")
    thumb.stored()
    now = datetime.now(UTC)
    past = {days: (now - timedelta(days=days)).isoformat(timespec="milliseconds")[:23] + "Z" for days in (*DAYS, 60)}
    write(thumb, [["tank", "tank-0001", {"name": "Reed pool", "water_l": 80, "started_at": past[60]}]])
    read = {"tank": "tank-0001", "parameter": "nitrate", "basis": "ion"}
    write(thumb, [[*("reading", f"read-{days}"), {**read, "value": v, "at": past[days]}] for days, v in DAYS.items()])
    thumb.page.context.set_offline(True)
    thumb.turn_to("/tank/tank-0001")
    thumb.tap("link", "The long run")
    thumb.title("The long run")
    # 28 mg/L in 42 days, to 10 mg N/L (44.3 mg/L): 6.3 mg/L are left, and a week brings 4.7 of 44.3.
    said = plain(thumb.page.locator(".sentence").first)
    assert said == "Without changes nitrate reaches its limit of 44 mg/L in about 9 days."
    thumb.sees("Enough: 9 L every 7 days.")
    thumb.tap("link", "Make it a task")
    thumb.title("New task")
    thumb.sees("Every 7 days at 08:00, from")
    thumb.tap("button", "Save task")
    thumb.sees("Change 9 L saved on this phone")
    thumb.sees("Every 7 days at 08:00")
