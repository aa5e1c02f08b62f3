// Findings as a reader wants them: what stands against the lift first, then conditions, then the rest.
import type { FindingView, StatusCode } from '../api/client';

export type GroupName = 'against' | 'conditions' | 'within';

export interface Group {
  name: GroupName;
  findings: FindingView[];
}

const GROUP_OF: Record<StatusCode, GroupName> = {
  stop: 'against',
  'no-go': 'against',
  'cannot-tell': 'against',
  condition: 'conditions',
  go: 'within',
};

const ORDER: readonly GroupName[] = ['against', 'conditions', 'within'];

/** Groups that are not empty; inside a group the governing finding first, then the order of the checks. */
export function groupFindings(findings: readonly FindingView[], governing: number): Group[] {
  const leader = findings[governing];
  const ordered = leader ? [leader, ...findings.filter((f) => f !== leader)] : [...findings];
  return ORDER.map((name) => ({ name, findings: ordered.filter((f) => GROUP_OF[f.status.code] === name) })).filter(
    (group) => group.findings.length > 0,
  );
}
