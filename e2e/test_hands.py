"""The stories' own hands: a tap that leaves the page counts as heard, whenever the page goes."""

import pytest

pytestmark = pytest.mark.browser

# The browser starts to leave the page when the story asks about the tap, before the page can answer.
LEAVES_WHEN_ASKED = """() => {
  const leave = () => {
    location.reload();
    return new Promise(() => {});
  };
  Object.defineProperty(window, "echoed", { get: leave, set() {} });
}"""


def test_a_tap_that_leaves_the_page_is_heard(new_phone):
    thumb = new_phone()
    thumb.open("/tanks/new")
    thumb.page.evaluate(LEAVES_WHEN_ASKED)
    thumb.pick("cylinder")
    thumb.page.wait_for_function("() => !('echoed' in window)")
    thumb.title("Set up a tank")
