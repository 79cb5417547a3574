"""How the browser stories read the page: a list is read after a wait on its count, for the page may be half drawn."""

import ast
from pathlib import Path

import pytest

STORIES = sorted(Path(__file__).parents[1].glob("e2e/*.py"))
# What Playwright reads at once, without waiting for anything; each is called without arguments.
LISTS = {"all", "all_inner_texts", "all_text_contents"}
# What a wait of its own can say in an assert's place: to_have_count, to_be_visible, to_be_enabled ...
AT_ONCE = {"count", "is_checked", "is_disabled", "is_editable", "is_enabled", "is_hidden", "is_visible"}
WAIT = ".to_have_count("


def unwaited(code: str) -> list[str]:
    """Lines that read a list with no wait on its count before them, and asserts of what is read at once."""
    lines, tree = code.splitlines(), ast.parse(code)
    asserted = {id(part) for one in ast.walk(tree) if isinstance(one, ast.Assert) for part in ast.walk(one)}
    found = set()
    for call in ast.walk(tree):
        if not isinstance(call, ast.Call) or not isinstance(call.func, ast.Attribute) or call.args or call.keywords:
            continue
        name, line = call.func.attr, call.func.end_lineno
        waited = name != "all" and WAIT in lines[line - 2]
        if (name in LISTS and not waited) or (name in AT_ONCE and id(call) in asserted):
            found.add(f"{line}: {lines[line - 1].strip()}")
    return sorted(found)


@pytest.mark.parametrize("story", STORIES, ids=lambda path: path.name)
def test_no_story_reads_a_list_before_it_is_drawn(story):
    assert unwaited(story.read_text("utf-8")) == []


@pytest.mark.parametrize(
    "code",
    [
        "assert [one.inner_text() for one in rows.all()] == names",
        "expect(rows).to_have_count(2)\nfor row in rows.all():\n    pass",
        "assert rows.all_inner_texts() == names",
        "texts = rows.all_text_contents()",
        "assert rows.count() == 2",
        "assert page.get_by_text('Saved').is_visible()",
    ],
)
def test_what_is_read_at_once_is_found(code):
    assert len(unwaited(code)) == 1


@pytest.mark.parametrize(
    "code",
    [
        "expect(rows).to_have_count(2)\nassert rows.all_inner_texts() == names",
        "if rows.count():\n    pass",
        "assert names.count('Reed pool') == 1",
        "assert all(names)",
    ],
)
def test_what_waits_is_let_be(code):
    assert unwaited(code) == []
