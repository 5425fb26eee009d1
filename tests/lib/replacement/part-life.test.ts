import { expect, it } from 'vitest';
import { medianOf } from '@/lib/life/weibull';
import { thinned } from '@/lib/replacement/life-posterior';
import { partLife } from '@/lib/replacement/part-life';
import { wearShop } from '../../support/wear-shop';

const { facts, ensemble } = wearShop();
const life = partLife(facts, ensemble, { partId: 'die-3-8', kind: 'die' });

// source: identity. Each draw’s median is the ensemble’s own; thinning keeps every fourth of 2048.
it('is the ensemble’s life, draw by draw', () => {
  const median =
    ensemble.medianLife('die', { partId: 'die-3-8', odIn: 0.375, regrinds: 0 }) ?? new Float64Array();
  // A draw in which lives are Weibull: only there is the scale not the median itself.
  const k = life?.logLogistic?.indexOf(0) ?? 0;
  const [shape, scale] = [life?.shape[k] ?? 0, life?.scale[k] ?? 0];
  expect(medianOf({ shape, scale }) / (median[k] as number)).toBeCloseTo(1, 12);
  expect(life && thinned(life).scale).toHaveLength(512);
  expect(life && thinned(life).scale[1]).toBe(life?.scale[4]);
});

// source: hand. A part that the shop has none of has no life.
it('is undefined for what nobody knows', () => {
  expect(partLife(facts, ensemble, { partId: 'no-such', kind: 'die' })).toBeUndefined();
});
