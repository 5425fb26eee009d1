import { deserialize, serialize } from 'node:v8';
import { expect, it } from 'vitest';
import { computeOutlook } from '@/lib/outlook/outlook';
import { packOutlook, unpackOutlook } from '@/lib/outlook/outlook-data';
import { wearCurve } from '@/lib/outlook/wear-curve';
import { lineFacts } from '../../support/shop-record';
import { wearFacts } from '../../support/wear-shop';

const facts = wearFacts({ lines: [lineFacts()] });
const outlook = computeOutlook(facts);
const sent = unpackOutlook(deserialize(serialize(packOutlook(computeOutlook(facts)))));

// source: identity. What went through another process says the same, to the last bit: verdicts, lives of tools in hand and of
// tools not yet bought, factors, forecasts, curves.
it('an outlook taken apart, sent and put together again is the same outlook', () => {
  expect(sent.lines).toEqual(outlook.lines);
  expect(sent.sizes).toEqual(outlook.sizes);
  expect(sent.facts).toEqual(outlook.facts);
  const cut = { connectionId: '3-8-medium', materialId: '2507' };
  const told = (from: typeof outlook) => {
    const { probabilityFinishes, safeEndsAt, ...forecast } = must(from.forecast('D-20', cut));
    return {
      ...forecast,
      finishes: [1, 10, 40, 100].map(probabilityFinishes),
      safe: [0.8, 0.9, 0.95].map(safeEndsAt),
      life: from.ensemble.residualLife('D-20'),
      bought: from.ensemble.newLife('die-3-8', 3),
      factor: from.ensemble.materialFactor('die', '2507'),
      curve: wearCurve(from, 'die-3-8'),
    };
  };
  expect(told(sent)).toEqual(told(outlook));
});

// source: hand. The edges one by one are needed to fit, not to answer: they are not sent.
it('leaves behind what only a fit needs', () => {
  expect(outlook.ensemble.fit('die')?.model?.rows.length).toBeGreaterThan(0);
  expect(sent.ensemble.fit('die')?.model).toBeUndefined();
});

function must<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('not there');
  return value;
}
