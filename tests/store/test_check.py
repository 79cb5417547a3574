"""`limnary check`: one line for each thing it looks at, and an exit code that a script can use."""

import shutil
from collections import namedtuple

import pytest
from limnary.cli import main
from limnary.commands import check
from limnary.config import wall_clock


@pytest.fixture
def well(fish_room, tmp_path):
    fish_room.at = wall_clock()
    fish_room.owner.results(fish_room.owner.tank())
    fish_room.store.close()
    folder = fish_room.store.files.folder
    assert main(["backup", str(tmp_path / "backup.zip"), "--data", str(folder)]) == 0
    return fish_room


def looked(room, capsys):
    capsys.readouterr()
    code = main(["check", "--data", str(room.store.files.folder)])
    said = capsys.readouterr()
    return code, said.out, said.err


def test_all_is_well(well, capsys):
    code, out, err = looked(well, capsys)
    assert (code, err) == (0, "")
    assert out.count("well: ") == 4
    assert "1 room(s), is 0 day(s) old and can be restored" in out


def test_what_an_import_that_was_cut_off_leaves_is_named_and_does_no_harm(well, capsys):
    left = well.store.files.room(well.store._new_file())
    code, out, err = looked(well, capsys)
    assert (code, err) == (0, "")
    assert f"{left} belongs to no room: an import was cut off; it may be removed" in out


def spoil(path):
    path.write_bytes(b"junk" * 3000)


def spoil_room(room, _):
    spoil(room.store.files.room(room.id))


def lose_room(room, _):
    room.store.files.room(room.id).unlink()


def spoil_people(room, _):
    spoil(room.store.files.people)


def lose_people(room, _):
    room.store.files.people.unlink()


def spoil_backup(_, tmp_path):
    spoil(tmp_path / "backup.zip")


def lose_backup(_, tmp_path):
    (tmp_path / "backup.zip").unlink()


def make_none(room, _):
    (room.store.files.folder / "last-backup.json").unlink()


WRONG = {
    spoil_room: "is damaged: put a whole one there",
    lose_room: "is missing: put it back",
    spoil_people: "people.sqlite is damaged",
    lose_people: "people.sqlite is missing",
    spoil_backup: "cannot be restored",
    lose_backup: "is not there",
    make_none: "no backup was made yet",
}


@pytest.mark.parametrize(("harm", "words"), WRONG.items(), ids=[harm.__name__ for harm in WRONG])
def test_what_is_wrong_is_said_and_the_code_tells(well, tmp_path, capsys, harm, words):
    harm(well, tmp_path)
    code, _, err = looked(well, capsys)
    assert code == 1
    assert words in err


def test_a_full_disk_an_old_backup_and_a_clock_set_back(well, capsys, monkeypatch):
    usage = namedtuple("usage", "free")
    monkeypatch.setattr(shutil, "disk_usage", lambda _: usage(100_000_000))
    assert "0.1 GB are free" in looked(well, capsys)[2]
    monkeypatch.undo()
    month = 30 * 86_400_000
    for days, words in ((month, "is 30 day(s) old"), (-month, "minutes behind")):
        monkeypatch.setattr(check, "Config", later(days))
        code, _, err = looked(well, capsys)
        assert code == 1
        assert words in err


def later(ms):
    from limnary.config import Config

    return lambda **given: Config(**given, clock=lambda: wall_clock() + ms)


def test_a_certificate_that_runs_out(well, capsys, monkeypatch):
    from limnary import lan

    monkeypatch.setattr(lan, "CERTIFICATE_DAYS", 3)
    lan.certificates(well.store.files.folder / "lan", "192.168.0.7")
    code, _, err = looked(well, capsys)
    assert code == 1
    assert "the certificate for the home network lasts 2 more day(s)" in err
    assert "each phone must trust that" not in err
    monkeypatch.setattr(lan, "AUTHORITY_DAYS", 40)
    (well.store.files.folder / "lan" / lan.AUTHORITY).unlink()
    lan.certificates(well.store.files.folder / "lan", "192.168.0.7")
    assert "each phone must trust that (limnary trust)" in looked(well, capsys)[2]
