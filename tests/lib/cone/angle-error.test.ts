import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  angleErrorToLargeEndDeg,
  checkConeError,
  coneWithAngleError,
  standOffPerNoseMm,
} from '@/lib/cone/angle-error';
import { coneHeightMm } from '@/lib/cone/geometry';

const SHAPE = { odMm: 14.2875, noseMm: 7.1374, coneAngleDeg: 59 };
const errors = fc.double({ min: -3, max: 3, noNaN: true });

// source: identity. No error changes nothing.
it('a true blade cuts a true cone', () => {
  for (const heldBy of ['nose', 'length'] as const) {
    const { lengthChangeMm, noseChangeMm, noseDeeperMm, seated } = coneWithAngleError(SHAPE, {
      angleErrorDeg: 0,
      heldBy,
    });
    for (const change of [lengthChangeMm, noseChangeMm, noseDeeperMm]) expect(change).toBeCloseTo(0, 12);
    expect(seated.contact).toBe('small-end');
  }
});

// source: formula. 59° in 60°: the contact stays at the nose up to 1° of error and jumps to the large end beyond it.
it('the contact moves to the large end beyond the difference of the angles', () => {
  expect(angleErrorToLargeEndDeg(SHAPE)).toBe(1);
  fc.assert(
    fc.property(errors, (angleErrorDeg) => {
      fc.pre(Math.abs(angleErrorDeg - 1) > 1e-6);
      const { seated } = coneWithAngleError(SHAPE, { angleErrorDeg });
      expect(seated.contact).toBe(angleErrorDeg < 1 ? 'small-end' : 'large-end');
    }),
  );
  expect(coneWithAngleError(SHAPE, { angleErrorDeg: 1 }).seated.contact).toBe('whole-face');
});

// source: identity. Nose held: the nose stays; length held: the length stays. A wider blade always cuts a blunter, shorter or finer cone.
it('holds what is held', () => {
  fc.assert(
    fc.property(errors, (angleErrorDeg) => {
      fc.pre(Math.abs(angleErrorDeg) > 1e-9);
      const byNose = coneWithAngleError(SHAPE, { angleErrorDeg, heldBy: 'nose' });
      const byLength = coneWithAngleError(SHAPE, { angleErrorDeg, heldBy: 'length' });
      expect(byNose.noseChangeMm).toBe(0);
      expect(byLength.lengthMm).toBeCloseTo(coneHeightMm(SHAPE), 10);
      expect(Math.sign(byNose.lengthChangeMm)).toBe(-Math.sign(angleErrorDeg));
      expect(Math.sign(byLength.noseChangeMm)).toBe(-Math.sign(angleErrorDeg));
    }),
  );
});

// source: formula. With the length held, d′ = D − 2·h·tan(29.55°) for +0.1°, h = (14.2875 − 7.1374) ÷ (2·tan 29.5°); worked by hand.
it('one tenth of a degree, length held, on 9/16 high pressure', () => {
  const { noseChangeMm, noseDeeperMm } = coneWithAngleError(SHAPE, { angleErrorDeg: 0.1, heldBy: 'length' });
  const h = 7.1501 / (2 * Math.tan((29.5 * Math.PI) / 180));
  const expected = -2 * h * (Math.tan((29.55 * Math.PI) / 180) - Math.tan((29.5 * Math.PI) / 180));
  expect(noseChangeMm).toBeCloseTo(expected, 12);
  expect(noseDeeperMm).toBeCloseTo(-expected / (2 * Math.tan(Math.PI / 6)), 12);
});

// source: hand. 1 ÷ (2·tan 30°) = √3 ÷ 2; a nose 0.2 mm larger stands 0.173 mm further out and the cone is 0.2 ÷ (2·tan 29.5°) shorter.
it('a nose off its size', () => {
  expect(standOffPerNoseMm()).toBeCloseTo(Math.sqrt(3) / 2, 12);
  const larger = coneWithAngleError(SHAPE, { angleErrorDeg: 0, noseErrorMm: 0.2 });
  expect(larger.noseDeeperMm).toBeCloseTo(-0.2 * standOffPerNoseMm(), 12);
  expect(larger.lengthChangeMm).toBeCloseTo(-0.2 / (2 * Math.tan((29.5 * Math.PI) / 180)), 12);
});

// source: hand. What throws inside is refused in a sentence at the door; what can be cut is the same on both ways.
it('refuses errors that leave no cone', () => {
  expect(checkConeError(SHAPE, { angleErrorDeg: -59 })).toMatchObject({
    ok: false,
    refusal: { code: 'cone-error' },
  });
  expect(checkConeError(SHAPE, { angleErrorDeg: 0, noseErrorMm: 20 }).ok).toBe(false);
  expect(checkConeError(SHAPE, { angleErrorDeg: 31 }).ok).toBe(false);
  const error = { angleErrorDeg: 0.5, heldBy: 'length' as const };
  expect(checkConeError(SHAPE, error)).toEqual({ ok: true, value: coneWithAngleError(SHAPE, error) });
});

it('throws on a cone that cannot be cut', () => {
  expect(() => coneWithAngleError(SHAPE, { angleErrorDeg: -59 })).toThrow('invariant broken');
  expect(() => coneWithAngleError(SHAPE, { angleErrorDeg: 0, noseErrorMm: 20 })).toThrow('invariant broken');
  expect(() => angleErrorToLargeEndDeg(SHAPE, 0)).toThrow('invariant broken');
});
