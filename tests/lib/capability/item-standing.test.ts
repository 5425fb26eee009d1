import { describe, expect, it } from 'vitest';
import { setNeeds } from '@/lib/capability/complete-set';
import { itemStanding } from '@/lib/capability/item-standing';
import { queueLines } from '@/lib/capability/line-order';
import type { SetItem } from '@/lib/capability/plan-input';
import type { Role } from '@/lib/shop/vocabulary';
import { planLine, setItem, TODAY } from '../../support/plan-shop';

/** The line runs from 9 to 13 March; 'L2' of the same plan is due on the 10th. */
function standing(role: Role, change: Partial<SetItem>) {
  const [queued] = queueLines([planLine()], [{ connectionId: 'S', hand: 'LH' }], TODAY);
  const need = setNeeds(['cone', 'thread', 'assemble']).find((n) => n.role === role);
  if (queued === undefined || need === undefined) throw new Error('the line needs the role');
  const lineDueOnDay = new Map([
    ['L1', '2026-03-13'],
    ['L2', '2026-03-10'],
  ]);
  return itemStanding(setItem(role, change), need, queued, { today: TODAY, lineDueOnDay });
}

// source: hand. Days counted off on a calendar.
describe('itemStanding', () => {
  it('in the crib, or issued to this very line: usable now', () => {
    expect(standing('die', {})).toEqual({ freeFromDay: TODAY, obstacle: null });
    expect(standing('die', { state: 'issued', heldForLineId: 'L1' })).toEqual({
      freeFromDay: TODAY,
      obstacle: null,
    });
  });

  it('issued to another line: free the day after that line is due', () => {
    expect(standing('coning-body', { state: 'issued', heldForLineId: 'L2' })).toEqual({
      freeFromDay: '2026-03-11',
      obstacle: { kind: 'held-elsewhere', lineId: 'L2', untilDay: '2026-03-10' },
    });
  });

  it('a stated return day counts before the holder’s due day, unless it has passed', () => {
    const held = { state: 'issued', heldForLineId: 'L2' } as const;
    expect(standing('coning-body', { ...held, backOnDay: '2026-03-09' }).obstacle).toBeNull();
    expect(standing('coning-body', { ...held, backOnDay: '2026-03-01' }).freeFromDay).toBeNull();
  });

  it('what is handed across the bench counts though issued', () => {
    expect(standing('brush', { state: 'issued', heldForLineId: 'L2' }).obstacle).toBeNull();
    expect(standing('torque-wrench', { state: 'issued' }).obstacle).toBeNull();
  });

  it('a gauge that comes late must be in calibration as many days longer', () => {
    const late = { state: 'issued', backOnDay: '2026-03-12' } as const;
    expect(standing('go-ring', { ...late, dueOnDay: '2026-03-16' }).obstacle?.kind).toBe('held-elsewhere');
    expect(standing('go-ring', { ...late, dueOnDay: '2026-03-15' })).toEqual({
      freeFromDay: null,
      obstacle: { kind: 'calibration-lapses', dueOnDay: '2026-03-15' },
    });
  });

  it('a blade has no calibration to lapse', () => {
    expect(standing('blade', { dueOnDay: null }).obstacle).toBeNull();
  });
});
