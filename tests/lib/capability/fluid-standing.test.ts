import { expect, it } from 'vitest';
import { fluidStanding, permits } from '@/lib/capability/fluid-standing';
import { queueLines } from '@/lib/capability/line-order';
import { planLine, setItem, TODAY } from '../../support/plan-shop';

// source: hand. The line is due on 13 March.
it('fluidStanding: quarantined, not permitted, expiring, then good wherever it stands', () => {
  const [queued] = queueLines([planLine()], [], TODAY);
  if (queued === undefined) throw new Error('one line was queued');
  const obstacle = (change: object) => fluidStanding(setItem('fluid', change), queued, TODAY).obstacle;
  expect(obstacle({ state: 'quarantined' })).toEqual({ kind: 'quarantined' });
  expect(obstacle({ permittedMaterialIds: ['Ti'] })).toEqual({ kind: 'fluid-not-permitted' });
  expect(obstacle({ expiresOnDay: '2026-03-12' })).toEqual({
    kind: 'fluid-expired',
    expiresOnDay: '2026-03-12',
  });
  expect(obstacle({ expiresOnDay: '2026-03-13' })).toBeNull();
  expect(obstacle({ state: 'issued', heldForLineId: 'other' })).toBeNull();
});

// source: hand.
it('permits: no list permits nothing', () => {
  expect(permits(undefined, 'M')).toBe(false);
  expect(permits([], 'M')).toBe(false);
  expect(permits(['M'], 'M')).toBe(true);
  expect(permits('all', 'M')).toBe(true);
});
