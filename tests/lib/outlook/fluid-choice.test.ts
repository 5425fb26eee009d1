import { expect, it } from 'vitest';
import { fluidsToChoose, likelyFluid } from '@/lib/outlook/fluid-choice';
import { setParts, toolFacts } from '../../support/shop-record';

const fluid = setParts().find(({ role }) => role === 'fluid');
if (fluid === undefined) throw new Error('a set has a fluid');
const bottle = (id: string, over: object = {}) => ({
  ...toolFacts({ id, role: 'fluid' }),
  ...{ partId: fluid.id, openedOnDay: '2026-02-01', levelMl: 200, ...over },
});
const parts = [{ ...fluid, permittedMaterialIds: ['316-cw'] }];
const choose = (...tools: ReturnType<typeof bottle>[]) => fluidsToChoose({ tools, parts });

// source: hand. What is on a shelf or at a bench and not empty can have been used; an open one sooner than a sealed one.
it('offers the bottles that are here, open ones first', () => {
  const offered = choose(
    bottle('F-1', { openedOnDay: null }),
    bottle('F-2'),
    bottle('F-3', { levelMl: 0 }),
    bottle('F-4', { state: 'scrapped' }),
    bottle('F-5', { state: 'issued', levelMl: null }),
  );
  expect(offered.map(({ id }) => id)).toEqual(['F-2', 'F-5', 'F-1']);
});

// source: hand. The one last used; else the only open one; never one that is not permitted on the material; never a guess.
it('fills in the bottle that was most likely used, or none', () => {
  const two = choose(bottle('F-1'), bottle('F-2'));
  expect(likelyFluid(two, { materialId: '316-cw', lastUsedId: 'F-2' })).toBe('F-2');
  expect(likelyFluid(two, { materialId: '316-cw', lastUsedId: 'F-9' })).toBeUndefined();
  expect(likelyFluid(two, { materialId: 'ti-2', lastUsedId: 'F-2' })).toBeUndefined();
  const one = choose(bottle('F-1'), bottle('F-2', { openedOnDay: null }));
  expect(likelyFluid(one, { materialId: '316-cw', lastUsedId: null })).toBe('F-1');
});
