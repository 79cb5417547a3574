/** Print this page; where the browser cannot, keep it as a file that another device prints. */
import { keep_file } from "./keep_file.js";

/** A browser that prints says so within this time. */
const SAYS_SO_MS = 1000;

/** @param {string} name of the file @returns {Promise<string | null>} what the file is called, null if it prints */
export async function print_page(name) {
  return (await prints()) ? null : keep_file(new Blob([as_file()], { type: "text/html" }), name, "html");
}

/** Ask the browser to print: some have no such function, some have one that does nothing. */
async function prints() {
  if (typeof window.print !== "function") return false;
  return new Promise((/** @type {(printing: boolean) => void} */ resolve) => {
    addEventListener("beforeprint", () => resolve(true), { once: true });
    window.print();
    setTimeout(() => resolve(false), SAYS_SO_MS);
  });
}

/** The page as it prints, in one file. */
function as_file() {
  const page = document.implementation.createHTMLDocument(document.title);
  page.documentElement.lang = document.documentElement.lang;
  const style = page.createElement("style");
  style.textContent = [...document.styleSheets].map(rules_of).join("\n");
  page.head.append(style);
  const content = document.querySelector("#app main");
  const title = document.querySelector("#app h1");
  for (const part of [title, content]) if (part) page.body.append(page.importNode(part, true));
  return `<!doctype html>\n${page.documentElement.outerHTML}`;
}

/** The rules of a stylesheet; those for print count on the screen too. @param {CSSStyleSheet} sheet */
function rules_of(sheet) {
  const rules = [...sheet.cssRules];
  return rules
    .map((rule) => (is_for_print(rule) ? [...rule.cssRules].map(text_of).join("\n") : text_of(rule)))
    .join("\n");
}

/** @param {CSSRule} rule @returns {rule is CSSMediaRule} */
const is_for_print = (rule) => rule instanceof CSSMediaRule && rule.media.mediaText === "print";
/** @param {CSSRule} rule */
const text_of = (rule) => rule.cssText;
