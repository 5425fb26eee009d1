import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clashingToolId, isMarkable, tidyToolId, toolKey } from '@/lib/shop/tool-id';

// source: hand. Rules of the doc block applied one by one; the dashes are U+2013, U+2212, U+2011 and U+FF0D.
it.each([
  [' d-38-11 ', 'D-38-11'],
  ['D–38–11', 'D-38-11'],
  ['d−38‑11', 'D-38-11'],
  ['D-38－11', 'D-38-11'],
  ['D 38  11', 'D-38-11'],
  ['D - 38 - 11', 'D-38-11'],
  ['D\u00a038-11\r\n', 'D-38-11'],
  ['Ｄ-38-11', 'D-38-11'],
  ['-D-38-', 'D-38'],
  ['', ''],
])('tidyToolId(%j) is %s', (typed, tidied) => {
  expect(tidyToolId(typed)).toBe(tidied);
});

// source: hand. O is read as 0, I as 1; other letters stand.
it('toolKey treats O and 0, I and 1 as the same mark', () => {
  expect(toolKey('G-38-GO-2')).toBe('G-38-G0-2');
  expect(toolKey('g-38-g0-2')).toBe(toolKey('G–38–GO–2'));
  expect(toolKey('D-38-II')).toBe(toolKey('d 38 11'));
  expect(toolKey('B-38-11')).not.toBe(toolKey('D-38-11'));
});

// source: hand. 2 to 16 of A–Z, 0–9 and dash, no dash at an end, no two together.
it.each([
  ['D-38-11', true],
  ['F-L07', true],
  ['A1', true],
  ['ABCDEFGHIJKLMNOP', true],
  ['ABCDEFGHIJKLMNOPQ', false],
  ['A', false],
  ['', false],
  ['d-38-11', false],
  ['D 38', false],
  ['D–38', false],
  ['-D38', false],
  ['D38-', false],
  ['D--38', false],
  ['DÉ', false],
  ['D-38\n', false],
])('isMarkable(%j) is %s', (id, expected) => {
  expect(isMarkable(id)).toBe(expected);
});

describe('clashingToolId', () => {
  // source: hand.
  it('names the tool that an oily mark could be taken for', () => {
    expect(clashingToolId('D-38-I1', ['B-38-11', 'D-38-11'])).toBe('D-38-11');
    expect(clashingToolId('D-38-12', ['B-38-11', 'D-38-11'])).toBeUndefined();
  });
});

// source: identity. Tidying twice changes nothing, nor does keying; a markable ID is its own tidy form.
it('keys are stable', () => {
  const typed = fc.string({ unit: fc.constantFrom(...'abdoiOI01289-–− \u00a0ſ') });
  fc.assert(
    fc.property(typed, (text) => {
      expect(tidyToolId(tidyToolId(text))).toBe(tidyToolId(text));
      expect(toolKey(toolKey(text))).toBe(toolKey(text));
      if (isMarkable(text)) expect(tidyToolId(text)).toBe(text);
    }),
  );
});
