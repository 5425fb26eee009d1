import fc from 'fast-check';
import { expect, it } from 'vitest';
import { judgeBottle } from '@/lib/fluid/judge-bottle';
import { type Bottle, bottleStanding } from '@/lib/fluid/pick-first';
import { DUTIES } from '@/lib/shop/duty';

const TODAY = '2026-03-02';
const steel = { materialId: '316', titanium: false, duty: 'ordinary' } as const;
const bottle = (toolId: string, change: Partial<Bottle> = {}): Bottle => ({
  ...{ toolId, state: 'in-crib', levelMl: 500, expiresOnDay: '2027-06-01', openedOnDay: null },
  ...{ openedLifeDays: 365, permittedMaterialIds: 'all', chlorinated: 'yes' },
  ...change,
});

// source: hand. The reason, then the first to expire of the others that may be used.
it('says why not, and which to use first', () => {
  const empty = bottle('F-1', { levelMl: 0 });
  const others = [empty, bottle('F-2'), bottle('F-3', { expiresOnDay: '2026-09-01' })];
  expect(judgeBottle(bottle('F-2'), others, steel, TODAY)).toBeNull();
  expect(judgeBottle(empty, others, steel, TODAY)).toEqual({
    why: 'empty',
    sentence: 'F-1 is empty. Use F-3 first.',
  });
  expect(judgeBottle(empty, [empty], steel, TODAY)?.sentence).toBe(
    'F-1 is empty. No other bottle here will do: see Fluid for what can be ordered.',
  );
});

// source: hand. Who asks at the counter needs one that lies there: what somebody has is named only where nothing else will do.
it('names what lies in the crib before what is out', () => {
  const empty = bottle('F-1', { levelMl: 0 });
  const out = bottle('F-2', { state: 'issued', expiresOnDay: '2026-04-01' });
  expect(judgeBottle(empty, [out, bottle('F-3')], steel, TODAY)?.sentence).toBe(
    'F-1 is empty. Use F-3 first.',
  );
  expect(judgeBottle(empty, [out], steel, TODAY)?.sentence).toBe('F-1 is empty. F-2 will do, but it is out.');
});

// source: hand. On loan nobody knows on what: a fluid for one metal, or for oxygen, goes; one past its day does not.
it('on loan only its life and its level count', () => {
  const narrow = { permittedMaterialIds: ['ti-2'], permittedDuties: ['oxygen'] } as const;
  expect(judgeBottle(bottle('F-1', narrow), [], null, TODAY)).toBeNull();
  expect(judgeBottle(bottle('F-1', { ...narrow, expiresOnDay: '2026-03-01' }), [], null, TODAY)?.why).toBe(
    'over-life',
  );
  expect(
    judgeBottle(bottle('F-1', { levelMl: 0 }), [bottle('F-2', narrow)], null, TODAY)?.sentence,
  ).toContain('Use F-2 first.');
});

// source: identity. It refuses exactly what the standing bars, and never names the bottle itself or one that is barred.
it('agrees with the standing, and names only what may be used', () => {
  const drawn = fc.record({
    state: fc.constantFrom('in-crib', 'issued', 'quarantined', 'scrapped'),
    expiresOnDay: fc.constantFrom(null, '2026-03-01', '2026-03-02', '2027-01-01'),
    openedOnDay: fc.constantFrom(null, '2025-03-01', '2026-01-01'),
    extendedUntilDay: fc.constantFrom(null, '2026-08-01'),
    levelMl: fc.constantFrom(null, 0, 250),
    permittedMaterialIds: fc.constantFrom<Bottle['permittedMaterialIds']>('all', ['316'], undefined),
    permittedDuties: fc.constantFrom<Bottle['permittedDuties']>(undefined, [...DUTIES], ['oxygen']),
    chlorinated: fc.constantFrom('yes' as const, 'no' as const, 'unknown' as const),
  });
  const work = fc.record({
    materialId: fc.constantFrom('316', 'ti-2'),
    titanium: fc.boolean(),
    duty: fc.constantFrom(...DUTIES),
  });
  fc.assert(
    fc.property(fc.array(drawn, { minLength: 1, maxLength: 5 }), work, (changes, asked) => {
      const bottles = changes.map((change, i) => bottle(`F-${i}`, change));
      for (const one of bottles) {
        const refusal = judgeBottle(one, bottles, asked, TODAY);
        expect(refusal?.why).toBe(bottleStanding(one, asked, TODAY).bar?.why);
        const named = / (F-\d) (?:first|will do)/.exec(refusal?.sentence ?? '')?.[1];
        if (named === undefined) continue;
        expect(named).not.toBe(one.toolId);
        expect(judgeBottle(bottles[Number(named.slice(2))] as Bottle, bottles, asked, TODAY)).toBeNull();
      }
    }),
  );
});
