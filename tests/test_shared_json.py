"""No shared JSON file has a key twice, where the second would silently win; every source that it has is named."""

import json
from collections import Counter
from pathlib import Path

import limnary
import pytest
from limnary.schema_files import shared_schema_dir

FILES = sorted(shared_schema_dir().rglob("*.json"))


def once(pairs):
    twice = [key for key, number in Counter(key for key, _ in pairs).items() if number > 1]
    assert not twice, f"said twice: {', '.join(twice)}"
    return dict(pairs)


@pytest.mark.parametrize("path", FILES, ids=[f"{path.parent.name}/{path.name}" for path in FILES])
def test_no_key_twice(path):
    json.loads(path.read_text("utf-8"), object_pairs_hook=once)


def test_a_key_said_twice_is_found():
    with pytest.raises(AssertionError, match="said twice: a"):
        json.loads('{"a": 1, "a": 2}', object_pairs_hook=once)


def test_every_source_is_named_by_a_figure_or_a_calculation():
    calculations = (Path(limnary.__file__).parent / "calc").glob("*.py")
    texts = [path.read_text("utf-8") for path in [*FILES, *calculations] if path.name != "sources.json"]
    sources = json.loads((shared_schema_dir() / "tables" / "sources.json").read_text("utf-8"))["sources"]
    assert len(sources) > 50
    assert [key for key in sources if not any(key in text for text in texts)] == []
