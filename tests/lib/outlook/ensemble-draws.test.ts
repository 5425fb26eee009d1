import { expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { ensembleDraws } from '@/lib/outlook/ensemble-draws';
import { wearShop } from '../../support/wear-shop';

// source: identity. A material factor asked of the ensemble and one read off the draws are the same figures.
it('are the draws behind the ensemble, to the digit', () => {
  const { ensemble } = wearShop();
  const draws = ensembleDraws(ensemble, 'die');
  const at = draws?.fit.layout.indexOf['material:2507'];
  const logs = draws?.figures[at ?? -1];
  expect(logs).toHaveLength(ensemble.drawCount);
  expect(ensemble.materialFactor('die', '2507')).toEqual(logs?.map(Math.exp));
});

// source: hand. Worked out once; none without a fit.
it('are worked out once to an ensemble', () => {
  const { ensemble } = wearShop();
  expect(ensembleDraws(ensemble, 'die')).toBe(ensembleDraws(ensemble, 'die'));
  expect(ensembleDraws(ensemble, 'blade')).not.toBe(ensembleDraws(ensemble, 'die'));
  expect(ensembleDraws(buildEnsemble({ kinds: {}, tools: [], parts: [] }), 'die')).toBeUndefined();
});
