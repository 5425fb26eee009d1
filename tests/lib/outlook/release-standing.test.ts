import { describe, expect, it } from 'vitest';
import { releasableNow, releaseHolds } from '@/lib/outlook/release-standing';
import { lineFacts } from '../../support/shop-record';

const made = { ends: 24, goodCones: 24, goodThreads: 24 };

// source: hand. Twenty-four ends at one stage after the other.
describe('releaseHolds', () => {
  it('names what is left, in the order in which it is cleared', () => {
    const begun = lineFacts({
      ends: 24,
      goodCones: 20,
      goodThreads: 18,
      acceptedEnds: 12,
      releasableEnds: 10,
    });
    expect(releaseHolds(begun)).toEqual([
      { kind: 'ends-to-make', ends: 6 },
      { kind: 'ends-to-accept', ends: 6 },
      { kind: 'evidence-open', ends: 2 },
    ]);
  });

  it('made and not looked at is not accepted', () => {
    expect(releaseHolds(lineFacts(made))).toEqual([{ kind: 'ends-to-accept', ends: 24 }]);
  });

  it('is complete with every end accepted and on record', () => {
    expect(releaseHolds(lineFacts({ ...made, acceptedEnds: 24, releasableEnds: 24 }))).toEqual([]);
  });

  it('oxygen waits for its cleaning record', () => {
    const oxygen = lineFacts({ ...made, acceptedEnds: 24, releasableEnds: 24, duty: 'oxygen' });
    expect(releaseHolds(oxygen)).toEqual([{ kind: 'cleaning-record' }]);
    expect(releaseHolds({ ...oxygen, cleanedOnDay: '2026-03-12' })).toEqual([]);
  });

  it('waits for the pieces of a broken tool, and nothing can be released before', () => {
    const broken = lineFacts({ ...made, acceptedEnds: 24, releasableEnds: 24, piecesOwed: ['D-38-03'] });
    expect(releaseHolds(broken)).toEqual([{ kind: 'pieces-owed', toolIds: ['D-38-03'] }]);
    expect([releasableNow(broken), releasableNow({ ...broken, piecesOwed: [] })]).toEqual([0, 24]);
    expect(releasableNow(lineFacts({}))).toBe(0);
  });

  it('assembly alone asks for no acceptance here', () => {
    expect(releaseHolds(lineFacts({ operations: ['assemble'], ends: 4 }))).toEqual([]);
  });
});
