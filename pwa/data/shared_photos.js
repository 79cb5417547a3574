/** Photos that another app shared with this one; the worker stores them until a page takes them (pwa/sw.js). */

const CACHE = "limnary-shared-photos";

/** The photos, oldest first. @returns {Promise<Blob[]>} */
export async function shared_photos() {
  if (typeof caches === "undefined" || !(await caches.has(CACHE))) return [];
  const cache = await caches.open(CACHE);
  const names = [...(await cache.keys())].sort((a, b) => (a.url < b.url ? -1 : 1));
  const held = await Promise.all(names.map((name) => cache.match(name)));
  return Promise.all(held.flatMap((one) => (one ? [one.blob()] : [])));
}

/** Let go of them: a draft has them, or the keeper does not want them. */
export const forget_shared_photos = () => caches.delete(CACHE);
