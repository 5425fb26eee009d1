import { expect, it } from 'vitest';
import { evidenceOfCause } from '@/lib/shop/end-evidence';

// source: hand. Which causes are wear, which are accidents: common practice, no source.
it.each([
  ['worn', 'worn'],
  ['teeth-broken-worn', 'worn'],
  ['dropped', 'incident'],
  ['chipped-early', 'incident'],
  ['cross-threaded', 'incident'],
  ['galled', 'incident'],
  ['bad-lot', 'incident'],
  ['retired-good', 'removed-working'],
] as const)('%s counts as %s', (cause, evidence) => {
  expect(evidenceOfCause(cause)).toBe(evidence);
});
