// A drawing as text into an element of the page. Parsed strictly as SVG, and without anything that
// could act: the server draws none, and nothing else is let in.
const ACTING = 'script, foreignObject, iframe, a, animate, set, image, use[href^="http"]';

export function pictureOf(text: string): SVGSVGElement | undefined {
  const parsed = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  if (!(parsed instanceof SVGSVGElement) || parsed.querySelector(ACTING)) return undefined;
  return document.importNode(parsed, true);
}
