import { describe, expect, it } from 'vitest';
import { cellState } from '@/app/plan/weeks/_parts/shop-weeks';
import { addedChange, askedChanges, whatIfHref } from '@/app/plan/what-if/_parts/asked-changes';
import { lineWords, plainTools } from '@/app/plan/what-if/_parts/move-words';
import { blocker } from '../../support/shop-record';
import { whatIfFacts } from '../../support/what-if-shop';

// source: identity. The address holds the question: what is read from it makes the same address again.
describe('the address of a question', () => {
  it('is read and written alike, and says what in it is wrong', () => {
    const c = ['lose-tool~DIE-1', 'slip-order~PO-1~21'];
    const { changes, refusals } = askedChanges({ c });
    expect(refusals).toEqual([]);
    expect(whatIfHref(changes)).toBe('/plan/what-if?c=lose-tool%7EDIE-1&c=slip-order%7EPO-1%7E21');
    expect(whatIfHref([])).toBe('/plan/what-if');
    expect(askedChanges({ c: 'sell-tool~X' }).refusals).toHaveLength(1);
    expect(askedChanges({ c: Array(50).fill('lose-tool~DIE-1') }).changes).toHaveLength(20);
  });

  it('a form adds one change; a wrong one is refused with its sentence', () => {
    expect(addedChange({})).toBeUndefined();
    expect(addedChange({ add: 'slip-order', orderId: 'PO-1', days: '21' })).toMatchObject({ ok: true });
    expect(addedChange({ add: 'slip-order', orderId: 'PO-1', days: 'x' })).toMatchObject({ ok: false });
    expect(addedChange({ add: 'no-such' })).toBeUndefined();
  });
});

// source: hand.
it('what a question brings in is called by plain words', () => {
  const { lines } = whatIfFacts();
  expect(lineWords('~what-if-1', lines)).toBe('the new job');
  expect(lineWords('J-1.1', lines)).toBe('job J-1');
  expect(plainTools('Threading die (~what-if-2-1 die-3-8) is quarantined.')).toBe(
    'Threading die (a new die-3-8) is quarantined.',
  );
});

// source: hand. A size whose set is out with a planned line is in use; one with a gauge out of date is not.
it('cellState tells what is taken from what is missing', () => {
  const taken = blocker({ kind: 'held-elsewhere', lineId: 'J-1.1', untilDay: '2026-03-13' });
  const loan = blocker({ kind: 'held-elsewhere', lineId: null, untilDay: null });
  const state = (...blockers: (typeof taken)[]) => cellState({ verdict: 'cannot-make-now', blockers });
  expect(state(taken)).toBe('in-use');
  expect(state(taken, loan)).toBe('cannot-make-now');
  expect(state(taken, blocker({ kind: 'missing' }))).toBe('cannot-make-now');
  expect(cellState({ verdict: 'can-make', blockers: [] })).toBe('can-make');
});
