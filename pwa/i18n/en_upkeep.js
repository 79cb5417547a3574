/** English: what the server does by itself, and what of it failed, for the owners of a room. */

/** @satisfies {Record<string, string>} */
export const en_upkeep = {
  "upkeep.check": "What this phone gives the app",
  "upkeep.check_short": "Connection, storage, clock, browser",
  "upkeep.title": "The server’s backups",
  "upkeep.last": "Last backup: {when}.",
  "upkeep.none_yet": "None yet. The server makes the first one soon after it starts, then one a day.",
  "upkeep.off": "The server makes no backups by itself.",
  "upkeep.tell":
    "Tell the person who runs the server: “limnary check” says there what to do. Your phone keeps what it holds.",
  "upkeep.data-damaged":
    "A file of the server’s data is damaged, so no new backup can be made. The earlier ones are kept.",
  "upkeep.disk-full": "The disk for the backups is full, so no new one was made.",
  "upkeep.folder": "The folder for the backups cannot be written, so no new one was made.",
  "upkeep.not-whole": "The new backup could not be restored when it was tried, so it was not kept.",
  "upkeep.failed": "The last backup failed.",
  "upkeep.backup-damaged": "A backup was damaged after it was made. The others are kept.",
  "upkeep.missing": "Backups that were made are no longer where they were put.",
  "upkeep.too-large": "There is room for one backup only, so no earlier one is kept.",
  "upkeep.late": "The last good backup is older than two days.",
};
