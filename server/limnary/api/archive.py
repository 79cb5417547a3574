"""A room's archive over HTTP."""

import tempfile
from collections.abc import Iterator
from typing import IO

from flask import Blueprint, Response

from limnary.api.reading import config, device, store
from limnary.ids import utc

blueprint = Blueprint("archive", __name__, url_prefix="/api/v1/rooms/<room>")


@blueprint.get("/export")
def export(room: str):
    """The room's archive, for any member."""
    # In the data folder: where a full disk shows as such, and where there is as much room as the data take.
    out = tempfile.TemporaryFile(dir=config().data_dir)  # noqa: SIM115 - closed after the last part is sent
    try:
        store().export(room, device(), out)
    except BaseException:
        out.close()
        raise
    day = utc(store().clock())[:10]
    headers = {"Content-Disposition": f"attachment; filename=fish-room-{day}.zip", "Content-Length": str(out.tell())}
    return Response(_parts(out), content_type="application/zip", headers=headers)


def _parts(out: IO[bytes]) -> Iterator[bytes]:
    with out:
        out.seek(0)
        while part := out.read(65_536):
            yield part
