import { describe, expect, it } from 'vitest';
import { checkGauge, type GaugeFacts } from '@/lib/acceptance/gauge-fit';
import { HIGH, QUARTER } from '../../support/db';

const used = { toolId: 'G-1', role: 'go-ring', verdict: 'pass', turns: null } as const;
const gauge: GaugeFacts = {
  ...{ id: 'G-1', role: 'go-ring', hand: 'LH', state: 'in-crib', stateSinceMs: 0 },
  ...{ dueOnDay: '2026-03-02', fitsConnectionIds: [HIGH.id] },
};
const use = { connection: HIGH, gaugedOnDay: '2026-03-02', gaugedAtMs: 1000 };
const said = (over: Partial<GaugeFacts>, at = use) => {
  const result = checkGauge(used, { ...gauge, ...over }, at);
  return result.ok ? 'ok' : result.refusal.code;
};

// source: hand. Stated in each case; the end-of-day rule is common practice.
describe('a gauge may be used to accept', () => {
  it.each([
    ['in date to the end of its due day', {}, 'ok'],
    ['issued to somebody', { state: 'issued' }, 'ok'],
    ['not the day after', { dueOnDay: '2026-03-01' }, 'gauge-date'],
    ['not without a date', { dueOnDay: null }, 'gauge-date'],
    ['not set aside', { state: 'quarantined' }, 'gauge-state'],
    ['not while it is away', { state: 'calibration' }, 'gauge-state'],
    ['not scrapped', { state: 'scrapped' }, 'gauge-state'],
    ['not of the other hand', { hand: 'RH' }, 'gauge-hand'],
    ['not of another size', { fitsConnectionIds: [QUARTER.id] }, 'gauge-size'],
    ['not of another kind', { role: 'not-go-ring' }, 'gauge-role'],
    ['not when its ends are used up', { usedUp: true }, 'gauge-ends'],
    ['not, where nobody knows it', undefined, 'unknown-gauge'],
  ] as const)('%s', (_what, over, code) => {
    if (over === undefined) {
      const unknown = checkGauge(used, undefined, use);
      expect(unknown.ok ? 'ok' : unknown.refusal.code).toBe(code);
    } else expect(said(over)).toBe(code);
  });

  it('as it stood at the moment of gauging: set aside or failed later, the entry stays and its recall lists it', () => {
    const later = { stateSinceMs: 2000, state: 'quarantined', dueOnDay: null } as const;
    expect(said(later)).toBe('ok');
    expect(said({ ...later, stateSinceMs: 999 })).toBe('gauge-state');
  });

  it('a micrometer serves every size', () => {
    const mic = { ...gauge, role: 'micrometer', fitsConnectionIds: [], hand: null } as const;
    expect(checkGauge({ ...used, role: 'micrometer' }, mic, use).ok).toBe(true);
  });
});
