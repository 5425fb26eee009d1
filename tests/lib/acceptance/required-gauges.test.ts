import { expect, it } from 'vitest';
import { missingGauges, requiredGauges } from '@/lib/acceptance/required-gauges';

// source: hand. Both rings for a thread, the cone gauge for a cone.
it('asks for both rings on a thread and the cone gauge on a cone', () => {
  expect(requiredGauges(['thread', 'cone'])).toEqual(['cone-gauge', 'go-ring', 'not-go-ring']);
  expect(requiredGauges(['cone'])).toEqual(['cone-gauge']);
  expect(missingGauges(['thread'], [{ role: 'go-ring', verdict: 'pass' }])).toEqual(['not-go-ring']);
  expect(missingGauges(['thread'], [{ role: 'go-ring', verdict: 'not-used' }])).toEqual([
    'go-ring',
    'not-go-ring',
  ]);
});
