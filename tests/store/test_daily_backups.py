"""Daily backups: one a day, verified, kept 7/4/12, within a limit; what fails is told and the older ones stay."""

import errno
import json
import re
import sqlite3
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from fish_rooms import START_MS, FishRoom
from hypothesis import given, settings
from hypothesis import strategies as st
from limnary.commands.check import check
from limnary.config import BadSetting, Config
from limnary.ids import utc
from limnary.store import backup, daily
from limnary.store.retention import PERIODS, kept, over_limit
from limnary.store.store import Store

DAY_MS = 86_400_000
HOUR_MS = 3_600_000
ROOT = Path(__file__).parents[2]


@pytest.fixture
def backups(fish_room):
    return fish_room.app.extensions["limnary_backups"]


def days_of(backups):
    return sorted(path.stem[-10:] for path in backups.folder.glob("*.zip"))


def told(fish_room):
    answer = fish_room.owner.call("GET", "/rooms/{room}/upkeep")
    assert answer.status_code == 200, answer.text
    return answer.json["backups"]


def day_of(at):
    return datetime.fromtimestamp(at / 1000, UTC).date()


def next_day(fish_room, backups):
    fish_room.at += DAY_MS
    backups.run_if_due()


def test_one_a_day_and_no_more(fish_room, backups):
    assert told(fish_room) == {"automatic": True, "last_good_at": None, "kept": 0, "faults": []}
    for _ in range(3):
        backups.run_if_due()
        fish_room.at += HOUR_MS
    assert days_of(backups) == ["2026-05-28"]
    assert told(fish_room)["last_good_at"] == utc(START_MS), "the first of three tries"
    next_day(fish_room, backups)
    assert days_of(backups) == ["2026-05-28", "2026-05-29"]
    assert told(fish_room)["kept"] == 2
    assert told(fish_room)["last_good_at"].startswith("2026-05-29")
    assert {path.stat().st_mode & 0o077 for path in backups.folder.iterdir()} == {0}


DAYS = st.sets(st.integers(0, 900).map(lambda n: date(2025, 1, 1) + timedelta(n)), max_size=60)


@settings(deadline=None, derandomize=True, database=None)
@given(DAYS)
def test_dropping_day_by_day_keeps_what_dropping_at_once_keeps(days):
    here: set[date] = set()
    for day in sorted(days):
        here = kept({*here, day})
    assert here == kept(days)
    assert len(here) <= 7 + 4 + 12


def test_a_server_that_runs_for_years_keeps_seven_days_four_weeks_and_twelve_months():
    every = [date(2024, 1, 1) + timedelta(n) for n in range(900)]
    last, stay = every[-1], kept(every)
    assert {last - timedelta(n) for n in range(7)} <= stay
    sundays = [day for day in every if day.isoweekday() == 7 and day < last]
    assert set(sundays[-3:]) <= stay
    month_ends = [day for day in every if (day + timedelta(1)).day == 1]
    assert set(month_ends[-11:]) <= stay
    assert sorted(stay)[0] == month_ends[-11]


def ages(period: int) -> list[date]:
    """The days that one kind of period keeps, of two years."""
    every = [date(2026, 5, 28) + timedelta(n) for n in range(730)]
    most, of = PERIODS[period]
    newest = {of(day): day for day in every}
    return list(newest.values())[-most:]


def test_each_that_is_kept_restores_the_room_as_it_was_that_day(fish_room, backups, tmp_path):
    phone, first = fish_room.owner, day_of(fish_room.at)
    stay = sorted({day for period in range(3) for day in ages(period)})
    # The days that stay, and before each one that goes.
    made = sorted({*stay, *(day - timedelta(1) for day in stay)})
    tanks, held = [], {}
    for day in made:
        fish_room.at += (day - day_of(fish_room.at)).days * DAY_MS
        tanks.append(phone.tank(name=f"Made on {day}"))
        phone.results(tanks[-1])
        backups.run_if_due()
        held[day.isoformat()] = len(tanks)
    assert days_of(backups) == [day.isoformat() for day in stay]
    assert len(stay) >= 7 + 4 + 12 - 3 and stay[0] > first, "three periods may end on one day"
    for path in sorted(backups.folder.glob("*.zip")):
        store = Store(tmp_path / path.stem, lambda: fish_room.at)
        store.files.folder.mkdir()
        backup.restore(store.files, path, fish_room.at)
        with sqlite3.connect(store.files.room(fish_room.id)) as db:
            count = db.execute("SELECT count(*) FROM records").fetchone()[0]
        db.close()
        assert count == held[path.stem[-10:]], path.name


