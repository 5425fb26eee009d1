import { expect, it } from 'vitest';
import { edgeRowOf } from '@/lib/life/edge-rows';
import { guessBelief } from '@/lib/life/guess-belief';
import { beliefsOf, logPosterior } from '@/lib/life/log-posterior';
import { layOut } from '@/lib/life/parameter-layout';
import { defaultLifePriors } from '@/lib/life/priors';
import { streamOfKey } from '@/lib/numeric/random-stream';
import { cut, edge } from '@/tests/support/edge-histories';

const random = streamOfKey('log-posterior.test');
const PRIORS = defaultLifePriors('die', {
  referenceMaterialId: 'ref',
  materials: [{ materialId: 'hard', factor: 2.5 }],
});
const MATERIALS = ['ref', 'hard', 'odd'];
const ENDS = ['worn', 'incident', 'removed-working', 'in-service'] as const;

const histories = Array.from({ length: 60 }, (_, i) => {
  const part = () =>
    cut(1000 * random(), {
      materialId: MATERIALS[Math.floor(random() * 3)] ?? '',
      dry: random() < 0.3,
      rework: random() < 0.2,
    });
  const end = ENDS[Math.floor(random() * 4)] ?? 'worn';
  const during = end === 'worn' && random() < 0.7 ? [part()] : [];
  const before = during.length > 0 && random() < 0.2 ? [] : [part(), part()];
  const odIn = random() < 0.5 ? 0.375 : 0.75;
  const entered = before.length > 1 && i % 4 === 0 ? { entered: before.slice(0, 1) } : {};
  return edge(`T${i}`, { before, during, end, regrinds: i % 3, partId: `die-${odIn}`, odIn, ...entered });
});
const guesses = [
  { partId: 'die-0.375', odIn: 0.375, lifeBase: 1300, factor: 2 },
  { odIn: 1, lifeBase: 900, factor: 3 },
];
const layout = layOut(histories, guesses, PRIORS);
const weibull = {
  size: layout.names.length,
  rows: histories.flatMap((history) => edgeRowOf(history, layout) ?? []),
  beliefs: [...beliefsOf(layout.priors), ...guesses.map((guess) => guessBelief(guess, layout, PRIORS))],
};

// source: formula. Central differences at three points; every figure of the model is touched, some edges are followed late.
it.each([
  [0, 'weibull'],
  [1, 'weibull'],
  [2, 'weibull'],
  [0, 'log-logistic'],
  [2, 'log-logistic'],
] as const)('has the right gradient and curvature (point %d, %s)', (point, law) => {
  const model = { ...weibull, law };
  const theta = Float64Array.from(
    layout.names,
    (name) => (name === 'logMedian' ? 7 : 0) + (random() - 0.5) * (0.2 + point),
  );
  const here = logPosterior(model, theta);
  const h = 1e-5;
  layout.names.forEach((_, a) => {
    const shifted = (step: number) =>
      logPosterior(
        model,
        theta.map((value, i) => (i === a ? value + step : value)),
      );
    const [up, down] = [shifted(h), shifted(-h)];
    expect(here.gradient[a]).not.toBe(0);
    const slope = (up.value - down.value) / (2 * h);
    expect(Math.abs(slope - (here.gradient[a] ?? 0))).toBeLessThan(1e-6 * (1 + Math.abs(slope)));
    layout.names.forEach((__, b) => {
      const bend = ((up.gradient[b] ?? 0) - (down.gradient[b] ?? 0)) / (2 * h);
      const size = 1 + Math.abs(here.hessian[a * model.size + a] ?? 0);
      expect(Math.abs(bend - (here.hessian[a * model.size + b] ?? 0))).toBeLessThan(1e-6 * size);
    });
  });
});

// source: formula. Normal log density of one belief, ln φ(1) − ln 2.
it('weighs a belief as a normal density', () => {
  const alone = {
    size: 1,
    rows: [],
    beliefs: [{ form: { indices: [0], coefficients: [1] }, mean: 3, sd: 2 }],
  };
  const expected = -0.5 - Math.log(2) - 0.5 * Math.log(2 * Math.PI);
  expect(Math.abs(logPosterior(alone, Float64Array.of(5)).value - expected)).toBeLessThan(1e-14);
  expect(logPosterior(alone, Float64Array.of(5)).logLik).toBe(0);
});
