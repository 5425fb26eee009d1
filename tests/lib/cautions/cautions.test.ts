import { describe, expect, it } from 'vitest';
import { CAUTION_PLACES } from '@/lib/cautions/caution';
import { CAUTIONS, cautionsAt, serviceCautionPlaces } from '@/lib/cautions/cautions';

// source: formula. Each caution and where it is shown: common practice and the standards named in its basis.
const GIVEN: Record<string, string> = {
  eyes: 'Safety glasses with side shields',
  'blade-edge': 'Never test an edge with a finger',
  chips: 'Never hands, never a rag on turning work',
  'air-line': 'below 30 psi',
  'powered-head': 'gloves, sleeves, rings and lanyards off',
  'fluid-skin': 'chemical-resistant gloves',
  'fluid-mist': '0.4 mg/m³ thoracic (0.5 total)',
  'fluid-sds': 'Every bottle is labelled, the dropper too',
  'regrind-dust': 'wet grinding alone is not enough',
  'titanium-fire': 'not for water or CO₂',
  'oxygen-oil': 'can ignite in oxygen',
  bore: 'Look through the bore. Swab. Cap.',
  'broken-tool': 'Account for every piece',
  'never-says-safe': 'never says a joint is safe to pressurise',
  'gas-energy': 'at least 30 m back',
  'never-feel': 'hospital at once',
  estimates: 'do not replace looking at the edge, the gauge or the drawing',
  'gauge-overdue': 'suspect until reviewed',
  dimensions: 'are examples',
  codes: 'not a code document',
};

describe('cautions', () => {
  it.each(Object.entries(GIVEN))('give %s', (id, words) => {
    const caution = CAUTIONS.find((one) => one.id === id);
    expect(`${caution?.lead} ${caution?.text}`).toContain(words);
    expect(caution?.basis).not.toBe('');
  });

  it('have one ID each and stand at every place', () => {
    expect(new Set(CAUTIONS.map(({ id }) => id)).size).toBe(CAUTIONS.length);
    for (const place of CAUTION_PLACES) expect(cautionsAt(place), place).not.toEqual([]);
  });

  it('use DANGER once', () => {
    expect(CAUTIONS.filter(({ signal }) => signal === 'danger').map(({ id }) => id)).toEqual(['never-feel']);
  });

  // source: published. Energy of 1 L at 1 000 bar let down adiabatically to 1 bar: p1·V/(γ−1)·(1−(p2/p1)^((γ−1)/γ)), γ = 1.4
  // (ASME PCC-2 App. 501-II as reproduced); as water ½·p²·V/K with K ≈ 2.2 GPa (handbook value, from memory).
  it('quote the energy of gas and of water as the formulas give it', () => {
    const [p1, p2, litre, gamma] = [1e8, 1e5, 1e-3, 1.4];
    const gasKj = ((p1 * litre) / (gamma - 1)) * (1 - (p2 / p1) ** ((gamma - 1) / gamma)) * 1e-3;
    const waterKj = (0.5 * p1 * p1 * litre * 1e-3) / 2.2e9;
    expect(Math.abs(gasKj - 215)).toBeLessThan(2);
    expect(Math.abs(waterKj - 2)).toBeLessThan(0.5);
    expect(CAUTIONS.find(({ id }) => id === 'gas-energy')?.text).toContain('215 kJ as gas');
  });
});

describe('serviceCautionPlaces', () => {
  // source: hand. Titanium by the material, oxygen by the duty.
  it.each([
    [{ titanium: true, duty: 'ordinary' }, ['titanium']],
    [{ titanium: false, duty: 'oxygen' }, ['oxygen']],
    [{ titanium: true, duty: 'oxygen' }, ['titanium', 'oxygen']],
    [{ titanium: false, duty: 'ordinary' }, []],
  ])('%o', (work, places) => {
    expect(serviceCautionPlaces(work)).toEqual(places);
  });
});
