// What the reader sees: the plan, one lift, the words, and whether the server still answers.
import type { Answer, Api, JobView, LiftView, Problem, TextsView } from './api/client';
import { connect } from './api/client';
import { turn } from './parts/focus';
import { keepPreferences, loadPreferences, type Preferences } from './reader/preferences';
import { wordsOf } from './reader/texts';
import { parseRoute, type Route } from './route';

/** Something asked for: on its way, failed, nobody there, or here. */
export type Asked<T> =
  | { state: 'loading' }
  | { state: 'failed'; problem: Problem }
  | { state: 'gone' }
  | { state: 'here'; value: T };

const ASK_EVERY_MS = 5000;
const ASK_AGAIN_MS = 2000;

export class Session {
  preferences = $state<Preferences>(loadPreferences());
  route = $state<Route>(parseRoute(location.hash));
  job = $state.raw<Asked<JobView>>({ state: 'loading' });
  lift = $state.raw<Asked<LiftView>>({ state: 'loading' });
  /** True while the server does not answer: everything shown is marked as old. */
  gone = $state(false);
  lastAnswer = $state.raw(new Date());
  /** True after the server came back with another plan than the one shown before. */
  changed = $state(false);
  digest = $state<string>();
  readonly api: Api = connect();
  #catalogue = $state.raw<TextsView>();
  text = $derived(wordsOf(this.#catalogue));
  /** What to do in an emergency: from whatever has come, and kept when the server is gone. */
  emergency = $derived.by(() => {
    if (this.job.state === 'here') return this.job.value.emergency;
    if (this.lift.state === 'here') return this.lift.value.emergency;
    return [this.text(this.gone ? 'ui-server-gone' : 'ui-loading')];
  });
  /** Lifts seen before, so that they can be shown again, marked as old, when the server is gone. */
  #seen = new Map<string, LiftView>();
  #timer: ReturnType<typeof setTimeout> | undefined;

  start(): () => void {
    const follow = () => {
      turn();
      this.route = parseRoute(location.hash);
      this.changed = false;
      void this.#fetchLift();
    };
    window.addEventListener('hashchange', follow);
    void this.refresh();
    this.#watch();
    return () => {
      window.removeEventListener('hashchange', follow);
      clearTimeout(this.#timer);
    };
  }

  choose(change: Partial<Preferences>): void {
    const before = this.preferences;
    this.preferences = { ...before, ...change };
    keepPreferences(this.preferences);
    if (this.preferences.lang !== before.lang || this.preferences.units !== before.units) void this.refresh();
  }

  async refresh(): Promise<void> {
    await Promise.all([this.#fetchTexts(), this.#fetchJob(), this.#fetchLift()]);
  }

  async #fetchTexts(): Promise<void> {
    const { lang } = this.preferences;
    if (this.#catalogue?.language === lang) return;
    const answer = this.#note(await this.api.texts(lang));
    if (answer.kind === 'ok' && this.preferences.lang === lang) this.#catalogue = answer.value;
  }

  async #fetchJob(): Promise<void> {
    const { lang, units } = this.preferences;
    const answer = this.#note(await this.api.job({ lang, units }));
    if (!this.#stillWanted(lang, units)) return;
    if (answer.kind === 'ok') this.digest = answer.value.digest;
    this.job = keepOld(answer, this.job);
  }

  async #fetchLift(): Promise<void> {
    const { route } = this;
    if (route.at !== 'lift') return;
    const { lang, units } = this.preferences;
    const key = JSON.stringify([route.id, lang, units, this.digest]);
    const seen = this.#seen.get(key);
    const shown = this.lift.state === 'here' && this.lift.value.id === route.id;
    if (seen) this.lift = { state: 'here', value: seen };
    else if (!shown) this.lift = { state: 'loading' };
    const answer = this.#note(await this.api.lift(route.id, { lang, units }));
    if (this.route !== route || !this.#stillWanted(lang, units)) return;
    if (answer.kind === 'ok') this.#seen.set(key, answer.value);
    this.lift = keepOld(answer, this.lift);
  }

  /** Asks for a sign of life for ever: seldom while the server answers, often while it does not. */
  #watch(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.ask().finally(() => this.#watch()), this.gone ? ASK_AGAIN_MS : ASK_EVERY_MS);
  }

  /** Asks now; after a silence, or when the plan is another one, everything is fetched anew. */
  async ask(): Promise<void> {
    const wasGone = this.gone;
    const answer = this.#note(await this.api.alive());
    if (answer.kind !== 'ok') return;
    const another = this.digest !== undefined && answer.value.digest !== this.digest;
    if (another) this.changed = true;
    if (wasGone || another || this.job.state !== 'here') await this.refresh();
  }

  #stillWanted(lang: string, units: string): boolean {
    return this.preferences.lang === lang && this.preferences.units === units;
  }

  #note<T>(answer: Answer<T>): Answer<T> {
    this.gone = answer.kind === 'gone';
    if (!this.gone) this.lastAnswer = new Date();
    return answer;
  }
}

/** An answer as shown; when nobody answers, what was there stays. */
function keepOld<T>(answer: Answer<T>, before: Asked<T>): Asked<T> {
  switch (answer.kind) {
    case 'ok':
      return { state: 'here', value: answer.value };
    case 'problem':
      return { state: 'failed', problem: answer.problem };
    case 'gone':
      return before.state === 'here' ? before : { state: 'gone' };
  }
}
