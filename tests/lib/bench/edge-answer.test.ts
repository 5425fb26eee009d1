import { expect, it } from 'vitest';
import { edgeAnswer } from '@/lib/bench/edge-answer';

/** Futures that end after 1, 2, … 100 ends. */
const LEFT = Array.from({ length: 100 }, (_, i) => i + 1);

// source: hand. 100 equal futures: it lasts 24 more in 77 of them; after 10 are cut, 14 more in 77 of the 91 still ahead.
it('good ends come off what is asked, every end off what is left', () => {
  expect(edgeAnswer({ left: LEFT, endsToCut: 24 }, [], 0.9)).toEqual({
    ...{ endsToCut: 24, cutSince: 0, safeEnds: 11, likelyEnds: 51, chance: 0.77 },
    verdict: 'go-with-standby',
  });
  const later = edgeAnswer({ left: LEFT, endsToCut: 24 }, [{ ends: 10, goodEnds: 10 }], 0.9);
  expect(later).toMatchObject({ endsToCut: 14, cutSince: 10 });
  expect(later.chance).toBeCloseTo(77 / 91, 12);
  const rejected = edgeAnswer({ left: LEFT, endsToCut: 24 }, [{ ends: 10, goodEnds: 8 }], 0.9);
  expect(rejected).toMatchObject({ endsToCut: 16, cutSince: 10 });
  expect(rejected.chance).toBeCloseTo(75 / 91, 12);
});

// source: hand. Nothing is said of an edge that nobody knows, or that has outlived its futures.
it('says nothing where nothing honest can be said', () => {
  expect(edgeAnswer({ left: [], endsToCut: 24 }, [], 0.9)).toMatchObject({ chance: null, verdict: null });
  expect(edgeAnswer({ left: LEFT, endsToCut: 200 }, [{ ends: 99, goodEnds: 99 }], 0.9)).toMatchObject({
    ...{ endsToCut: 101, chance: null, safeEnds: null },
  });
});
