"""What axe finds wrong with a page."""

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

SCRIPT = Axe().axe_script
RUN = """async (options) => {
  const { violations } = await axe.run({ resultTypes: ["violations"], ...options });
  return violations.map(({ id, nodes }) => `${id} ${JSON.stringify(nodes.slice(0, 3).map((node) => node.target))}`);
}"""


def refused_by_axe(page: Page, **options) -> list[str]:
    """Each rule of axe that the page breaks, with the first elements that do; `options` are those of axe.run.

    The script is half a megabyte, so it goes into a page once.
    """
    if not page.evaluate("() => 'axe' in window"):
        page.evaluate(SCRIPT)
    return page.evaluate(RUN, options)
