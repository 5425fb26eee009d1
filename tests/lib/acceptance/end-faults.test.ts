import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EndsSeen, endFaults } from '@/lib/acceptance/end-faults';
import type { AppliedRule, GaugeResult } from '@/lib/shop/acceptance';

const rule: AppliedRule = { notGoTurnsMax: 2, whose: 'instruction 7', source: 'shop' };
const exposed = { min: 1, max: 2 };
const ng = (turns: number | null, verdict: GaugeResult['verdict'] = 'pass'): GaugeResult => ({
  ...{ toolId: 'NG', role: 'not-go-ring', verdict, turns },
});
const good: EndsSeen = {
  ...{ operations: ['cone', 'thread'], finish: 'smooth', coneContact: 'nose-ring' },
  ...{ exposedThreads: 1.5, boreClear: true, otherFault: null, gauges: [ng(2)] },
};
const causes = (over: Partial<EndsSeen>, by: AppliedRule | null = rule) =>
  endFaults({ ...good, ...over }, by, exposed).map(({ cause }) => cause);
const go = (verdict: 'pass' | 'fail'): GaugeResult => ({
  toolId: 'GO',
  role: 'go-ring',
  verdict,
  turns: null,
});

// source: hand. What each finding is called in the list of causes.
describe('what speaks against an end', () => {
  it.each([
    ['nothing', {}, []],
    ['GO that will not run on', { gauges: [go('fail')] }, ['go-tight']],
    ['NOT GO half a turn beyond the rule', { gauges: [ng(2.5)] }, ['not-go-runs-on']],
    ['a mark that can be felt', { finish: 'can-be-felt' }, ['cone-finish']],
    [
      'a mark that can be felt on a thread',
      { finish: 'can-be-felt', operations: ['thread'] },
      ['torn-thread'],
    ],
    ['blue at the large end', { coneContact: 'large-end' }, ['cone-angle']],
    ['a broken blue ring', { coneContact: 'broken' }, ['cone-angle']],
    ['too many exposed threads', { exposedThreads: 2.5 }, ['length']],
    ['too few exposed threads', { exposedThreads: 0.5 }, ['length']],
    ['exposed threads nobody looked at', { exposedThreads: null }, []],
    ['a nick', { otherFault: 'nicked' }, ['nicked']],
    [
      'several: the rings first',
      { gauges: [go('fail')], finish: 'can-be-felt' },
      ['go-tight', 'cone-finish'],
    ],
  ] as const)('%s', (_what, over, expected) => {
    expect(
      causes({ ...over, ...('gauges' in over ? { gauges: [...over.gauges] } : {}) } as Partial<EndsSeen>),
    ).toEqual(expected);
  });

  it('cone findings do not count where only the thread is looked at', () => {
    expect(causes({ operations: ['thread'], coneContact: 'large-end' })).toEqual([]);
  });

  it('without a rule NOT GO’s turns say nothing, its plain refusal does', () => {
    expect(causes({ gauges: [ng(9)] }, null)).toEqual([]);
    expect(causes({ gauges: [ng(null, 'fail')] }, null)).toEqual(['not-go-runs-on']);
  });
});

// source: identity. Adding a finding never takes a fault away, and the worst of several turns decides.
describe('laws', () => {
  const turns = fc.array(
    fc.integer({ min: 0, max: 16 }).map((n) => n / 4),
    { minLength: 1, maxLength: 5 },
  );
  it('two people’s results are never averaged: the one that refuses decides', () => {
    fc.assert(
      fc.property(turns, (list) => {
        const refused = causes({ gauges: list.map((one) => ng(one)) }).includes('not-go-runs-on');
        expect(refused).toBe(list.some((one) => one > rule.notGoTurnsMax));
      }),
    );
  });
  it('a stricter rule never accepts what a looser one refused', () => {
    fc.assert(
      fc.property(fc.nat(16), fc.nat(8), fc.nat(8), (n, a, b) => {
        const [strict, loose] = [Math.min(a, b) / 2, Math.max(a, b) / 2];
        const refusedBy = (max: number) =>
          causes({ gauges: [ng(n / 4)] }, { ...rule, notGoTurnsMax: max }).length > 0;
        if (refusedBy(loose)) expect(refusedBy(strict)).toBe(true);
      }),
    );
  });
});
