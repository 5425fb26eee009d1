import { expect, it } from 'vitest';
import { marginSentence } from '@/app/_shared/thread/margin-words';
import { gaugeWords, lookAlikeWords, threadSpelledOut } from '@/app/_shared/thread/thread-words';
import { pitchMargin } from '@/lib/thread/pitch-margin';

const ONE_INCH = { sizeIn: { num: 1, den: 1 }, tpi: 14, hand: 'LH' } as const;

// source: published, from memory. ASME B1.1: at 1 in the fine series has 12 threads to the inch; 14 is special.
it('spells a thread out and tells it from what goes by the same size', () => {
  expect(threadSpelledOut(ONE_INCH, 'UNS')).toBe(
    '1 in, 14 threads to the inch, a special thread, in none of the usual series, left hand',
  );
  expect(lookAlikeWords(ONE_INCH, 'UNS')).toMatch(
    /^1-14 UNS is not 1-8 UNC, 1-12 UNF or 1-20 UNEF\. .*Say LH too/,
  );
  expect(lookAlikeWords({ ...ONE_INCH, hand: 'RH' }, 'UNS')).not.toMatch(/LH/);
  expect(lookAlikeWords({ ...ONE_INCH, sizeIn: { num: 19, den: 64 } }, 'UNS')).toBeUndefined();
});

// source: hand. No rule is invented where the row has none.
it('says whose rule NOT GO runs on by', () => {
  const words = (turns: number | null) => gaugeWords('LH', turns)[1]?.value;
  expect(words(null)).toMatch(/nobody may assume one/);
  expect(words(2)).toMatch(/at most 2 turns/);
});

// source: hand. Limits 0.3430 and 0.3468 in (8.7122 and 8.80872 mm).
it.each([
  [8.763, 'in', '0.0018 in left to the upper limit, 0.0020 in above the lower one. The rings decide.'],
  [8.763, 'mm', '0.046 mm left to the upper limit, 0.051 mm above the lower one. The rings decide.'],
  [8.85942, 'in', '0.0020 in over the upper limit: GO should refuse. The die cuts large.'],
  [8.7, 'mm', '0.012 mm under the lower limit: the thread is thin. Look at the die’s setting and the tube.'],
  [8.8092, 'in', 'At the upper limit: nothing is left. The rings decide.'],
  [8.712, 'mm', 'At the lower limit: the thread is as thin as it may be.'],
] as const)('%d mm in %s', (pitchDiameterMm, unit, sentence) => {
  expect(marginSentence(pitchMargin({ pitchDiameterMm, minMm: 8.7122, maxMm: 8.80872 }), unit)).toBe(
    sentence,
  );
});
