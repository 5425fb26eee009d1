import { describe, expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import { setNeeds } from '@/lib/capability/complete-set';
import { queueLines } from '@/lib/capability/line-order';
import { arrival, planLine, setItem, TODAY } from '../../support/plan-shop';

const context = { today: TODAY, lineDueOnDay: new Map<string, string>() };

// source: hand.
describe('listCandidates', () => {
  it('leaves out the scrapped, the lost and the late', () => {
    const items = [
      setItem('die', { toolId: 'A', state: 'scrapped' }),
      setItem('die', { toolId: 'B', state: 'lost' }),
    ];
    expect(listCandidates(items, [arrival('die', { expectedOnDay: '2026-03-01' })], context)).toEqual([]);
    expect(listCandidates([], [arrival('die', { expectedOnDay: TODAY })], context)).toHaveLength(1);
  });

  it('numbers new pieces by order id, whatever the days and the order of the list', () => {
    const first = arrival('die', { orderId: 'PO-1', quantity: 2, expectedOnDay: '2026-04-30' });
    const second = arrival('die', { orderId: 'PO-2', expectedOnDay: '2026-03-10' });
    const numbered = listCandidates([], [second, first], context).map(({ id, newIndex }) => [id, newIndex]);
    expect(numbered).toEqual([
      ['PO-1/part-die/0', 0],
      ['PO-1/part-die/1', 1],
      ['PO-2/part-die/0', 2],
    ]);
  });

  it('a late order keeps its numbers, so that its lives are dealt to no other', () => {
    const late = arrival('die', { orderId: 'PO-1', quantity: 2, expectedOnDay: '2026-03-01' });
    const good = arrival('die', { orderId: 'PO-2' });
    expect(listCandidates([], [late, good], context).map(({ newIndex }) => newIndex)).toEqual([2]);
  });

  it('fluid on order serves only what it is permitted on, in date', () => {
    const [queued] = queueLines([planLine()], [], TODAY);
    const need = setNeeds(['cone']).find(({ role }) => role === 'fluid');
    if (queued === undefined || need === undefined) throw new Error('cutting needs fluid');
    const standing = (change: object) => {
      const [piece] = listCandidates([], [arrival('fluid', { levelMl: 100, ...change })], context);
      return piece?.standing(queued, need);
    };
    expect(standing({})).toBeNull();
    expect(standing({ permittedMaterialIds: ['M'], expiresOnDay: '2026-03-12' })).toBeNull();
    expect(standing({ permittedMaterialIds: ['M'], expiresOnDay: '2026-03-13' })?.freeFromDay).toBe(
      '2026-03-20',
    );
  });

  it('throws on a broken quantity', () => {
    expect(() => listCandidates([], [arrival('die', { quantity: 1.5 })], context)).toThrow('whole quantity');
  });
});
