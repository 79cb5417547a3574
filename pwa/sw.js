/* The service worker: stores the whole shell at install, answers pages from it, leaves the API alone. */
importScripts(
  "/vendor/workbox-core.js",
  "/vendor/workbox-routing.js",
  "/vendor/workbox-strategies.js",
  "/vendor/workbox-precaching.js",
);

workbox.core.setCacheNameDetails({ prefix: "limnary" });
workbox.core.clientsClaim();

// A new version waits until the keeper says so: the page sends this after a tap.
self.addEventListener("message", (event) => {
  if (event.data?.type === "SKIP_WAITING") self.skipWaiting();
});

// Every file of the shell with its hash, filled in when the server serves this file.
workbox.precaching.precacheAndRoute(self.__WB_MANIFEST);
workbox.precaching.cleanupOutdatedCaches();

// Any page of the app is index.html; the API is never answered from here, so never from a cache.
workbox.routing.registerRoute(
  new workbox.routing.NavigationRoute(workbox.precaching.createHandlerBoundToURL("/index.html"), {
    denylist: [/^\/api\//, /^\/healthz$/],
  }),
);
