// The reserve as a length: a ruler with the limit as its mark. Room left runs right, room missing left.
export interface Ruler {
  /** Left edge of the bar, in units of the picture. */
  from: number;
  /** Length of the bar. */
  length: number;
  /** True where there is more than the ruler shows: its end gets an arrow. */
  cut: boolean;
  /** True beyond the limit. */
  beyond: boolean;
}

export const WIDTH = 300;
/** Where the limit stands: a third of the ruler lies beyond it. */
export const LIMIT_AT = 100;
/** Half of the limit missing, or all of it in reserve, are the ends of the ruler. */
const MOST_MISSING = 0.5;
const MOST_LEFT = 1;
/** A bar this long is still seen, so that "nothing left" is not an empty ruler. */
const LEAST = 2;

/** The bar for a share of the limit: 0 at the limit, negative beyond. */
export function ruler(share: number): Ruler {
  const beyond = share < 0;
  const most = beyond ? MOST_MISSING : MOST_LEFT;
  const room = beyond ? LIMIT_AT : WIDTH - LIMIT_AT;
  const length = Math.max(LEAST, (Math.min(Math.abs(share), most) / most) * room);
  return { from: beyond ? LIMIT_AT - length : LIMIT_AT, length, cut: Math.abs(share) > most, beyond };
}

/** Positions of the marks, every quarter of the limit. */
export const MARKS: readonly number[] = [0, 50, 150, 200, 250, 300];
