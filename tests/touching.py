"""A touch on a picture, where one of its own pixels is."""

from playwright.sync_api import Page


def touch(page: Page, picture: str, place: tuple[float, float], size: tuple[int, int]) -> None:
    """As a finger does, wherever the page is scrolled to: on the element ``picture``, which shows ``size`` pixels."""
    page.locator(picture).evaluate(
        """(shown, [x, y]) => {
          const box = shown.getBoundingClientRect();
          const at = { clientX: box.left + x * box.width, clientY: box.top + y * box.height, bubbles: true };
          shown.dispatchEvent(new MouseEvent('click', at));
        }""",
        [place[0] / size[0], place[1] / size[1]],
    )
