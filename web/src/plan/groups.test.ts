import { expect, test } from 'vitest';
import type { FindingView, StatusCode } from '../api/client';
import { groupFindings } from './groups';

const finding = (id: string, code: StatusCode): FindingView => ({
  id,
  check: id,
  status: { code, word: code },
  sentence: '',
  remedies: [],
  sources: [],
  working: [],
});

test('what stands against comes first, the governing finding leads, the rest keeps its order', () => {
  const codes: StatusCode[] = ['go', 'condition', 'cannot-tell', 'stop', 'no-go', 'go', 'condition'];
  const findings = codes.map((code, i) => finding(`${i}`, code));
  const groups = groupFindings(findings, 4).map((g) => [g.name, g.findings.map((f) => f.id)]);
  expect(groups).toEqual([
    ['against', ['4', '2', '3']],
    ['conditions', ['1', '6']],
    ['within', ['0', '5']],
  ]);
});

test('a missing input is never among what is within limits', () => {
  expect(groupFindings([finding('a', 'cannot-tell')], 0).map((g) => g.name)).toEqual(['against']);
});

test('every finding is shown once, whatever the governing index', () => {
  const findings = [finding('a', 'go'), finding('b', 'no-go')];
  for (const governing of [0, 1, 7, -1]) {
    const shown = groupFindings(findings, governing).flatMap((g) => g.findings.map((f) => f.id));
    expect(shown.sort()).toEqual(['a', 'b']);
  }
});
