"""The tables as named migrations: each is applied once and never edited after release."""

from sqlite_utils import Database, Migrations

PEOPLE = Migrations("people")
ROOM = Migrations("room")


@PEOPLE()
def keepers_devices_rooms(db: Database) -> None:
    """Who has access. Keys and secrets are stored only as SHA-256."""
    db["keepers"].create({"id": str, "name": str, "made_at": str}, pk="id", not_null={"name", "made_at"})
    db["devices"].create(
        {
            "id": str,
            "keeper": str,
            "name": str,
            "key_hash": str,
            "made_at": str,
            "last_seen": str,
            "revoked_at": str,
            "revoked_by": str,
        },
        pk="id",
        not_null={"keeper", "name", "key_hash", "made_at"},
        foreign_keys=[("keeper", "keepers", "id")],
    )
    db["devices"].create_index(["key_hash"], unique=True)
    db["devices"].create_index(["keeper"])
    db["rooms"].create({"id": str, "name": str, "made_at": str}, pk="id", not_null={"name", "made_at"})
    db["memberships"].create(
        {"room": str, "keeper": str, "role": str, "since": str, "ended_at": str, "ended_by": str},
        pk=("room", "keeper"),
        not_null={"role", "since"},
        foreign_keys=[("room", "rooms", "id"), ("keeper", "keepers", "id")],
    )
    db["memberships"].create_index(["keeper"])
    db["invites"].create(
        {
            "id": str,
            "room": str,
            "role": str,
            "keeper": str,
            "secret_hash": str,
            "made_by": str,
            "made_at": str,
            "expires_at": str,
            "used_at": str,
            "used_by": str,
            "withdrawn_at": str,
        },
        pk="id",
        not_null={"room", "role", "secret_hash", "made_at", "expires_at"},
        foreign_keys=[("room", "rooms", "id"), ("keeper", "keepers", "id"), ("used_by", "devices", "id")],
    )
    db["invites"].create_index(["secret_hash"], unique=True)
    db["invites"].create_index(["room"])


@PEOPLE()
def calendar_keys(db: Database) -> None:
    """Keys that read one room's tasks as a calendar; stored only as SHA-256."""
    db["calendar_keys"].create(
        {"id": str, "room": str, "keeper": str, "key_hash": str, "made_at": str, "revoked_at": str},
        pk="id",
        not_null={"room", "keeper", "key_hash", "made_at"},
        foreign_keys=[("room", "rooms", "id"), ("keeper", "keepers", "id")],
    )
    db["calendar_keys"].create_index(["key_hash"], unique=True)
    db["calendar_keys"].create_index(["room", "keeper"])


@PEOPLE()
def ways_in_by_phone(db: Database) -> None:
    """Which phone made a link or a calendar key, and which phones an owner put out of which room."""
    db.execute("ALTER TABLE invites ADD COLUMN made_on TEXT")
    db.execute("ALTER TABLE calendar_keys ADD COLUMN made_on TEXT")
    db["phones_out"].create(
        {"device": str, "room": str, "since": str, "by": str},
        pk=("device", "room"),
        not_null={"since", "by"},
        foreign_keys=[("device", "devices", "id"), ("room", "rooms", "id")],
    )


@ROOM()
def records_ops_photos(db: Database) -> None:
    """`records`: what pull answers. `ops`: every write ever acknowledged, so that no overwritten value is lost."""
    db["meta"].create({"key": str, "value": str}, pk="key", not_null={"value"})
    db["records"].create(
        {
            "id": str,
            "kind": str,
            "seq": int,
            "fields": str,
            "stamps": str,
            "deleted": str,
            "restored": str,
            "made_by": str,
            "made_at": str,
            "changed_by": str,
            "changed_at": str,
        },
        pk="id",
        not_null={"kind", "seq", "fields", "stamps", "made_by", "made_at", "changed_by", "changed_at"},
    )
    db["records"].create_index(["seq"], unique=True)
    db["ops"].create(
        {
            "op": str,
            "kind": str,
            "id": str,
            "type": str,
            "fields": str,
            "stamp": str,
            "schema": int,
            "keeper": str,
            "device": str,
            "at": str,
            "result": str,
        },
        pk="op",
        not_null={"kind", "id", "type", "stamp", "keeper", "at", "result"},
    )
    db["ops"].create_index(["id"])
    # Names of people without a key here who wrote records that came in an archive.
    db["authors"].create({"id": str, "name": str}, pk="id", not_null={"name"})
    db["photos"].create(
        {"sha256": str, "media_type": str, "bytes": bytes, "made_by": str, "made_at": str},
        pk="sha256",
        not_null={"media_type", "bytes", "made_at"},
    )


@ROOM()
def rows_brought_back(db: Database) -> None:
    """`moved`: stamps that were in the future, as written and as taken. `brought_by`: who brought a row back."""
    for column in ("moved TEXT NOT NULL DEFAULT '{}'", "brought_by TEXT", "brought_at TEXT"):
        db.execute(f"ALTER TABLE records ADD COLUMN {column}")


@ROOM()
def results_as_seq(db: Database) -> None:
    """An op keeps the `seq` of its result. The JSON it kept before said nothing more than the op's row says.

    From here on `records.stamps` is one stamp where all fields have the same. Older rows stay as they are.
    """
    # A new table, because SQLite before 3.35 cannot drop a column.
    db.execute("ALTER TABLE ops RENAME TO former_ops")
    columns = db["former_ops"].columns_dict
    del columns["result"]
    needed = {"kind", "id", "type", "stamp", "keeper", "at", "seq"}
    db["ops"].create({**columns, "seq": int}, pk="op", not_null=needed)
    same = ", ".join(columns)
    db.execute(
        f"INSERT INTO ops ({same}, seq) SELECT {same}, json_extract(result, '$.seq') FROM former_ops ORDER BY rowid"
    )
    db["former_ops"].drop()
    db["ops"].create_index(["id"])
