import { describe, expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { bandOf } from '@/lib/ensemble/reasons';
import { guessAsNormal } from '@/lib/life/first-guess';
import { fitLife } from '@/lib/life/fit-life';
import { defaultBelief, firstGuesses, lifePriors } from '@/lib/outlook/life-beliefs';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { SHIPPED_MATERIALS } from '@/lib/shipped/materials';
import type { LifeGuess } from '@/lib/shop/noun';
import { setParts } from '../../support/shop-record';

const typed: LifeGuess = { partId: 'die-3-8', connectionId: '3-8-medium', ends: 100, giveOrTake: 2 };
const tables = { parts: setParts(), connections: SHIPPED_CONNECTIONS };
const guessesOf = (kind: 'die' | 'blade', ...guesses: LifeGuess[]) =>
  firstGuesses(kind, { ...tables, guesses });

// source: published, from memory. 90 % point of the standard normal, as in any table of it.
const Z90 = 1.281552;

describe('a typed first guess', () => {
  // source: hand. 100 ends of 10.5 turns are 1050 turns; give or take two: 525 to 2100, four times in five.
  it('is the middle and the 80 % band of the life in turns', () => {
    const [guess] = guessesOf('die', typed);
    if (guess === undefined) throw new Error('no guess');
    expect(guess).toMatchObject({ partId: 'die-3-8', odIn: 0.375, factor: 2 });
    expect(guess.lifeBase).toBeCloseTo(1050, 9);
    const { mean, sd } = guessAsNormal(guess);
    expect(Math.exp(mean - Z90 * sd)).toBeCloseTo(525, 1);
    expect(Math.exp(mean + Z90 * sd)).toBeCloseTo(2100, 1);
  });

  // source: hand. With nothing logged, what is believed of the typical life is what was typed: 525, 1050, 2100.
  it('is what the ensemble believes until something is logged', () => {
    const priors = lifePriors('die', SHIPPED_MATERIALS);
    const fit = fitLife({ kind: 'die', histories: [], priors, guesses: guessesOf('die', typed) });
    if (!fit.ok) throw new Error(fit.sentence);
    const ensemble = buildEnsemble({ kinds: { die: fit }, tools: [], parts: [] });
    const band = (partId: string) =>
      bandOf(ensemble.medianLife('die', { partId, odIn: 0.375, regrinds: 0 }) ?? new Float64Array(1));
    const own = band('die-3-8');
    for (const [seen, wanted] of [
      [own.low, 525],
      [own.median, 1050],
      [own.high, 2100],
    ] as const)
      expect(Math.abs(seen / wanted - 1), `${wanted}`).toBeLessThan(0.02);
    const other = band('another-die');
    expect(other.high / other.low).toBeGreaterThan(own.high / own.low);
  });

  // source: formula. V = (π/4)D²h − (πh/12)(D² + Dd + d²), h = (D − d)/(2 tan 29.5°), D 9.525, d 6.35 mm, worked in
  // double precision apart from the project: 59.24037 mm³ a cone.
  it('of a blade counts in cones of its connection', () => {
    const [guess] = guessesOf('blade', { ...typed, partId: 'blade-3-8-medium', ends: 60 });
    expect((guess?.lifeBase ?? 0) / 60).toBeCloseTo(59.24037, 4);
  });

  // source: hand. The same die threads the long thread: 3/4 in at 24 is 18 turns.
  it('follows the connection that it was typed for', () => {
    const [guess] = guessesOf('die', { ...typed, connectionId: '3-8-high' });
    expect(guess?.lifeBase).toBeCloseTo(1800, 9);
  });

  // source: hand. Stated cases.
  it('belongs to its own kind, and is left out when its part or size is gone', () => {
    expect(guessesOf('blade', typed)).toEqual([]);
    expect(guessesOf('die', { ...typed, partId: 'gone' }, { ...typed, connectionId: 'gone' })).toEqual([]);
  });
});

describe('what is believed of materials', () => {
  const { referenceMaterialId, materials } = lifePriors('die', SHIPPED_MATERIALS);

  // source: hand. 2507 is said to count 2.5, from 1.5 to 4: give or take √(4 ÷ 1.5) = 1.633, so 1.531 to 4.082.
  it('is the shop’s own table, its give or take as the 80 % band', () => {
    const prior = materials.find(({ materialId }) => materialId === '2507')?.logFactor;
    if (prior?.form !== 'normal') throw new Error('no belief');
    expect(Math.exp(prior.mean)).toBeCloseTo(2.5, 9);
    expect(Math.exp(prior.mean - Z90 * prior.sd)).toBeCloseTo(1.531, 3);
    expect(Math.exp(prior.mean + Z90 * prior.sd)).toBeCloseTo(4.082, 3);
  });

  // source: hand. Stated cases.
  it('knows the reference by name, and fixes a factor without give or take', () => {
    expect(referenceMaterialId).toBe('316-cw');
    expect(materials.map(({ materialId }) => materialId)).not.toContain('316-cw');
    const sure = SHIPPED_MATERIALS.map((material) => ({ ...material, factorGiveOrTake: 1 }));
    const fixed = lifePriors('blade', sure).materials.find(({ materialId }) => materialId === '625');
    expect(fixed?.logFactor).toEqual({ form: 'fixed', value: Math.log(4) });
  });

  it('without a reference lists them all against one that nobody cuts', () => {
    const none = SHIPPED_MATERIALS.map((material) => ({ ...material, isReference: false }));
    const priors = lifePriors('die', none);
    expect(priors.referenceMaterialId).toBe('reference');
    expect(priors.materials).toHaveLength(SHIPPED_MATERIALS.length);
  });
});

describe('what the shop believes before the log', () => {
  // source: identity. The defaults put into words and read back are the defaults.
  it('said as the defaults say it changes nothing', () => {
    for (const kind of ['die', 'blade'] as const) {
      const unsaid = lifePriors(kind, SHIPPED_MATERIALS);
      const said = lifePriors(kind, SHIPPED_MATERIALS, [defaultBelief('die'), defaultBelief('blade')]);
      for (const name of ['logShape', 'regrind', 'dry', 'rework', 'part'] as const) {
        const [a, b] = [unsaid[name], said[name]];
        if (a.form !== 'normal' || b.form !== 'normal') throw new Error(`${name} is no belief`);
        expect(b.mean, name).toBeCloseTo(a.mean, 12);
        expect(b.sd, name).toBeCloseTo(a.sd, 12);
      }
      expect(said.incident).toEqual(unsaid.incident);
    }
  });

  // source: hand. Typical 3, give or take 1.5: four times in five from 2 to 4.5; one accident in 12 lives.
  it('said otherwise is believed, of its own kind only', () => {
    const shape = { typical: 3, giveOrTake: 1.5 };
    const own = [{ ...defaultBelief('die'), shape, livesPerIncident: 12 }];
    const { logShape, incident } = lifePriors('die', SHIPPED_MATERIALS, own);
    if (logShape.form !== 'normal') throw new Error('no belief');
    expect(Math.exp(logShape.mean - Z90 * logShape.sd)).toBeCloseTo(2, 4);
    expect(Math.exp(logShape.mean + Z90 * logShape.sd)).toBeCloseTo(4.5, 4);
    expect(incident.livesPerIncident).toBe(12);
    expect(lifePriors('blade', SHIPPED_MATERIALS, own)).toEqual(lifePriors('blade', SHIPPED_MATERIALS));
  });
});

// source: hand. What the shop says of a long tail counts; a belief entered before it was asked keeps the default.
it.each([
  [40, 0.4],
  [0, 0],
  [undefined, 0.25],
])('a long tail believed with %s per cent', (longTailPercent, chance) => {
  const { longTailPercent: _, ...own } = defaultBelief('die');
  const beliefs = [longTailPercent === undefined ? own : { ...own, longTailPercent }];
  expect(lifePriors('die', SHIPPED_MATERIALS, beliefs).logLogisticChance).toBe(chance);
});
