"""A German phone speaks German: set up, test and change with a decimal comma, and no English left on any screen."""

import pytest
from playwright.sync_api import expect
from room_hands import share
from test_touch_and_access import furnished_room, screens

pytestmark = pytest.mark.browser

# Every English text of more than two words that a German screen should not show: the longest stretch between its parts.
ENGLISH = """async () => {
  const [{ en }, { de }, { texts_of }] = await Promise.all(["en", "de", "shared_texts"].map((name) => import(`/i18n/${name}.js`)));
  const shared = await (await fetch("/shared.json")).json();
  const german = await (await fetch("/words/de.json")).json();
  const forms = (entry) => (typeof entry === "string" ? [entry] : Object.values(entry ?? {}));
  const texts = [
    ...Object.entries(en).flatMap(([key, entry]) => forms(entry).filter((text) => !forms(de[key]).includes(text))),
    ...texts_of(shared).filter((text) => german[text] !== text),
  ];
  const longest = (text) => text.split(/[{][^}]*[}]/).map((one) => one.trim()).sort((a, b) => b.length - a.length)[0];
  return [...new Set(texts.map(longest))].filter((text) => text.split(" ").length > 2);
}"""
SAID = """() => [document.body.innerText, ...[...document.querySelectorAll("[aria-label], [placeholder], [title]")]
  .flatMap((one) => ["aria-label", "placeholder", "title"].map((name) => one.getAttribute(name) ?? ""))].join("\\n")"""
