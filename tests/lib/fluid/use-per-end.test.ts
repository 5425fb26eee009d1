import fc from 'fast-check';
import { expect, it } from 'vitest';
import { expectedMlPerEnd, plannedDropsPerEnd, plannedMlPerEnd } from '@/lib/fluid/use-per-end';

// source: hand. 3 × ⌈10.5/2⌉ = 3 × 6 = 18, and 10 for the cone; 3 × ⌈9/2⌉ = 15; nothing cut takes nothing.
it('plannedDropsPerEnd counts the cone and every second turn', () => {
  expect(plannedDropsPerEnd({ cone: true, turns: 10.5 })).toBe(28);
  expect(plannedDropsPerEnd({ cone: false, turns: 9 })).toBe(15);
  expect(plannedDropsPerEnd({ cone: true, turns: 0 })).toBe(10);
  expect(plannedDropsPerEnd({ cone: false, turns: 0 })).toBe(0);
});

// source: hand. 3/4 in at 24 TPI is 18 turns, 9 applications, 27 drops, however the last digit of the double falls.
it('the last digit of a computed turn count does not buy another application', () => {
  expect(plannedDropsPerEnd({ cone: false, turns: 18.000000000000004 })).toBe(27);
  expect(plannedDropsPerEnd({ cone: false, turns: 18.01 })).toBe(30);
});

// source: hand. 28 drops at 40, the default, and at 20 per mL: 0.7 and 1.4 mL; three times 0.7 is 2.1, twice 1.4.
it('millilitres follow from drops per mL and the waste factor', () => {
  const end = { cone: true, turns: 10.5 };
  expect(plannedMlPerEnd(end)).toBe(0.7);
  expect(plannedMlPerEnd({ ...end, dropsPerMl: 20 })).toBe(1.4);
  expect(expectedMlPerEnd(end)).toBeCloseTo(2.1, 12);
  expect(expectedMlPerEnd({ ...end, wasteFactor: 2 })).toBeCloseTo(1.4, 12);
});

// source: identity. More turns never take fewer drops, and two turns more take one application of 3 drops more.
it('drops rise by one application in two turns', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (turns) => {
      const drops = plannedDropsPerEnd({ cone: true, turns });
      // Away from the step itself, where adding 2 may round across it.
      fc.pre(Math.abs(turns / 2 - Math.round(turns / 2)) > 1e-6);
      expect(plannedDropsPerEnd({ cone: true, turns: turns + 2 })).toBe(drops + 3);
    }),
  );
});

it('throws outside its domain', () => {
  expect(() => plannedDropsPerEnd({ cone: true, turns: -1 })).toThrow('invariant broken');
  expect(() => plannedMlPerEnd({ cone: true, turns: 1, dropsPerMl: 0 })).toThrow('invariant broken');
  expect(() => expectedMlPerEnd({ cone: true, turns: 1, wasteFactor: 0 })).toThrow('invariant broken');
});
