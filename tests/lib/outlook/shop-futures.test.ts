import { expect, it } from 'vitest';
import type { Ensemble } from '@/lib/ensemble/build-ensemble';
import { computeOutlook } from '@/lib/outlook/outlook';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { shopFutures } from '@/lib/outlook/shop-futures';
import { edgeFacts, use } from '../../support/edge-facts';
import { lineFacts, toolFacts } from '../../support/shop-record';
import { wearFacts } from '../../support/wear-shop';

const blades = [toolFacts({ id: 'B-1', role: 'blade' }), toolFacts({ id: 'B-2', role: 'blade' })];
const facts = wearFacts({ tools: [...wearFacts().tools, ...blades] });
const withEdges = (blade1: number, die: number): ShopFacts => ({
  ...facts,
  edges: [
    ...facts.edges.filter(({ toolId }) => toolId !== 'D-20'),
    edgeFacts('D-20', { use: [use(die)] }),
    edgeFacts('B-1', { use: [use(blade1)] }),
    edgeFacts('B-2'),
  ],
});

function figures(ensemble: Ensemble, ids: readonly string[]) {
  return ids.map((id) => ensemble.residualLife(id));
}

// source: identity. What is carried over from earlier futures is, to the last bit, what a fresh start works out.
it('carries over what has not moved, and gives the digits of a fresh start', () => {
  const first = shopFutures(withEdges(3, 20));
  const ids = ['B-1', 'B-2', 'D-20'];
  const before = figures(first.ensemble, ids);
  const cutWithDie = withEdges(3, 24);
  const next = shopFutures(cutWithDie, first);
  expect(next.ensemble.draws('blade')).toBe(first.ensemble.draws('blade'));
  expect(next.ensemble.draws('die')).not.toBe(first.ensemble.draws('die'));
  expect(next.ensemble.residualLife('B-1')).toBe(before[0]);
  const fresh = shopFutures(cutWithDie);
  expect(figures(next.ensemble, ids)).toEqual(figures(fresh.ensemble, ids));
  expect(figures(next.ensemble, ['D-20'])).not.toEqual([before[2]]);
  const answers = (ensemble: Ensemble) => computeOutlook({ ...cutWithDie, lines: [lineFacts()] }, ensemble);
  expect(answers(next.ensemble).lines).toEqual(answers(fresh.ensemble).lines);
});

// source: identity. A belief or a first guess that changes is a new fit of its kind, though no edge has moved.
it('fits anew when a guess or a belief changes', () => {
  const first = shopFutures(facts);
  const guesses = facts.guesses.map((guess) => ({ ...guess, ends: 2 * guess.ends }));
  const next = shopFutures({ ...facts, guesses }, first);
  expect(next.ensemble.draws('die')).not.toBe(first.ensemble.draws('die'));
  expect(next.ensemble.residualLife('D-20')).toEqual(
    shopFutures({ ...facts, guesses }).ensemble.residualLife('D-20'),
  );
});
