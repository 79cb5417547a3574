"""The real server for the simulator: one JSON command a line in, one answer a line out.

The WSGI app runs as it is. From outside come only the clock, the random numbers (seeded, so that a seed
can be run again), the moment of a crash (at a chosen commit, before or after it), backup and restore.
"""

import base64
import json
import random
import shutil
import sqlite3
import sys
import tempfile
from contextlib import closing
from io import BytesIO
from pathlib import Path
from wsgiref.util import setup_testing_defaults

from limnary import ids
from limnary.app import create_app
from limnary.config import Config
from limnary.store import Store, backup, change_log, files, folding, invites, people


class Died(BaseException):
    """The process ends here. Not an Exception: nothing in the app may catch it."""


class SeededSecrets:
    """Stands in for `secrets` in limnary.ids; the real module stays whole."""

    def __init__(self):
        self.chance = random.Random(0)

    def randbits(self, bits: int) -> int:
        return self.chance.getrandbits(bits)

    def token_urlsafe(self, size: int) -> str:
        return base64.urlsafe_b64encode(self.chance.randbytes(size)).rstrip(b"=").decode()

    def token_hex(self, size: int) -> str:
        return self.chance.randbytes(size).hex()


class Server:
    """One server, started anew for each seed from a template of freshly migrated files."""

    def __init__(self, folder: Path):
        self.folder, self.now_ms = folder, 0
        self.secrets = ids.secrets = SeededSecrets()
        self.crash, self.commits = None, 0
        self.real_commit, files.commit = files.commit, self.commit
        for module in (sys.modules["limnary.store.store"], change_log):
            if getattr(module, "commit", None) is self.real_commit:
                module.commit = self.commit
        self.app = create_app(Config(data_dir=folder / "template", clock=self.clock))
        store = self.app.extensions["limnary_store"]
        self.room = store.new_room("Cellar")["id"]
        store.close()

    def clock(self) -> int:
        return self.now_ms

    def commit(self, connection: sqlite3.Connection) -> None:
        """The app's only way to make anything durable, with the crash that was ordered."""
        self.commits += 1
        due = self.crash and self.crash["at"] == self.commits
        if due and self.crash["when"] == "before":
            raise Died
        self.real_commit(connection)
        if due:
            raise Died

    def start(self) -> None:
        """Start, or start again after a crash: only what is in the files is left."""
        self.app.extensions["limnary_store"].close()
        store = Store(self.folder / "data", self.clock)
        self.app.extensions["limnary_store"] = store

    def do_new(self, seed: int, now: int) -> dict:
        self.now_ms = now
        self.secrets.chance.seed(seed)
        self.app.extensions["limnary_store"].close()
        shutil.rmtree(self.folder / "data", ignore_errors=True)
        shutil.copytree(self.folder / "template", self.folder / "data")
        self.start()
        store = self.app.extensions["limnary_store"]
        with store.files.writing(store.files.people) as db:
            secret = invites.add_invite(db, self.room, "owner", 48, people.SERVER, now)["secret"]
        with store.files.writing(store.files.room(self.room)) as db:
            db.execute("UPDATE meta SET value = ? WHERE key = 'epoch'", [ids.new_epoch()])
        return {"room": self.room, "secret": secret}

    def do_request(self, request: dict, now: int, crash: dict | None = None) -> dict:
        """One request; {"died": true} if the server crashed over it."""
        self.now_ms, self.crash, self.commits = now, crash, 0
        try:
            return self._answer(request)
        except Died:
            self.start()
            return {"died": True}
        finally:
            self.crash = None

    def _answer(self, request: dict) -> dict:
        """What the app answers; called as a WSGI server does, for a test client costs as much as the app itself."""
        path, _, query = request["path"].partition("?")
        environ = {"REQUEST_METHOD": request["method"], "PATH_INFO": path, "QUERY_STRING": query}
        if request.get("key"):
            environ["HTTP_AUTHORIZATION"] = f"Bearer {request['key']}"
        if request.get("body") is not None:
            sent = json.dumps(request["body"]).encode()
            environ |= {
                "CONTENT_TYPE": "application/json",
                "CONTENT_LENGTH": str(len(sent)),
                "wsgi.input": BytesIO(sent),
            }
        setup_testing_defaults(environ)
        status = []
        chunks = self.app(environ, lambda said, headers, trouble=None: status.append(int(said[:3])))
        with closing(chunks) as answer:
            got = b"".join(answer)
        return {"status": status[-1], "body": json.loads(got) if got else None}

    def do_backup(self, now: int) -> dict:
        self.now_ms = now
        backup.back_up(self.app.extensions["limnary_store"].files, self.folder / "backup.zip", now)
        return {}

    def do_restore(self, now: int) -> dict:
        self.now_ms = now
        store = self.app.extensions["limnary_store"]
        store.close()
        backup.restore(store.files, self.folder / "backup.zip", now)
        self.start()
        return {}

    def do_dump(self) -> dict:
        """What lies in the room's file, read past the API."""
        path = self.app.extensions["limnary_store"].files.room(self.room)
        db = sqlite3.connect(path)
        db.row_factory = sqlite3.Row
        try:
            records = [folding.as_row(row) for row in db.execute("SELECT * FROM records ORDER BY seq")]
            ops = [
                dict(row)
                for row in db.execute("SELECT op, kind, id, type, fields, stamp, keeper FROM ops ORDER BY rowid")
            ]
            meta = dict(db.execute("SELECT key, value FROM meta").fetchall())
        finally:
            db.close()
        for op in ops:
            op["fields"] = json.loads(op["fields"])
        return {"epoch": meta["epoch"], "seq": int(meta["seq"]), "records": records, "ops": ops}


def main() -> None:
    shm = Path("/dev/shm")
    folder = Path(tempfile.mkdtemp(prefix="limnary-sim-", dir=shm if shm.is_dir() else None))
    try:
        server = Server(folder)
        print(json.dumps({"ready": True}), flush=True)
        for line in sys.stdin:
            command = json.loads(line)
            answer = getattr(server, f"do_{command.pop('do')}")(**command)
            print(json.dumps(answer), flush=True)
    finally:
        shutil.rmtree(folder, ignore_errors=True)


if __name__ == "__main__":
    main()
