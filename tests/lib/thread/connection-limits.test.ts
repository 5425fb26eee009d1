import { expect, it } from 'vitest';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { connectionLimits } from '@/lib/thread/connection-limits';

const ROW = { odNum: 3, odDen: 8, tpi: 24, threadClass: '2A' };

// source: formula. M = E + 3W − 0.866025P at the printed 2A limits of 3/8-24, worked outside this project: 0.38288 and 0.37908 in.
it('gives the limits over the best wires', () => {
  const limits = connectionLimits(ROW);
  expect((limits?.overWiresMaxMm ?? 0) / 25.4).toBeCloseTo(0.38288, 5);
  expect((limits?.overWiresMinMm ?? 0) / 25.4).toBeCloseTo(0.37908, 5);
  expect(connectionLimits({ ...ROW, threadClass: ' 2a ' })).toEqual(limits);
});

// source: hand. A class or a thread that the formulas do not know gets no limits; none are invented.
it('knows what it does not know', () => {
  expect(connectionLimits({ ...ROW, threadClass: 'maker' })).toBeUndefined();
  expect(connectionLimits({ ...ROW, tpi: 4, odNum: 1, odDen: 4 })).toBeUndefined();
  expect(connectionLimits({ ...ROW, odNum: 8, odDen: 1 })).toBeUndefined();
});

// source: identity. Every row that a new shop starts from has limits.
it('serves every shipped row', () => {
  expect(SHIPPED_CONNECTIONS.map((row) => connectionLimits(row)?.threadClass)).toEqual(Array(8).fill('2A'));
});
