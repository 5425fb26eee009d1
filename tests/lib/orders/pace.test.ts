import { expect, it } from 'vitest';
import { pacePerDay } from '@/lib/orders/pace';
import { END_TURNS, exactLives, ORDER_DIE } from '../../support/order-shop';
import { shopRecord } from '../../support/shop-record';

const use = {
  connectionId: '3-8-medium',
  materialId: '316-cw',
  operation: 'thread' as const,
  ends: 91,
  days: 182,
};

// source: hand. 91 ends in 182 days: half an end a day. Cones are the blade's, an unknown material nobody's.
it('is ends a day times the exposure of an end', () => {
  const recentUse = [use, { ...use, operation: 'cone' as const }, { ...use, materialId: 'unobtainium' }];
  const facts = shopRecord({ recentUse });
  expect(pacePerDay('die', ORDER_DIE.id, facts, exactLives(50))[0]).toBeCloseTo(END_TURNS / 2, 12);
  expect(pacePerDay('die', 'another', facts, exactLives(50))[0]).toBe(0);
  expect(pacePerDay('die', ORDER_DIE.id, shopRecord(), exactLives(50))[0]).toBe(0);
});
