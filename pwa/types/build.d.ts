/** What tests/build.js puts into the built shell; in the sources these names do not exist. */

/** The address of each part of the shared texts (i18n/shared_parts.js) in each language, as JSON. */
declare const SHARED_PARTS: string | undefined;
/** The address of the worker that calculates. */
declare const OUTLOOK_WORKER: string | undefined;
