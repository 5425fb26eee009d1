import { expect, it } from 'vitest';
import { livesStillKnown } from '@/lib/ensemble/lives-still-known';
import { toolsInHand } from '@/lib/outlook/tools-in-hand';
import { wearFacts, wearShop } from '../../support/wear-shop';

const { ensemble } = wearShop();
const tools = toolsInHand(wearFacts());
const die = ensemble.draws('die');
if (die === undefined) throw new Error('the wear shop has dies');

// source: hand. Only what was worked out, over the very same draws, of a tool that is as it was, can be known still.
it('knows a life still while the draws and the tool are the same', () => {
  expect(livesStillKnown(ensemble, new Map([['die', die]]), tools).size).toBe(0);
  const life = ensemble.residualLife('D-20');
  expect([...livesStillKnown(ensemble, new Map([['die', die]]), tools)]).toEqual([['residual:D-20', life]]);
  expect(livesStillKnown(ensemble, new Map([['die', { ...die }]]), tools).size).toBe(0);
  expect(livesStillKnown(ensemble, new Map(), tools).size).toBe(0);
  const worked = tools.map((tool) => ({ ...tool, exposure: [...tool.exposure, ...tool.exposure] }));
  expect(livesStillKnown(ensemble, new Map([['die', die]]), worked).size).toBe(0);
});
