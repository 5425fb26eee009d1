import { describe, expect, it } from 'vitest';
import { type AcceptanceFacts, decideAcceptance } from '@/lib/acceptance/decide-acceptance';
import type { GaugeFacts } from '@/lib/acceptance/gauge-fit';
import type { AppliedRule, GaugeResult } from '@/lib/shop/acceptance';
import { HIGH, must, sentence } from '../../support/db';

const rule = (notGoTurnsMax: number): AppliedRule => ({
  notGoTurnsMax,
  whose: 'drawing 4471',
  source: 'job',
});
const GO: GaugeResult = { toolId: 'GO', role: 'go-ring', verdict: 'pass', turns: null };
const CONE: GaugeResult = { toolId: 'CG', role: 'cone-gauge', verdict: 'pass', turns: null };
const ng = (turns: number | null): GaugeResult => ({
  toolId: 'NG',
  role: 'not-go-ring',
  verdict: 'pass',
  turns,
});
const ROLE = { GO: 'go-ring', NG: 'not-go-ring', CG: 'cone-gauge' } as const;

function facts(gauges: GaugeResult[], over: Partial<AcceptanceFacts> = {}): AcceptanceFacts {
  return {
    seen: {
      ...{ operations: ['cone', 'thread'], gauges, finish: 'smooth', coneContact: 'not-checked' },
      ...{ exposedThreads: null, boreClear: true, otherFault: null },
    },
    use: { connection: HIGH, gaugedOnDay: '2026-03-02', gaugedAtMs: 1000 },
    gauge: (id): GaugeFacts | undefined => {
      const role = ROLE[id as keyof typeof ROLE];
      if (role === undefined) return undefined;
      const stands = { state: 'in-crib', stateSinceMs: 0, dueOnDay: '2026-12-31' } as const;
      return { id, role, hand: null, ...stands, fitsConnectionIds: [HIGH.id] };
    },
    rule: rule(2),
    exposed: { min: 1, max: 2 },
    ...over,
  };
}

describe('Q10: NOT GO goes on two and a half turns. Accept?', () => {
  // source: published. ASME B1.2 as quoted in gauging notes: the product is acceptable when NOT GO is definite in its drag or
  // does not enter more than three turns; practice after ISO: two.
  it('the rule that is written decides: three turns accept it, two refuse it', () => {
    const at = (max: number) => must(decideAcceptance(facts([GO, ng(2.5), CONE], { rule: rule(max) })));
    expect(at(3).decision).toBe('accepted');
    expect(at(2)).toMatchObject({ decision: 'refused', cause: 'not-go-runs-on' });
    expect(at(2).faults[0]?.sentence).toBe(
      'NOT GO ran on 2½ turns. The rule: at most 2 turns by drawing 4471, written on the job.',
    );
  });

  // source: hand. TRADE practice: no rule, no acceptance.
  it('without a written rule it cannot be decided, and nobody may assume one', () => {
    expect(sentence(decideAcceptance(facts([GO, ng(2.5), CONE], { rule: null })))).toMatch(
      /nobody may assume one/,
    );
    expect(sentence(decideAcceptance(facts([GO, ng(0), CONE], { rule: null })))).toMatch(
      /nobody may assume one/,
    );
  });

  it('a refusal needs no rule: GO that will not run on refuses anyway', () => {
    const refused = decideAcceptance(facts([{ ...GO, verdict: 'fail' }, ng(1), CONE], { rule: null }));
    expect(must(refused)).toMatchObject({ decision: 'refused', cause: 'go-tight' });
  });

  it('two people’s results are not averaged: 1½ and 2½ under a rule of two are refused', () => {
    expect(must(decideAcceptance(facts([GO, ng(1.5), ng(2.5), CONE]))).decision).toBe('refused');
  });
});

// source: hand. Stated in each case.
describe('what stops, and what is only not releasable', () => {
  it('NOT GO without its turns stops with the question', () => {
    expect(sentence(decideAcceptance(facts([GO, ng(null), CONE])))).toBe(
      'Say how far NG ran on: none, half a turn, one …',
    );
  });
  it('a gauge that nobody knows stops; one that was not used is not looked at', () => {
    expect(sentence(decideAcceptance(facts([{ ...GO, toolId: 'X' }, ng(1), CONE])))).toMatch(/No gauge X/);
    const unused: GaugeResult = { ...GO, toolId: 'X', verdict: 'not-used' };
    expect(must(decideAcceptance(facts([unused, ng(1), CONE]))).gaugesMissing).toEqual(['go-ring']);
  });
  it('no gauge recorded: accepted as seen, and every gauge is missing', () => {
    expect(must(decideAcceptance(facts([], { rule: null })))).toEqual({
      ...{
        decision: 'accepted',
        cause: null,
        faults: [],
        gaugesMissing: ['cone-gauge', 'go-ring', 'not-go-ring'],
      },
    });
  });
  it('a bore nobody looked through stops an acceptance, not a refusal', () => {
    const dirty = (gauges: GaugeResult[]) => ({ ...facts(gauges).seen, boreClear: false });
    expect(sentence(decideAcceptance(facts([], { seen: dirty([GO, ng(1), CONE]) })))).toMatch(
      /Look through the bore/,
    );
    const failed = dirty([{ ...GO, verdict: 'fail' }]);
    expect(must(decideAcceptance(facts([], { seen: failed }))).decision).toBe('refused');
  });
});
