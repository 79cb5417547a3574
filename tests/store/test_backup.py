"""Backup while in use, and restore: a new epoch, revoked access stays revoked, old data put aside, damage refused."""

import contextlib
import random
import shutil
import sqlite3
import tracemalloc
import zipfile

import pytest
from fish_rooms import FishRoom, Phone
from limnary.protocol.stamps import AHEAD_MS
from limnary.store import backup, change_log
from limnary.store.backup import BackupBroken


def back_up(room, tmp_path):
    target = tmp_path / "backup.zip"
    assert backup.back_up(room.store.files, target, room.at) == len(room.store.files.rooms())
    return target


def restart(room):
    """The same folder under a new server process."""
    room.store.close()
    room.store.prepare()
    room.epoch = room.store.epoch(room.id)


def test_restore_brings_back_what_was_and_tells_the_phones(fish_room, tmp_path):
    phone = fish_room.owner
    tank, later = phone.tank(), phone.tank(name="After the backup")
    phone.results(tank)
    saved, old_epoch = back_up(fish_room, tmp_path), fish_room.epoch
    phone.results(later)
    fish_room.store.close()
    rooms, before = backup.restore(fish_room.store.files, saved, fish_room.at)
    restart(fish_room)
    assert rooms == 1
    assert set(phone.rows()) == {tank["id"]}
    told = phone.pull(epoch=old_epoch)
    assert (told.status_code, told.json["epoch"]) == (409, fish_room.epoch)
    assert fish_room.epoch != old_epoch
    # The phone sends again what the backup lacks; ops that the backup holds count once.
    assert [r["status"] for r in phone.results(tank, later)] == ["ok", "ok"]
    assert set(phone.rows()) == {tank["id"], later["id"]}
    with sqlite3.connect(next(before.glob("rooms/*/*.sqlite"))) as db:
        assert db.execute("SELECT count(*) FROM records").fetchone()[0] == 2, "the former data are still there"
    db.close()


def test_two_restores_of_one_backup_give_two_epochs(fish_room, tmp_path):
    saved, seen = back_up(fish_room, tmp_path), {fish_room.epoch}
    for _ in range(2):
        fish_room.at += 1000
        fish_room.store.close()
        backup.restore(fish_room.store.files, saved, fish_room.at)
        restart(fish_room)
        seen.add(fish_room.epoch)
    assert len(seen) == 3


def test_doors_shut_since_the_backup_stay_shut(fish_room, tmp_path):
    kim, lou = fish_room.phone("keeper", "Kim"), fish_room.phone("keeper", "Lou")
    used, withdrawn = fish_room.secret("keeper"), fish_room.owner.call("POST", "/rooms/{room}/invites", {}).json
    saved = back_up(fish_room, tmp_path)
    fish_room.owner.call("DELETE", f"/devices/{kim.device}")
    fish_room.owner.call("DELETE", f"/rooms/{{room}}/people/{lou.keeper}")
    fish_room.owner.call("DELETE", f"/rooms/{{room}}/invites/{withdrawn['id']}")
    Phone(fish_room).join(used, "New")
    fish_room.store.close()
    backup.restore(fish_room.store.files, saved, fish_room.at)
    restart(fish_room)
    assert kim.pull().status_code == 401
    assert lou.pull().status_code == 410
    for secret in (used, withdrawn["secret"]):
        body = {"secret": secret, "keeper_name": "Eve", "device_name": "x"}
        assert Phone(fish_room).call("POST", "/join", body).status_code == 410
    assert fish_room.owner.pull().status_code == 200


def test_restore_on_an_empty_folder(fish_room, tmp_path):
    tank = fish_room.owner.tank()
    fish_room.owner.results(tank)
    saved = back_up(fish_room, tmp_path)
    other = FishRoom(tmp_path / "fresh")
    other.close()
    rooms, before = backup.restore(other.store.files, saved, other.at)
    other.store.prepare()
    assert rooms == 1 and before is not None
    assert other.store.identify(fish_room.owner.key)["keeper"] == fish_room.owner.keeper
    other.close()


