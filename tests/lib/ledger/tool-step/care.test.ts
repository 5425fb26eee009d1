import { expect, it } from 'vitest';
import { dieAdjusted, firstOffChecked, freed, piecesAccounted, reserved } from '@/lib/ledger/tool-step/care';
import { must, sentence } from '../../../support/db';
import { end, entry, move, toolAfter } from '../../../support/entry';

const keep = { jobLineId: 'J-7.1', untilDay: '2026-03-06' };
const kept = entry('tool-reserved', 'T-1', keep);
const touch = { direction: 'closed', amount: '', onDay: '2026-03-02' } as const;
const adjusted = entry('die-adjusted', 'T-1', touch);
const check = (result: 'pass' | 'fail') => ({ result, onDay: '2026-03-02', gaugeIds: [] });
const checked = entry('first-off-checked', 'T-1', check('pass'));
const accounted = entry('pieces-accounted', 'T-1', { allFound: true, where: 'bore' });

// source: hand. The rules of custody: what is gone or set aside is not kept for a job; a first-off is owed once.
it('what is gone or set aside is not kept for a line', () => {
  for (const state of ['scrapped', 'lost', 'quarantined'] as const)
    expect(reserved(toolAfter('die', move(state)), keep, kept).ok).toBe(false);
  expect(must(reserved(toolAfter('die'), keep, kept)).reservation).toEqual(keep);
  expect(sentence(freed(toolAfter('die'), {}, entry('tool-freed', 'T-1', {})))).toBe(
    'T-1 is not kept for any line.',
  );
  expect(must(freed(toolAfter('die', kept), {}, entry('tool-freed', 'T-1', {}))).reservation).toBeNull();
});

it('an adjustment is counted, keeps what was cut, and owes a first-off', () => {
  const die = toolAfter('die', adjusted, checked, adjusted);
  expect(die).toMatchObject({ adjustments: 2, firstOffOwed: true });
  expect(sentence(dieAdjusted(toolAfter('blade'), touch, adjusted))).toBe(
    'T-1 is not a die; only dies are adjusted.',
  );
  expect(dieAdjusted(toolAfter('die', end('worn', 'quarantined')), touch, adjusted).ok).toBe(false);
  expect(dieAdjusted(toolAfter('die', move('lost')), touch, adjusted).ok).toBe(false);
});

it('a first-off passes or sets aside, and only where one is owed', () => {
  const die = toolAfter('die', adjusted);
  expect(must(firstOffChecked(die, check('pass'), checked))).toMatchObject({
    firstOffOwed: false,
    state: 'in-crib',
  });
  expect(must(firstOffChecked(die, check('fail'), checked))).toMatchObject({
    firstOffOwed: true,
    state: 'quarantined',
  });
  expect(firstOffChecked(toolAfter('die'), check('pass'), checked).ok).toBe(false);
  expect(firstOffChecked(toolAfter('die', adjusted, move('lost')), check('pass'), checked).ok).toBe(false);
});

it('pieces are accounted for where they are owed, and may be found after all', () => {
  const broke = entry('edge-ended', 'T-1', {
    ...{ cause: 'teeth-broken-worn', to: 'quarantined', pieces: 'owed' },
  });
  const die = toolAfter('die', broke);
  const givenUp = must(piecesAccounted(die, { allFound: false, where: 'bench' }, accounted));
  expect(givenUp.pieces).toBe('not-found');
  expect(must(piecesAccounted(givenUp, { allFound: true, where: 'bore' }, accounted)).pieces).toBe('found');
  expect(piecesAccounted(toolAfter('die'), { allFound: true, where: 'bore' }, accounted).ok).toBe(false);
});
