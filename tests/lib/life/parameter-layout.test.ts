import { expect, it } from 'vitest';
import { layOut, startOf } from '@/lib/life/parameter-layout';
import { defaultLifePriors } from '@/lib/life/priors';
import { cut, edge, flatPriors } from '@/tests/support/edge-histories';

const PRIORS = defaultLifePriors('die', {
  referenceMaterialId: 'ref',
  materials: [{ materialId: '625', factor: 4 }],
});

it('gives a figure to each part and material that is mentioned, and no other', () => {
  const histories = [
    edge('b', { partId: 'die-56' }),
    edge('a', { before: [cut(5, { materialId: 'odd' }), cut(0, { materialId: 'unused' })] }),
  ];
  const guesses = [{ partId: 'die-25', odIn: 0.25, lifeBase: 1400, factor: 2 }];
  const layout = layOut(histories, guesses, PRIORS);
  expect(layout.names).toEqual([
    'logShape',
    'logMedian',
    'sizeExponent',
    'regrind',
    'dry',
    'rework',
    'guessError',
    'part:die-25',
    'part:die-38',
    'part:die-56',
    'material:625',
    'material:odd',
  ]);
  expect(layout.unlistedMaterialIds).toEqual(['odd']);
  expect(layOut([...histories].reverse(), guesses, PRIORS).names).toEqual(layout.names);
});

it('takes the default life only without a guess', () => {
  expect(layOut([], [], PRIORS).priors[1]).toEqual(PRIORS.logMedian);
  expect(layOut([], [{ odIn: 0.25, lifeBase: 1, factor: 2 }], PRIORS).priors[1]).toEqual({ form: 'flat' });
});

it('fits only what is not fixed, and starts at the means', () => {
  expect(layOut([edge('a')], [], flatPriors()).free).toEqual([0, 1]);
  expect(startOf(layOut([], [], PRIORS))[0]).toBe(Math.LN2);
});
