import { describe, expect, it } from 'vitest';
import { fitLife } from '@/lib/life/fit-life';
import { fitWeibull } from '@/lib/life/fit-weibull';
import type { LifeFit } from '@/lib/life/life-fit';
import type { EdgeHistory } from '@/lib/life/observation';
import { defaultLifePriors, type LifePriors } from '@/lib/life/priors';
import { medianOf } from '@/lib/life/weibull';
import { normalQuantile } from '@/lib/numeric/normal';
import { streamOfKey } from '@/lib/numeric/random-stream';
import { cut, edge, flatPriors } from '@/tests/support/edge-histories';
import { relativeMiss } from '@/tests/support/relative-miss';

const PRIORS = defaultLifePriors('die', {
  referenceMaterialId: 'ref',
  materials: [{ materialId: '2507', factor: 2.5 }],
});

function fitted(histories: readonly EdgeHistory[], priors: LifePriors = PRIORS, guesses = GUESSES): LifeFit {
  const fit = fitLife({ kind: 'die', histories, priors, guesses });
  if (!fit.ok) throw new Error(fit.sentence);
  return fit;
}

const GUESSES: Parameters<typeof fitLife>[0]['guesses'] & object = [];
const TYPED = { partId: 'die-38', odIn: 0.375, lifeBase: 1300, factor: 2 };

/** A shop of dies with lives of shape 2.5 and median 1300, worn in rows, some dropped, some still cutting. */
function shop(count: number, key: string): EdgeHistory[] {
  const random = streamOfKey(key);
  return Array.from({ length: count }, (_, i) => {
    const life = 1300 * (-Math.log(random()) / Math.LN2) ** (1 / 2.5);
    const dropped = 4000 * -Math.log(random());
    const soFar = 2600 * random();
    const row = 60 + 100 * random();
    const age = Math.min(life, dropped, soFar);
    if (age === life)
      return edge(`T${i}`, { before: [cut(Math.floor(age / row) * row)], during: [cut(row)], end: 'worn' });
    return edge(`T${i}`, { before: [cut(age)], end: age === dropped ? 'incident' : 'in-service' });
  });
}

describe('one group with flat priors', () => {
  // source: identity. fitWeibull is checked against survreg in tests/external/life.
  it('is the right-censored maximum-likelihood fit', () => {
    const ages = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386, 500, 500, 500];
    const histories = ages.map((age, i) =>
      edge(`T${i}`, { before: [cut(age)], end: i < 10 ? 'worn' : 'in-service' }),
    );
    const plain = fitWeibull({ wornAt: ages.slice(0, 10), workingAt: ages.slice(10) });
    const fit = fitted(histories, flatPriors());
    if (!plain.ok) throw new Error(plain.reason);
    expect(relativeMiss(Math.exp(fit.mode.logShape ?? 0), plain.shape)).toBeLessThan(1e-9);
    expect(relativeMiss(Math.exp(fit.mode.logMedian ?? 0), medianOf(plain))).toBeLessThan(1e-9);
    expect(Math.abs(fit.logLik - plain.logLik)).toBeLessThan(1e-9);
    expect(fit.logPosterior).toBe(fit.logLik);
  });
});

describe('day one', () => {
  // source: identity. With nothing but one typed guess, the part's log median is that guess: mean and spread.
  it('believes a single first guess exactly as typed, and says that nothing has worn', () => {
    const fit = fitted([], PRIORS, [TYPED]);
    const { mean, sd } = medianBelief(fit, 'die-38');
    expect(relativeMiss(mean, Math.log(1300))).toBeLessThan(1e-10);
    expect(relativeMiss(sd, Math.log(2) / normalQuantile(0.9))).toBeLessThan(1e-8);
    expect(fit.warnings).toEqual(['no-worn-edges']);
  });

  // source: formula. Guesses typed by one person are wrong together: five of them must not narrow the band to 1/√5.
  it('does not take five guesses by one person for five independent ones', () => {
    const ids = ['a', 'b', 'c', 'd', 'e'];
    const fit = fitted(
      [],
      PRIORS,
      ids.map((partId) => ({ ...TYPED, partId })),
    );
    const typed = Math.log(2) / normalQuantile(0.9);
    expect(medianBelief(fit, 'a').sd).toBeGreaterThan(0.85 * typed);
    expect(medianBelief(fit, 'a').sd).toBeLessThan(typed);
  });

  it('falls back on the default life without a guess, and says so', () => {
    const fit = fitted([]);
    expect(fit.warnings).toContain('default-life-used');
    expect(relativeMiss(fit.mode.logMedian ?? 0, Math.log(1206))).toBeLessThan(1e-12);
  });
});

/** Mean and spread of logMedian + part at 3/8 in, from mode and covariance. */
function medianBelief(fit: LifeFit, partId: string): { mean: number; sd: number } {
  const names = ['logMedian', `part:${partId}`];
  const at = names.map((name) => fit.layout.free.indexOf(fit.layout.indexOf[name] ?? -1));
  let variance = 0;
  for (const a of at)
    for (const b of at) variance += fit.covariance[a * fit.layout.free.length + b] ?? Number.NaN;
  return { mean: names.reduce((sum, name) => sum + (fit.mode[name] ?? 0), 0), sd: Math.sqrt(variance) };
}

