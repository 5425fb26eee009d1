import { expect, it } from 'vitest';
import { labelLines } from '@/lib/labels/label-lines';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';

const lines = (
  fitsConnectionIds: string[],
  hand: 'LH' | 'RH' | null,
  role: 'die' | 'brush' = 'die',
  designation = '',
) => labelLines({ id: 'T-1', role, hand }, { fitsConnectionIds, designation }, SHIPPED_CONNECTIONS);

// source: hand. Size as a true fraction, hand in letters and words, kind; medium and high of one size are one size.
it('says size, hand and kind', () => {
  expect(lines(['9-16-medium', '9-16-high'], 'LH', 'die', '9/16-18 UNF-LH')).toEqual([
    '9⁄16 in  LH left hand',
    'threading die',
    '9/16-18 UNF-LH',
  ]);
  expect(lines(['3-4-medium', '3-8-medium'], 'RH')).toEqual(['3⁄8 · 3⁄4 in  RH right hand', 'threading die']);
});

// source: hand. What serves everything names no size, and what has no hand names none.
it('leaves out what there is not', () => {
  expect(lines([], null, 'brush')).toEqual(['brush']);
  expect(
    lines(
      SHIPPED_CONNECTIONS.map(({ id }) => id),
      null,
      'brush',
    ),
  ).toEqual(['brush']);
});
