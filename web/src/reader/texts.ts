// Words of buttons and headings, from the server's catalogue. No second copy of them lives here.
import type { TextsView } from '../api/client';

export type UiText =
  | 'ui-all-lifts'
  | 'ui-light-choice'
  | 'ui-light-auto'
  | 'ui-light-day'
  | 'ui-light-night'
  | 'ui-reading-choices'
  | 'ui-language'
  | 'ui-units'
  | 'ui-units-si'
  | 'ui-units-us'
  | 'ui-loading'
  | 'ui-try-again'
  | 'ui-server-gone'
  | 'ui-server-gone-old'
  | 'ui-last-answer'
  | 'ui-old'
  | 'ui-plan-changed'
  | 'ui-no-lifts'
  | 'ui-no-drawing'
  | 'ui-drawing-larger'
  | 'ui-drawing-fit'
  | 'ui-side-view'
  | 'ui-load-chart'
  | 'ui-stand-field'
  | 'ui-boom-movement'
  | 'ui-drawings'
  | 'ui-where'
  | 'ui-stand'
  | 'ui-governs'
  | 'ui-what-to-do'
  | 'ui-findings'
  | 'ui-against'
  | 'ui-conditions'
  | 'ui-within'
  | 'ui-demand'
  | 'ui-limit'
  | 'ui-reserve'
  | 'ui-working'
  | 'ui-no-working'
  | 'ui-source'
  | 'ui-steps'
  | 'ui-no-steps'
  | 'ui-load'
  | 'ui-tolerances'
  | 'ui-other-stands'
  | 'ui-other-stands-note'
  | 'ui-changes'
  | 'ui-changes-note'
  | 'ui-way'
  | 'ui-way-in'
  | 'ui-way-out'
  | 'ui-wheel-forces'
  | 'ui-cautions'
  | 'ui-signal-warning'
  | 'ui-signal-danger'
  | 'ui-emergency'
  | 'ui-inputs'
  | 'ui-lifts'
  | 'ui-landing'
  | 'ui-machine'
  | 'ui-prepared-by'
  | 'ui-invented-data'
  | 'ui-invented-data-note'
  | 'ui-plan-sheet'
  | 'ui-paper-a4'
  | 'ui-paper-letter'
  | 'ui-plain-page'
  | 'ui-to-content'
  | 'ui-lift-unknown'
  | 'ui-needs'
  | 'ui-has'
  | 'ui-emergency-button'
  | 'ui-being-made'
  | 'ui-made'
  | 'ui-not-made'
  | 'ui-goes-on-aside'
  | 'ui-to-the-left'
  | 'ui-to-the-right';

/** Said before any catalogue has come, in both languages since the reader's is not there yet. */
const BEFORE: Partial<Record<UiText, string>> = {
  'ui-loading': 'Loading… · Cargando…',
  'ui-server-gone': 'The server does not answer. · El servidor no responde.',
  'ui-try-again': 'Try again · Reintentar',
  'ui-emergency-button': 'Emergency · Emergencia',
  'ui-to-content': 'To the content · Al contenido',
};

/** The words of a catalogue; an id that it lacks is shown as itself, so that it is seen and mended. */
export function wordsOf(catalogue: TextsView | undefined): (id: UiText) => string {
  return (id) => catalogue?.texts[id] ?? (catalogue ? id : (BEFORE[id] ?? ''));
}