it('counts an opening guess less as wear-outs come in, and follows the shop', () => {
  const wrong = [{ ...TYPED, lifeBase: 300 }];
  const median = (fit: LifeFit): number => Math.exp(medianBelief(fit, 'die-38').mean);
  const [few, many] = [8, 200].map((count) => median(fitted(shop(count, 'follows'), PRIORS, wrong)));
  expect(few).toBeGreaterThan(500);
  // True median 1300; 200 edges settle it to about 6 %.
  expect(Math.abs((many ?? 0) / 1300 - 1)).toBeLessThan(0.2);
});

// Negative controls: the two mistakes that the model exists to avoid.
it('differs plainly when incidents are counted as wear, or edges still cutting are left out', () => {
  const histories = shop(150, 'control');
  const median = (edges: readonly EdgeHistory[]): number =>
    Math.exp(fitted(edges, flatPriors()).mode.logMedian ?? 0);
  const right = median(histories);
  const asWear = median(
    histories.map((history) => (history.end === 'incident' ? { ...history, end: 'worn' } : history)),
  );
  const leftOut = median(histories.filter((history) => history.end === 'worn'));
  expect(Math.abs(right / 1300 - 1)).toBeLessThan(0.15);
  expect(asWear).toBeLessThan(0.85 * right);
  expect(leftOut).toBeLessThan(0.85 * right);
});

// source: identity. Bit for bit, whatever the order of histories, rows, guesses and materials.
it('does not depend on the order of its inputs', () => {
  const histories = shop(40, 'order').map((history, i) => ({
    ...history,
    before: [...history.before, cut(10 + i, { materialId: '2507' }), cut(0.1 * i, { dry: true })],
  }));
  const guesses = [TYPED, { odIn: 0.75, lifeBase: 1000, factor: 3 }];
  const turned = [...histories]
    .reverse()
    .map((history) => ({ ...history, before: [...history.before].reverse() }));
  const [one, other] = [fitted(histories, PRIORS, guesses), fitted(turned, PRIORS, [...guesses].reverse())];
  expect(Array.from(other.theta)).toEqual(Array.from(one.theta));
  expect(Array.from(other.covariance)).toEqual(Array.from(one.covariance));
  expect(other.logPosterior).toBe(one.logPosterior);
});

describe('degenerate logs', () => {
  const same = (end: EdgeHistory['end'], base: number) =>
    Array.from({ length: 12 }, (_, i) => edge(`T${i}`, { before: [cut(base)], end }));

  it.each([
    { name: 'nothing at all', histories: [] },
    { name: 'no wear-out', histories: same('in-service', 800) },
    {
      name: 'one wear-out',
      histories: [
        ...same('in-service', 800),
        edge('W', { before: [cut(700)], during: [cut(50)], end: 'worn' }),
      ],
    },
    { name: 'all lives identical', histories: same('worn', 900) },
    { name: 'all incidents', histories: same('incident', 30) },
    { name: 'zero exposure', histories: same('in-service', 0) },
    { name: 'worn without exposure', histories: same('worn', 0) },
    {
      name: 'a material seen once',
      histories: [...same('worn', 900), edge('M', { before: [cut(5, { materialId: 'seen-once' })] })],
    },
    { name: 'exposures of 1', histories: same('worn', 1) },
    { name: 'exposures of 1e7', histories: same('worn', 1e7) },
    {
      name: 'exposures from 1 to 1e7',
      histories: [0, 1, 2, 3, 4, 5, 6, 7].map((p) =>
        edge(`T${p}`, { before: [cut(10 ** p)], end: p % 2 ? 'worn' : 'in-service' }),
      ),
    },
    {
      name: 'a row ten thousand times as long as all before',
      histories: [edge('L', { before: [cut(1)], during: [cut(10_000)], end: 'worn' })],
    },
  ])('survives $name', ({ histories }) => {
    for (const guesses of [[], [TYPED]]) {
      const fit = fitted(histories, PRIORS, guesses);
      expect(fit.stoppedBy).toBe('converged');
      expect([...fit.theta, ...fit.covariance, fit.logPosterior].every(Number.isFinite)).toBe(true);
    }
  });

  it('refuses, in one sentence, what flat priors leave open', () => {
    const fits = [[], same('in-service', 800), same('worn', 900)].map((histories) =>
      fitLife({ kind: 'die', histories, priors: flatPriors() }),
    );
    for (const fit of fits) expect(fit).toMatchObject({ ok: false, reason: 'not-identified' });
  });

  it('warns of an edge that cut nothing, and of a material that is in no list', () => {
    const histories = [
      ...same('worn', 900),
      edge('Z', { before: [] }),
      edge('O', { before: [cut(3, { materialId: 'odd' })] }),
    ];
    expect(fitted(histories, PRIORS, [TYPED]).warnings).toEqual([
      'edges-without-exposure-ignored',
      'material-without-prior',
    ]);
    expect(fitted(same('worn', 900).slice(0, 2), PRIORS, [TYPED]).warnings).toEqual(['few-worn-edges']);
  });

  it('fits ten thousand edges', () => {
    const fit = fitted(shop(10_000, 'many'), PRIORS, [TYPED]);
    expect(fit.stoppedBy).toBe('converged');
    expect(Math.abs(Math.exp(medianBelief(fit, 'die-38').mean) / 1300 - 1)).toBeLessThan(0.03);
    expect(Math.abs(Math.exp(fit.mode.logShape ?? 0) / 2.5 - 1)).toBeLessThan(0.05);
  });
});
