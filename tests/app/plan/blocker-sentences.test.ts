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
  expect(sentences[2]).toMatch(/sure enough by 14 Mar 2026\.$/);
});

it('says nothing of a line without blockers', () => {
  expect(blockerSentences([], label)).toEqual([]);
});

// source: hand. Three things out with the same line until the same day are one sentence; another day is another.
it('names things that are out with the same line together', () => {
  const out = {
    kind: 'held-elsewhere',
    lineId: 'J-1.1',
    untilDay: '2026-03-13',
    clearsOnDay: '2026-03-14',
  } as const;
  const held = (['die', 'go-ring', 'collet'] as const).map((role, at) =>
    blocker({ ...out, role, rank: at + 1 }),
  );
  const other = blocker({
    ...out,
    role: 'blade',
    untilDay: '2026-03-20',
    clearsOnDay: '2026-03-21',
    rank: 4,
  });
  expect(blockerSentences([...held, other], label)).toEqual([
    'Threading die, GO ring and collet or vise adapter are with job J-1.1 until 13 Mar 2026; clears 14 Mar 2026.',
    'Coning blade is with job J-1.1 until 20 Mar 2026; clears 21 Mar 2026.',
  ]);
});
