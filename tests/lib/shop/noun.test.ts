import { expect, it } from 'vitest';
import { CutSchema } from '@/lib/shop/cut';
import { JobLineSchema } from '@/lib/shop/job';
import { ShopSchema } from '@/lib/shop/shop-settings';
import { cut } from '../../support/entry';
import { TAKEN } from '../../support/inputs';

const first = (result: { error?: { issues: { message: string; path: PropertyKey[] }[] } }) => {
  const issue = result.error?.issues[0];
  return issue && [issue.path.join('.'), issue.message];
};

it('a row cannot have more good ends than ends, nor more rejects than bad ones', () => {
  expect(first(CutSchema.safeParse(cut({ ends: 3, goodEnds: 4 })))).toEqual([
    ...['goodEnds', 'More good ends than ends cut.'],
  ]);
  const rejects = [
    { cause: 'go-tight', count: 1 },
    { cause: 'length', count: 1 },
  ] as const;
  expect(first(CutSchema.safeParse(cut({ ends: 3, goodEnds: 2, rejects: [...rejects] })))).toEqual([
    ...['rejects', 'The rejects by cause add up to more than the ends that were not good.'],
  ]);
  expect(CutSchema.safeParse(cut({ ends: 4, goodEnds: 2, rejects: [...rejects] })).success).toBe(true);
});

it('a line is due no earlier than it starts, and does something', () => {
  const line = TAKEN.JobLineSchema?.[1];
  expect(first(JobLineSchema.safeParse({ ...line, dueOnDay: '2026-03-08' }))).toEqual([
    ...['dueOnDay', 'The due day lies before the start day.'],
  ]);
  expect(first(JobLineSchema.safeParse({ ...line, operations: [] }))).toEqual([
    ...['operations', 'Say what is done: cone, thread or assemble.'],
  ]);
});

it('a shop needs only its name', () => {
  expect(ShopSchema.parse({ name: 'Crib' })).toMatchObject({ units: 'in', requiredProbability: 0.9 });
});
