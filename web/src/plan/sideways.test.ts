import { expect, test } from 'vitest';
import { sideways } from './sideways';

test.each([
  [{ scrollLeft: 0, clientWidth: 358, scrollWidth: 358 }, { left: false, right: false }],
  [{ scrollLeft: 0, clientWidth: 358, scrollWidth: 716 }, { left: false, right: true }],
  [{ scrollLeft: 100, clientWidth: 358, scrollWidth: 716 }, { left: true, right: true }],
  [{ scrollLeft: 357.5, clientWidth: 358, scrollWidth: 716 }, { left: true, right: false }],
])('%j goes on %j', (window, expected) => {
  expect(sideways(window)).toEqual(expected);
});
