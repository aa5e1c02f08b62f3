// A drawing wider than its window: whether it goes on to the left and to the right.
export interface Sideways {
  left: boolean;
  right: boolean;
}

/** Less than this many pixels hidden is not worth a move. */
const LEAST = 2;

export function sideways({ scrollLeft, clientWidth, scrollWidth }: Pick<Element, 'scrollLeft' | 'clientWidth' | 'scrollWidth'>): Sideways {
  return { left: scrollLeft > LEAST, right: scrollWidth - clientWidth - scrollLeft > LEAST };
}
