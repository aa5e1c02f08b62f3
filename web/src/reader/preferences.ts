// What the reader chose once: language, units, light. Kept in the browser.
import type { Language, Paper, Units } from '../api/client';

export type Light = 'auto' | 'day' | 'night';

export interface Preferences {
  lang: Language;
  units: Units;
  light: Light;
}

const KEY = 'counterpoise.reader';
const LANGUAGES: readonly Language[] = ['en', 'es'];
const UNITS: readonly Units[] = ['si', 'us'];
const LIGHTS: readonly Light[] = ['auto', 'day', 'night'];

/** The stored choice; what is missing or unknown in it is guessed from the browser's languages: the
 * language from the first that is known, the units, on their own, from the first that names a region. */
export function readPreferences(stored: string | null, browserLanguages: readonly string[]): Preferences {
  const kept = parse(stored);
  return {
    lang: LANGUAGES.find((l) => l === kept.lang) ?? firstKnown(browserLanguages),
    units: UNITS.find((u) => u === kept.units) ?? usualUnits(browserLanguages),
    light: LIGHTS.find((l) => l === kept.light) ?? 'auto',
  };
}

export function loadPreferences(): Preferences {
  return readPreferences(attempt(() => localStorage.getItem(KEY)) ?? null, navigator.languages);
}

export function keepPreferences(preferences: Preferences): void {
  attempt(() => localStorage.setItem(KEY, JSON.stringify(preferences)));
}

/** The paper that goes with the units, offered first. */
export function usualPaper(units: Units): Paper {
  return units === 'us' ? 'letter' : 'a4';
}

function firstKnown(browserLanguages: readonly string[]): Language {
  for (const tag of browserLanguages) {
    const known = LANGUAGES.find((l) => tag.toLowerCase().split('-')[0] === l);
    if (known) return known;
  }
  return 'en';
}

/** Feet and pounds in the United States, whatever the language. */
function usualUnits(browserLanguages: readonly string[]): Units {
  for (const tag of browserLanguages) {
    const region = attempt(() => new Intl.Locale(tag).region);
    if (region) return region === 'US' ? 'us' : 'si';
  }
  return 'si';
}

function parse(stored: string | null): Record<string, unknown> {
  const value: unknown = attempt(() => JSON.parse(stored ?? '{}'));
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
}

/** Storage may be forbidden and its content broken; either way the reader goes on with defaults. */
function attempt<T>(action: () => T): T | undefined {
  try {
    return action();
  } catch {
    return undefined;
  }
}
