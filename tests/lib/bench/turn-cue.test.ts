import { expect, it } from 'vitest';
import { turnCue } from '@/lib/bench/turn-cue';

// source: hand. 10.5 turns: oil before the first turn and after 2, 4, 6, 8, 10; chips after every turn; done at the 11th.
it('chips every turn, oil every second one, done at the length', () => {
  const cues = Array.from({ length: 12 }, (_, turn) => turnCue(turn, 10.5));
  expect(cues.filter(({ oil }) => oil).map(({ turn }) => turn)).toEqual([0, 2, 4, 6, 8, 10]);
  expect(cues.filter(({ clearChips }) => !clearChips).map(({ turn }) => turn)).toEqual([0]);
  expect(cues.filter(({ done }) => done).map(({ turn }) => turn)).toEqual([11]);
});

// source: identity. Applications are those that the fluid plan counts: ⌈turns ÷ 2⌉.
it('oils as often as the fluid plan counts', () => {
  for (const turnsPerEnd of [9, 9.625, 10.5, 16.875, 18]) {
    const turns = Math.ceil(turnsPerEnd - 1e-9);
    const oiled = Array.from({ length: turns }, (_, turn) => turnCue(turn, turnsPerEnd)).filter(
      ({ oil }) => oil,
    );
    expect(oiled).toHaveLength(Math.ceil(turns / 2));
  }
});

it('refuses turns that cannot be', () => {
  expect(() => turnCue(1.5, 9)).toThrow('whole turns');
  expect(() => turnCue(1, 0)).toThrow('above 0');
});
