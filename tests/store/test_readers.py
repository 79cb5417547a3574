"""Readers are kept between requests, and never read a file that is no longer there."""

import sqlite3
from pathlib import Path

import pytest
from limnary.store.files import connect
from limnary.store.readers import KEPT, Readers


@pytest.fixture
def readers():
    held = Readers(connect)
    yield held
    held.close()


def made(path: Path, word: str) -> Path:
    with sqlite3.connect(path) as db:
        db.execute("CREATE TABLE said (word)")
        db.execute("INSERT INTO said VALUES (?)", [word])
    db.close()
    return path


def word_in(reader) -> str:
    return reader.connection.execute("SELECT word FROM said").fetchone()[0]


def test_a_reader_serves_again(readers, tmp_path):
    path = made(tmp_path / "a.sqlite", "one")
    first = readers.take(path)
    second = readers.take(path)
    assert first.connection is not second.connection, "a reader has one user at a time"
    readers.give_back(first)
    assert readers.take(path).connection is first.connection
    assert word_in(first) == "one"


def test_a_file_put_in_place_of_another_is_the_one_read(readers, tmp_path):
    path = made(tmp_path / "a.sqlite", "old")
    readers.give_back(readers.take(path))
    made(tmp_path / "b.sqlite", "new").replace(path)
    assert word_in(readers.take(path)) == "new"


def test_a_file_that_is_gone_is_not_read(readers, tmp_path):
    path = made(tmp_path / "a.sqlite", "old")
    readers.give_back(readers.take(path))
    path.unlink()
    with pytest.raises(sqlite3.OperationalError):
        readers.take(path)


def test_only_so_many_stay_open(readers, tmp_path):
    path = made(tmp_path / "a.sqlite", "one")
    taken = [readers.take(path) for _ in range(KEPT + 1)]
    for reader in taken:
        readers.give_back(reader)
    with pytest.raises(sqlite3.ProgrammingError):
        word_in(taken[0])
    assert word_in(taken[1]) == "one"
