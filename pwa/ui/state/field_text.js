/** Handlers that take what a control of a form says. */

/** @typedef {HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement} TextField */

/**
 * A handler that takes what its field says now.
 * @param {(text: string) => void} use
 * @returns {(event: Event) => void}
 */
export const with_text = (use) => (event) => use(/** @type {TextField} */ (event.currentTarget).value);

/**
 * A handler that takes whether its box is ticked.
 * @param {(ticked: boolean) => void} use
 * @returns {(event: Event) => void}
 */
export const with_tick = (use) => (event) => use(/** @type {HTMLInputElement} */ (event.currentTarget).checked);

/** Mark the whole text, for the keeper to copy by hand. @param {Event} event */
export const mark_all = (event) => /** @type {HTMLTextAreaElement} */ (event.currentTarget).select();
