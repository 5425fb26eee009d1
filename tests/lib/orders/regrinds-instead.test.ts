import { expect, it } from 'vitest';
import type { PartOutlook } from '@/lib/orders/part-outlook';
import { regrindsInstead } from '@/lib/orders/regrinds-instead';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { edgeFacts } from '../../support/edge-facts';
import { setParts, TODAY, toolFacts } from '../../support/shop-record';

const part = setParts().find(({ role }) => role === 'blade');
if (part === undefined) throw new Error('the set has a blade');
const need = (...pieces: number[]) => ({
  ...{ partId: part.id, drawCount: 2 },
  needDays: pieces.map((day) => Float64Array.of(day, day)),
});
const outlook = (over: Partial<PartOutlook>): PartOutlook => ({
  ...{ part, kind: 'blade', horizonDays: 56, service: 0.9, lines: [], onOrder: 0, drafted: 0 },
  ...{ planned: need(), short: need(), total: need(40), bought: need(10, 20, 40) },
  ...over,
});
const facts = {
  ...{ today: TODAY, costs: DEFAULT_COSTS },
  tools: [toolFacts({ id: 'B-1', role: 'blade' }), toolFacts({ id: 'B-2', role: 'blade' })],
  edges: [
    edgeFacts('B-1', { end: 'worn' }),
    edgeFacts('B-2', { edgeNo: 1, end: 'worn' }),
    edgeFacts('B-2', { edgeNo: 2 }),
  ],
};

// source: hand. Three without regrinds, one with: two less. B-1 is worn and here, B-2 cuts with its second edge; away 14 + 1 days from 2 March.
it('says how many blades need not be bought, and which can go out today', () => {
  expect(regrindsInstead(outlook({}), facts)).toEqual({
    ...{ pieces: 2, wornIds: ['B-1'], backOnDay: '2026-03-17', awayDays: 15, costMinor: 2_000 },
  });
});

// source: hand. What is not needed within the horizon is no saving; without regrinds there is nothing to say.
it('says nothing where regrinds save nothing', () => {
  expect(regrindsInstead(outlook({ bought: need(40, 70, 80) }), facts)).toBeNull();
  expect(regrindsInstead(outlook({ bought: null }), facts)).toBeNull();
});
