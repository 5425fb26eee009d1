import { expect, it } from 'vitest';
import {
  againstRest,
  flagRule,
  groupName,
  holdWords,
  logRankWords,
  lowerWords,
} from '@/app/_shared/words/compare-words';
import type { GroupFlag } from '@/lib/compare/comparison';

const flag: GroupFlag = {
  groupedBy: 'lot',
  verdict: 'flagged',
  effect: {
    ...{ groupId: '9F-13', edges: 5, worn: 4, ends: 422, probabilityLower: 0.97 },
    lifeFactor: { low: 0.718, median: 0.836, high: 0.993 },
  },
  logRank: { chi2: 7.6, degreesOfFreedom: 1, p: 0.0058, groups: [] },
};

// source: hand. Stated sentences.
it('names a group and its evidence', () => {
  expect([groupName(flag), groupName({ ...flag, groupedBy: 'supplier' })]).toEqual(['lot 9F-13', '9F-13']);
  expect(againstRest(flag)).toBe('0.84 of the rest (0.72 to 0.99)');
  expect(lowerWords(flag)).toBe('better than 19 in 20');
});

it('says the test no finer than it is known, and when it was not asked', () => {
  const p = (value: number) =>
    logRankWords({ logRank: { chi2: 1, degreesOfFreedom: 1, p: value, groups: [] } });
  expect([p(0.0058), p(0.362), p(1e-9)]).toEqual(['p 0.006', 'p 0.36', 'p under 0.001']);
  expect(logRankWords({ logRank: undefined })).toBe('not asked: edges cut several heats');
});

// source: hand. The rule as it is stated where it is kept: 3 edges, 2 worn, 20 ends, 95 %.
it('states from what on a group is flagged', () => {
  expect(flagRule(38)).toBe(
    'A group is flagged from 3 edges, 2 of them worn out, and 20 ends on, when the chance that it lasts less is at least 95\u202f%. Of 38 groups looked at, one or two may stand out by chance alone.',
  );
});

// source: hand. Two of the first five, or one found faulty.
it('says why a lot is to be held, and nothing of one that is not', () => {
  const lot = { lot: 'L', looked: 4, early: 2, toolIds: [], proposeHold: true };
  expect(holdWords(lot)).toBe(
    '2 of the first 4 died early, chipped or faulty. The rule is 2 of the first 5.',
  );
  expect(holdWords({ ...lot, early: 0 })).toBe('A tool of it was found faulty from the maker.');
  expect(holdWords({ ...lot, proposeHold: false })).toBe('');
});
