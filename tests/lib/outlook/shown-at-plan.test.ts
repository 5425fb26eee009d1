import { expect, it } from 'vitest';
import { computeOutlook } from '@/lib/outlook/outlook';
import { shownAtPlan } from '@/lib/outlook/shown-at-plan';
import { jobLineId } from '@/lib/shop/job-line-id';
import { lineFacts } from '../../support/shop-record';
import { wearFacts } from '../../support/wear-shop';

const { id: _, jobId: _job, goodCones: _cones, goodThreads: _threads, ...work } = lineFacts({ ends: 40 });
const line = { ...work, lineNo: 1, heat: '', operations: [...work.operations] };
const job = { id: 'J-7', lines: [line] };

// source: identity. What is kept is what every screen says once the job is entered: the same futures, the same plan.
it('is the verdict that the plan gives once the job stands in it', () => {
  const before = computeOutlook(wearFacts({ lines: [lineFacts()] }));
  const lines = [lineFacts(), lineFacts({ ...work, id: jobLineId('J-7', 1), jobId: 'J-7' })];
  const after = computeOutlook(wearFacts({ lines })).lines.find(({ jobId }) => jobId === 'J-7');
  expect(shownAtPlan(before, job)).toEqual([
    {
      ...{ lineNo: 1, verdict: after?.verdict, pMade: after?.pMade, ends: 40 },
      edges: after?.blockers.flatMap((blocker) =>
        blocker.kind === 'life-short' ? [{ kind: blocker.role, pLasts: blocker.pMade }] : [],
      ),
    },
  ]);
  expect(after?.pMade).toBeLessThan(1);
});

// source: hand. A change replaces the lines of the job; ends already made are not asked for again; nothing left, nothing said.
it('asks for what is still to make of a job that is changed', () => {
  const made = (good: number) =>
    computeOutlook(
      wearFacts({
        lines: [lineFacts({ ...work, id: 'J-7.1', jobId: 'J-7', goodCones: good, goodThreads: good })],
      }),
    );
  expect(shownAtPlan(made(15), job).map(({ ends }) => ends)).toEqual([25]);
  expect(shownAtPlan(made(40), job)).toEqual([]);
});
