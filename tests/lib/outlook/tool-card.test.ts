import { expect, it } from 'vitest';
import { toolCard } from '@/lib/outlook/tool-card';
import { logBook } from '../../support/tool-log';

const SAID = {
  ...{ connectionId: '3-8-medium', materialId: '316-cw', ends: 10, probability: 0.9 },
  ...{ lowEnds: 20, safeEnds: 20, likelyEnds: 40, highEnds: 60 },
};

// source: hand. Two rows, an adjustment with its first-off, and an end, counted by hand.
it('Q30: tells of a die what it cut, that it was adjusted, and that its count went on', () => {
  const book = logBook();
  book.receive('D-1', 'die');
  book.issue('D-1');
  book.cut('D-1', 12, { goodEnds: 11, jobLineId: 'J-1.1' });
  book.add('die-adjusted', 'D-1', { direction: 'closed', amount: 'a touch', onDay: '2026-03-02' });
  book.add('first-off-checked', 'D-1', { result: 'pass', onDay: '2026-03-02', gaugeIds: [] });
  book.cut('D-1', 8, { jobLineId: 'J-1.1' });
  book.end('D-1', 'worn');
  expect(toolCard(book.logs()[0] ?? { toolId: '', partId: '', entries: [] }, [])).toMatchObject([
    {
      ...{ edgeNo: 1, rows: 2, ends: 20, goodEnds: 19, exposureMicro: 210_000_000, jobLineIds: ['J-1.1'] },
      ...{ timesIssued: 1, readings: 0, firstOffs: ['pass'], ended: { cause: 'worn' } },
      adjustments: [{ direction: 'closed', onDay: '2026-03-02' }],
    },
  ]);
});

// source: hand. After a regrind the edge counts from zero, and what was cut before it stands on the first edge.
it('Q20: a regrind begins a new edge from zero, and keeps the old one', () => {
  const book = logBook();
  book.receive('B-1', 'blade');
  const cone = { operation: 'cone' as const };
  book.cut('B-1', 30, cone);
  book.end('B-1', 'worn');
  book.add('edge-renewed', 'B-1', { onDay: '2026-03-02', firstOff: 'owed' });
  book.add('first-off-checked', 'B-1', { result: 'pass', onDay: '2026-03-02', gaugeIds: [] });
  book.cut('B-1', 4, cone);
  const [first, second] = toolCard(book.logs()[0] ?? { toolId: '', partId: '', entries: [] }, []);
  expect(first).toMatchObject({ edgeNo: 1, ends: 30, firstOffs: [], ended: { cause: 'worn' } });
  expect(second).toMatchObject({ edgeNo: 2, ends: 4, firstOffs: ['pass'], ended: null });
});

// source: hand. It was said to finish ten, and did.
it('sets what was said at an issue beside how it turned out', () => {
  const book = logBook();
  book.receive('D-1', 'die');
  book.issue('D-1', SAID);
  book.cut('D-1', 10);
  const [edge] = toolCard(book.logs()[0] ?? { toolId: '', partId: '', entries: [] }, []);
  expect(edge?.predictions).toMatchObject([
    { probability: 0.9, what: { ends: 10, edgeNo: 1 }, settled: { outcome: true, reason: 'cut-them' } },
  ]);
});
