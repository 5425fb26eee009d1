import { expect, it } from 'vitest';
import { blockerSentences } from '@/app/plan/_parts/blocker-sentences';
import { blocker } from '../../support/shop-record';

const label = (lineId: string) => `job ${lineId}`;

// source: hand. Two things missing stay two sentences; three or more with the same date become one that names all.
it('names every blocker, those missing alike together', () => {
  const missing = (['die', 'go-ring', 'blade'] as const).map((role, at) => blocker({ role, rank: at + 1 }));
  const held = blocker({
    kind: 'held-elsewhere',
    role: 'collet',
    lineId: 'J-1.1',
    untilDay: '2026-03-13',
    toolIds: ['C-1'],
    clearsOnDay: '2026-03-14',
  });
  expect(blockerSentences([...missing, held], label)).toEqual([
    'No threading die, GO ring or coning blade for this size; no date known.',
    'Collet or vise adapter (C-1) is with job J-1.1 until 13 Mar 2026; clears 14 Mar 2026.',
  ]);
  expect(blockerSentences(missing.slice(0, 2), label)).toEqual([
    'No threading die for this size; no date known.',
    'No GO ring for this size; no date known.',
  ]);
});

it('does not put together what clears on different days', () => {
  const days = [null, null, '2026-03-14', '2026-03-14', '2026-03-14'];
  const missing = days.map((clearsOnDay, at) => blocker({ clearsOnDay, rank: at + 1 }));
  const sentences = blockerSentences(missing, label);
  expect(sentences).toHaveLength(3);
  expect(sentences[2]).toMatch(/clears 14 Mar 2026\.$/);
});

it('says nothing of a line without blockers', () => {
  expect(blockerSentences([], label)).toEqual([]);
});
