import { expect, test } from 'vitest';
import { liftAddress, parseRoute } from './route';

test.each(['L1', 'a b', 'ä/ö?#&', '100%', '..'])('the address of lift %j leads back to it', (id) => {
  expect(parseRoute(liftAddress(id))).toEqual({ at: 'lift', id });
});

test.each(['', '#', '#/', '#/lifts/', '#/lifts/a/b', '#main', '#/lifts/%E0%A4%A'])('%j is the overview', (hash) => {
  expect(parseRoute(hash)).toEqual({ at: 'overview' });
});
