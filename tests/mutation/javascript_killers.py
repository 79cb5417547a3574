"""Talks to javascript_killers.js: lists the mutants of a file, and tries one after the other within a time limit."""

import json
import os
import select
import subprocess
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SCRIPT = Path(__file__).with_suffix(".js")
# Each check leaves a module graph behind; a fresh process from time to time keeps memory small.
FRESH_AFTER = 400
SLOW_SECONDS = 3.0


class JavaScriptKillers:
    """One Node process, started anew when a mutant hangs it."""

    def __init__(self):
        self.process, self.asked, self.last, self.cost, self.known = None, 0, 0.0, {}, {}

    def ask(self, question: dict, seconds: float = 120.0):
        """The answer to one question; None if it used up `seconds` of processor time or the process died.

        Processor time, so that a busy machine kills no mutant; the clock is only for one that waits for ever.
        """
        if self.process is None or self.asked >= FRESH_AFTER:
            self.close()
            command = ["node", "--experimental-vm-modules", "--no-warnings", str(SCRIPT)]
            pipe = subprocess.PIPE
            self.process = subprocess.Popen(command, stdin=pipe, stdout=pipe, stderr=subprocess.DEVNULL, cwd=ROOT)
        self.asked += 1
        self.process.stdin.write(json.dumps(question).encode() + b"\n")
        self.process.stdin.flush()
        told, until, spent = b"", time.monotonic() + 60 * seconds, self.spent()
        while not told.endswith(b"\n"):
            if not select.select([self.process.stdout], [], [], 0.5)[0]:
                if time.monotonic() > until or self.spent() - spent > seconds:
                    self.close()
                    return None
                continue
            part = self.process.stdout.read1(1 << 20)
            if not part:
                self.close()
                return None
            told += part
        self.last = self.spent() - spent
        return json.loads(told)

    def spent(self) -> float:
        """Processor seconds of the process so far."""
        fields = Path(f"/proc/{self.process.pid}/stat").read_text("utf-8").rsplit(")", 1)[1].split()
        return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")

    def mutants(self, file: str) -> list[dict]:
        """Every mutant of a file: line, operator, before, after, source."""
        return self.ask({"list": file})

    def stages(self, file: str, fast: bool = False) -> list[str]:
        """The checks that reach a file, the quick ones first; stops when one fails on the code as it is.

        A slow one is tried only where it imports the file itself.
        """
        if file not in self.known:
            self.known[file] = self.ask({"stages": file})
        names = []
        for name, direct in ((each["name"], each["direct"]) for each in self.known[file]):
            test = name.startswith("tests/")
            if test and (fast or (not direct and self.cost.get(name, 0.0) > SLOW_SECONDS)):
                continue
            names.append(name)
            if name not in self.cost:
                told = self.ask({"check": name}, 300.0)
                if told is None or told["by"]:
                    raise SystemExit(f"the code as it is already fails: {name}: {told}")
                self.cost[name] = self.last
        return sorted(names, key=lambda name: (name.startswith("tests/"), self.cost[name]))

    def killed_by(self, file: str, source: str, fast: bool = False) -> str | None:
        """What notices this source in place of the file; None for a survivor."""
        for name in self.stages(file, fast):
            told = self.ask({"check": name, "file": file, "source": source}, 5.0 + 10 * self.cost[name])
            if told is None:
                return "time limit"
            if told["by"]:
                return told["by"]
        return None

    def close(self) -> None:
        """Ends the process."""
        if self.process:
            self.process.kill()
            self.process.wait()
        self.process, self.asked = None, 0
