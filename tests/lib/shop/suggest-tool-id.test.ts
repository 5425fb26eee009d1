import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nextToolId, suggestToolId } from '@/lib/shop/suggest-tool-id';
import { clashingToolId, isMarkable, toolKey } from '@/lib/shop/tool-id';
import { ROLES, type Role } from '@/lib/shop/vocabulary';

// source: hand. One above the highest of the same stem; the patterns are the invented demo shop's.
it.each<[Role, string | undefined, string[], string]>([
  ['die', '38', [], 'D-38-01'],
  ['die', '38', ['D-38-11', 'D-38-02', 'D-25-40', 'B-38-30'], 'D-38-12'],
  ['die', '38', ['D-38-99'], 'D-38-100'],
  ['blade', '56H', ['B-56H-02', 'B-56-09'], 'B-56H-03'],
  ['go-ring', '38', ['G-38-GO-1'], 'G-38-GO-2'],
  ['not-go-ring', '38', ['G-38-GO-1'], 'G-38-NG-1'],
  ['cone-gauge', '38', ['CG-38-1'], 'CG-38-2'],
  ['coning-guide', '38', ['GDE-38-1'], 'GDE-38-2'],
  ['coning-body', undefined, ['BDY-A'], 'BDY-B'],
  ['coning-body', undefined, ['BDY-H'], 'BDY-J'],
  ['fluid', undefined, ['F-L07', 'F-L03'], 'F-L08'],
])('%s %s after %j is %s', (role, sizeText, existingIds, expected) => {
  expect(suggestToolId({ role, sizeText, existingIds })).toBe(expected);
});

// source: hand. An ID typed in lower case, or with O for 0, still counts as taken.
it('sees through case and look-alikes', () => {
  expect(suggestToolId({ role: 'die', sizeText: '38', existingIds: ['d-38-O1'] })).toBe('D-38-02');
  expect(suggestToolId({ role: 'go-ring', sizeText: '38', existingIds: ['G-38-G0-4'] })).toBe('G-38-GO-5');
});

// source: identity. Keys made beforehand give the same suggestion.
it('is the same among keys', () => {
  const existingIds = ['D-38-11', 'd-38-O2', 'D-25-40'];
  const existingKeys = new Set(existingIds.map(toolKey));
  expect(nextToolId({ role: 'die', sizeText: '38', existingKeys })).toBe('D-38-12');
});

// source: identity. A suggestion is markable and free, and so is the next one after it, for every role.
it('never suggests what clashes', () => {
  const role = fc.constantFrom(...ROLES);
  const sizeText = fc.constantFrom(undefined, '25', '38', '56H', '100');
  fc.assert(
    fc.property(role, sizeText, fc.integer({ min: 1, max: 60 }), (wantedRole, size, rounds) => {
      const ids: string[] = [];
      for (let round = 0; round < rounds; round += 1) {
        const id = suggestToolId({ role: wantedRole, sizeText: size, existingIds: ids });
        expect(isMarkable(id)).toBe(true);
        expect(clashingToolId(id, ids)).toBeUndefined();
        ids.push(id);
      }
    }),
    { numRuns: 60 },
  );
});

it('throws on a size that cannot be marked', () => {
  expect(() => suggestToolId({ role: 'die', sizeText: '3/8', existingIds: [] })).toThrow('invariant broken');
});
