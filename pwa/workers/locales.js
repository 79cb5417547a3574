/**
 * Lets the browser list its locales beside the page. It does so at the first use of each kind of format, once for the
 * page and its workers, and takes as long as the drawing of a page. Started by oldest.js.
 */
new Intl.NumberFormat();
new Intl.DateTimeFormat();
new Intl.ListFormat();
close();
