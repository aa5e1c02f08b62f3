import { expect, test } from 'vitest';
import { LIMIT_AT, MARKS, ruler, WIDTH } from './ruler';

test.each([
  [0.25, { from: 100, length: 50, cut: false, beyond: false }],
  [1, { from: 100, length: 200, cut: false, beyond: false }],
  [4, { from: 100, length: 200, cut: true, beyond: false }],
  [-0.25, { from: 50, length: 50, cut: false, beyond: true }],
  [-0.9, { from: 0, length: 100, cut: true, beyond: true }],
])('a share of %d is a bar %j', (share, expected) => {
  expect(ruler(share)).toEqual(expected);
});

test('nothing left is still seen, and is not beyond', () => {
  const bar = ruler(0);
  expect(bar.length).toBeGreaterThan(0);
  expect(bar.beyond).toBe(false);
});

test('a quarter of the limit is the same length on both sides, and the marks stand at quarters', () => {
  expect(ruler(0.25).length).toBe(ruler(-0.25).length);
  const quarter = ruler(0.25).length;
  for (const mark of MARKS) expect(Math.abs(mark - LIMIT_AT) % quarter).toBe(0);
  expect(Math.max(...MARKS)).toBe(WIDTH);
});

test('more reserve is never a shorter bar', () => {
  const lengths = Array.from({ length: 200 }, (_, i) => ruler(i / 100).length);
  expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
});
