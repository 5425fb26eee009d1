import { expect, it } from 'vitest';
import { computeOutlook } from '@/lib/outlook/outlook';
import type { LineFacts } from '@/lib/outlook/shop-facts';
import { shownFor } from '@/lib/outlook/shown-for';
import { edgeFacts } from '../../support/edge-facts';
import { lineFacts, shopRecord, toolFacts } from '../../support/shop-record';

const SIZE = { connectionId: '3-8-medium', materialId: '316-cw' };

function shown(toolId: string, change: Partial<LineFacts> = {}, jobLineId = 'J-1.1') {
  const facts = shopRecord({
    lines: [lineFacts(change)],
    tools: [
      toolFacts({ id: 'D-1', role: 'die' }),
      toolFacts({ id: 'B-1', role: 'blade' }),
      toolFacts({ id: 'BDY-A', role: 'coning-body' }),
    ],
    edges: [edgeFacts('D-1'), edgeFacts('B-1')],
  });
  const outlook = computeOutlook(facts);
  return { shown: shownFor(outlook, { toolId, jobLineId }), forecast: outlook.forecast(toolId, SIZE) };
}

// source: identity. What is kept is what the screen showed: the same forecast, asked for the same ends.
it('is the forecast of the tool for what is left of the line', () => {
  const { shown: kept, forecast } = shown('D-1', { goodCones: 24, goodThreads: 10 });
  expect(kept).toEqual({
    ...SIZE,
    ends: 14,
    probability: forecast?.probabilityFinishes(14),
    lowEnds: forecast?.lowEnds,
    highEnds: forecast?.highEnds,
  });
});

// source: hand. 24 − 20 cones are left to a blade, 24 − 10 threads to a die.
it('asks a blade for the cones and a die for the threads', () => {
  const done = { goodCones: 20, goodThreads: 10 };
  expect(shown('B-1', done).shown?.ends).toBe(4);
  expect(shown('D-1', done).shown?.ends).toBe(14);
});

// source: hand. Stated cases.
it('is nothing where nothing is shown', () => {
  expect(shown('BDY-A').shown).toBeUndefined();
  expect(shown('D-9').shown).toBeUndefined();
  expect(shown('D-1', {}, 'J-9.1').shown).toBeUndefined();
  expect(shown('D-1', { goodThreads: 24 }).shown).toBeUndefined();
  expect(shown('D-1', { operations: ['cone'] }).shown).toBeUndefined();
  expect(shown('D-1', { connectionId: '9-16-high' }).shown).toBeUndefined();
  expect(shown('D-1', { materialId: 'tin' }).shown).toBeUndefined();
});
