import { expect, it } from 'vitest';
import { notNow } from '@/app/tools/[id]/_parts/not-now';

const SOUND = { state: 'in-crib', pieces: 'none', firstOffOwed: false } as const;

// source: hand. TRADE: a broken die is not "go", whatever it has left by its counts.
it.each([
  [SOUND, undefined],
  [{ ...SOUND, state: 'issued' as const }, undefined],
  [{ ...SOUND, pieces: 'found' as const }, undefined],
  [{ ...SOUND, pieces: 'owed' as const }, 'something broke off it, and the pieces are to be found first'],
  [{ ...SOUND, state: 'quarantined' as const }, 'it is quarantined'],
  [{ ...SOUND, state: 'regrind' as const }, 'it is out for regrind'],
  [{ ...SOUND, firstOffOwed: true }, 'its first end has not passed the gauges yet'],
])('%o: %s', (tool, why) => {
  expect(notNow(tool)).toBe(why);
});
