import { expect, it } from 'vitest';
import { readShopFacts } from '@/db/queries/shop-facts';
import { addDays } from '@/lib/calendar/day';
import { computeOutlook } from '@/lib/outlook/outlook';
import { DEMO_DAY, demoShop, rowsOf } from '@/tests/support/demo-shop';

const db = demoShop();
const { lines } = computeOutlook(readShopFacts(db, { today: DEMO_DAY }));
const verdictOf = (jobId: string) => lines.find((line) => line.jobId === jobId);

// source: hand. The opening dashboard of the story: most lines go, one waits for a die, one cannot be made at all.
it('opens on a plan with a mix of verdicts', () => {
  const byVerdict = (verdict: string) =>
    lines.filter((line) => line.verdict === verdict).map(({ jobId }) => jobId);
  expect(byVerdict('at-risk')).toEqual(['J-087']);
  expect(byVerdict('cannot-make-now')).toEqual(['J-094']);
  expect(byVerdict('can-make')).toHaveLength(7);
});

// source: hand. The one 3/8 die lasts for 24 ends and not surely for 40 more; two are due in twelve days.
it('has the second 3/8 job wait for the die on order', () => {
  const line = verdictOf('J-087');
  expect(line?.blockers.map(({ role, kind }) => `${role} ${kind}`)).toEqual(['die life-short']);
  expect((line?.clearsOnDay ?? '') >= addDays(DEMO_DAY, 12)).toBe(true);
  const order = "SELECT part_id, expected_on_day FROM purchase_order WHERE id = 'PO-118'";
  expect(rowsOf(db, order)).toEqual([{ part_id: 'die-3-8', expected_on_day: addDays(DEMO_DAY, 12) }]);
});

// source: hand. 1 in high pressure: no row in the table, and nothing that fits it; no dimension is made up.
it('names what is missing for 1 in high pressure', () => {
  const line = verdictOf('J-094');
  const kinds = new Map(line?.blockers.map(({ role, kind }) => [role, kind]));
  expect(kinds.get(null)).toBe('unknown-connection');
  for (const role of [
    'die',
    'blade',
    'coning-guide',
    'threading-guide',
    'go-ring',
    'not-go-ring',
    'cone-gauge',
  ] as const) {
    expect(kinds.get(role)).toBe('missing');
  }
  expect(line?.safeEnds).toBeNull();
  expect(rowsOf(db, "SELECT 1 FROM connection WHERE id = '1-high'")).toEqual([]);
});

// source: hand. The 1/4 GO ring is due in six days, its twin is back from the lab in four.
it('has the 1/4 GO ring due in six days', () => {
  expect(
    rowsOf(db, "SELECT id, state, due_on_day, back_on_day FROM tool WHERE id LIKE 'G-25-GO-%' ORDER BY id"),
  ).toEqual([
    { id: 'G-25-GO-1', state: 'in-crib', due_on_day: addDays(DEMO_DAY, 6), back_on_day: null },
    {
      id: 'G-25-GO-2',
      state: 'calibration',
      due_on_day: addDays(DEMO_DAY, 2),
      back_on_day: addDays(DEMO_DAY, 4),
    },
  ]);
});

// source: hand. A spool that cannot be remade asks for more certainty.
it('plans one precious line', () => {
  expect(rowsOf(db, "SELECT job_id, connection_id FROM job_line WHERE value = 'precious'")).toEqual([
    { job_id: 'J-092', connection_id: '1-4-high' },
  ]);
});