@pytest.mark.parametrize("moved", [0, 1, 2, 3])
def test_a_restore_cut_off_at_any_step_completes_at_the_next_start(fish_room, tmp_path, monkeypatch, moved):
    tank = fish_room.owner.tank()
    fish_room.owner.results(tank)
    saved = back_up(fish_room, tmp_path)
    fish_room.owner.results(fish_room.owner.tank())
    fish_room.store.close()
    steps, rename = [], backup.Path.rename

    def cut(path, target):
        if len(steps) == moved:
            raise KeyboardInterrupt
        steps.append(path)
        return rename(path, target)

    monkeypatch.setattr(backup.Path, "rename", cut)
    with pytest.raises(KeyboardInterrupt):
        backup.restore(fish_room.store.files, saved, fish_room.at)
    monkeypatch.undo()
    restart(fish_room)
    assert set(fish_room.owner.rows()) == {tank["id"]}
    assert not (fish_room.store.files.folder / backup.WORKSHOP).exists()


def damage(saved, name, change):
    """The same ZIP with one member changed."""
    with zipfile.ZipFile(saved) as pack:
        members = {one: pack.read(one) for one in pack.namelist()}
    members[name] = change(members[name])
    with zipfile.ZipFile(saved, "w") as pack:
        for one, data in members.items():
            if data is not None:
                pack.writestr(one, data)


@pytest.mark.parametrize(
    ("name", "change"),
    [
        ("people.sqlite", lambda data: data[:-100] + b"x" * 100),
        ("people.sqlite", lambda data: data.replace(b"Ada", b"Eve")),
        ("people.sqlite", lambda _: None),
        ("backup.json", lambda data: data.replace(b"limnary-backup", b"another")),
        ("backup.json", lambda data: data.replace(b"people.sqlite", b"../../evil.sqlite")),
        ("backup.json", lambda _: b"{"),
        ("backup.json", lambda _: b'{"format": "limnary-backup", "version": 1, "files": {}}'),
    ],
)
def test_a_damaged_backup_changes_nothing(fish_room, tmp_path, name, change):
    saved = back_up(fish_room, tmp_path)
    tank = fish_room.owner.tank()
    fish_room.owner.results(tank)
    damage(saved, name, change)
    fish_room.store.close()
    with pytest.raises(BackupBroken):
        backup.restore(fish_room.store.files, saved, fish_room.at)
    restart(fish_room)
    assert set(fish_room.owner.rows()) == {tank["id"]}
    assert fish_room.epoch == fish_room.room["epoch"]


def test_what_is_no_backup_at_all(fish_room, tmp_path):
    for name, data in (("text.zip", b"hello"), ("missing.zip", None)):
        path = tmp_path / name
        if data:
            path.write_bytes(data)
        with pytest.raises(BackupBroken):
            backup.restore(fish_room.store.files, path, fish_room.at)


def unpacked(path, folder):
    """What comes out of a backup: when it was made, how many rooms it holds, and each file's bytes."""
    shutil.rmtree(folder, ignore_errors=True)
    (folder / "rooms").mkdir(parents=True)
    head = backup._unpack(path, folder)
    return head, {one.relative_to(folder): one.read_bytes() for one in folder.rglob("*") if one.is_file()}


