/** Text for a cell of a table, harmless in a spreadsheet, and back. */

/**
 * Signs that begin a formula, also in their full-width forms, at the start of a cell or after what parts cells or
 * lines. The server's twin is FORMULA in limnary/store/archive.py.
 */
const FORMULA = /(?:^|[;,\t\r\n])[ \t\r\n]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r]/;

/** Text that a spreadsheet would run as a formula is quoted. @param {string | null | undefined} text */
export const harmless = (text) => (FORMULA.test(text ?? "") ? `'${text}` : (text ?? ""));

/** The text that `harmless` made harmless. @param {string} cell */
export const unquoted = (cell) => (cell.startsWith("'") && FORMULA.test(cell.slice(1)) ? cell.slice(1) : cell);
