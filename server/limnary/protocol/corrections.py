"""Which records a valid correction hides. Pure; the phone's twin is `superseded` in pwa/data/view.js."""


def is_gone(row: dict) -> bool:
    """Whether a record is deleted and has not been restored since."""
    return (row["deleted"] or "") > (row["restored"] or "")


def superseded(rows: list[dict]) -> set[str]:
    """The ids, among all the rows of one kind, that a valid correction hides.

    A correction is valid while it is not deleted, or while a later correction of it is valid. If one record has two
    corrections (from two phones without signal), the later one counts.
    """
    by_id = {row["id"]: row for row in rows}
    corrections: dict[str, list[str]] = {}
    for row in rows:
        if row["fields"].get("supersedes"):
            corrections.setdefault(row["fields"]["supersedes"], []).append(row["id"])

    def stands(record: str, seen: set[str]) -> bool:
        if record in seen:
            return False
        seen.add(record)
        here = not is_gone(by_id[record])
        return here or any(stands(later, seen) for later in corrections.get(record, ()))

    hidden = set()
    for record, by in corrections.items():
        standing = [one for one in by if one != record and stands(one, {record})]
        if standing:
            latest = max(standing, key=lambda one: (by_id[one]["stamps"].get("supersedes", ""), one))
            hidden |= {record, *standing} - {latest}
    return hidden
