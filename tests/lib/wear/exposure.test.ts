import fc from 'fast-check';
import { expect, it } from 'vitest';
import { baseExposurePerEnd, exposureAmount } from '@/lib/wear/exposure';

const medium = { odMm: 14.2875, tpi: 18, threadLengthMm: 12.7, coneAngleDeg: 59, noseMm: 10.3124 };
const high = { ...medium, threadLengthMm: 23.8125, noseMm: 7.1374 };

// source: hand. 1/2 in × 18 = 9 turns; 15/16 in × 18 = 16.875 turns.
it('a thread costs the die its turns', () => {
  expect(baseExposurePerEnd({ op: 'thread', connection: medium })).toEqual({ op: 'thread', turns: 9 });
  expect(exposureAmount(baseExposurePerEnd({ op: 'thread', connection: high }))).toBeCloseTo(16.875, 12);
});

// source: hand. 10 mm at 18 TPI: 180 ÷ 25.4 = 7.086614 turns, whatever the connection's own length.
it('a logged thread length takes the place of the connection’s', () => {
  const cut = baseExposurePerEnd({ op: 'thread', connection: high, lengthMm: 10 });
  expect(exposureAmount(cut)).toBeCloseTo(7.086614, 6);
});

// source: hand. Included 90°: the cone of D 10, d 4 loses 36π mm³ (cylinder 75π less frustum 39π).
it('a cone costs the blade the metal removed, no length in it', () => {
  const connection = { odMm: 10, noseMm: 4, coneAngleDeg: 90, tpi: 20, threadLengthMm: 12 };
  const cut = baseExposurePerEnd({ op: 'cone', connection });
  expect(cut.op).toBe('cone');
  expect(exposureAmount(cut)).toBeCloseTo(113.0973355, 6);
});

// source: hand. 16.875 / 9 = 1.875.
it('counting ends alone would misstate wear: the same die, 1.9 times the turns', () => {
  const turns = [high, medium].map((connection) =>
    exposureAmount(baseExposurePerEnd({ op: 'thread', connection })),
  );
  expect((turns[0] ?? 0) / (turns[1] ?? 1)).toBeCloseTo(1.875, 12);
});

// source: identity. Turns of two lengths add.
it('turns are additive in the length', () => {
  const length = fc.double({ min: 0.5, max: 40, noNaN: true });
  fc.assert(
    fc.property(length, length, (a, b) => {
      const turns = (lengthMm: number) =>
        exposureAmount(baseExposurePerEnd({ op: 'thread', connection: medium, lengthMm }));
      expect(turns(a) + turns(b)).toBeCloseTo(turns(a + b), 10);
    }),
  );
});

it('throws on a thread length for a cone, and on a length of 0', () => {
  expect(() => baseExposurePerEnd({ op: 'cone', connection: medium, lengthMm: 10 })).toThrow(
    'invariant broken',
  );
  expect(() => baseExposurePerEnd({ op: 'thread', connection: medium, lengthMm: 0 })).toThrow(
    'invariant broken',
  );
});
