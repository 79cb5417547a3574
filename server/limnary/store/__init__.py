"""The store: SQLite, one file per room and one for people. Only this package contains SQL. See README.md here.

Law: every write runs in `BEGIN IMMEDIATE` under the one write lock of `Files`. Only `files.commit` commits, and
nobody answers "ok" before it has.
"""

from limnary.store.store import Store

__all__ = ["Store"]
