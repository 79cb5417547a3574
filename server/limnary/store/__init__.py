"""The store: SQLite, one file a room, one of people. SQL lives only in this package.

Law: every write runs in `BEGIN IMMEDIATE` under the one write lock of `Files`, and is committed by
`files.commit` and nowhere else; whoever answers "ok" does so after it.
"""

from limnary.store.store import Store

__all__ = ["Store"]
