/** Handlers of text fields. */

/** @typedef {HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement} TextField */

/**
 * A handler that takes what its field says now.
 * @param {(text: string) => void} use
 * @returns {(event: Event) => void}
 */
export const with_text = (use) => (event) => use(/** @type {TextField} */ (event.currentTarget).value);

/** Mark the whole text, for the keeper to copy by hand. @param {Event} event */
export const mark_all = (event) => /** @type {HTMLTextAreaElement} */ (event.currentTarget).select();
