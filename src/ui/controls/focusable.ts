/** Lets keys reach a part of the page that scrolls sideways. */

/** To attach to a region wider than its panel, such as a table. */
export function focusable(place: HTMLElement): void {
  place.tabIndex = 0;
}
