import { expect, it } from 'vitest';
import { threadDesignation } from '@/lib/thread/designation';
import { rational } from '@/lib/units/rational';

// source: published. ASME B1.1 designation: size-TPI series, LH added for left hand, right hand unmarked (from memory).
it('spells the left hand and leaves the right unmarked', () => {
  const sizeIn = rational(9, 16);
  expect(threadDesignation({ sizeIn, tpi: 18, hand: 'LH' })).toEqual({
    text: '9/16-18 UNF-LH',
    screenText: '9⁄16-18 UNF-LH',
    handWords: 'left hand',
    series: 'UNF',
  });
  const right = threadDesignation({ sizeIn, tpi: 18, hand: 'RH' });
  expect([right.text, right.handWords]).toEqual(['9/16-18 UNF', 'right hand']);
  expect(threadDesignation({ sizeIn: rational(1, 1), tpi: 14, hand: 'LH' }).text).toBe('1-14 UNS-LH');
});

// source: hand. No row in the table, so no series in the text.
it('guesses no series', () => {
  const special = threadDesignation({ sizeIn: rational(1, 2), tpi: 27, hand: 'LH' });
  expect(special).toMatchObject({ text: '1/2-27-LH', series: undefined });
});

it('throws without threads per inch', () => {
  expect(() => threadDesignation({ sizeIn: rational(1, 2), tpi: 0, hand: 'LH' })).toThrow('invariant broken');
});
