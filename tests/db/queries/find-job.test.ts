import { expect, it } from 'vitest';
import { closeJob, planJob } from '@/db/commands/plan-job';
import { findJob } from '@/db/queries/jobs';
import { CloseJobInput, PlanJobInput } from '@/lib/shop/command-input';
import { ENV, entered, MEDIUM, may, must, testShop } from '../../support/db';

// source: hand. A job is found by its number however it stands; an unknown number finds nothing.
it('finds one job by its number, open or closed', () => {
  const db = testShop();
  const line = {
    lineNo: 1,
    connectionId: MEDIUM.id,
    materialId: '316',
    heat: '',
    ends: 24,
    operations: ['thread'],
    startOnDay: '2026-03-02',
    dueOnDay: '2026-03-13',
    value: 'ordinary',
  };
  const job = { id: 'J-1', title: 'Trial', lines: [line] };
  must(planJob(db, may('plan-job'), PlanJobInput.parse({ ...entered(), job }), ENV));
  expect(findJob(db, 'J-1')).toEqual({ id: 'J-1', title: 'Trial', status: 'open' });
  const close = CloseJobInput.parse({ ...entered(), jobId: 'J-1', how: 'cancelled' });
  must(closeJob(db, may('plan-job'), close, ENV));
  expect(findJob(db, 'J-1')?.status).toBe('cancelled');
  expect(findJob(db, 'J-2')).toBeUndefined();
});
