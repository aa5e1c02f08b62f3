import { expect, test } from 'vitest';
import { readPreferences, usualPaper } from './preferences';

test('a stored choice stands, whatever the browser speaks', () => {
  const stored = JSON.stringify({ lang: 'es', units: 'us', light: 'night' });
  expect(readPreferences(stored, ['en-GB'])).toEqual({ lang: 'es', units: 'us', light: 'night' });
});

test.each([
  [['es-MX', 'en'], { lang: 'es', units: 'si' }],
  [['en-US'], { lang: 'en', units: 'us' }],
  [['es-US', 'es'], { lang: 'es', units: 'us' }],
  [['es', 'en-US'], { lang: 'es', units: 'us' }],
  [['fr-CA', 'en-US'], { lang: 'en', units: 'si' }],
  [['es-Latn-US'], { lang: 'es', units: 'us' }],
  [['not a tag', 'en-US'], { lang: 'en', units: 'us' }],
  [['en-GB', 'es'], { lang: 'en', units: 'si' }],
  [['de-AT', 'es-ES'], { lang: 'es', units: 'si' }],
  [['fr'], { lang: 'en', units: 'si' }],
  [[], { lang: 'en', units: 'si' }],
])('without a choice, languages %j give %j', (languages, expected) => {
  expect(readPreferences(null, languages)).toEqual({ ...expected, light: 'auto' });
});

test.each(['', 'null', '[]', '"es"', '{', '{"lang":"xx","units":3,"light":null}'])(
  'broken storage %j is as no storage',
  (stored) => {
    expect(readPreferences(stored, ['es'])).toEqual({ lang: 'es', units: 'si', light: 'auto' });
  },
);

test('one broken value does not lose the others', () => {
  expect(readPreferences('{"lang":"es","units":"cubits"}', ['en-US'])).toEqual({ lang: 'es', units: 'us', light: 'auto' });
});

test('paper goes with units', () => {
  expect([usualPaper('si'), usualPaper('us')]).toEqual(['a4', 'letter']);
});
