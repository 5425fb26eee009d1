import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { readShopFacts } from '@/db/queries/shop-facts';
import { fitLife } from '@/lib/life/fit-life';
import type { LifeFit } from '@/lib/life/life-fit';
import { edgeHistories } from '@/lib/outlook/edge-histories';
import type { EdgeFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import { DIE, must, receive, testShop } from '../../support/db';
import { flatPriors } from '../../support/edge-histories';
import { relativeMiss } from '../../support/relative-miss';
import { sender } from '../../support/send';

const folder = new URL('../../fixtures/outlook/', import.meta.url);
const rows = readFileSync(new URL('die-log.csv', folder), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [toolId = '', ends = '', good = '', cause = ''] = line.split(',');
    return { toolId, ends: Number(ends), goodEnds: Number(good), cause };
  });
const expected = JSON.parse(readFileSync(new URL('die-log-fits.json', folder), 'utf8'));

/** The log entered row by row, as the bench would, each die taken out for its cause. */
function loggedShop(): ShopFacts {
  const db = testShop();
  const send = sender(db);
  const causes = new Map(rows.map(({ toolId, cause }) => [toolId, cause]));
  for (const toolId of causes.keys()) receive(db, toolId, DIE);
  for (const { toolId, ends, goodEnds } of rows) must(send.cut(toolId, ends, { goodEnds }));
  for (const [toolId, cause] of causes)
    if (cause !== '') must(send.end(toolId, cause, cause === 'retired-good' ? 'quarantined' : 'scrapped'));
  return readShopFacts(db, { today: '2026-03-02' });
}

/** The fit with nothing believed beforehand: the evidence alone. */
function fitted(facts: ShopFacts): LifeFit {
  const priors = flatPriors({ referenceMaterialId: '316' });
  const fit = fitLife({ kind: 'die', histories: edgeHistories(facts), priors });
  if (!fit.ok) throw new Error(fit.sentence);
  return fit;
}

function expectFigures(fit: LifeFit, figures: { shape: number; median: number }): void {
  expect(relativeMiss(Math.exp(fit.mode.logShape ?? Number.NaN), figures.shape)).toBeLessThan(1e-6);
  expect(relativeMiss(Math.exp(fit.mode.logMedian ?? Number.NaN), figures.median)).toBeLessThan(1e-6);
}

// source: other-software. R 4.2.2, survival 3.5.3, survreg on intervals that R makes of the same log by itself
// (tests/fixtures/outlook/generate.R): worn within the last row's ends that were not good, or at its last end.
describe('from the cut log to the life of a die, against survreg', () => {
  let facts: ShopFacts;
  beforeAll(() => {
    facts = loggedShop();
  });
  const turned = (end: (edge: EdgeFacts) => EdgeFacts['end']) => ({
    ...facts,
    edges: facts.edges.map((edge) => ({ ...edge, end: end(edge) })),
  });

  it('shape and median are those of the interval-censored fit', () => {
    const fit = fitted(facts);
    expect(fit.counts).toEqual(expected.counts);
    expectFigures(fit, expected.evidence);
  });

  it('accidents counted as wear would give another life: the one that R gives for that mistake', () => {
    const wrong = fitted(turned(({ end }) => (end === 'incident' ? 'worn' : end)));
    expectFigures(wrong, expected.accidentsAsWear);
    expect(relativeMiss(expected.accidentsAsWear.median, expected.evidence.median)).toBeGreaterThan(0.03);
  });

  it('leaving out what did not wear out would, too', () => {
    const onlyWorn = { ...facts, edges: facts.edges.filter(({ end }) => end === 'worn') };
    expectFigures(fitted(onlyWorn), expected.censoredLeftOut);
    expect(relativeMiss(expected.censoredLeftOut.median, expected.evidence.median)).toBeGreaterThan(0.1);
  });
});
