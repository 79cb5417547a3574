/** No throw leaves an empty page: what fails while a page is drawn, or just after, is told in its place. */
import { html, useErrorBoundary, useRef } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { tap } from "./state/tap.js";

/** @typedef {{path: string}} Turned a page that was turned to; a new object at each turn */

/**
 * Draws its children until one of them throws; from then on `Broken`, until the keeper turns to another page.
 * @param {{page: Turned, children?: unknown}} props
 */
export function Boundary({ page, children }) {
  const broken = useRef(/** @type {Turned | null} */ (null));
  useErrorBoundary((error) => {
    console.error(error);
    broken.current = page;
  });
  return broken.current === page ? html`<${Broken} path=${page.path} />` : children;
}

/**
 * A page that cannot be drawn. It reads nothing but words, so that what broke the page cannot break this one too.
 * @param {{path: string, why?: string}} props `why`: a text's key
 */
export const Broken = ({ path, why = "broken.why" }) => html`
  <div class="page">
    <header class="top"><h1 tabindex="-1">${document.title}</h1></header>
    <main><p class="sentence" role="alert">${t(why)}</p></main>
    <footer class="foot"><div class="act">
      <button class="quiet tall" type="button" onClick=${tap(() => location.reload())}>${t("notice.reload")}</button>
      ${path !== "/" && html`<a class="main" href="/">${t("broken.back")}</a>`}
    </div></footer>
  </div>`;
