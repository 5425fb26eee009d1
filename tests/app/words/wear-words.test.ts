import { expect, it } from 'vitest';
import {
  againstGuess,
  countsSentence,
  fasterWords,
  incidentWords,
  longTailWords,
  regrindWords,
  shapeWords,
} from '@/app/_shared/words/wear-words';

const band = (low: number, median: number, high: number) => ({ low, median, high });
const counts = { worn: 9, incident: 0, removedWorking: 0, inService: 2 };

// source: hand. Below 1 is early failures, around 1 chance, above it wear; certain only when nine in ten agree.
it.each([
  [band(3.7, 4.5, 5.4), 1, 'They wear out, and most of them at about the same age'],
  [band(1.4, 1.9, 2.6), 0.99, 'They wear out rather than break by chance'],
  [band(0.8, 1.2, 1.8), 0.7, 'Not clear yet whether they wear out or break by chance'],
  [band(0.4, 0.5, 0.7), 0.01, 'Most go early and the rest last: look at the first ends, not at the age'],
])('a shape of %o is said in words', (shape, probabilityWearsOut, words) => {
  expect(shapeWords({ shape, probabilityWearsOut })).toBe(words);
});

// source: hand. Stated sentences.
it('says what a regrind leaves, and from how many', () => {
  const regrind = band(0.82, 0.871, 0.923);
  const seen = { regroundEdges: 41, dryEnds: 0, reworkEnds: 0 };
  expect(regrindWords({ regrind, seen })).toBe(
    '0.87 of the life before (0.82 to 0.92), from 41 reground edges',
  );
  expect(regrindWords({ regrind, seen: { ...seen, regroundEdges: 0 } })).toBe(
    '0.87 of the life before (0.82 to 0.92), no reground edge in the log yet: as believed before',
  );
});

it('says how much faster, and when that is only believed', () => {
  expect(fasterWords(band(0.9, 1.5, 2.51), { ends: 0, how: 'cut dry' })).toBe(
    '1.5 times as fast (0.90 to 2.5), nothing cut dry in the log yet: as believed before',
  );
  expect(fasterWords(band(1.2, 1.5, 1.8), { ends: 1, how: 'cut dry' })).toBe(
    '1.5 times as fast (1.2 to 1.8), from 1 end cut dry',
  );
});

// source: hand. One in 6.9 to 30.6 lives; beyond a hundred in tens, never beyond a thousand.
it('says how often accidents happen, no finer than is known', () => {
  const of = (incident: number, livesPerIncident: ReturnType<typeof band>) =>
    incidentWords({ kind: 'die', counts: { ...counts, incident }, livesPerIncident });
  expect(of(3, band(6.87, 13.2, 30.6))).toBe(
    '3 dies lost to accidents; about one in 13 lives, between one in 7 and one in 31',
  );
  expect(of(1, band(20, 174, 11_973))).toBe(
    '1 die lost to accidents; about one in 170 lives, between one in 20 and one in 1000',
  );
  expect(of(0, band(70.2, 410, 11_973))).toBe(
    'None lost to an accident in the log; rarer than one in 70 lives, nine times in ten',
  );
});

// source: hand. 145 is below 152 to 198, 210 above, 160 within; nothing is said while nothing has worn out.
it('stands the log beside the first guess', () => {
  const said = (ends: number, worn = 7) =>
    againstGuess({
      guess: { partId: 'p', connectionId: 'c', ends, giveOrTake: 2 },
      typicalEnds: band(152, 172, 198),
      counts: { ...counts, worn },
    });
  expect([said(145), said(160), said(210), said(145, 0)]).toEqual([
    'longer than first guessed',
    '',
    'shorter than first guessed',
    '',
  ]);
  expect(againstGuess({ guess: undefined, typicalEnds: band(1, 2, 3), counts })).toBe('');
});

// source: hand. Only what happened is named.
it('says what became of the edges of a kind', () => {
  expect(countsSentence({ kind: 'blade', counts })).toBe('9 blade edges worn out, 2 still cutting');
  expect(
    countsSentence({ kind: 'die', counts: { worn: 1, incident: 2, removedWorking: 3, inService: 4 } }),
  ).toBe('1 die worn out, 2 lost to accidents, 3 taken out good, 4 still cutting');
});

// source: hand. Stated: tenths, and what was believed beside it.
it('says how likely a long tail is, beside what was believed', () => {
  expect(longTailWords({ longTail: { probability: 0.31, believed: 0.25 } })).toBe(
    '3.1 chances in 10; 2.5 in 10 before the log spoke',
  );
});
