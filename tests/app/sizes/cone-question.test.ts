import { expect, it } from 'vitest';
import { coneQuestion } from '@/app/sizes/[id]/_parts/cone-question';

// source: hand. An inch is 25.4 mm; what cannot be read is no error.
it('reads the errors that are asked about', () => {
  expect(coneQuestion({}, 'in')).toEqual({ angleErrorDeg: 0, noseErrorMm: 0, heldBy: 'nose' });
  expect(coneQuestion({ angle: '−0.5', nose: '0.01', held: 'length' }, 'in')).toEqual({
    angleErrorDeg: -0.5,
    noseErrorMm: 0.254,
    heldBy: 'length',
  });
  expect(coneQuestion({ angle: 'wide', nose: ['1', '2'] }, 'mm')).toMatchObject({
    angleErrorDeg: 0,
    noseErrorMm: 0,
  });
});
