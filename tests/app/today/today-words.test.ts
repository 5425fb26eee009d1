import { expect, it } from 'vitest';
import { jobSummaries } from '@/app/_today/job-summaries';
import { isOutOnWork, shortReasons } from '@/app/_today/size-words';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { Verdict } from '@/lib/capability/line-verdict';
import { blocker, lineFacts, verdict } from '../../support/shop-record';

function row(lineId: string, answer: Verdict, endsToMake: number, dueOnDay: string): PlanRow {
  const jobId = lineId.split('.')[0] ?? '';
  const line = {
    ...lineFacts({ id: lineId, jobId, dueOnDay }),
    jobTitle: jobId,
    jobStatus: 'open',
    lineNo: 1,
    heat: '',
  };
  return {
    line: { ...line, jobStatus: 'open' },
    verdict: verdict({ lineId, verdict: answer }),
    connection: undefined,
    sizeText: '3⁄8 in medium pressure',
    material: undefined,
    materialText: '316',
    endsToMake,
    requiredProbability: 0.9,
  };
}

// source: hand. The worst of the lines that are not yet made speaks for the job; ends add up; the last day counts.
it('puts the lines of a job into one row', () => {
  const rows = [
    row('J-1.1', 'can-make', 4, '2026-03-20'),
    row('J-2.1', 'can-make', 8, '2026-03-13'),
    row('J-1.2', 'at-risk', 6, '2026-03-18'),
    row('J-2.2', 'cannot-make-now', 0, '2026-03-12'),
  ];
  expect(jobSummaries(rows)).toMatchObject([
    {
      jobId: 'J-1',
      endsToMake: 10,
      dueOnDay: '2026-03-20',
      verdict: 'at-risk',
      sizes: ['3⁄8 in medium pressure'],
    },
    { jobId: 'J-2', endsToMake: 8, dueOnDay: '2026-03-13', verdict: 'can-make' },
  ]);
  expect(jobSummaries([])).toEqual([]);
});

it('tells a size that is only out on a job from one that cannot be made', () => {
  const held = (role: 'die' | 'go-ring', lineId: string | null) =>
    blocker({ kind: 'held-elsewhere', role, lineId, untilDay: null });
  const spoilt = blocker({ kind: 'quarantined', role: 'go-ring' });
  expect(isOutOnWork([held('die', 'J-1.1'), held('go-ring', 'J-1.1'), spoilt])).toBe(true);
  expect(isOutOnWork([held('die', 'J-1.1'), spoilt])).toBe(false);
  expect(isOutOnWork([held('die', null)])).toBe(false);
  expect(isOutOnWork([])).toBe(false);
});

it('names the two most limiting reasons and counts the rest', () => {
  const roles = ['die', 'go-ring', 'blade', 'collet'] as const;
  const size = (n: number) =>
    shortReasons({
      verdict: 'cannot-make-now',
      blockers: roles.slice(0, n).map((role) => blocker({ role })),
    });
  expect([size(1), size(2), size(4)]).toEqual([
    'no die',
    'no die, no GO ring',
    'no die, no GO ring and 2 more',
  ]);
});
