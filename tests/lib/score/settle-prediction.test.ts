import { describe, expect, it } from 'vitest';
import type { Prediction } from '@/lib/score/prediction';
import { settled, settleLineMade, settleOrderBy, settleToolFinishes } from '@/lib/score/settle-prediction';

const row = (atMs: number, ends: number, goodEnds = ends) => ({ atMs, ends, goodEnds });

describe('a tool that was to finish 24 ends', () => {
  it('and cut them did, when the last was cut', () => {
    const since = { rows: [row(1, 12), row(2, 12), row(3, 30)], ended: null };
    expect(settleToolFinishes(24, since)).toEqual({
      ...{ outcome: true, reason: 'cut-them', atMs: 2, lasted: { ends: 54, exact: false } },
    });
  });

  it('and wore out before did not', () => {
    const since = { rows: [row(1, 12), row(2, 8, 6)], ended: { how: 'worn' as const, atMs: 2 } };
    expect(settleToolFinishes(24, since)).toEqual({
      ...{ outcome: false, reason: 'wore-out-before', atMs: 2, lasted: { ends: 18, exact: true } },
    });
  });

  it('and was found worn on the last of them did not; worn after it, it did', () => {
    const worn = { how: 'worn' as const, atMs: 2 };
    expect(settleToolFinishes(24, { rows: [row(1, 12), row(2, 12, 11)], ended: worn })?.outcome).toBe(false);
    expect(settleToolFinishes(24, { rows: [row(1, 12), row(2, 12, 12)], ended: worn })?.outcome).toBe(true);
  });

  it.each([
    ['removed-working', 'removed-while-good'],
    ['incident', 'incident'],
    ['lost', 'lost'],
  ] as const)('and was ended before by %s is not scored', (how, reason) => {
    const since = { rows: [row(1, 12)], ended: { how, atMs: 5 } };
    expect(settleToolFinishes(24, since)).toEqual({ outcome: null, reason, atMs: 5 });
  });

  // source: hand. An end of other work takes more or less than was spoken of: from there on nothing follows.
  it('and was put to other work before is not scored; after it, it is', () => {
    const other = { ...row(2, 30), otherWork: true };
    const worn = { how: 'worn' as const, atMs: 3 };
    expect(settleToolFinishes(24, { rows: [row(1, 12), other], ended: worn })).toEqual({
      ...{ outcome: null, reason: 'other-work', atMs: 2 },
    });
    expect(settleToolFinishes(12, { rows: [row(1, 12), other], ended: worn })).toEqual({
      ...{ outcome: true, reason: 'cut-them', atMs: 1, lasted: { ends: 12, exact: false } },
    });
  });

  it('and still cuts is open', () => {
    expect(settleToolFinishes(24, { rows: [row(1, 12)], ended: null })).toBeUndefined();
  });
});

describe('a line and an order', () => {
  const today = { day: '2031-03-10', atMs: 9 };
  const line = { doneOnDay: null, cancelled: false, byDay: '2031-03-09' };

  it('are settled by their day', () => {
    expect(settleLineMade({ ...line, doneOnDay: '2031-03-09' }, today)?.outcome).toBe(true);
    expect(settleLineMade({ ...line, doneOnDay: '2031-03-10' }, today)?.outcome).toBe(false);
    expect(settleLineMade(line, today)).toEqual({ outcome: false, reason: 'late', atMs: 9 });
    expect(settleLineMade({ ...line, byDay: '2031-03-10' }, today)).toBeUndefined();
    const order = { receivedOnDay: null, cancelled: false, byDay: '2031-03-09' };
    expect(settleOrderBy({ ...order, receivedOnDay: '2031-03-01' }, today)?.reason).toBe('arrived-in-time');
    expect(settleOrderBy({ ...order, receivedOnDay: '2031-03-10' }, today)?.outcome).toBe(false);
    expect(settleOrderBy(order, today)?.outcome).toBe(false);
    expect(settleOrderBy({ ...order, byDay: '2031-03-11' }, today)).toBeUndefined();
  });

  it('that were cancelled are not scored', () => {
    expect(settleLineMade({ ...line, cancelled: true }, today)?.outcome).toBeNull();
    expect(
      settleOrderBy({ receivedOnDay: null, cancelled: true, byDay: '2031-03-01' }, today)?.outcome,
    ).toBeNull();
  });
});

it('the first settlement stands', () => {
  const prediction: Prediction = {
    id: 'p',
    madeAtMs: 0,
    kind: 'tool-finishes',
    probability: 0.8,
    what: {},
    settled: null,
  };
  const once = settled(prediction, { outcome: true, reason: 'cut-them', atMs: 1 });
  expect(settled(once, { outcome: false, reason: 'wore-out-before', atMs: 2 })).toBe(once);
  expect(settled(prediction, undefined)).toBe(prediction);
});
