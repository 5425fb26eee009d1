import { expect, it } from 'vitest';
import { storedPredictions } from '@/lib/outlook/stored-predictions';
import { DIE_ROW, logBook } from '../../support/tool-log';

const SHOWN = {
  ...{ connectionId: DIE_ROW.connectionId, materialId: DIE_ROW.materialId },
  ...{ ends: 20, probability: 0.8, lowEnds: 15, highEnds: 60 },
};
const GUESS = { partId: 'die-3-8', connectionId: '3-8-medium', ends: 50, giveOrTake: 2 };

/** A new die that has cut 30, then goes out for 20 more, then what `after` says. */
function judged(after: (book: ReturnType<typeof logBook>) => void, guesses = [GUESS]) {
  const book = logBook();
  book.receive('D-1', 'die');
  book.cut('D-1', 30);
  book.issue('D-1', SHOWN);
  after(book);
  return storedPredictions(book.logs(), guesses);
}
const settledOf = (after: (book: ReturnType<typeof logBook>) => void) => judged(after)[0]?.settled;

// source: identity. What is judged is what was shown, about the edge that it was shown of.
it('keeps what was shown, and of which edge', () => {
  const [kept] = judged(() => {});
  expect(kept).toMatchObject({
    ...{ kind: 'tool-finishes', probability: 0.8, band: { low: 15, high: 60 }, settled: null },
    what: { toolId: 'D-1', edgeNo: 1, ends: 20, lineId: 'J-1.1', connectionId: '3-8-medium' },
  });
});

// source: hand. The rule: it cut so many first, true; worn out before, false; neither, void; nothing yet, open.
it('is true once it has cut so many, on one row or several', () => {
  const settled = settledOf((book) => {
    book.cut('D-1', 12);
    book.cut('D-1', 8);
  });
  expect(settled).toMatchObject({ outcome: true, reason: 'cut-them', lasted: { ends: 20, exact: false } });
});

it('is false when it wore out before, and knows how many it lasted', () => {
  const settled = settledOf((book) => {
    book.cut('D-1', 12, { goodEnds: 11 });
    book.end('D-1', 'worn');
  });
  expect(settled).toMatchObject({
    outcome: false,
    reason: 'wore-out-before',
    lasted: { ends: 11, exact: true },
  });
});

it('is void when it was dropped, lost, or came back good with fewer cut', () => {
  const dropped = settledOf((book) => {
    book.cut('D-1', 5);
    book.end('D-1', 'dropped');
  });
  const lost = settledOf((book) => book.add('tool-moved', 'D-1', { to: 'lost', backOnDay: null }));
  const next = settledOf((book) => {
    book.cut('D-1', 5);
    book.issue('D-1');
  });
  expect([dropped, lost, next].map((settled) => [settled?.outcome, settled?.reason])).toEqual([
    [null, 'incident'],
    [null, 'lost'],
    [null, 'removed-while-good'],
  ]);
});

it('is still open while it is out and has cut fewer', () => {
  expect(settledOf((book) => book.cut('D-1', 19))).toBeNull();
});

// source: hand. 30 cut and 20 asked are 50: within a count of 50, not within 49.
it('stands beside what a fixed count would have said', () => {
  const said = (ends: number) => judged(() => {}, [{ ...GUESS, ends }])[0]?.fixedCount;
  expect([said(50), said(49)]).toEqual([1, 0]);
  expect(judged(() => {}, [])[0]).not.toHaveProperty('fixedCount');
});

// source: hand. A counted start counts, a new edge starts from zero and is the second.
it('counts what the edge had cut before it came, and starts again after a regrind', () => {
  const book = logBook();
  const opening = { known: 'counted', connectionId: '3-8-medium', materialId: '316-cw', ends: 31 } as const;
  book.receive('B-1', 'blade', { opening: { ...opening, exposureMicro: 1 } });
  book.issue('B-1', SHOWN);
  book.add('edge-renewed', 'B-1', { onDay: '2026-03-02' });
  book.issue('B-1', SHOWN);
  const [first, second] = storedPredictions(book.logs(), [{ ...GUESS, partId: 'blade-3-8-medium' }]);
  expect([first?.fixedCount, second?.fixedCount]).toEqual([0, 1]);
  expect([first?.what.edgeNo, second?.what.edgeNo]).toEqual([1, 2]);
  expect(first?.settled).toMatchObject({ outcome: null });
});

// source: hand. Nothing was shown, so nothing is judged.
it('leaves out an issue at which nothing was shown', () => {
  const book = logBook();
  book.receive('D-1', 'die');
  book.issue('D-1');
  expect(storedPredictions(book.logs(), [])).toEqual([]);
});

// source: hand. Twenty of one material were spoken of; what it does in another says nothing of them, recutting does.
it('is void once it was put to another material, not when an end was cut again', () => {
  const other = settledOf((book) => {
    book.cut('D-1', 5);
    book.cut('D-1', 30, { materialId: '2507' });
  });
  expect(other).toMatchObject({ outcome: null, reason: 'other-work' });
  const recut = settledOf((book) => {
    book.cut('D-1', 19);
    book.cut('D-1', 1, { rework: true });
  });
  expect(recut).toMatchObject({ outcome: true });
});