def break_it(path: Path) -> None:
    data = bytearray(path.read_bytes())
    data[len(data) // 2] ^= 0xFF
    path.write_bytes(bytes(data))


def test_one_that_is_broken_on_purpose_is_reported_the_next_day_and_the_others_are_kept(fish_room, backups, capsys):
    for _ in range(12):
        next_day(fish_room, backups)
    before = days_of(backups)
    assert told(fish_room)["faults"] == []
    broken = sorted(backups.folder.glob("*.zip"))[-3]
    break_it(broken)
    next_day(fish_room, backups)
    assert told(fish_room)["faults"] == ["backup-damaged"]
    # It counts for no period, so what it would have pushed out stays.
    assert {*before} - {*days_of(backups)} == set()
    assert f"{broken} is damaged: remove it" in checked(fish_room, capsys)
    next_day(fish_room, backups)
    assert told(fish_room)["faults"] == ["backup-damaged"], "until someone removes it"
    broken.unlink()
    next_day(fish_room, backups)
    assert told(fish_room)["faults"] == []


def checked(fish_room, capsys) -> str:
    capsys.readouterr()

    class Given:
        data, demo = fish_room.store.files.folder, False

    assert check(Given) == 1
    return capsys.readouterr().err


def test_backups_that_are_gone_are_missed(fish_room, backups):
    next_day(fish_room, backups)
    next_day(fish_room, backups)
    next(backups.folder.glob("*.zip")).unlink()
    next_day(fish_room, backups)
    assert told(fish_room)["faults"] == ["missing"]


def test_damaged_data_make_no_backup_and_push_none_out(fish_room, backups):
    for _ in range(9):
        next_day(fish_room, backups)
    before, good_at = days_of(backups), told(fish_room)["last_good_at"]
    fish_room.store.close()
    fish_room.store.files.room(fish_room.id).write_bytes(b"junk" * 3000)
    next_day(fish_room, backups)
    assert told(fish_room)["faults"] == ["data-damaged"]
    assert (days_of(backups), told(fish_room)["last_good_at"]) == (before, good_at)
    fish_room.at += 2 * DAY_MS
    assert told(fish_room)["faults"] == ["data-damaged", "late"]


FAILURES = {
    "disk-full": OSError(errno.ENOSPC, "No space left on device"),
    "folder": OSError(errno.EROFS, "Read-only file system"),
    "not-whole": backup.BackupBroken("It names no file"),
    "failed": RuntimeError("nobody foresaw"),
}


@pytest.mark.parametrize(("fault", "error"), FAILURES.items(), ids=FAILURES)
def test_what_failed_is_told_tried_again_in_an_hour_and_forgotten_once_mended(
    fish_room, backups, monkeypatch, fault, error
):
    def fail(*_):
        tries.append(fish_room.at)
        raise error

    tries = []
    monkeypatch.setattr(backup, "back_up", fail)
    for _ in range(61):
        backups.run_if_due()
        fish_room.at += 60_000
    assert len(tries) == 2
    assert told(fish_room)["faults"] == [fault]
    monkeypatch.undo()
    fish_room.at += HOUR_MS
    backups.run_if_due()
    assert told(fish_room)["faults"] == []
    assert told(fish_room)["kept"] == 1


def test_another_folder_is_used_and_never_made(tmp_path):
    disk = tmp_path / "disk"
    room = FishRoom(tmp_path / "data", backup_to=str(disk))
    backups = room.app.extensions["limnary_backups"]
    backups.run_if_due()
    assert told(room)["faults"] == ["folder"]
    assert not disk.exists(), "a disk that is not there is not replaced by a folder"
    disk.mkdir()
    (disk / "limnary-abcdef-2001-01-01.zip").write_bytes(b"of another server")
    room.at += HOUR_MS
    backups.run_if_due()
    assert told(room)["faults"] == []
    assert len(list(disk.iterdir())) == 2
    assert not (tmp_path / "data" / "backups").exists()
    room.close()


def test_nothing_is_missed_where_another_folder_was_chosen(fish_room, backups, tmp_path):
    backups.run_if_due()
    backups.folder = tmp_path
    next_day(fish_room, backups)
    assert told(fish_room)["faults"] == []


def test_none_are_made_when_they_are_off(tmp_path):
    room = FishRoom(tmp_path / "data", backup_to="off")
    assert room.app.extensions["limnary_backups"] is None
    assert told(room) == {"automatic": False, "last_good_at": None, "kept": 0, "faults": []}
    room.close()


def test_the_oldest_go_when_all_together_are_over_the_limit(fish_room, backups):
    backups.run_if_due()
    backups.limit_bytes = 3 * next(backups.folder.glob("*.zip")).stat().st_size + 1000
    for _ in range(5):
        next_day(fish_room, backups)
    assert days_of(backups) == ["2026-05-31", "2026-06-01", "2026-06-02"]
    assert told(fish_room)["faults"] == []
    backups.limit_bytes = 10
    next_day(fish_room, backups)
    assert days_of(backups) == ["2026-06-03"]
    assert told(fish_room)["faults"] == ["too-large"]


@pytest.mark.parametrize("text", ["0", "-1", "2 GB", "1e3", "1000001"])
def test_a_limit_that_is_none_is_refused(monkeypatch, text):
    monkeypatch.setenv("LIMNARY_BACKUP_MB", text)
    with pytest.raises(BadSetting, match="from 1 to 1000000"):
        Config()


def test_over_limit_never_takes_the_newest():
    assert over_limit([(date(2026, 5, 1), 500)], 100) == []
    assert over_limit([], 100) == []


def test_a_restarted_server_goes_on_and_a_second_process_waits(fish_room, backups):
    backups.run_if_due()
    again = daily.DailyBackups(fish_room.store.files, backups.folder, 10**9, lambda: fish_room.at)
    assert again.notes == backups.notes
    fish_room.at += DAY_MS
    with again._alone() as alone:
        assert alone
        backups.run_if_due()
        assert len(days_of(backups)) == 1, "the other holds the lock"
    again.run_if_due()
    backups.run_if_due()
    assert len(days_of(backups)) == 2
    assert again.notes == backups.notes


def test_what_a_power_cut_left_is_swept_away(fish_room, backups):
    backups.run_if_due()
    name = next(backups.folder.glob("*.zip")).name
    (backups.folder / f"{name}.part").write_bytes(b"half")
    (backups.folder / f"{name}.trial" / "rooms").mkdir(parents=True)
    next_day(fish_room, backups)
    assert [path.suffix for path in backups.folder.iterdir()] == [".zip", ".zip"]


def test_notes_that_cannot_be_read_are_no_obstacle(fish_room, backups):
    backups.run_if_due()
    for text in ("{", "[]", json.dumps({"newer": 1})):
        (fish_room.store.files.folder / daily.NOTES).write_text(text)
        assert daily.notes(fish_room.store.files.folder) == daily.Notes()


@pytest.mark.parametrize("language", ["en", "de", "fr"])
def test_the_phone_has_words_for_every_fault(language):
    texts = (ROOT / f"pwa/i18n/{language}_upkeep.js").read_text("utf-8")
    assert [fault for fault in daily.FAULTS if f'"upkeep.{fault}"' not in texts] == []
    said = re.search(r"SAID = new Set\(\[(.*?)\]", (ROOT / "pwa/ui/upkeep.js").read_text("utf-8"), re.DOTALL)[1]
    assert {*re.findall(r'"([\w-]+)"', said)} == {*daily.FAULTS} - {"failed"}
