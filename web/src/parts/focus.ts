// Moves the reader to the heading of a new view: keyboard and screen reader go on from there.
let turned = false;

/** The reader went to another view: its heading takes the focus as soon as it is there. */
export function turn(): void {
  turned = true;
}

/** Focuses a heading when it appears after a turn; not on the first view, where the page starts on top. */
export function focusHeading(heading: HTMLElement): void {
  if (!turned) return;
  turned = false;
  heading.focus({ preventScroll: true });
  window.scrollTo({ top: 0 });
}
