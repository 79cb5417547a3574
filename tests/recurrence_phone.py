"""The phone's recurrence rules in one Node process, asked a line at a time."""

import json
import subprocess
from pathlib import Path

LINES = Path(__file__).parent / "js" / "recurrence_lines.js"


class RecurrencePhone:
    """`ask` answers instants in ms, or {"bad": True} for a rule that the phone does not read."""

    def __init__(self):
        self.process = subprocess.Popen(
            ["node", str(LINES)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, encoding="utf-8"
        )

    def ask(self, rule: str | None, starts_at: str, zone: str | None, from_ms: int, to_ms: int, most: int = 1000):
        task = {"rule": rule, "starts_at": starts_at, "zone": zone}
        self.process.stdin.write(json.dumps({"task": task, "from": from_ms, "to": to_ms, "most": most}) + "\n")
        self.process.stdin.flush()
        return json.loads(self.process.stdout.readline())

    def close(self):
        self.process.stdin.close()
        self.process.stdout.close()
        self.process.wait(timeout=10)
