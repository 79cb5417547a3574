"""The phone's recurrence rules in one Node process."""

from node_lines import NodeLines


class RecurrencePhone(NodeLines):
    """`expand` answers instants in ms, or {"bad": True} for a rule that the phone does not support."""

    def __init__(self):
        super().__init__("recurrence_lines.js")

    def expand(self, rule: str | None, starts_at: str, zone: str | None, from_ms: int, to_ms: int, most: int = 1000):
        task = {"rule": rule, "starts_at": starts_at, "zone": zone}
        return self.ask({"task": task, "from": from_ms, "to": to_ms, "most": most})
