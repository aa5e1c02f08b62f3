import { expect, test } from 'vitest';
import { drawingsOf } from './drawings';

const none = { has_elevation: false, has_chart: false, has_stands: false, has_movement: false, has_way_in: false, has_way_out: false };

test('only what is there has a tab, in a fixed order', () => {
  expect(drawingsOf(none)).toEqual([]);
  expect(drawingsOf({ ...none, has_movement: true, has_stands: true })).toEqual(['stands', 'movement']);
  const all = { has_elevation: true, has_chart: true, has_stands: true, has_movement: true, has_way_in: true, has_way_out: true };
  expect(drawingsOf(all)).toEqual(['elevation', 'chart', 'stands', 'movement', 'way-in', 'way-out']);
});
