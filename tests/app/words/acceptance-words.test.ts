import { expect, it } from 'vitest';
import { ACCEPTANCE_WORDS } from '@/app/_shared/words/acceptance-words';

const gauges = [
  { toolId: 'G-1', verdict: 'pass' },
  { toolId: 'G-2', verdict: 'not-used' },
];
const look = { endCount: 3, decision: 'accepted', gauges, regaugesId: null, jobLineId: 'J-1.1' };

// source: hand. As it stands in the log.
it.each([
  ['ends-accepted', look, '3 ends accepted, line J-1.1, with G-1'],
  ['ends-accepted', { ...look, gauges: [] }, '3 ends accepted, line J-1.1, no gauge recorded'],
  [
    'ends-accepted',
    { ...look, endCount: 1, decision: 'refused', cause: 'go-tight', jobLineId: null, regaugesId: 'x' },
    'gauged again, 1 end refused: GO ring will not run on',
  ],
  [
    'recall-opened',
    { gaugeId: 'G-1', cause: 'check-failed', suspects: [{ endCount: 3 }, { endCount: 4 }] },
    'recall opened: G-1 failed a check in the shop, 7 ends to look at',
  ],
  ['recall-extended', { suspects: [{ endCount: 1 }] }, 'recall extended: 1 end more to look at'],
  [
    'suspect-disposed',
    { endCount: 2, how: 'regauged-good', gaugeId: 'G-2', evidence: 'twice' },
    '2 suspect ends: gauged again, good, with G-2 (twice)',
  ],
  ['recall-closed', { conclusion: 'worn out' }, 'recall closed: worn out'],
  ['job-shipped', { onDay: '2026-03-02' }, 'left the house on 2 Mar 2026'],
])('%s', (kind, payload, words) => {
  expect(ACCEPTANCE_WORDS[kind]?.(payload)).toBe(words);
});
