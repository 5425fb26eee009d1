import { describe, expect, it } from 'vitest';
import type { Change } from '@/lib/what-if/change';
import { changeOf, changeText, readChange } from '@/lib/what-if/change-text';

const EVERY: readonly Change[] = [
  {
    kind: 'add-line',
    connectionId: '9-16-high',
    materialId: '2507',
    ends: 200,
    startOnDay: '2026-03-02',
    dueOnDay: '2026-03-30',
    value: 'precious',
  },
  { kind: 'change-dates', lineId: 'J-1.1', startOnDay: '2026-03-02', dueOnDay: '2026-03-03' },
  { kind: 'change-material', lineId: 'J-1.1', materialId: '2507' },
  { kind: 'change-ends', lineId: 'J-1.1', ends: 5 },
  { kind: 'drop-line', lineId: 'J-1.1' },
  { kind: 'slip-order', orderId: 'PO-1', days: -21 },
  { kind: 'add-order', partId: 'die-3-8', quantity: 2, promisedOnDay: '2026-04-01' },
  {
    kind: 'add-order',
    partId: 'die-3-8',
    quantity: 2,
    promisedOnDay: '2026-04-01',
    supplier: 'Tenfold & Co',
  },
  { kind: 'lose-tool', toolId: 'D-38-11' },
  { kind: 'add-tool', partId: 'die-3-8', quantity: 1 },
  { kind: 'free-tool', toolId: 'D-38-11' },
  { kind: 'calibrate-tool', toolId: 'G-1', dueOnDay: '2027-03-02' },
  { kind: 'regrind-tool', toolId: 'B-1', backOnDay: '2026-03-20' },
  { kind: 'add-bench', quantity: 1 },
];

describe('a change in an address', () => {
  // source: identity. What is written is what is read.
  it.each(EVERY.map((change) => [change.kind, change] as const))(
    'goes out and comes back: %s',
    (_, change) => {
      expect(readChange(changeText(change))).toEqual({ ok: true, value: change });
    },
  );

  // source: hand. Each address is wrong in one stated way.
  it.each([
    ['sell-tool~D-38-11', 'is not a change'],
    ['slip-order~PO-1~three', 'Days must be a number'],
    ['slip-order~PO-1~9999', 'at most 365'],
    ['lose-tool', 'The tool is needed'],
    ['change-dates~J-1.1~2026-03-09~2026-03-02', 'before the start day'],
    ['add-order~die-3-8~1~2026-02-30', 'not a day in the calendar'],
    ['add-bench~0', 'at least 1'],
    [`add-order~die-3-8~1~2026-04-01~${'x'.repeat(81)}`, 'longer than 80'],
  ])('refuses %s', (text, sentence) => {
    const read = readChange(text);
    expect(read.ok ? '' : read.refusal.sentence).toContain(sentence);
  });

  // source: hand.
  it('takes the fields of a form with spaces about them', () => {
    expect(changeOf('slip-order', { orderId: ' PO-1 ', days: '21' })).toEqual({
      ok: true,
      value: { kind: 'slip-order', orderId: 'PO-1', days: 21 },
    });
  });
});
