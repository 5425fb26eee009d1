import { expect, it } from 'vitest';
import { freshText } from '@/app/_shared/scan/fresh-text';

// source: hand. One label held before the camera is one scan, however many pictures it is in.
it('gives a label once while it is held, and again when it comes back', () => {
  const fresh = freshText();
  expect(fresh(' D-38-11 ', 0)).toBe('D-38-11');
  for (const atMs of [100, 2000, 4000, 6000]) expect(fresh('D-38-11', atMs)).toBeUndefined();
  expect(fresh(undefined, 7000)).toBeUndefined();
  expect(fresh('D-38-11', 8000)).toBeUndefined();
  expect(fresh('D-38-11', 11_000)).toBe('D-38-11');
});

it('gives the next label at once, and nothing for an empty code', () => {
  const fresh = freshText();
  expect([fresh('A', 0), fresh('B', 100), fresh('A', 200), fresh('  ', 300)]).toEqual([
    'A',
    'B',
    'A',
    undefined,
  ]);
});
