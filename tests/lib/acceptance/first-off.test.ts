import { expect, it } from 'vitest';
import { decideFirstOff, type FirstOff, firstOffRoles } from '@/lib/acceptance/first-off';
import type { GaugeFacts } from '@/lib/acceptance/gauge-fit';
import { HIGH, must, QUARTER, sentence } from '../../support/db';

const gauge = (id: string, role: GaugeFacts['role'], over: Partial<GaugeFacts> = {}) => ({
  toolId: id,
  facts: {
    ...{ id, role, hand: role === 'cone-gauge' ? null : ('LH' as const), state: 'in-crib' as const },
    ...{ stateSinceMs: 0, dueOnDay: '2026-12-31', fitsConnectionIds: [HIGH.id] },
    ...over,
  },
});
const DIE = { role: 'die', connections: [HIGH] } as const;
const BLADE = { role: 'blade', connections: [HIGH] } as const;
const said = (result: FirstOff['result'], ...gauges: FirstOff['gauges'][number][]): FirstOff => ({
  ...{ result, onDay: '2026-03-02', atMs: 1000, gauges },
});
const GO = gauge('GO-1', 'go-ring');
const NG = gauge('NG-1', 'not-go-ring');
const CONE = gauge('CG-1', 'cone-gauge');

// source: hand. Both rings for a thread, the cone gauge for a cone: what accepted ends ask for as well.
it('passes only with every gauge named that the work asks for', () => {
  expect([firstOffRoles('die'), firstOffRoles('blade'), firstOffRoles('brush')]).toEqual([
    ...[['go-ring', 'not-go-ring'], ['cone-gauge'], []],
  ]);
  must(decideFirstOff(DIE, said('pass', GO, NG)));
  must(decideFirstOff(BLADE, said('pass', CONE)));
  expect(sentence(decideFirstOff(DIE, said('pass', GO)))).toBe(
    'Name the NOT GO ring it was gauged with. Looked at without gauges it stays owed.',
  );
  expect(sentence(decideFirstOff(DIE, said('pass')))).toMatch(/^Name the GO ring and the NOT GO ring/);
  expect(sentence(decideFirstOff(BLADE, said('pass', GO)))).toMatch(/cone gauge/);
});

it('fails, or is looked at, without any', () => {
  must(decideFirstOff(DIE, said('fail')));
  must(decideFirstOff(DIE, said('not-gauged')));
});

it('a gauge of another size, of the other hand, set aside, used up or out of date passes nothing', () => {
  const with_ = (over: Partial<GaugeFacts>) =>
    sentence(decideFirstOff(DIE, said('pass', gauge('GO-1', 'go-ring', over), NG)));
  expect(with_({ fitsConnectionIds: [QUARTER.id] })).toMatch(/^GO-1 is not for/);
  expect(with_({ hand: 'RH' })).toMatch(/^HAND MISMATCH/);
  expect(with_({ state: 'quarantined' })).toMatch(/set aside/);
  expect(with_({ usedUp: true })).toMatch(/as many ends/);
  expect(with_({ dueOnDay: '2026-03-01' })).toMatch(/out of calibration/);
  expect(sentence(decideFirstOff(DIE, said('fail', gauge('GO-1', 'go-ring', { dueOnDay: null }))))).toMatch(
    /out of calibration/,
  );
});

it('a gauge of one of the sizes that the tool cuts is enough', () => {
  const both = { role: 'die', connections: [QUARTER, HIGH] } as const;
  must(decideFirstOff(both, said('pass', GO, NG)));
});
