import { expect, test } from 'vitest';
import { drawingsOf } from './drawings';

const none = { has_elevation: false, has_chart: false, has_stands: false, has_movement: false };

test('only what is there has a tab, in a fixed order', () => {
  expect(drawingsOf(none)).toEqual([]);
  expect(drawingsOf({ ...none, has_movement: true, has_stands: true })).toEqual(['stands', 'movement']);
  expect(drawingsOf({ has_elevation: true, has_chart: true, has_stands: true, has_movement: true })).toEqual([
    'elevation',
    'chart',
    'stands',
    'movement',
  ]);
});
