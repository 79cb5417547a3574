/** The service worker: stores the whole shell at install, answers pages from it, leaves the API alone. */
importScripts(
  "/vendor/workbox-core.js",
  "/vendor/workbox-routing.js",
  "/vendor/workbox-strategies.js",
  "/vendor/workbox-precaching.js",
);

const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

workbox.core.setCacheNameDetails({ prefix: "limnary" });
workbox.core.clientsClaim();

// A new version waits until the keeper accepts it: the page then sends this message.
worker.addEventListener("message", (event) => {
  if (event.data?.type === "SKIP_WAITING") void worker.skipWaiting();
});

// The files of the shell with their hashes: the server fills in the list when it serves this file.
workbox.precaching.precacheAndRoute(self.__WB_MANIFEST);
workbox.precaching.cleanupOutdatedCaches();

// Every page of the app is index.html. The API is never answered from a cache.
workbox.routing.registerRoute(
  new workbox.routing.NavigationRoute(workbox.precaching.createHandlerBoundToURL("/index.html"), {
    denylist: [/^\/api\//, /^\/healthz$/],
  }),
);
