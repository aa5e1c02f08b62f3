import { expect, test } from 'vitest';
import { connect, sheetAddress } from './client';

function answering(answer: (request: Request) => Promise<Response>) {
  const seen: string[] = [];
  const api = connect({
    baseUrl: 'http://plan.test',
    fetch: (request) => {
      seen.push(request.url);
      return answer(request);
    },
  });
  return { api, seen };
}

const reading = { lang: 'es', units: 'us' } as const;

test('an answer is a value, asked for in the reader’s language and units', async () => {
  const { api, seen } = answering(async () => Response.json({ version: '1', digest: 'abc' }));
  expect(await api.alive()).toEqual({ kind: 'ok', value: { version: '1', digest: 'abc' } });
  await api.lift('a b/c', reading);
  expect(seen[1]).toBe('http://plan.test/api/jobs/current/lifts/a%20b%2Fc?lang=es&units=us');
});

test('a drawing is text, asked for at the width at which it is shown', async () => {
  const { api, seen } = answering(async () => new Response('<svg/>'));
  expect(await api.drawing('L1', 'chart', { ...reading, width: 360 })).toEqual({ kind: 'ok', value: '<svg/>' });
  expect(seen[0]).toBe('http://plan.test/api/jobs/current/lifts/L1/chart.svg?lang=es&units=us&width=360');
});

test('a problem keeps what the server said', async () => {
  const problem = { type: 'urn:counterpoise:problem:lift-unknown', title: 'No such lift', status: 404, detail: 'L1' };
  const { api } = answering(async () => Response.json(problem, { status: 404 }));
  expect(await api.lift('L9', reading)).toEqual({ kind: 'problem', problem });
});

test('an error that is not a problem of ours is still one', async () => {
  const { api } = answering(async () => new Response('oops', { status: 502, statusText: 'Bad Gateway' }));
  const answer = await api.job(reading);
  expect(answer).toEqual({ kind: 'problem', problem: { type: 'about:blank', title: 'Bad Gateway', status: 502, detail: '' } });
});

test.each([
  ['refused', async () => Promise.reject(new TypeError('fetch failed'))],
  ['cut off', async () => new Response('{"version":', { headers: { 'content-type': 'application/json' } })],
])('nobody there: %s', async (_, answer) => {
  const { api } = answering(answer);
  expect(await api.alive()).toEqual({ kind: 'gone' });
});

test('the address of the plan sheet carries language, units and paper', () => {
  expect(sheetAddress(reading, 'letter')).toBe('/api/jobs/current/plan-sheet.pdf?lang=es&units=us&paper=letter');
});
