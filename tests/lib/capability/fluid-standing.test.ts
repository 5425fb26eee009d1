import { expect, it } from 'vitest';
import { fluidStanding, objectionTo } from '@/lib/capability/fluid-standing';
import { queueLines } from '@/lib/capability/line-order';
import { planLine, setItem, TODAY } from '../../support/plan-shop';

// source: hand. The line is due on 13 March.
it('fluidStanding: quarantined, not permitted, expiring, then good wherever it stands', () => {
  const [queued] = queueLines([planLine()], [], TODAY);
  if (queued === undefined) throw new Error('one line was queued');
  const obstacle = (change: object) => fluidStanding(setItem('fluid', change), queued, TODAY).obstacle;
  expect(obstacle({ state: 'quarantined' })).toEqual({ kind: 'quarantined' });
  expect(obstacle({ permittedMaterialIds: ['Ti'] })).toEqual({
    kind: 'fluid-not-permitted',
    why: 'material',
  });
  expect(obstacle({ expiresOnDay: '2026-03-12' })).toEqual({
    kind: 'fluid-expired',
    expiresOnDay: '2026-03-12',
  });
  expect(obstacle({ expiresOnDay: '2026-03-13' })).toBeNull();
  expect(obstacle({ state: 'issued', heldForLineId: 'other' })).toBeNull();
});

// source: hand. Stated; titanium and oxygen as the trade's practice has it.
it('objectionTo: no list permits nothing, chlorine is kept off titanium, services are flagged', () => {
  const line = planLine({ materialId: 'M' });
  const oil = { permittedMaterialIds: 'all', chlorinated: 'yes' } as const;
  expect(objectionTo({}, line)).toBe('material');
  expect(objectionTo({ permittedMaterialIds: [] }, line)).toBe('material');
  expect(objectionTo({ permittedMaterialIds: ['M'] }, line)).toBeNull();
  expect(objectionTo(oil, line)).toBeNull();
  expect(objectionTo(oil, { ...line, titanium: true })).toBe('titanium-chlorinated');
  expect(objectionTo({ permittedMaterialIds: 'all' }, { ...line, titanium: true })).toBe('titanium-unknown');
  expect(objectionTo(oil, { ...line, duty: 'oxygen' })).toBe('duty');
  expect(objectionTo({ ...oil, permittedDuties: ['oxygen'] }, { ...line, duty: 'oxygen' })).toBeNull();
});

// source: hand. The label says 12 March, an inspection lengthened it to April, the line is due on the 13th.
it('an extended life does not count for oxygen', () => {
  const oil = {
    expiresOnDay: '2026-04-30',
    labelledUseByDay: '2026-03-12',
    permittedDuties: ['ordinary', 'oxygen'],
  };
  const obstacle = (duty: 'ordinary' | 'oxygen') => {
    const [queued] = queueLines([planLine({ duty })], [], TODAY);
    return queued && fluidStanding(setItem('fluid', oil as object), queued, TODAY).obstacle;
  };
  expect(obstacle('ordinary')).toBeNull();
  expect(obstacle('oxygen')).toEqual({ kind: 'fluid-expired', expiresOnDay: '2026-03-12' });
});
