import { expect, it } from 'vitest';
import { bottleOfTool } from '@/lib/fluid/bottle-of-tool';

const TOOL = {
  ...{ id: 'F-L04', state: 'in-crib', levelMl: 400, expiresOnDay: '2027-06-30', openedOnDay: '2026-01-05' },
  ...{ extendedUntilDay: '2027-09-30', lotChlorinated: null },
} as const;
const part = {
  openedLifeDays: 365,
  permittedMaterialIds: ['316'],
  permittedDuties: ['oxygen' as const],
  chlorinated: 'unknown' as const,
};

// source: hand. Days and level are the bottle's own, permits and opened life the product's.
it('puts a bottle together of what is marked on it and what is said of its product', () => {
  expect(bottleOfTool(TOOL, part)).toEqual({
    ...{ toolId: 'F-L04', state: 'in-crib', levelMl: 400, expiresOnDay: '2027-06-30' },
    ...{ openedOnDay: '2026-01-05', openedLifeDays: 365, extendedUntilDay: '2027-09-30' },
    ...{ permittedMaterialIds: ['316'], permittedDuties: ['oxygen'], chlorinated: 'unknown' },
  });
});

// source: hand. Stated: the supplier's answer for the lot counts before what is said of the product, whichever way it goes.
it('takes the answer for the lot before that for the product', () => {
  for (const said of ['yes', 'no', 'unknown'] as const)
    for (const answer of ['yes', 'no', 'unknown'] as const) {
      const product = { ...part, chlorinated: said };
      expect(bottleOfTool({ ...TOOL, lotChlorinated: answer }, product).chlorinated).toBe(answer);
      expect(bottleOfTool(TOOL, product).chlorinated).toBe(said);
    }
});
