/** Why an archive was not taken in. */

/** How many of the faults are named. */
const MOST_WRONG = 20;

/** The archive is not whole; nothing of it was taken in. `lines` says what is wrong where. */
export class ArchiveBroken extends Error {
  /** @param {string[]} lines */
  constructor(lines) {
    const first = lines.slice(0, MOST_WRONG);
    super(`This is not a whole room archive, and nothing of it was taken in: ${first.join("; ")}`);
    this.lines = first;
  }
}
