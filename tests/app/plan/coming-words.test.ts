import { describe, expect, it } from 'vitest';
import { comingWords, onceHereWords, restsOnSentences, restsOnWords } from '@/app/plan/_parts/coming-words';
import type { ComingPiece } from '@/lib/capability/coming-pieces';
import { setNeeds } from '@/lib/capability/complete-set';
import type { NeedCheck } from '@/lib/capability/set-checklist';
import type { Role } from '@/lib/shop/vocabulary';
import { TODAY } from '../../support/shop-record';

const label = (lineId: string) => `job ${lineId}`;
const piece = (change: Partial<ComingPiece> = {}): ComingPiece => ({
  ...{ toolId: 'G-25-GO-2', fromDay: '2026-03-06', where: 'calibration', lineId: null },
  ...change,
});

function check(role: Role, coming: ComingPiece[], state: NeedCheck['state'] = 'coming'): NeedCheck {
  const [need] = setNeeds(['cone', 'thread']).filter((known) => known.role === role);
  if (need === undefined) throw new Error(`${role} is needed`);
  return { need, state, toolIds: [], onOrderCount: 0, coming, blockers: [] };
}

// source: hand. The sentences as one would say them; 6 March 2026 is a Friday.
describe('what a line rests on that is not here today', () => {
  it('says from which day, from where, and what must happen first', () => {
    const say = (change: Partial<ComingPiece>) => comingWords(piece(change), TODAY, label);
    expect(say({})).toBe('back Fri 6 Mar from calibration, must pass first');
    expect(say({ where: 'regrind' })).toBe('back Fri 6 Mar from regrind, its first-off must pass first');
    expect(say({ where: 'issued' })).toBe('back Fri 6 Mar from loan');
    expect(say({ where: 'issued', lineId: '41' })).toBe('from Fri 6 Mar; with job 41 before');
    expect(say({ where: 'in-crib', lineId: '41' })).toBe('from Fri 6 Mar; kept for job 41 before');
    expect(say({ where: 'on-order', toolId: null })).toBe('on order, sure enough by Fri 6 Mar');
  });

  it('speaks of what the line rests on, not of spares', () => {
    const checks = [check('go-ring', [piece()]), check('die', [piece({ toolId: 'D-1' })], 'met')];
    expect(restsOnSentences(checks, TODAY, label)).toEqual([
      'GO ring G-25-GO-2: back Fri 6 Mar from calibration, must pass first.',
    ]);
    expect(restsOnWords(checks, 'accept', TODAY, label)).toBe(
      'rests on G-25-GO-2: back Fri 6 Mar from calibration, must pass first',
    );
    expect(restsOnWords(checks, 'cut', TODAY, label)).toBe('');
  });

  it('names together what comes alike', () => {
    const held = { where: 'issued', lineId: '41' } as const;
    const checks = [
      check('coning-guide', [piece({ ...held, toolId: 'GDE-1' })]),
      check('threading-guide', [piece({ ...held, toolId: 'TGD-1' })]),
    ];
    expect(restsOnSentences(checks, TODAY, label)).toEqual([
      'Coning guide GDE-1 and threading guide TGD-1: from Fri 6 Mar; with job 41 before.',
    ]);
  });

  it('is all here on the last of the days', () => {
    const collet = piece({ toolId: null, where: 'on-order', fromDay: '2026-03-08' });
    const checks = [check('go-ring', [piece()]), check('collet', [collet])];
    expect(onceHereWords(checks, TODAY)).toBe(
      'once G-25-GO-2 and collet or vise adapter are here, in 6 days, Sun 8 Mar',
    );
    expect(onceHereWords(checks.slice(0, 1), TODAY)).toBe('once G-25-GO-2 is here, in 4 days, Fri 6 Mar');
    expect(onceHereWords([], TODAY)).toBe('');
  });
});
