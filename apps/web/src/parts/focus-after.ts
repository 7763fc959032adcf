const HEADING = "h1, h2, h3, h4, legend";
const GOES_ON = `${HEADING}, [tabindex="-1"], input:not([type=hidden]), select, textarea, button, a[href]`;
/** What a heading speaks for: no more than the part it stands in. */
const PART = "main, section, article, aside, fieldset, details, dialog, li, tr";

/**
 * Where the focus goes when what had it is gone: to what came in its stead, within the nearest element around it that is still there;
 * else to the heading of the nearest part around it that has one. What changed elsewhere on the page says nothing.
 *
 * @param above elements that were around it, nearest first
 * @param came elements that came onto the page since
 */
export function focusAfter(above: readonly Element[], came: readonly Element[]): HTMLElement | undefined {
  const around = above.filter((one) => one.isConnected);
  const near = around[0];
  if (near === undefined) return undefined;
  const ours = (one: Element): boolean => around.some((part) => part === one.parentElement?.closest(PART));
  const inside = came.filter((one) => one !== near && near.contains(one) && ours(one));
  const beside = inside.filter(({ parentElement }) => parentElement === near);
  for (const one of [...beside, ...inside]) {
    const to = firstIn(one, GOES_ON);
    if (to !== undefined) return to;
  }
  for (const one of around) {
    const own = [...one.querySelectorAll(HEADING)].filter(ours).find(takesFocus);
    if (own !== undefined) return own;
  }
  return undefined;
}

/** A heading takes the focus for as long as it has it; the page moves only to show what came. */
export function giveFocus(to: HTMLElement, came: readonly Element[]): void {
  if (to.matches(HEADING) && !to.hasAttribute("tabindex")) {
    to.tabIndex = -1;
    to.addEventListener("blur", () => to.removeAttribute("tabindex"), { once: true });
  }
  to.focus({ preventScroll: !came.some((one) => one.contains(to)) });
}

const takesFocus = (one: Element): one is HTMLElement =>
  one instanceof HTMLElement && one.getClientRects().length > 0 && !one.matches(":disabled");

/** The element itself, or the first inside it. */
const firstIn = (element: Element, what: string): HTMLElement | undefined =>
  [...(element.matches(what) ? [element] : []), ...element.querySelectorAll(what)].find(takesFocus);
