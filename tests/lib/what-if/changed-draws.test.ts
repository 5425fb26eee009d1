import { expect, it } from 'vitest';
import { newPieces } from '@/lib/what-if/added-pieces';
import { changedDraws } from '@/lib/what-if/changed-draws';
import { outlookOf, whatIfFacts } from '../../support/what-if-shop';

const facts = whatIfFacts();
const { ensemble } = outlookOf(facts);
const part = facts.parts.find(({ role }) => role === 'die');
if (part === undefined) throw new Error('no die');
const { tools, edges } = newPieces(facts, part, { quantity: 2, mark: 'w' });
const after = { ...facts, tools: [...facts.tools, ...tools], edges: [...facts.edges, ...edges] };

// source: identity. A new tool's life is drawn as any new piece of its part: same figures behind it, luck of its own.
it('brings in lives for what is new, and leaves the others as they are', () => {
  const draws = changedDraws(ensemble, facts, after);
  const [one, two] = tools.map(({ id }) => draws.residualLife(id));
  const mean = (life: Float64Array = new Float64Array()) => {
    let sum = 0;
    for (const one of life) sum += one;
    return sum / ensemble.drawCount;
  };
  const bought = mean(ensemble.newLife(part.id, 0));
  // Two samples of 2,048 stratified draws of one distribution with a spread of about its mean: within 5 %.
  expect(Math.abs(mean(one) / bought - 1)).toBeLessThan(0.05);
  expect(one).not.toEqual(two);
  expect(draws.residualLife('DIE-1')).toBe(ensemble.residualLife('DIE-1'));
  expect(draws.residualLife('NO-SUCH')).toBeUndefined();
});
