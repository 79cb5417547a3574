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

/**
 * The files of the shell; a file with `language` is stored only where that language is spoken. The build, or the server
 * where it serves the sources, fills in the list.
 * @type {{url: string, revision: string | null, language?: string}[]}
 */
const SHELL = self.__WB_MANIFEST;
const LANGUAGES = new Set(SHELL.flatMap(({ language }) => language ?? []));
const own =
  worker.navigator.languages.map((tag) => tag.split("-")[0].toLowerCase()).find((one) => LANGUAGES.has(one)) ?? "en";

workbox.precaching.precacheAndRoute(SHELL.filter(({ language }) => !language || language === own));
workbox.precaching.cleanupOutdatedCaches();

// A language that the keeper chose instead of the phone's own: all of it is stored when a part of it is first asked
// for, and from then on in each new version at its install.
const of_others = SHELL.filter(({ language }) => language && language !== own);
const cache_of = (/** @type {string} */ language) => `limnary-language-${language}`;
for (const language of LANGUAGES) {
  const urls = of_others.flatMap((one) => (one.language === language ? [one.url] : []));
  workbox.routing.registerRoute(
    ({ url }) => urls.includes(url.pathname),
    ({ request }) => stored(request, language, urls),
  );
  worker.addEventListener("install", (event) => event.waitUntil(keep_chosen(language, urls)));
  worker.addEventListener("activate", (event) => event.waitUntil(drop_older(language, urls)));
}

/** @param {Request} request @param {string} language @param {string[]} urls */
async function stored(request, language, urls) {
  const cache = await caches.open(cache_of(language));
  const held = await cache.match(request, { ignoreVary: true });
  if (held) return held;
  await cache.addAll(urls);
  return (await cache.match(request, { ignoreVary: true })) ?? fetch(request);
}

/** @param {string} language @param {string[]} urls */
async function keep_chosen(language, urls) {
  if (urls.length && (await caches.has(cache_of(language)))) await (await caches.open(cache_of(language))).addAll(urls);
}

/** @param {string} language @param {string[]} urls */
async function drop_older(language, urls) {
  if (!(await caches.has(cache_of(language)))) return;
  const cache = await caches.open(cache_of(language));
  const older = (await cache.keys()).filter(({ url }) => !urls.includes(new URL(url).pathname));
  await Promise.all(older.map((one) => cache.delete(one)));
}

// A timer that is over, told while another app was on the screen: a tap leads to its page.
worker.addEventListener("notificationclick", (event) => {
  event.notification.close();
  event.waitUntil(show_page(event.notification.data));
});

/** @param {string} path */
async function show_page(path) {
  const [open] = await worker.clients.matchAll({ type: "window", includeUncontrolled: true });
  if (!open) return worker.clients.openWindow(path);
  return open.focus();
}

// Photos that another app shares: stored until a page of the app takes them.
const SHARED_PHOTOS = "limnary-shared-photos";
workbox.routing.registerRoute("/share-photo", ({ request }) => shared_photos(request), "POST");

/** @param {Request} request */
async function shared_photos(request) {
  const cache = await caches.open(SHARED_PHOTOS);
  const photos = (await request.formData()).getAll("photos").filter((one) => one instanceof File);
  const stamp = Date.now();
  await Promise.all(photos.map((photo, at) => cache.put(`/shared-photo/${stamp}-${at}`, new Response(photo))));
  return Response.redirect("/shared", 303);
}

// Every page of the app is index.html. The API is never answered from a cache, and the pages that help a phone which
// cannot run the app come from the server.
workbox.routing.registerRoute(
  new workbox.routing.NavigationRoute(workbox.precaching.createHandlerBoundToURL("/index.html"), {
    denylist: [/^\/api\//, /^\/healthz$/, /^\/(check|trust)\b/, /^\/authority\.crt$/],
  }),
);
