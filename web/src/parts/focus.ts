// Moves the reader to the heading of a new view: keyboard and screen reader go on from there.
let first = true;

/** Focuses a heading when it appears, except on the very first view, where the page starts on top. */
export function focusHeading(heading: HTMLElement): void {
  if (first) {
    first = false;
    return;
  }
  heading.focus({ preventScroll: true });
  window.scrollTo({ top: 0 });
}
