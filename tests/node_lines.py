"""One Node process that answers a line of JSON with a line of JSON."""

import json
import subprocess
from pathlib import Path

SCRIPTS = Path(__file__).parent / "js"


class NodeLines:
    """`script`, a file of tests/js, kept running and asked a line at a time."""

    def __init__(self, script: str):
        self.process = subprocess.Popen(
            ["node", str(SCRIPTS / script)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, encoding="utf-8"
        )

    def ask(self, question: dict) -> dict:
        self.process.stdin.write(json.dumps(question) + "\n")
        self.process.stdin.flush()
        return json.loads(self.process.stdout.readline())

    def close(self) -> None:
        self.process.stdin.close()
        self.process.stdout.close()
        self.process.wait(timeout=10)
