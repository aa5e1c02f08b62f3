import { expect, test } from 'vitest';
import { wordsOf } from './texts';

test('words come from the catalogue; a word that it lacks shows its id', () => {
  const text = wordsOf({ language: 'es', texts: { 'ui-limit': 'Límite' } });
  expect(text('ui-limit')).toBe('Límite');
  expect(text('ui-reserve')).toBe('ui-reserve');
});

test('before a catalogue has come, what must be said is said in both languages', () => {
  const text = wordsOf(undefined);
  expect(text('ui-server-gone')).toMatch(/does not answer.*no responde/);
  expect(text('ui-limit')).toBe('');
});
