// The only module that fetches. Answers are values: an answer, a problem, or nobody there.
import createClient from 'openapi-fetch';
import type { components, paths } from './schema';

type Schemas = components['schemas'];
export type JobView = Schemas['JobView'];
export type LiftLine = Schemas['LiftLine'];
export type LiftView = Schemas['LiftView'];
export type FindingView = Schemas['FindingView'];
export type Piece = Schemas['Piece'];
export type StepView = Schemas['StepView'];
export type FactView = Schemas['FactView'];
export type InputView = Schemas['InputView'];
export type ReserveView = Schemas['ReserveView'];
export type VerdictView = Schemas['VerdictView'];
export type VerdictCode = Schemas['VerdictCode'];
export type StatusView = Schemas['StatusView'];
export type StatusCode = Schemas['StatusCode'];
export type AliveView = Schemas['AliveView'];
export type TextsView = Schemas['TextsView'];
export type Problem = Schemas['Problem'];
export type Language = Schemas['Language'];
export type Units = Schemas['Units'];
export type Paper = Schemas['Paper'];

export interface Reading {
  lang: Language;
  units: Units;
}
export type DrawingKind = 'elevation' | 'chart' | 'stands' | 'movement' | 'way-in' | 'way-out';

export type Answer<T> =
  | { kind: 'ok'; value: T }
  | { kind: 'problem'; problem: Problem }
  | { kind: 'gone' };

interface Fetched<T> {
  data?: T;
  error?: unknown;
  response: Response;
}

const PATIENCE_MS = 8000;
/** Setting a long plan takes a while. */
const SHEET_PATIENCE_MS = 120_000;

export function connect(options: { baseUrl?: string; fetch?: (request: Request) => Promise<Response> } = {}) {
  const api = createClient<paths>({ baseUrl: '', ...options });
  const signal = () => AbortSignal.timeout(PATIENCE_MS);
  return {
    job: (query: Reading): Promise<Answer<JobView>> =>
      settle(api.GET('/api/jobs/current', { params: { query }, signal: signal() })),
    lift: (id: string, query: Reading): Promise<Answer<LiftView>> =>
      settle(api.GET('/api/jobs/current/lifts/{id}', { params: { path: { id }, query }, signal: signal() })),
    drawing: (id: string, kind: DrawingKind, query: Reading & { width: number }): Promise<Answer<string>> => {
      const asked = { params: { path: { id }, query }, parseAs: 'text', signal: signal() } as const;
      return settle(api.GET(`/api/jobs/current/lifts/{id}/${kind}.svg`, asked));
    },
    texts: (lang: Language): Promise<Answer<TextsView>> =>
      settle(api.GET('/api/texts', { params: { query: { lang } }, signal: signal() })),
    /** The plan sheet is wanted whole, so that whoever opens it afterwards gets it at once. */
    sheet: ({ lang, units }: Reading, paper: Paper): Promise<Answer<Blob>> => {
      const asked = { params: { query: { lang, units, paper } }, parseAs: 'blob', signal: AbortSignal.timeout(SHEET_PATIENCE_MS) } as const;
      return settle(api.GET('/api/jobs/current/plan-sheet.pdf', asked));
    },
    alive: (): Promise<Answer<AliveView>> => settle(api.GET('/api/alive', { signal: signal() })),
  };
}

export type Api = ReturnType<typeof connect>;

export function sheetAddress({ lang, units }: Reading, paper: Paper): string {
  return `/api/jobs/current/plan-sheet.pdf?lang=${lang}&units=${units}&paper=${paper}`;
}

export function plainAddress({ lang, units }: Reading): string {
  return `/plain?lang=${lang}&units=${units}`;
}

async function settle<T>(request: Promise<Fetched<T>>): Promise<Answer<T>> {
  try {
    const { data, error, response } = await request;
    if (response.ok && data !== undefined) return { kind: 'ok', value: data };
    return { kind: 'problem', problem: isProblem(error) ? error : unreadable(response) };
  } catch {
    // The connection was refused, broke off or took too long; or what came was not an answer of ours.
    return { kind: 'gone' };
  }
}

function isProblem(value: unknown): value is Problem {
  return typeof value === 'object' && value !== null && 'title' in value && 'detail' in value && 'status' in value;
}

function unreadable({ status, statusText }: Response): Problem {
  return { type: 'about:blank', title: statusText, status, detail: '' };
}
