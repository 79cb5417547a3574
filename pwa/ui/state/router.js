/** Pages by path: links stay plain links, and the app turns the page without leaving it. */
import { signal } from "../../vendor/preact.js";
import { is_echo, settle } from "./tap.js";

const here = () => location.pathname + location.search + location.hash;

export const address = signal(here());
/** The address of the page on the screen; it lags behind `address` while a page's code is fetched. */
let shown = "";

/** Whether the page of the address is still being fetched. */
export const is_turning = () => shown !== address.peek();

/**
 * Go to a page. With `replace` this page leaves the history; if it was reached from `to`, that is the browser's way
 * back.
 * @param {string} to a path of this app @param {{replace?: boolean}} [how]
 */
export function go(to, { replace = false } = {}) {
  if (replace && history.state?.from === to) return history.back();
  const from = replace ? history.state?.from : here();
  history[replace ? "replaceState" : "pushState"]({ from }, "", to);
  arrive();
}

/** Answer links and the browser's own back. */
export function start() {
  addEventListener("popstate", arrive);
  document.addEventListener("click", (event) => {
    const link = /** @type {Element} */ (event.target).closest?.("a[href]");
    if (!(link instanceof HTMLAnchorElement) || event.defaultPrevented || event.metaKey || event.ctrlKey) return;
    if (link.origin !== location.origin || link.target || link.hasAttribute("download")) return;
    event.preventDefault();
    if (is_echo()) return;
    settle();
    if (link.getAttribute("href") !== here()) go(link.pathname + link.search + link.hash);
  });
}

/**
 * The first route that fits: `/tank/:id/test` gives {id}.
 * @template T
 * @param {[string, T][]} routes
 * @param {string} path
 * @returns {{found: T, parts: Record<string, string>} | null}
 */
export function match(routes, path) {
  for (const [pattern, found] of routes) {
    const names = [...pattern.matchAll(/:(\w+)/g)].map((one) => one[1]);
    const hit = new RegExp(`^${pattern.replace(/:\w+/g, "([^/]+)")}/?$`).exec(path);
    if (hit)
      return { found, parts: Object.fromEntries(names.map((name, i) => [name, decodeURIComponent(hit[i + 1])])) };
  }
  return null;
}

function arrive() {
  settle();
  address.value = here();
}

/** Tell that the page of the address is on the screen now. @param {{first: boolean}} how `first`: as the app opened */
export function arrived({ first }) {
  shown = address.peek();
  if (first) return;
  settle();
  scrollTo(0, 0);
  // A screen reader hears the new page's name.
  requestAnimationFrame(() => document.querySelector("h1")?.focus({ preventScroll: true }));
}
