import { expect, it } from 'vitest';
import { doesSentence, edgeSays, gainSentence, nextSentence, whyNot } from '@/app/_shared/words/issue-words';
import type { ToolProposal } from '@/lib/issue-order/propose-tools';

const tool = { toolId: 'D-1', probability: 0.93, safeEnds: 28, likelyEnds: 69 };
const proposal: ToolProposal = {
  ...{
    kind: 'die',
    lineId: 'J-1.1',
    ends: 24,
    required: 0.9,
    chosen: null,
    next: [],
    runnersUp: [],
    handOver: null,
  },
  ...{ probability: 0.97, changes: 0.3 },
};
const label = (lineId: string) => `job ${lineId.slice(0, -2)}`;

// source: hand. Safe and likely ends and the chance, as the other screens say them.
it('says what a tool does for a line', () => {
  expect(doesSentence(tool, 24)).toBe('28 ends safe, 69 likely; better than 9 in 10 that it does all 24.');
  expect(doesSentence({ ...tool, safeEnds: 0, probability: 0.4 }, 1)).toBe(
    'no ends safe, 69 likely; about 4 in 10 that it does it.',
  );
});

// source: hand. Why another stays in the crib.
it('says why another tool stays', () => {
  expect(whyNot({ ...tool, why: { kind: 'kept-for', lineId: 'J-44.1' } }, label)).toBe(
    'would do it too, but is kept for job J-44',
  );
  expect(whyNot({ ...tool, why: { kind: 'fuller' } }, label)).toContain('more left than this line needs');
  expect(whyNot({ ...tool, probability: 0.7, why: { kind: 'may-not-last' } }, label)).toMatch(
    /^about 7 in 10/,
  );
});

// source: hand. What to take along, and how often it is needed; nothing where one edge is enough.
it('says what to take along', () => {
  expect(nextSentence(proposal)).toBe('');
  expect(nextSentence({ ...proposal, next: [tool] })).toBe(
    'Take D-1 along: about 3 in 10 that it is needed. Together, better than 19 in 20 that they do it.',
  );
});

// source: hand. 3 of 3 against 2, and a job of 78 ends still safe against 59.
it('says what planning gained', () => {
  const gain = {
    kind: 'die',
    lines: 3,
    lasting: 3,
    lastingFirstCome: 2,
    ends: 58,
    endsFirstCome: 51,
  } as const;
  const longest = [{ partId: 'die-9-16', ends: 78, endsFirstCome: 59 }];
  expect(gainSentence({ ...gain, longest }, () => '9⁄16 die')).toBe(
    'Dies: one edge is sure enough for 3 of 3 lines, 2 if each line takes the fullest die as it comes. ' +
      'A job of 78 ends is still safe afterwards on one 9⁄16 die, 19 ends more.',
  );
});

// source: hand. The counter says of an edge what the line's page says of it: cover, why, what to take along.
it('says at the counter whether an edge covers the line', () => {
  const other = { ...tool, toolId: 'D-2', safeEnds: 11, probability: 0.4 };
  const sure = { ...proposal, chosen: { ...tool, why: 'only-one-that-lasts' as const } };
  expect(edgeSays(sure, 'D-1')).toEqual([
    '28 ends safe, 69 likely; better than 9 in 10 that it does all 24.',
    'The only one that is sure enough to last.',
  ]);
  const short = { ...proposal, chosen: { ...other, why: 'fewest-at-risk' as const }, next: [tool] };
  expect(edgeSays(short, 'D-2')).toEqual([
    '11 ends safe, 69 likely; about 4 in 10 that it does all 24.',
    'None here is sure enough to last; this one leaves the fewest ends to chance.',
    'Take D-1 along: about 3 in 10 that it is needed. Together, better than 19 in 20 that they do it.',
  ]);
  expect(edgeSays(short, 'D-1')).toEqual([
    '28 ends safe, 69 likely; better than 9 in 10 that it does all 24.',
  ]);
  const stays = { ...other, why: { kind: 'may-not-last' } as const };
  expect(edgeSays({ ...sure, runnersUp: [stays] }, 'D-2')).toEqual([
    '11 ends safe, 69 likely; about 4 in 10 that it does all 24.',
  ]);
  expect(edgeSays(sure, 'D-9')).toEqual([]);
});
