"""Who was exposed to whom, against networkx: every walk of at most two steps on which time runs forward."""

import json
import subprocess
from datetime import UTC, datetime, timedelta
from pathlib import Path

import networkx as nx
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

SCRIPT = Path(__file__).parents[1] / "js/trace_lines.js"
TANKS = [f"tank-{name}" for name in "abcde"]
NOW = datetime(2026, 6, 1, 12, tzinfo=UTC)
DAYS = 14


@pytest.fixture(scope="module")
def traced():
    """The phone's own code, asked one line at a time."""
    process = subprocess.Popen(
        ["node", str(SCRIPT)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, encoding="utf-8"
    )

    def ask(records: dict, tank: str) -> dict:
        question = {"records": records, "tank": tank, "now": NOW.timestamp() * 1000, "days": DAYS}
        process.stdin.write(json.dumps(question) + "\n")
        process.stdin.flush()
        return json.loads(process.stdout.readline())

    yield ask
    process.stdin.close()
    process.stdout.close()
    process.wait(timeout=10)


def at(day: int) -> str:
    return (NOW - timedelta(days=day)).strftime("%Y-%m-%dT%H:%M:%S.000Z")


@st.composite
def shared_things(draw):
    """Some days of a fish room: what five tanks shared, some of it too long ago to count."""
    records = {"water_changes": [], "plantings": [], "stock_changes": [], "shared_tools": []}
    for number in range(draw(st.integers(1, 9))):
        here, there = draw(st.permutations(TANKS))[:2]
        one = {"id": f"record-{number}", "at": at(draw(st.integers(0, DAYS + 4))), "tank": here}
        kind = draw(st.sampled_from(sorted(records)))
        if kind == "water_changes":
            more = draw(st.sampled_from([{"from_tank": there}, {"from_tank": here}, {}]))
        elif kind == "shared_tools":
            order = draw(st.sampled_from([{"order": "here"}, {"order": "there"}, {"order": "both"}, {}]))
            more = {"other_tank": there, "tool": "net", **order}
        else:
            change = draw(st.sampled_from(["move_in", "move_out", "trim"]))
            more = {"change": change, "species": "moss", "other_tank": there}
        records[kind].append({**one, **more})
    return records


def arrows(records: dict) -> nx.MultiDiGraph:
    """The same room as a graph, built from the records by independent code."""
    graph = nx.MultiDiGraph()
    graph.add_nodes_from(TANKS)
    start = at(DAYS)
    for change in records["water_changes"]:
        if "from_tank" in change and change["from_tank"] != change["tank"]:
            graph.add_edge(change["from_tank"], change["tank"], at=change["at"])
    for move in records["plantings"] + records["stock_changes"]:
        ends = (move["other_tank"], move["tank"])
        if move["change"] != "trim":
            graph.add_edge(*(ends if move["change"] == "move_in" else ends[::-1]), at=move["at"])
    for tool in records["shared_tools"]:
        if tool.get("order") != "there":
            graph.add_edge(tool["tank"], tool["other_tank"], at=tool["at"])
        if tool.get("order") != "here":
            graph.add_edge(tool["other_tank"], tool["tank"], at=tool["at"])
    graph.remove_edges_from([edge[:3] for edge in graph.edges(keys=True, data="at") if edge[3] < start])
    return graph


def walked(graph: nx.MultiDiGraph, start: str, end: str) -> int | None:
    """Steps of the shortest walk from start to end on which time never runs backwards; at most two steps."""
    lengths = []
    for path in nx.all_simple_edge_paths(graph, start, end, cutoff=2):
        times = [graph.edges[edge]["at"] for edge in path]
        if times == sorted(times):
            lengths.append(len(path))
    return min(lengths, default=None)


@settings(max_examples=300, deadline=None, derandomize=True, database=None, suppress_health_check=list(HealthCheck))
@given(records=shared_things(), tank=st.sampled_from(TANKS))
def test_exposure_is_every_walk_of_two_steps_forward_in_time(traced, records, tank):
    graph, found = arrows(records), traced(records, tank)
    others = [other for other in TANKS if other != tank]
    to = {other: walked(graph, tank, other) for other in others}
    came = {other: walked(graph, other, tank) for other in others}
    assert {one["tank"]: one["steps"] for one in found["to"]} == {k: v for k, v in to.items() if v}
    assert {one["tank"]: one["steps"] for one in found["from"]} == {k: v for k, v in came.items() if v}


def test_time_and_direction_decide(traced):
    moss = {"change": "move_out", "species": "moss"}
    records = {
        "water_changes": [{"id": "w", "at": at(9), "tank": "tank-c", "from_tank": "tank-b"}],
        "plantings": [
            {"id": "p1", "at": at(5), "tank": "tank-a", "other_tank": "tank-b", **moss},
            {"id": "p2", "at": at(3), "tank": "tank-b", "other_tank": "tank-d", **moss},
        ],
        "stock_changes": [],
        "shared_tools": [],
    }
    found = traced(records, "tank-a")
    # Tank c had water of b before a's moss came into b: not exposed. Tank d got b's moss after it.
    assert [(one["tank"], one["steps"]) for one in found["to"]] == [("tank-b", 1), ("tank-d", 2)]
    assert found["from"] == []
    assert [(one["tank"], one["steps"]) for one in traced(records, "tank-d")["from"]] == [("tank-b", 1), ("tank-a", 2)]
