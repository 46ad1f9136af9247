"""A touch on a picture, where one of its own pixels is."""

from playwright.sync_api import Page


def touch(page: Page, picture: str, size: tuple[int, int], *places: tuple[float, float]) -> None:
    """As a finger does, wherever the page is scrolled to: on the element ``picture``, which shows ``size`` pixels.

    Of several places the next is touched before the page has drawn what the last one did.
    """
    page.locator(picture).evaluate(
        """(shown, places) => {
          const box = shown.getBoundingClientRect();
          for (const [x, y] of places) {
            const at = { clientX: box.left + x * box.width, clientY: box.top + y * box.height, bubbles: true };
            shown.dispatchEvent(new MouseEvent('click', at));
          }
        }""",
        [[x / size[0], y / size[1]] for x, y in places],
    )
