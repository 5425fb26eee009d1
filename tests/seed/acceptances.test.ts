import { expect, it } from 'vitest';
import { findLineStanding } from '@/db/queries/acceptance';
import { linesWithHeldEnds } from '@/db/queries/held-ends';
import { readRecallSheet } from '@/db/queries/recall-sheet';
import { traceEnd } from '@/db/queries/trace';
import { demoShop, rowsOf } from '../support/demo-shop';

const db = demoShop();

// source: hand. The story’s figures: 3 160 ends accepted and still counted, 122 refused when first looked at.
it('every end of the closed jobs was looked at, and each counts once', () => {
  const lines = rowsOf<{ id: string; ends: number }>(
    db,
    `SELECT l.id, l.ends FROM job_line l JOIN job j ON j.id = l.job_id WHERE j.status = 'done'`,
  );
  const standings = lines.map(({ id, ends }) => ({ ends, ...findLineStanding(db, id) }));
  const sum = (pick: (one: (typeof standings)[number]) => number) =>
    standings.reduce((total, one) => total + pick(one), 0);
  expect(sum(({ acceptedEnds }) => acceptedEnds)).toBe(3160);
  expect(sum(({ refusedEnds }) => refusedEnds)).toBe(122);
  expect(standings.filter(({ acceptedEnds, ends }) => acceptedEnds !== ends)).toEqual([]);
});

// source: hand. The story: 141 ends since the last check; 96 cleared by a blue check, 45 gauged again, 2 of them made anew.
it('Q2: the recall of the 3/8 cone gauge lists 141 ends and is closed', () => {
  const sheet = readRecallSheet(db, 'CG-38-1.R1');
  expect(sheet?.recall).toMatchObject({ status: 'closed', evidence: 'interim', direction: 'large' });
  const total = (how: string) =>
    sheet?.recall.disposals.reduce((sum, one) => sum + (one.how === how ? one.endCount : 0), 0);
  expect(sheet?.suspects.reduce((sum, { endCount }) => sum + endCount, 0)).toBe(141);
  expect([total('cleared-otherwise'), total('regauged-good'), total('reworked')]).toEqual([96, 43, 2]);
  expect(new Set(sheet?.suspects.map(({ shippedOnDay }) => shippedOnDay !== null))).toEqual(
    new Set([true, false]),
  );
});

// source: hand. One end of the newest job was accepted with nothing written down; nothing else is held.
it('one end waits to be gauged again, and the rest can be released', () => {
  expect(linesWithHeldEnds(db).map(({ ends }) => ends)).toEqual([1]);
});

// source: hand. Two ends to a spool; the second of S-18.
it('Q31: end 2 of spool S-18 is found by its mark, with blade, die, gauges and certificates of that day', () => {
  const trace = traceEnd(db, { mark: 'S-18 end 2' });
  expect(trace).toMatchObject({ connectionId: '1-4-high', materialId: '2507' });
  const [look] = trace?.looks ?? [];
  expect(look?.die?.usedThen?.exposureMicro).toBeGreaterThan(0);
  expect(look?.blade?.toolId).toMatch(/^B-25H/);
  expect(look?.fluid?.toolId).toMatch(/^F-L/);
  expect(look?.gauges.map(({ role }) => role)).toEqual(['go-ring', 'not-go-ring', 'cone-gauge']);
});
