import { expect, it } from 'vitest';
import { kaplanMeier } from '@/lib/life/kaplan-meier';
import published from '../../fixtures/life/published.json';

const { inputs, expected } = published.entries['K.km'];

// source: other-software. R survival::survfit (Greenwood); the 6-MP column is also the textbook's table (from memory).
it.each([
  { arm: '6-MP', data: inputs.sixMP },
  { arm: 'control', data: inputs.control },
])('equals survfit: $arm', ({ arm, data }) => {
  const steps = kaplanMeier(data.time.map((age, i) => ({ age, worn: data.event[i] === 1 })));
  const reference = expected.filter((row) => row.arm === arm);
  expect(steps.map(({ age, atRisk, worn }) => [age, atRisk, worn])).toEqual(
    reference.map(({ t, n, d }) => [t, n, d]),
  );
  steps.forEach((step, i) => {
    expect(Math.abs(step.survival - (reference[i]?.S ?? Number.NaN))).toBeLessThan(1e-12);
    expect(Math.abs(step.standardError - (reference[i]?.se ?? 0))).toBeLessThan(1e-12);
  });
});

// source: hand. Removed at the same age as a wear-out: still at risk for it.
it('keeps a removed edge at risk up to its age, and says nothing without a wear-out', () => {
  expect(
    kaplanMeier([
      { age: 5, worn: false },
      { age: 5, worn: true },
    ]),
  ).toMatchObject([{ atRisk: 2, survival: 0.5 }]);
  expect(kaplanMeier([{ age: 5, worn: false }])).toEqual([]);
});
