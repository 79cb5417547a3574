/**
 * Says in plain words that this browser is too old, before the app's own script fails in it. ECMAScript 5, for any
 * browser. Lowest are iOS 16.0, Chrome 105 and Firefox 115 (from memory), known here by what came with them:
 * container-type came with iOS 16.0, Chrome 105, Firefox 110.
 */
(function () {
  if (
    "noModule" in document.createElement("script") &&
    "hasOwn" in Object &&
    "findLast" in Array.prototype &&
    "indexedDB" in window &&
    CSS.supports("container-type", "inline-size")
  ) {
    // Beside the page, while the app is on its way: the first use of the browser's formats takes long.
    if (window.Worker) new Worker("/workers/locales.js");
    return;
  }
  /** @param {string} id @param {boolean} shown */
  function show(id, shown) {
    var part = document.getElementById(id);
    if (part) part.hidden = !shown;
  }
  function say() {
    show("app", false);
    show("not-yet", false);
    show("too-old", true);
  }
  // The page may still be on its way.
  if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", say);
  else say();
})();
