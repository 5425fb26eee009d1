import { describe, expect, it } from 'vitest';
import type { Blocker, BlockerReason } from '@/lib/capability/blocker';
import { isByShare, wordBlocker } from '@/lib/capability/word-blocker';

const words = { lineLabel: (lineId: string) => `job ${lineId}` };

function say(reason: BlockerReason, change: Partial<Blocker> = {}): string {
  const base = {
    role: 'die',
    phase: 'cut',
    hard: true,
    toolIds: ['D-38-11'],
    clearsOnDay: null,
    rank: 1,
  } as const;
  return wordBlocker({ ...base, ...change, ...reason } as Blocker, words);
}

// source: hand. The sentences as one would say them.
describe('wordBlocker', () => {
  it('says what is in the way, with which tool, and when it clears', () => {
    expect(say({ kind: 'missing' }, { toolIds: [] })).toBe('No threading die for this size; no date known.');
    expect(say({ kind: 'missing' }, { toolIds: [], clearsOnDay: '2026-03-20' })).toBe(
      'No threading die for this size; sure enough by 20 Mar 2026.',
    );
    expect(say({ kind: 'hand-mismatch', wanted: 'LH' })).toBe(
      'Hand mismatch: the threading die (D-38-11) is not marked left hand; no date known.',
    );
    expect(say({ kind: 'quarantined' }, { toolIds: ['A', 'B'] })).toBe(
      'Threading die (A, B) is quarantined; no date known.',
    );
    expect(say({ kind: 'needs-first-off' })).toBe('Threading die (D-38-11) waits for its first-off check.');
  });

  it('gives a return day once', () => {
    const out = { role: 'go-ring', toolIds: ['G1'], clearsOnDay: '2026-03-20' } as const;
    expect(say({ kind: 'out-for-calibration', backOnDay: '2026-03-20' }, out)).toBe(
      'GO ring (G1) is out for calibration, expected back 20 Mar 2026.',
    );
    expect(say({ kind: 'out-for-regrind', backOnDay: '2026-03-24' }, out)).toBe(
      'GO ring (G1) is out for regrind, expected back 24 Mar 2026; clears 20 Mar 2026.',
    );
  });

  it('names the holder, or a loan', () => {
    expect(
      say({ kind: 'held-elsewhere', lineId: '41', untilDay: '2026-03-13' }, { clearsOnDay: '2026-03-14' }),
    ).toBe('Threading die (D-38-11) is with job 41 until 13 Mar 2026; clears 14 Mar 2026.');
    expect(say({ kind: 'held-elsewhere', lineId: null, untilDay: null })).toBe(
      'Threading die (D-38-11) is out on loan, no return day known.',
    );
  });

  it('gauges, fluid, lives', () => {
    expect(say({ kind: 'calibration-lapses', dueOnDay: '2026-03-12' }, { role: 'go-ring' })).toContain(
      'in calibration only to the end of 12 Mar 2026',
    );
    expect(say({ kind: 'calibration-lapses', dueOnDay: null })).toContain(
      'has no calibration date on record',
    );
    expect(
      say({ kind: 'fluid-not-permitted', why: 'material' }, { role: 'fluid', toolIds: ['F1'] }),
    ).toContain('permitted on this material (F1)');
    expect(say({ kind: 'fluid-expired', expiresOnDay: '2026-03-12' }, { role: 'fluid' })).toContain(
      'expires on 12 Mar 2026',
    );
    expect(say({ kind: 'fluid-short', haveMl: 4.23, needMl: 38.4 }, { role: 'fluid' })).toContain(
      'about 4.2 mL for this line, which takes 38 mL',
    );
    expect(say({ kind: 'life-short', pMade: 0.7, safeEnds: 1, likelyEnds: 25 })).toBe(
      'Threading die life is short: 1 end safe, 25 likely; no date known.',
    );
    expect(say({ kind: 'unknown-material' }, { role: null, toolIds: [] })).toContain(
      'This material is not in the table',
    );
  });

  it('tells a day by which it is sure enough from a day that is stated', () => {
    const day = { clearsOnDay: '2026-03-20' } as const;
    expect(say({ kind: 'life-short', pMade: 0.7, safeEnds: 6, likelyEnds: 52 }, day)).toBe(
      'Threading die life is short: 6 ends safe, 52 likely; sure enough by 20 Mar 2026.',
    );
    expect(say({ kind: 'quarantined' }, day)).toContain('; clears 20 Mar 2026.');
    expect([isByShare({ kind: 'missing' }), isByShare({ kind: 'held-elsewhere' })]).toEqual([true, false]);
  });

  it('never invents a size', () => {
    expect(say({ kind: 'unknown-connection' }, { role: null, toolIds: [] })).toBe(
      'No table row for this size: add it from the fitting maker’s manual.',
    );
  });
});