def test_a_spoiled_byte_is_refused_or_changes_nothing_that_comes_out(fish_room, tmp_path):
    """Every byte of the ZIP's directory, where readers pass over some, and bytes from all the rest."""
    fish_room.owner.results(fish_room.owner.tank())
    saved, spoiled = back_up(fish_room, tmp_path), tmp_path / "spoiled.zip"
    whole, trial = saved.read_bytes(), tmp_path / "trial"
    good = unpacked(saved, trial)
    with zipfile.ZipFile(saved) as pack:
        directory = pack.start_dir
    taken = 0
    for at in [*range(0, directory, directory // 40), *range(directory, len(whole))]:
        data = bytearray(whole)
        data[at] ^= 0xFF
        spoiled.write_bytes(bytes(data))
        with contextlib.suppress(BackupBroken):
            assert unpacked(spoiled, trial) == good, f"byte {at}"
            taken += 1
    assert taken > 0, "dates of files, and what else readers pass over"


def test_a_backup_with_a_head_of_another_form_is_refused(fish_room, tmp_path):
    whole = back_up(fish_room, tmp_path).read_bytes()
    spoiled = tmp_path / "spoiled.zip"
    for head in (b"[]", b'{"format": "limnary-backup", "version": 1, "files": []}', b"7"):
        spoiled.write_bytes(whole)
        damage(spoiled, "backup.json", lambda _, head=head: head)
        with pytest.raises(BackupBroken):
            backup.verify(spoiled, tmp_path / "trial")


def test_a_backup_takes_little_memory_however_large_a_room_is(fish_room, tmp_path):
    with fish_room.store.files.writing(fish_room.store.files.room(fish_room.id)) as db:
        photo = (random.Random(7).randbytes(60_000_000), "2026-05-28T07:30:00.000Z")
        db.execute("INSERT INTO photos (sha256, media_type, bytes, made_at) VALUES ('x', 'image/png', ?, ?)", photo)
    del photo
    tracemalloc.start()
    try:
        back_up(fish_room, tmp_path)
        peak = tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()
    assert peak < 20_000_000


def damage_in_the_middle(path):
    """Overwrite pages within the file, as a failing disk does: it still opens."""
    data = bytearray(path.read_bytes())
    middle = len(data) // 2 // 4096 * 4096
    data[middle : middle + 8192] = b"\xa5" * 8192
    path.write_bytes(bytes(data))


def test_a_backup_of_a_damaged_room_is_refused_and_the_earlier_one_stays(fish_room, tmp_path):
    for _ in range(40):
        fish_room.owner.results(fish_room.owner.tank(note="n" * 1500))
    saved = back_up(fish_room, tmp_path)
    whole = saved.read_bytes()
    fish_room.store.close()
    damage_in_the_middle(fish_room.store.files.room(fish_room.id))
    with pytest.raises(backup.NotBackedUp, match=fish_room.id):
        backup.back_up(fish_room.store.files, saved, fish_room.at)
    assert saved.read_bytes() == whole
    assert [path.name for path in tmp_path.iterdir() if path.is_file()] == ["backup.zip"]


def test_what_is_called_a_backup_was_restored_once(fish_room, tmp_path, monkeypatch):
    saved = back_up(fish_room, tmp_path)
    whole = saved.read_bytes()
    monkeypatch.setattr(backup, "_add", lambda pack, path, copy, name: pack.writestr(name, b"no database") or "0" * 64)
    with pytest.raises(BackupBroken):
        backup.back_up(fish_room.store.files, saved, fish_room.at)
    assert saved.read_bytes() == whole
    assert not (tmp_path / "backup.zip.trial").exists()


def test_a_restore_tells_the_room_which_clamps_it_has_forgotten(fish_room, tmp_path):
    phone = fish_room.owner
    phone.results(phone.tank())
    saved = back_up(fish_room, tmp_path)
    with fish_room.store.files.reading(fish_room.store.files.room(fish_room.id)) as db:
        first = change_log.top_of(db)
    fish_room.at += 3_600_000
    phone.results({**phone.tank(), "stamp": f"{fish_room.at + 86_400_000:013d}-00000-{phone.device}"})
    fish_room.at -= 1_800_000  # the server's clock is set back
    fish_room.store.close()
    for times in (1, 2):
        backup.restore(fish_room.store.files, saved, fish_room.at)
        restart(fish_room)
        with fish_room.store.files.reading(fish_room.store.files.room(fish_room.id)) as db:
            (span,) = change_log.Log(db, None, fish_room.at).forgotten
        assert span[0] == first
        last = fish_room.at + (1_800_000 if times == 1 else 0) + AHEAD_MS + 1
        assert span[1] == last
        fish_room.store.close()
        fish_room.at += 1
